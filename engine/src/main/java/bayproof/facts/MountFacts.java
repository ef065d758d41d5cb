package bayproof.facts;

import bayproof.read.Fitting;
import bayproof.read.Item;
import bayproof.read.Mount;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.CooledItem;
import bayproof.vocabulary.CrashLoad;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.HungItem;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.MountedItem;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about how the planned items are fastened, what lies behind and how they are cooled. */
final class MountFacts {
    private static final double MILLIMETRES = 1000;
    private static final int MOST_FASTENERS = 24;

    private final Model model;

    MountFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        for (Item item : model.job.items().values()) {
            Fitting fitting = item.fitting();
            // What the vehicle maker mounted is not judged.
            if (fitting == null || item.path().startsWith("supply.")) {
                continue;
            }
            facts.accept(mounted(item, fitting));
            facts.accept(crash(item, fitting));
            facts.accept(new HungItem(item.path(), item.at(), fitting.mount().fastener().map(model.limit("thread-cutters").words()::contains), fitting.mount().sits()));
            if (item instanceof Item.Powered || item instanceof Item.Converter) {
                facts.accept(new CooledItem(item.path(), item.at(), fitting.clearanceMetres(),
                        fitting.neededClearanceMetres().isGiven(), fitting.neededClearanceMetres()));
            }
        }
    }

    // what lies behind

    private MountedItem mounted(Item item, Fitting fitting) {
        Mount mount = fitting.mount();
        return new MountedItem(item.path(), item.at(),
                mount.fastener().map(kind -> !model.limit("holeless-fasteners").words().contains(kind)), behind(mount),
                mount.freeDepthMetres().with(mount.tipMetres(), Sums::lengthLeft), shorterTip(item, mount),
                fitting.massKilograms().map(mass -> mass > model.value("heavy-part")), mount.fastener(),
                Ladders.knob(() -> List.of("rivet-nut", "bolt-nut"), "items", item.id(), "mount", "fastener"));
    }

    /** A vital thing is named at once; anything else counts only when it is known to be harmless and somebody looked. */
    private Shown<String> behind(Mount mount) {
        List<String> vital = model.limit("never-behind").words();
        List<String> harmless = model.limit("harmless-behind").words();
        return mount.behind().then(things -> {
            String worst = things.stream().filter(vital::contains).sorted().findFirst().orElse(null);
            if (worst != null) {
                return Shown.of(worst);
            }
            String strange = things.stream().filter(thing -> !harmless.contains(thing)).sorted().findFirst().orElse(null);
            if (strange != null) {
                return Shown.missing(new Need(mount.path() + ".behind", "what \"" + strange + "\" is: harmless are "
                        + String.join(", ", harmless), mount.behind().atOr(mount.at())));
            }
            return mount.seenBy().map(who -> things.isEmpty() ? "nothing" : String.join(", ", new TreeSet<>(things)));
        });
    }

    private static Knob shorterTip(Item item, Mount mount) {
        double planned = mount.tipMetres().orElse(Double.NaN);
        return Double.isNaN(planned) ? null : Ladders.knob(() -> millimetresBelow(planned, 0), "items", item.id(), "mount", "tip");
    }

    static List<String> millimetresBelow(double planned, long least) {
        List<String> ladder = new ArrayList<>();
        for (long millimetres = (long) Math.ceil(planned * MILLIMETRES - 1e-6) - 1; millimetres >= least; millimetres--) {
            ladder.add(millimetres + " mm");
        }
        return ladder;
    }

    // in a crash

    private CrashLoad crash(Item item, Fitting fitting) {
        Mount mount = fitting.mount();
        Shown<Double> mass = fitting.massKilograms();
        Shown<Double> share = holds(mount).with(mass, (newtons, kilograms) -> new double[] {newtons, kilograms}).then(pair ->
                Shown.of(Sums.heldShare(pair[0], pair[1]), () -> Model.print(pair[0], Dimension.FORCE) + " / ("
                        + Model.print(pair[1], Dimension.MASS) + " x " + Sums.GRAVITY + " m/s2)"));
        return new CrashLoad(item.path(), item.at(), inside(item), mass.map(kilograms -> kilograms >= model.value("crash-mass")),
                !(mass.orElse(Double.MAX_VALUE) <= model.value("crash-mass-stop")), share, moreFasteners(item));
    }

    /** A larger number of the planned fasteners; null where none is planned. */
    Knob moreFasteners(Item item) {
        Integer planned = item.mount().fasteners().orElse(null);
        return planned == null ? null : Ladders.knob(() -> above(planned), "items", item.id(), "mount", "fasteners");
    }

    private static List<String> above(int planned) {
        List<String> ladder = new ArrayList<>();
        for (int count = planned + 1; count <= MOST_FASTENERS; count++) {
            ladder.add(String.valueOf(count));
        }
        return ladder;
    }

    private Shown<Boolean> inside(Item item) {
        return model.zoneKind(item).map(kind -> model.limit("crash-zones").words().contains(kind));
    }

    /** Force that all fasteners of a mount hold together, N. */
    Shown<Double> holds(Mount mount) {
        return mount.fastener().with(mount.thread(), (kind, thread) -> "holds-" + kind + "-" + thread.toLowerCase(Locale.ROOT))
                .then(name -> model.job.limits().has(name) ? Shown.of(model.value(name))
                        : Shown.<Double>missing(new Need(mount.path() + ".thread", "a thread that such a fastener has",
                        mount.thread().atOr(mount.at()))))
                .with(mount.fasteners(), (one, count) -> one * count);
    }

    private static <T> Shown<T> missing(String path, String ask, Item item) {
        return Shown.missing(new Need(path, ask, item.at()));
    }
}
