package bayproof.demand;

import java.util.List;
import java.util.Objects;

/**
 * A named figure or list of the trade, with its source. Numbers are SI.
 *
 * @param name    permanent name, such as {@code fuse-distance-bare}
 * @param unit    SI unit symbol of the numbers ({@code m, A, V, ohm, degC, Hz, s, W, 1}), {@code 1} for a plain ratio, null for words
 * @param kind    what the figure is
 * @param steps   for at-most and at-least: the figures with the weight of crossing each, the one that must hold first
 * @param low     lower end of a between or a window
 * @param high    upper end of a between or a window
 * @param words   allowed or refused words
 * @param says    what the figure is about, one sentence without a period
 * @param source  published source and clause, or "common practice, no source"
 * @param state   {@code seen}, {@code from memory} or {@code common practice}
 * @param others  what other sources say
 * @param changed why a shop uses a figure of its own; null when the default is in force
 */
public record Limit(String name, String unit, Kind kind, List<Step> steps, double low, double high, List<String> words,
                    String says, String source, String state, List<Other> others, Change changed) {

    /** What a limit is. */
    public enum Kind { AT_MOST, AT_LEAST, BETWEEN, ONE_OF, NONE_OF, WINDOW, VALUE, WORDS }

    /**
     * One figure of a graded limit.
     *
     * @param weight what crossing it means; null where the rule's own weight counts
     * @param value  the figure, SI
     */
    public record Step(Weight weight, double value) {
    }

    /** Another source's figure, as text with its unit. */
    public record Other(String value, String source) {
    }

    /**
     * A shop's own figure in force instead of the default.
     *
     * @param was    the default, as text
     * @param reason the shop's reason
     * @param looser whether it asks for less than the default does
     */
    public record Change(String was, String reason, boolean looser) {
    }

    public Limit {
        Objects.requireNonNull(name);
        steps = List.copyOf(steps);
        words = List.copyOf(words);
        others = List.copyOf(others);
    }

    /** The single figure of a limit that has one. */
    public double value() {
        if (steps.size() != 1) {
            throw new IllegalStateException("limit " + name + " does not have exactly one figure");
        }
        return steps.get(0).value();
    }

    /** The same limit with other figures, for trying what a change would do. */
    public Limit withSteps(List<Step> otherSteps) {
        return new Limit(name, unit, kind, otherSteps, low, high, words, says, source, state, others, changed);
    }

    /** The same limit with other ends. */
    public Limit withEnds(double otherLow, double otherHigh) {
        return new Limit(name, unit, kind, steps, otherLow, otherHigh, words, says, source, state, others, changed);
    }
}
