package bayproof.refit;

import bayproof.graph.WiringGraph;
import bayproof.read.Choices;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Run;
import bayproof.vocabulary.Shown;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The way of each run of the old job in the new vehicle. */
final class RunWays {
    /**
     * Where a run ends up.
     *
     * @param inOnePlace whether both ends lie at one place, so that the run moves with what it joins
     * @param way        its way where the ends lie at two places; null where no routes lead from one to the other, or an end is open
     * @param open       the first end whose place is not settled; null where both are
     */
    record Laid(boolean inOnePlace, Ways.Way way, Counterpart open) {
    }

    private final Job old;
    private final Job into;
    private final PlaceMatches places;
    private final Map<String, Laid> laid = new LinkedHashMap<>();

    RunWays(Job old, Job into, Ways ways, PlaceMatches places, Choices.Decided choices) {
        this.old = old;
        this.into = into;
        this.places = places;
        old.plan().runs().forEach((id, run) -> laid.put(id, choices.runs().containsKey(id) && choices.runs().get(id).isGiven()
                ? new Laid(false, ways.along(choices.runs().get(id).orElse(List.of())), null) : laid(run, ways)));
    }

    Laid of(String run) {
        return laid.get(run);
    }

    private Laid laid(Run run, Ways ways) {
        Counterpart open = open(run);
        if (open != null) {
            return new Laid(false, null, open);
        }
        String from = place(run.from());
        String to = place(run.to());
        String before = oldPlace(run.from());
        if (from == null || to == null) {
            // The body is everywhere, and an item that nobody gave a place has none here either.
            boolean body = WiringGraph.BODY.equals(run.from().orElse("")) || WiringGraph.BODY.equals(run.to().orElse(""));
            return new Laid(body, null, null);
        }
        boolean together = from.equals(to) && before != null && before.equals(oldPlace(run.to()));
        return new Laid(together, together || from.equals(to) ? null : ways.between(from, to), null);
    }

    private Counterpart open(Run run) {
        for (Shown<String> end : List.of(run.from(), run.to())) {
            Item item = item(end);
            Counterpart found = item == null ? null : item.path().startsWith("supply.") ? places.sources().get(item.id())
                    : places.places().get(item.place().orElse(""));
            if (found != null && !found.isFound()) {
                return found;
            }
        }
        return null;
    }

    private Item item(Shown<String> terminal) {
        return old.itemOf(terminal.orElse(""));
    }

    private String oldPlace(Shown<String> terminal) {
        Item item = item(terminal);
        return item == null ? null : item.place().orElse(null);
    }

    private String place(Shown<String> terminal) {
        Item item = item(terminal);
        if (item == null) {
            return null;
        }
        if (item.path().startsWith("supply.")) {
            return into.items().get(places.sources().get(item.id()).found()).place().orElse(null);
        }
        Counterpart place = places.places().get(item.place().orElse(""));
        return place == null ? null : place.found();
    }
}
