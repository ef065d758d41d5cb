package bayproof.facts;

import bayproof.read.ChargingTest;
import bayproof.read.Delivered;
import bayproof.read.FactoryFunction;
import bayproof.read.HeatSoak;
import bayproof.read.Item;
import bayproof.read.Listening;
import bayproof.read.Plan;
import bayproof.read.UnderLoad;
import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.ChargedBattery;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.ListenedFor;
import bayproof.vocabulary.LoadedAmplifier;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.NewFault;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SoakedJob;
import bayproof.vocabulary.TriedFunction;
import java.util.List;
import java.util.function.Consumer;

/** Facts about the finished vehicle: what was measured, tried and listened for before it goes back. */
final class ProvingFacts {
    private static final String SHEET = "the handover sheet";

    private final Model model;
    private final Plan plan;
    private final Delivered delivered;
    private final Measured measured;
    private final CopperFloor floor;

    ProvingFacts(Model model) {
        this.model = model;
        this.plan = model.job.plan();
        this.delivered = plan.delivered();
        this.measured = new Measured(model);
        this.floor = new CopperFloor(model);
    }

    void collect(Consumer<Fact> facts) {
        faults(facts);
        functions(facts);
        for (Item.Amplifier amplifier : model.job.itemsOf(Item.Amplifier.class)) {
            facts.accept(amplifier(amplifier));
        }
        for (Item.Battery battery : model.job.itemsOf(Item.Battery.class)) {
            facts.accept(battery(battery));
        }
        if (!model.job.itemsOf(Item.Amplifier.class).isEmpty()) {
            soak(facts);
            listening(facts);
        }
        if (model.job.items().values().stream().anyMatch(item -> item instanceof Item.Powered || item instanceof Item.Converter)) {
            new SleepFacts(model, measured).collect(facts);
        }
    }

    // faults and functions

    private void faults(Consumer<Fact> facts) {
        facts.accept(fresh("fault-codes", "fault codes", plan.checkIn().faultCodes(), delivered.faultCodes()));
        facts.accept(fresh("lamps", "warning lamps", plan.checkIn().lamps(), delivered.lamps()));
    }

    private NewFault fresh(String key, String noun, Shown<List<String>> before, Shown<List<String>> after) {
        Shown<List<String>> fresh = before.with(after, (old, now) -> now.stream().filter(one -> !old.contains(one)).toList());
        return new NewFault(delivered.path() + "." + key, delivered.at(), noun, fresh.map(List::isEmpty), fresh.map(list -> String.join(", ", list)),
                delivered.word(SHEET));
    }

    private void functions(Consumer<Fact> facts) {
        for (String id : ReceivingFacts.asked(model)) {
            FactoryFunction function = plan.functions().get(id);
            String path = "functions." + id;
            At at = function == null ? model.job.planAt() : function.at();
            Shown<String> before = ReceivingFacts.before(model, id);
            Shown<String> after = function != null ? function.after()
                    : Shown.missing(new Need(path + ".after", "whether it works as the vehicle goes back: " + id.replace('-', ' '), at));
            Shown<Boolean> same = before.with(after, (was, is) -> is.equals("works") || is.equals(was));
            facts.accept(new TriedFunction(path, at, before.map(was -> !was.equals("not-fitted")), before, same, delivered.word(SHEET)));
        }
    }

    // under load

    private LoadedAmplifier amplifier(Item.Amplifier amplifier) {
        UnderLoad load = amplifier.underLoad();
        Shown<Double> amperes = measured.value(load.path(), "current", load.amperes(), load.taking());
        Shown<Double> feed = measured.value(load.path(), "feed-drop", load.feedVolts(), load.taking());
        Shown<Double> ground = measured.value(load.path(), "ground-drop", load.groundVolts(), load.taking());
        copper(load, "feed", amplifier.id() + ".supply");
        copper(load, "ground", amplifier.id() + ".ground");
        return new LoadedAmplifier(load.path(), amplifier.at(), dropShare(amplifier, amperes, feed.with(ground, Double::sum)), ground,
                measured.value(load.path(), "joint-drop", load.jointVolts(), load.taking()), measured.value(load.path(), "case", load.caseCelsius(), load.taking()));
    }

    /** Least volts that the wire alone loses at the current that was read. */
    private void copper(UnderLoad load, String side, String terminal) {
        double ohms = floor.ohms(terminal);
        if (load.amperes().isGiven()) {
            double amperes = load.amperes().orElse(0.0);
            model.numbers.put(load.path() + "." + side + "-copper", amperes * ohms, Dimension.VOLTAGE, () -> Model.print(ohms, Dimension.RESISTANCE) + " x "
                    + Model.print(amperes, Dimension.CURRENT) + ", wire alone, cold, up to the first branch");
        }
    }

    /** A drop is read at whatever current flows then; where that is less than the loud programme draws, it is told at the latter. */
    private Shown<Double> dropShare(Item.Amplifier amplifier, Shown<Double> amperes, Shown<Double> volts) {
        Numbers.Figure loud = model.numbers.all().get(amplifier.path() + ".draw-loud-programme");
        double reference = model.value("drop-reference");
        return volts.with(amperes, (drop, current) -> new double[] {drop, current}).then(pair -> {
            double told = loud == null ? pair[1] : Math.max(pair[1], loud.value());
            return Shown.of(pair[0] / pair[1] * told / reference, () -> Model.print(pair[0], Dimension.VOLTAGE) + " at "
                    + Model.print(pair[1], Dimension.CURRENT) + ", told at " + Model.print(told, Dimension.CURRENT) + ", over "
                    + Model.print(reference, Dimension.VOLTAGE));
        });
    }

    private ChargedBattery battery(Item.Battery battery) {
        ChargingTest test = battery.charging();
        Shown<Double> idle = measured.value(test.path(), "idle", test.idleVolts(), test.taking());
        Shown<Double> later = measured.value(test.path(), "idle-later", test.laterVolts(), test.taking());
        Shown<Double> fast = measured.value(test.path(), "fast", test.fastVolts(), test.taking());
        Shown<Double> low = idle.with(later, Math::min).with(fast, Math::min);
        Shown<Double> high = idle.with(later, Math::max).with(fast, Math::max);
        return new ChargedBattery(test.path(), battery.at(), low, high, idle.with(later, (first, last) -> Math.max(0, first - last)),
                battery.leastChargeVolts(), battery.mostChargeVolts());
    }

    private void soak(Consumer<Fact> facts) {
        HeatSoak soak = plan.heatSoak();
        Shown<Double> joint = measured.value(soak.path(), "joint", soak.jointCelsius(), soak.taking());
        Shown<Double> air = measured.value(soak.path(), "air", soak.airCelsius(), soak.taking());
        facts.accept(new SoakedJob(soak.path(), soak.at(), soak.playSeconds(), joint.with(air, (hot, cool) -> hot - cool)));
    }

    private void listening(Consumer<Fact> facts) {
        List<String> nouns = List.of("whine with the engine's speed", "hiss with nothing playing", "thump when switched on or off",
                "echo in a call", "rattle at a low tone");
        List<Listening.Heard> all = plan.listening().all();
        for (int i = 0; i < all.size(); i++) {
            Listening.Heard heard = all.get(i);
            Shown<Attestation> word = heard.word();
            facts.accept(new ListenedFor(heard.path(), heard.at(), nouns.get(i), heard.result(), word));
        }
    }
}
