package bayproof.facts;

import bayproof.facts.Outputs.Output;
import bayproof.read.Item;
import bayproof.read.Setting;
import bayproof.solve.acoustic.Band;
import bayproof.solve.acoustic.Filter;
import bayproof.solve.acoustic.Filter.Pass;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;

/** The bands that the outputs of a job play: the filters set and those before, which way round, and how late. */
final class Bands {
    private final Model model;
    private final Outputs outputs;

    Bands(Model model, Outputs outputs) {
        this.model = model;
        this.outputs = outputs;
    }

    static Filter.Shape shape(String word) {
        return word.equals("butterworth") ? Filter.Shape.BUTTERWORTH : Filter.Shape.LINKWITZ_RILEY;
    }

    static boolean isWritten(Setting.Filter filter) {
        return filter.cornerHertz().isGiven() || filter.shape().isGiven() || filter.order().isGiven();
    }

    /** A filter that must be there. */
    private static void must(Setting.Filter filter, Pass pass, Gathered gathered, List<Filter> filters) {
        double corner = gathered.number(filter.cornerHertz());
        String shape = gathered.one(filter.shape(), "");
        int order = gathered.one(filter.order(), 0);
        if (!filter.cornerHertz().isGiven() || !filter.shape().isGiven() || !filter.order().isGiven()) {
            return;
        }
        if (Filter.exists(shape(shape), order)) {
            filters.add(new Filter(shape(shape), order, pass, corner));
        } else {
            gathered.need(new Need(filter.path() + ".order", "an order that a " + shape + " filter has", filter.order().atOr(filter.at())));
        }
    }

    private static void may(Setting.Filter filter, Pass pass, Gathered gathered, List<Filter> filters) {
        if (isWritten(filter)) {
            must(filter, pass, gathered, filters);
        }
    }

    /** What is set at a terminal; where nothing is written that is asked for. */
    private Setting setting(String terminal, String key, String ask, Gathered gathered) {
        Setting setting = outputs.setting(terminal);
        if (setting == null) {
            gathered.need(new Need("settings." + terminal + "." + key, ask, model.job.planAt()));
        }
        return setting;
    }

    /** Every filter on the way to an output that is written; one of the output's own may be asked for. */
    List<Filter> filters(String terminal, Pass needed, Gathered gathered) {
        List<Filter> filters = new ArrayList<>();
        Setting setting = needed == null ? outputs.setting(terminal)
                : setting(terminal, needed == Pass.HIGH ? "high-pass.corner" : "low-pass.corner", "corner of the filter", gathered);
        if (setting == null) {
            return filters;
        }
        boolean before = isWritten(needed == Pass.HIGH ? setting.before().highPass() : setting.before().lowPass());
        for (Pass pass : Pass.values()) {
            Setting.Filter own = pass == Pass.HIGH ? setting.highPass() : setting.lowPass();
            if (pass == needed && !before) {
                must(own, pass, gathered, filters);
            } else {
                may(own, pass, gathered, filters);
            }
            may(pass == Pass.HIGH ? setting.before().highPass() : setting.before().lowPass(), pass, gathered, filters);
        }
        return filters;
    }

    /** Whether the output and the leads together turn the speaker round. */
    boolean inverted(Output output, Gathered gathered) {
        Setting setting = setting(output.wiring().id(), "inverted", "whether the output is set to invert its signal", gathered);
        boolean set = setting != null && gathered.one(setting.inverted(), false);
        return set != gathered.one(output.wiring().polarity(), "as-marked").equals("reversed");
    }

    /** Delay that is set. */
    Shown<Double> delaySeconds(String terminal) {
        Setting setting = outputs.setting(terminal);
        return outputs.set(terminal, setting == null ? null : setting.delaySeconds(), "delay", "delay set at the output");
    }

    /** Way from the speakers of an output to the listener, the longest of them. */
    Shown<Double> distanceMetres(Output output) {
        List<Item.Speaker> speakers = outputs.speakersOf(output);
        if (speakers.isEmpty()) {
            return Shown.missing(new Need(output.wiring().path() + ".net", "the speakers on " + output.wiring().id(), output.wiring().at()));
        }
        Shown<Double> longest = Shown.of(0.0);
        for (Item.Speaker speaker : speakers) {
            longest = longest.with(speaker.distanceMetres(), Math::max);
        }
        return longest;
    }

    /** The band of an output as the listener hears it. */
    Band band(Output output, Pass needed, double metresPerSecond, Gathered gathered) {
        double late = gathered.number(delaySeconds(output.wiring().id())) + gathered.number(distanceMetres(output)) / metresPerSecond;
        return new Band(filters(output.wiring().id(), needed, gathered), inverted(output, gathered), late);
    }
}
