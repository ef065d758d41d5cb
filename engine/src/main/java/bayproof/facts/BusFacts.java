package bayproof.facts;

import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Vehicle;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.JoinedBus;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Facts about the data buses that the job joins. */
final class BusFacts {
    private final Model model;

    BusFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        for (Plan.BusUse use : model.job.plan().buses().orElse(Map.of()).values()) {
            Vehicle.Bus bus = model.job.vehicle().networks().get(use.id());
            Shown<String> kind = bus != null ? bus.kind() : missing("networks." + use.id() + ".kind", "kind of the bus " + use.id(), use.at());
            facts.accept(new JoinedBus(use.path(), use.at(), use.by(), kind, bus != null ? bus.carries() : missing("networks." + use.id() + ".carries", "what the bus " + use.id() + " is for", use.at()), kind.map("can-high-speed"::equals), use.stubMetres(),
                    bus != null ? bus.ohms() : missing("networks." + use.id() + ".resistance",
                            "resistance across the pair with the supply off", use.at()), shorter(use)));
        }
        for (Item.Interface module : model.job.itemsOf(Item.Interface.class)) {
            // What asks on a bus has joined one, whether the plan says so or not; otherwise the plan says that none is joined.
            boolean listed = model.job.plan().buses().orElse(Map.of()).values().stream().anyMatch(use -> use.by().orElse("").equals(module.id()));
            if (!listed && (!model.job.plan().buses().isGiven() || module.upkeep().pollsBus().orElse("no").equals("yes"))) {
                Shown<String> bus = missing("buses", "the bus that " + module.id() + " joins", module.at());
                facts.accept(new JoinedBus(module.path(), module.at(), Shown.of(module.id()), bus, bus, bus.map(x -> true), bus.map(x -> 0.0),
                        bus.map(x -> 0.0), null));
            }
        }
    }

    private static Knob shorter(Plan.BusUse use) {
        double planned = use.stubMetres().orElse(0.0);
        return use.stubMetres().isGiven() ? Ladders.knob(() -> below(planned), "buses", use.id(), "stub") : null;
    }

    private static List<String> below(double planned) {
        List<String> ladder = new ArrayList<>();
        for (long centimetres = (long) Math.ceil(planned * 100 - 1e-9) - 1; centimetres >= 1; centimetres--) {
            ladder.add(BigDecimal.valueOf(centimetres, 2).toPlainString() + " m");
        }
        return ladder;
    }

    private static <T> Shown<T> missing(String path, String ask, At at) {
        return Shown.missing(new Need(path, ask, at));
    }
}
