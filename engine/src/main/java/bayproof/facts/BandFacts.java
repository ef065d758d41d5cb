package bayproof.facts;

import bayproof.facts.Outputs.Output;
import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Setting;
import bayproof.solve.acoustic.Band;
import bayproof.solve.acoustic.Filter;
import bayproof.solve.acoustic.Filter.Pass;
import bayproof.solve.acoustic.ProgrammePower;
import bayproof.solve.acoustic.ThirdOctaves;
import bayproof.solve.sound.Levels;
import bayproof.solve.sound.SpeakerLoads;
import bayproof.solve.sound.SpeakerNet;
import bayproof.units.Dimension;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.ProgrammeHeat;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SlopedSpeaker;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** Facts about what the filters of its band let through to each speaker: of a programme, and at its resonance. */
final class BandFacts {
    private static final double ROUNDED = 1e6;

    private final Model model;
    private final SpeakerNets nets;
    private final Outputs outputs;
    private final Bands bands;

    BandFacts(Model model, SpeakerNets nets, Outputs outputs) {
        this.model = model;
        this.nets = nets;
        this.outputs = outputs;
        this.bands = new Bands(model, outputs);
    }

    void collect(Consumer<Fact> facts) {
        outputs.all().forEach(this::tellBand);
        for (Item.Speaker speaker : model.job.itemsOf(Item.Speaker.class)) {
            // That a speaker hangs on nothing is said once, where loads are.
            if (!outputs.of(speaker).isEmpty()) {
                facts.accept(heat(speaker));
                facts.accept(new SlopedSpeaker(speaker.path(), speaker.at(), outputs.isSmall(speaker), fall(speaker), steeper(speaker)));
            }
        }
    }

    private static double rounded(double value) {
        return Math.rint(value * ROUNDED) / ROUNDED;
    }

    private static String watts(double watts) {
        return Model.print(watts, Dimension.POWER);
    }

    // programme

    /** What the filters of an output let through of a programme, for the sheet. */
    private void tellBand(Output output) {
        Gathered gathered = new Gathered();
        Band band = new Band(bands.filters(output.wiring().id(), null, gathered), false, 0);
        if (gathered.complete()) {
            String path = "settings." + output.wiring().id() + ".";
            model.numbers.put(path + "programme-share", ProgrammePower.through(passing(band)), Dimension.RATIO, () -> "third octaves of a programme (IEC 60268-1 table II) behind the planned filters");
            double low = band.cornerHertz(Pass.HIGH);
            double high = band.cornerHertz(Pass.LOW);
            if (low > 0) {
                model.numbers.put(path + "band-from", low, Dimension.FREQUENCY, () -> "corner of all high-passes on the way");
            }
            if (!Double.isInfinite(high)) {
                model.numbers.put(path + "band-to", high, Dimension.FREQUENCY, () -> "corner of all low-passes on the way");
            }
        }
    }

    /** Share of the power that a band lets through at a frequency. */
    private static DoubleUnaryOperator passing(Band band) {
        return hertz -> Math.pow(band.at(hertz).magnitude(), 2);
    }

    private ProgrammeHeat heat(Item.Speaker speaker) {
        Gathered gathered = new Gathered();
        double loud = Level.LOUD_PROGRAMME.share(model);
        double reaches = 0;
        for (Output output : outputs.of(speaker)) {
            reaches += loud * programmeWatts(speaker, output, gathered);
        }
        double rating = gathered.number(speaker.data().ratedWatts());
        double power = reaches;
        Shown<Double> share = gathered.then(() -> rounded(power / rating), () -> watts(power) + " of " + watts(rating) + "; a loud programme is "
                + Model.print(loud, Dimension.RATIO) + " of full sine, spread as in IEC 60268-1 table II" + (isBass(speaker) ? "; all of it may lie in the band of this one" : ""));
        if (share.isGiven()) {
            model.numbers.put(speaker.path() + ".programme-power", power, Dimension.POWER, () -> "a loud programme behind the planned filters");
        }
        return new ProgrammeHeat(speaker.path(), speaker.at(), Shown.of(outputs.isDirect(speaker)), share,
                "what reaches the speaker of a loud programme, as a share of its rating", limiter(speaker));
    }

