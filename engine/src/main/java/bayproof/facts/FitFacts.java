package bayproof.facts;

import bayproof.read.BoxShape;
import bayproof.read.Item;
import bayproof.read.Vehicle;
import bayproof.solve.acoustic.Hollow;
import bayproof.solve.acoustic.Hollow.Direction;
import bayproof.solve.acoustic.OuterShape;
import bayproof.solve.acoustic.OuterShape.Stand;
import bayproof.vocabulary.EnclosureFit;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SpeakerDepth;
import bayproof.vocabulary.WayIn;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about enclosures in their spaces and on the way there, and about speakers in doors and trim. */
final class FitFacts {
    private static final double FINEST = 1e9;

    private final Model model;

    FitFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        for (Item.Enclosure enclosure : model.job.itemsOf(Item.Enclosure.class)) {
            facts.accept(fit(enclosure));
            facts.accept(wayIn(enclosure));
        }
        for (Item.Speaker speaker : model.job.itemsOf(Item.Speaker.class)) {
            if (!speaker.enclosure().isGiven()) {
                facts.accept(depth(speaker));
            }
        }
    }

    private static double rounded(double value) {
        return Math.round(value * FINEST) / FINEST;
    }

    // enclosures

    /** One way to stand with the least room known of it. */
    private record Tightest(Stand stand, Direction direction, String position, double gap) {
    }

    private EnclosureFit fit(Item.Enclosure enclosure) {
        Gathered gathered = new Gathered();
        Vehicle.Space space = gathered.one(space(enclosure), null);
        OuterShape shape = Boxes.shape(enclosure, gathered);
        if (space == null || shape == null || !gathered.complete()) {
            return new EnclosureFit(enclosure.path(), enclosure.at(), "the room left on each side", gathered.then(() -> 0.0), null);
        }
        Tightest best = null;
        for (Stand stand : stands(enclosure.shape())) {
            Tightest one = tightest(enclosure, space, shape, stand, gathered);
            best = best == null || one != null && one.gap > best.gap ? one : best;
        }
        gathered.one(enclosure.shape().stands(), List.of());
        if (best == null) {
            return new EnclosureFit(enclosure.path(), enclosure.at(), "the room left on each side", gathered.then(() -> 0.0), null);
        }
        Tightest found = best;
        // Too tight in what is known is too tight, whatever the rest is.
        boolean tooTight = found.gap < model.limit("enclosure-gap").steps().get(0).value();
        String side = found.direction.name().toLowerCase(Locale.ROOT);
        return new EnclosureFit(enclosure.path(), enclosure.at(), "the room left on each side, " + side + " at " + found.position
                + (found.stand == Stand.AS_DRAWN ? "" : ", " + found.stand.name().toLowerCase(Locale.ROOT).replace('_', ' ')),
                tooTight ? Shown.of(found.gap) : gathered.then(() -> found.gap), smaller(enclosure, found));
    }

    /** Ways it may stand; every way where nobody says, for what fits in none is too large. */
    private static List<Stand> stands(BoxShape shape) {
        return shape.stands().orElse(BoxShape.STANDS).stream().map(word -> Stand.valueOf(word.replace('-', '_').toUpperCase(Locale.ROOT))).toList();
    }

    private Tightest tightest(Item.Enclosure enclosure, Vehicle.Space space, OuterShape shape, Stand stand, Gathered gathered) {
        TreeSet<String> positions = new TreeSet<>(space.positions().keySet());
        positions.addAll(model.limit("seat-positions").words());
        Tightest tightest = null;
        for (String position : positions) {
            Vehicle.Box clear = space.positions().get(position);
            if (clear == null) {
                gathered.need(new Need(space.path() + ".positions." + position, "clear size of the space with " + position, enclosure.at()));
                continue;
            }
            Hollow hollow = new Hollow(gathered.number(clear.heightMetres()), gathered.number(clear.widthMetres()), gathered.number(clear.depthMetres()),
                    gathered.number(clear.topDepthMetres()));
            for (Direction direction : Direction.values()) {
                double gap = rounded(hollow.gap(shape, stand, direction));
                if (isKnown(clear, direction) && (tightest == null || gap < tightest.gap)) {
                    tightest = new Tightest(stand, direction, position, gap);
                }
            }
        }
        return tightest;
    }

    private static boolean isKnown(Vehicle.Box clear, Direction direction) {
        return switch (direction) {
            case HEIGHT -> clear.heightMetres().isGiven();
            case WIDTH -> clear.widthMetres().isGiven();
            case DEPTH -> clear.heightMetres().isGiven() && clear.depthMetres().isGiven() && clear.topDepthMetres().isGiven();
        };
    }

    /** Smaller sizes of the side that is too large; of one that lies on another side no single size decides. */
    private static Knob smaller(Item.Enclosure enclosure, Tightest found) {
        if (found.stand == Stand.ON_ITS_BACK || found.stand == Stand.ON_ITS_SIDE) {
            return null;
        }
        Shown<Double> side = found.direction == Direction.HEIGHT ? enclosure.heightMetres() : found.direction == Direction.WIDTH ? enclosure.widthMetres()
                : enclosure.depthMetres();
        return Ladders.knob(() -> MountFacts.millimetresBelow(side.orElse(0.0), 1), "items", enclosure.id(), found.direction.name().toLowerCase(Locale.ROOT));
    }

    private Shown<Vehicle.Space> space(Item.Enclosure enclosure) {
        return enclosure.space().then(id -> {
            Vehicle.Space space = model.job.vehicle().spaces().get(id);
            if (space == null) {
                return missing("spaces." + id, "the space " + id + " in the vehicle sheet", enclosure);
            }
            return space.place().with(enclosure.place(), String::equals).then(same -> same ? Shown.of(space)
                    : missing(enclosure.path() + ".place", "which place is right: the space " + id + " is at " + space.place().orElse(""), enclosure));
        });
    }

    private static <T> Shown<T> missing(String path, String ask, Item item) {
        return Shown.missing(new Need(path, ask, item.at()));
    }

    private WayIn wayIn(Item.Enclosure enclosure) {
        Gathered gathered = new Gathered();
        Vehicle.Space space = gathered.one(space(enclosure), null);
        OuterShape shape = Boxes.shape(enclosure, gathered);
        double height = space == null ? 0 : gathered.number(space.wayIn().heightMetres());
        double width = space == null ? 0 : gathered.number(space.wayIn().widthMetres());
        return new WayIn(enclosure.path(), enclosure.at(), gathered.then(() -> rounded(shape.wayInGapMetres(height, width))));
    }

    // speakers in doors and trim

    private SpeakerDepth depth(Item.Speaker speaker) {
        Gathered gathered = new Gathered();
        Vehicle.Place place = place(speaker, gathered);
        double clear = place == null ? 0 : gathered.number(place.depthMetres());
        double deep = gathered.number(speaker.driver().depthMetres());
        List<String> zones = new ArrayList<>();
        if (place != null) {
            Vehicle.Zone zone = model.job.vehicle().zones().get(place.zone().orElse(""));
            zones.add(zone == null ? "" : zone.kind().orElse("door"));
        }
        return new SpeakerDepth(speaker.path(), speaker.at(), gathered.then(() -> rounded(clear - deep)), zones.contains("door"));
    }

    private Vehicle.Place place(Item.Speaker speaker, Gathered gathered) {
        String id = gathered.one(speaker.place(), null);
        Vehicle.Place place = id == null ? null : model.job.vehicle().places().get(id);
        if (id != null && place == null) {
            gathered.need(new Need("places." + id + ".depth", "clear depth behind the face a speaker is mounted on", speaker.at()));
        }
        return place;
    }
}
