package bayproof.demand;

import bayproof.vocabulary.Shown;

/** What a value is held against. */
public sealed interface Bound {

    /** A limit of the trade, by name. */
    record Named(String limit) implements Bound {
    }

    /** One of two limits, chosen by a fact that may be missing. */
    record Chosen(Shown<Boolean> fact, String whenTrue, String whenFalse) implements Bound {
    }

    /** A limit whose name depends on a fact that may be missing. */
    record NamedBy(Shown<String> limit) implements Bound {
    }

    /**
     * A figure of the equipment itself, such as an amplifier's rated minimum load.
     *
     * @param value the figure, SI
     * @param unit  SI unit symbol
     * @param name  what the figure is, as a short noun phrase
     */
    record Own(Shown<Double> value, String unit, String name) implements Bound {
    }
}