    /** The table is one of 1985: what plays the lowest band may get a whole programme of today. */
    private boolean isBass(Item.Speaker speaker) {
        return model.limit("programme-bass").words().contains(speaker.data().plays().orElse(""));
    }

    /** Power that reaches a speaker while a programme of the output's own full-sine power goes in before the filters. */
    private double programmeWatts(Item.Speaker speaker, Output output, Gathered gathered) {
        if (output.wiring().net().isGiven() && !output.speakers().contains(speaker.id())) {
            return 0;
        }
        gathered.one(speaker.data().plays(), "");
        SpeakerNet net = gathered.one(output.wiring().net().then(text -> nets.nominal(CoilNet.parse(text))), null);
        double volts = gathered.number(outputs.cappedVolts(output));
        DoubleUnaryOperator passing = passing(new Band(bands.filters(output.wiring().id(), null, gathered), false, 0));
        if (net == null || Double.isNaN(volts)) {
            return Double.NaN;
        }
        DoubleUnaryOperator reaches = hertz -> passing.applyAsDouble(hertz) * Outputs.wattsOf(net.wattsAt(hertz, volts), speaker);
        return isBass(speaker) ? IntStream.range(0, ThirdOctaves.NOMINAL_HERTZ.size()).mapToDouble(i -> reaches.applyAsDouble(ThirdOctaves.exactHertz(i))).max().orElse(0)
                : ProgrammePower.through(reaches);
    }

    private Knob limiter(Item.Speaker speaker) {
        Output output = outputs.of(speaker).get(0);
        Shown<Double> now = outputs.cappedVolts(output).with(outputs.loadOhms(output), Levels::watts);
        return outputs.of(speaker).size() > 1 || !outputs.isDirect(speaker) || outputs.setting(output.wiring().id()) == null || !now.isGiven() ? null
                : Ladders.knob(() -> DriverFacts.wattsBelow(now.orElse(0.0)), "settings", output.wiring().id(), "limiter");
    }

    // resonance

    private Shown<Double> fall(Item.Speaker speaker) {
        Gathered gathered = new Gathered();
        double resonance = gathered.number(speaker.driver().resonanceHertz());
        double least = Double.POSITIVE_INFINITY;
        for (Output output : outputs.of(speaker)) {
            double farads = speaker.data().capacitorFarads().orElse(0.0);
            List<Filter> filters = bands.filters(output.wiring().id(), farads > 0 ? null : Pass.HIGH, gathered);
            double fallen = Double.isNaN(resonance) ? Double.NaN : -new Band(filters, false, 0).at(resonance).decibels() + capacitorFall(speaker, farads, resonance, gathered);
            least = Math.min(least, fallen);
        }
        double found = least;
        return gathered.then(() -> rounded(found), () -> "at " + Model.print(resonance, Dimension.FREQUENCY));
    }

    private double capacitorFall(Item.Speaker speaker, double farads, double hertz, Gathered gathered) {
        if (farads == 0) {
            return 0;
        }
        double ohms = gathered.number(speaker.coils().isEmpty() ? Shown.missing(new Need(speaker.path() + ".coils", "its voice coils", speaker.at()))
                : nets.nominalOhms(speaker.id() + "." + speaker.coils().keySet().iterator().next()));
        return Double.isNaN(ohms) ? Double.NaN : -new Filter(Filter.Shape.BUTTERWORTH, 1, Pass.HIGH, SpeakerLoads.cornerHertz(ohms, farads)).at(hertz).decibels();
    }

    private Knob steeper(Item.Speaker speaker) {
        Setting setting = outputs.of(speaker).size() == 1 ? outputs.setting(outputs.of(speaker).get(0).wiring().id()) : null;
        if (setting == null || !setting.highPass().order().isGiven() || !setting.highPass().shape().isGiven()) {
            return null;
        }
        int planned = setting.highPass().order().orElse(0);
        Filter.Shape shape = Bands.shape(setting.highPass().shape().orElse(""));
        return Ladders.knob(() -> IntStream.rangeClosed(planned + 1, Filter.MOST_ORDER).filter(order -> Filter.exists(shape, order)).mapToObj(String::valueOf).toList(),
                "settings", setting.id(), "high-pass", "order");
    }
}
