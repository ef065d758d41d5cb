package bayproof.facts;

import bayproof.read.AudioInput;
import bayproof.read.AudioTable;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Vehicle;
import bayproof.solve.sound.MeasuredTones;
import bayproof.vocabulary.At;
import bayproof.vocabulary.CarriedSettings;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.FactoryOutput;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SoundChannel;
import bayproof.vocabulary.SummedChannel;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;

/** Facts about the sound that the job takes from the factory system: each output in use, and each channel made of outputs. */
final class FactorySoundFacts {
    private final Model model;
    private final Map<String, Vehicle.Output> outputs;

    FactorySoundFacts(Model model) {
        this.model = model;
        this.outputs = model.job.vehicle().outputs();
    }

    void collect(Consumer<Fact> facts) {
        Map<String, AudioInput> channels = model.job.plan().audioInputs();
        TreeSet<String> named = new TreeSet<>();
        channels.values().forEach(channel -> named.addAll(channel.of().orElse(List.of())));
        TreeSet<String> joined = new TreeSet<>();
        for (Plan.PinUse pin : model.job.plan().pins().values()) {
            if (!takesSound(pin)) {
                continue;
            }
            Shown<String> output = output(pin);
            if (output.isGiven()) {
                joined.add(output.orElse(""));
            } else {
                facts.accept(unknown(pin.path(), pin.at(), output));
            }
        }
        TreeSet<String> used = new TreeSet<>(named);
        used.addAll(joined);
        used.stream().filter(outputs::containsKey).forEach(id -> facts.accept(output(outputs.get(id))));
        for (AudioInput channel : channels.values()) {
            facts.accept(channel(channel, joined));
            facts.accept(summed(channel));
            facts.accept(carried(channel));
        }
        joined.stream().filter(id -> !named.contains(id) && outputs.containsKey(id)).forEach(id -> {
            Vehicle.Output output = outputs.get(id);
            Shown<Boolean> open = missing("audio-inputs", "what the sound of " + id + " is used as", output.at());
            facts.accept(new SoundChannel(output.path(), output.at(), open, open, open.map(x -> 0.0), open, open.map(x -> ""), open, open));
        });
    }

    /** Whether a pin feeds a device with sound; a speaker on a factory plug takes its sound from the job. */
    private boolean takesSound(Plan.PinUse pin) {
        Item item = model.job.itemOf(pin.connectedTo().orElse(""));
        return pin.function().orElse("speaker").equals("speaker")
                && (item instanceof Item.Interface || item instanceof Item.Processor || item instanceof Item.Amplifier);
    }

    private Shown<String> output(Plan.PinUse pin) {
        Vehicle.Cavity cavity = model.job.vehicle().cavity(pin);
        return cavity != null ? cavity.output()
                : missing("connectors." + pin.id() + ".output", "output that comes out of this cavity", pin.at());
    }

    // outputs

    private static FactoryOutput unknown(String path, At at, Shown<String> output) {
        return new FactoryOutput(path, at, output, output, output.map(x -> true), output.map(x -> true), Shown.of(""));
    }

    private FactoryOutput output(Vehicle.Output output) {
        if (!output.kind().orElse("").equals("audio")) {
            return unknown(output.path(), output.at(), missing(output.path() + ".kind", "that it is an output of the kind audio", output.at()));
        }
        AudioTable table = output.audio();
        double step = model.value("tone-step");
        Shown<MeasuredTones> bass = table.quiet().lowVolts().with(table.quiet().midVolts(), MeasuredTones::bass);
        // The low tone of a loud step gives way in an output that limits itself, and is judged apart.
        Shown<Double> uneven = bass.with(treble(table.quiet()).with(treble(table.loud()), (quiet, loud) -> Math.max(quiet.unevenness(), loud.unevenness())),
                (low, above) -> Math.max(low.unevenness(), above));
        // Bass that keeps its distance to the middle at both volume steps does not give way.
        Shown<Double> lost = bass.with(table.loud().lowVolts().with(table.loud().midVolts(), MeasuredTones::bass), MeasuredTones::bassLost);
        return new FactoryOutput(output.path(), output.at(), output.from(), output.audio().carries(),
                table.shaped().with(uneven, (shaped, ratio) -> shaped == (ratio > step)),
                table.limitsItself().with(lost, (limits, ratio) -> limits == (ratio > step)),
                uneven.with(lost, (tones, steps) -> String.format(Locale.ROOT, "tones %.2f times apart, bass %.2f times weaker when loud", tones, steps)));
    }

    private static Shown<MeasuredTones> treble(AudioTable.Tones tones) {
        return tones.midVolts().with(tones.highVolts(), MeasuredTones::treble);
    }

    // channels

