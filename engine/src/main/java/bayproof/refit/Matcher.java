package bayproof.refit;

import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Pairs things of two vehicles that serve the same end: what was chosen first, then whatever has one candidate left, until nothing more
 * follows. A name decides nothing: two vehicles may give the same name to different things.
 */
final class Matcher {
    /**
     * What may serve in place of a thing.
     *
     * @param names those that fit equally well
     * @param sure  whether the sheets say enough to take a single one of them for granted
     */
    record Candidates(List<String> names, boolean sure) {
        Candidates {
            names = List.copyOf(names);
        }

        static Candidates sure(List<String> names) {
            return new Candidates(names, true);
        }
    }

    private final Map<String, Shown<String>> chosen;
    private final Function<String, Candidates> candidates;
    private final Function<String, String> kind;

    /**
     * @param chosen     what somebody chose
     * @param candidates what may serve in place of a thing
     * @param kind       what a thing is, as a phrase
     */
    Matcher(Map<String, Shown<String>> chosen, Function<String, Candidates> candidates, Function<String, String> kind) {
        this.chosen = chosen;
        this.candidates = candidates;
        this.kind = kind;
    }

    /** A counterpart for each thing, whatever their order. */
    Map<String, Counterpart> match(Collection<String> things) {
        Map<String, Counterpart> matched = new LinkedHashMap<>();
        things.forEach(thing -> matched.put(thing, chosen(thing)));
        Map<String, Counterpart> found = matched;
        while (!found.isEmpty()) {
            found = new LinkedHashMap<>();
            for (String thing : matched.keySet()) {
                Counterpart only = matched.get(thing) == null ? only(thing, taken(matched)) : null;
                if (only != null) {
                    found.put(thing, only);
                }
            }
            // Together, so that none of them comes first.
            matched.putAll(found);
        }
        Set<String> taken = taken(matched);
        matched.replaceAll((thing, counterpart) -> counterpart != null ? counterpart : new Counterpart(thing, null, "", left(candidates.apply(thing), taken), kind.apply(thing)));
        return matched;
    }

    private static Set<String> taken(Map<String, Counterpart> matched) {
        Set<String> taken = new TreeSet<>();
        matched.values().stream().filter(one -> one != null).forEach(one -> taken.add(one.found()));
        return taken;
    }

    private Counterpart chosen(String thing) {
        String choice = chosen.getOrDefault(thing, Shown.of("")).orElse("");
        return choice.isEmpty() ? null : Counterpart.of(thing, choice, Counterpart.CHOSEN, kind.apply(thing));
    }

    private Counterpart only(String thing, Set<String> taken) {
        Candidates all = candidates.apply(thing);
        List<String> left = left(all, taken);
        return !all.sure() || left.size() != 1 ? null
                : Counterpart.of(thing, left.get(0), all.names().size() == 1 ? "the only one that fits" : "the only one left that fits", kind.apply(thing));
    }

    /** Those that nothing else took; all of them where everything is taken. */
    private static List<String> left(Candidates all, Set<String> taken) {
        List<String> free = new ArrayList<>(all.names());
        free.removeAll(taken);
        return free.isEmpty() ? all.names() : free;
    }
}
