package bayproof.facts;

import bayproof.facts.Outputs.Output;
import bayproof.read.Item;
import bayproof.read.Setting;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.GuardedOutput;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.MappedOutput;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** Facts about which output drives what under which name, and about what guards a tweeter until the settings are made. */
final class ChannelMapFacts {
    private final Model model;
    private final Outputs outputs;
    private final SignalFacts signals;

    ChannelMapFacts(Model model, Outputs outputs, SignalFacts signals) {
        this.model = model;
        this.outputs = outputs;
        this.signals = signals;
    }

    void collect(Consumer<Fact> facts) {
        for (Output output : outputs.all()) {
            facts.accept(mapped(output));
            if (!outputs.speakersOf(output).isEmpty()) {
                facts.accept(guarded(output));
            }
        }
    }

    // the map

    private MappedOutput mapped(Output output) {
        String terminal = output.wiring().id();
        Shown<String> name = name(terminal);
        String source = signals.sourceOf(output);
        boolean processed = source != null && model.job.itemOf(source) instanceof Item.Processor;
        Shown<String> before = processed ? name(source) : name;
        Shown<Boolean> same = processed ? name.with(before, String::equals) : Shown.of(true);
        return new MappedOutput(output.wiring().path(), output.wiring().at(), output.wiring().net(), own(output, name), same, processed
                ? name.with(before, (here, there) -> terminal + " is \"" + here + "\", " + source + " is \"" + there + "\"") : Shown.of(name.orElse("no processor before it")));
    }

    private Shown<String> name(String terminal) {
        Setting setting = outputs.setting(terminal);
        return outputs.set(terminal, setting == null ? null : setting.name(), "name", "name of " + terminal + " on its label and in the device's own list")
                .map(text -> text.strip().toLowerCase(Locale.ROOT));
    }

    /** Whether no other output has its name; one without a name has no other's. */
    private Shown<Boolean> own(Output output, Shown<String> name) {
        return Shown.of(!name.isGiven() || outputs.all().stream().filter(other -> other != output)
                .noneMatch(other -> name(other.wiring().id()).orElse("").equals(name.orElse(""))));
    }

    // tweeters

    private GuardedOutput guarded(Output output) {
        List<Item.Speaker> speakers = outputs.speakersOf(output);
        Shown<Boolean> tweeter = Shown.of(false);
        boolean fitted = true;
        for (Item.Speaker speaker : speakers) {
            Shown<Boolean> high = speaker.data().plays().map("tweeter"::equals);
            tweeter = Kleene.or(tweeter, high);
            fitted &= Kleene.is(high, false) || speaker.data().capacitorFarads().isGiven();
        }
        // A capacitor that belongs to the speaker stays there for good.
        Shown<String> guard = fitted ? Shown.of("capacitor") : output.wiring().guard();
        return new GuardedOutput(output.wiring().path(), output.wiring().at(), tweeter, guard);
    }
}