    private SoundChannel channel(AudioInput channel, TreeSet<String> joined) {
        Shown<List<AudioTable>> parts = parts(channel);
        Shown<List<String>> polarities = all(parts, AudioTable::polarity);
        Shown<List<Double>> delays = all(parts, AudioTable::delaySeconds);
        Shown<TreeSet<String>> bands = all(parts, AudioTable::carries).map(TreeSet::new);
        return new SoundChannel(channel.path(), channel.at(), parts.map(tables -> tables.size() > 1),
                polarities.map(words -> words.stream().distinct().count() == 1),
                delays.map(MeasuredTones::delaySpread),
                bands.with(channel.expects(), FactorySoundFacts::covers).with(brought(channel, joined), (covers, yes) -> covers),
                bands.with(channel.expects(), (have, wanted) -> String.join(" and ", have) + " for " + wanted), flat(channel, parts), steady(channel, parts));
    }

    private Shown<List<AudioTable>> parts(AudioInput channel) {
        return channel.of().then(ids -> {
            List<AudioTable> tables = new ArrayList<>();
            for (String id : ids) {
                tables.add(outputs.get(id).audio());
            }
            return tables.isEmpty() ? missing(channel.path() + ".of", "the outputs it is made of", channel.of().atOr(channel.at())) : Shown.of(tables);
        });
    }

    /** How far apart the gains lie that the outputs of a channel are summed with. */
    private SummedChannel summed(AudioInput channel) {
        Shown<Double> apart = channel.of().then(ids -> {
            Shown<double[]> ends = Shown.of(new double[] {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY});
            for (String id : ids) {
                Shown<Double> gain = channel.sumGains().containsKey(id) ? channel.sumGains().get(id)
                        : missing(channel.path() + ".sum-gain." + id, "gain that " + id + " is summed with", channel.at());
                ends = ends.with(gain, (both, one) -> new double[] {Math.min(both[0], one), Math.max(both[1], one)});
            }
            return ends.map(both -> both[1] - both[0]);
        });
        return new SummedChannel(channel.path(), channel.at(), channel.of().map(ids -> ids.size() > 1), apart);
    }

    /** Settings made on a signal of this job fit it; those from elsewhere fit a flat one, if they were made on one. */
    private CarriedSettings carried(AudioInput channel) {
        Shown<Boolean> flat = flat(channel, parts(channel));
        Shown<Boolean> fits = channel.settingsMadeOn().then(made -> switch (made) {
            case "this-output" -> Shown.of(true);
            case "flat" -> flat;
            default -> Shown.of(false);
        });
        return new CarriedSettings(channel.path(), channel.at(), Shown.of(!model.job.plan().settings().isEmpty()), fits,
                channel.settingsMadeOn().with(flat, (made, now) -> "made on: " + made + "; now: " + (now ? "flat" : "shaped")));
    }

    /** Whether pins of the job bring every output that the channel is made of. */
    private static Shown<Boolean> brought(AudioInput channel, TreeSet<String> joined) {
        return channel.of().then(ids -> {
            List<Need> needs = ids.stream().filter(id -> !joined.contains(id))
                    .map(id -> new Need("pins", "the pins that bring " + id + " to the job", channel.at())).toList();
            return needs.isEmpty() ? Shown.of(true) : Shown.missing(needs);
        });
    }

    private static boolean covers(TreeSet<String> bands, String wanted) {
        return bands.contains("full") || bands.contains(wanted) || wanted.equals("full") && bands.contains("low") && bands.contains("high");
    }

    private Shown<Boolean> flat(AudioInput channel, Shown<List<AudioTable>> parts) {
        Shown<Boolean> corrected = model.job.itemsOf(Item.Processor.class).isEmpty() ? Shown.of(false)
                : channel.correctedBy().map(id -> model.job.items().get(id) instanceof Item.Processor);
        return Kleene.or(none(parts, AudioTable::shaped), corrected);
    }

    private static Shown<Boolean> steady(AudioInput channel, Shown<List<AudioTable>> parts) {
        return Kleene.or(none(parts, AudioTable::limitsItself), channel.setAtVolume().map(volume -> !volume.equals("none")));
    }

    private static Shown<Boolean> none(Shown<List<AudioTable>> parts, Function<AudioTable, Shown<Boolean>> statement) {
        return parts.then(tables -> {
            Shown<Boolean> none = Shown.of(true);
            for (AudioTable table : tables) {
                none = Kleene.and(none, statement.apply(table).map(yes -> !yes));
            }
            return none;
        });
    }

    private static <T> Shown<List<T>> all(Shown<List<AudioTable>> parts, Function<AudioTable, Shown<T>> value) {
        return parts.then(tables -> {
            Shown<List<T>> all = Shown.of(List.of());
            for (AudioTable table : tables) {
                all = all.with(value.apply(table), (before, one) -> {
                    List<T> more = new ArrayList<>(before);
                    more.add(one);
                    return more;
                });
            }
            return all;
        });
    }

    private static <T> Shown<T> missing(String path, String ask, At at) {
        return Shown.missing(new Need(path, ask, at));
    }
}
