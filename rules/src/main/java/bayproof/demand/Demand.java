package bayproof.demand;

import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;

/**
 * What a rule asks of one subject: conditions that put it outside the rule, parts joined by "and", and how to put it
 * right. A rule's consequence builds it; the engine turns it into a verdict once all rules have spoken.
 */
public final class Demand {

    /**
     * A condition: where it is false the rule does not apply.
     *
     * @param outside why it does not apply then, as a clause
     */
    public record Condition(Shown<Boolean> fact, String outside) {
    }

    /**
     * One way to put the subject right.
     *
     * @param say  sentence in bay words; {@code {value}} is the changed value, {@code {limit}} and {@code {measured}} the numbers
     * @param knob the planned value to change; null for a sentence alone
     */
    public record Way(String say, Knob knob) {
    }

    private final String rule;
    private final Fact fact;
    private final List<Condition> conditions = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<Way> ways = new ArrayList<>();
    private Weight weight;
    private boolean hiddenBreaks;
    private String open;

    Demand(String rule, Fact fact) {
        this.rule = rule;
        this.fact = fact;
    }

    /** States what lies outside the demand altogether: where {@code fact} is false the rule does not apply. */
    public Demand when(Shown<Boolean> condition, String outside) {
        conditions.add(new Condition(condition, outside));
        return this;
    }

    /** Gives this subject a weight other than the rule's own; never a heavier one. */
    public Demand weighing(Weight subjectWeight) {
        weight = subjectWeight;
        return this;
    }

    /** Makes the answer "cannot be seen" break the demand; without this it leaves it unshown. */
    public Demand brokenIfHidden() {
        hiddenBreaks = true;
        return this;
    }

    /** Starts a part about a number. */
    public Number number(String what, Shown<Double> value) {
        start(what);
        return new Number(what, value);
    }

    /** Starts a part about a word. */
    public Word word(String what, Shown<String> value) {
        start(what);
        return new Word(what, value);
    }

    /** Demands that a statement is true; {@code seen} is what was found, for the report. */
    public Demand isTrue(String what, Shown<Boolean> value, Shown<String> seen) {
        return close(new Part.True(what, value, seen));
    }

    /** Demands that a statement is true. */
    public Demand isTrue(String what, Shown<Boolean> value) {
        return isTrue(what, value, Shown.of(""));
    }

    /** Demands that a thing is there. */
    public Demand isPresent(String what, Shown<?> value) {
        return close(new Part.Present(what, value));
    }

    /** Demands that somebody vouches for a thing. */
    public Demand isAttested(String what, Shown<Attestation> value) {
        return close(new Part.Attested(what, value));
    }

    /** A way to put it right by changing one planned value. Ways are tried in the order given. */
    public Demand putRight(String say, Knob knob) {
        ways.add(new Way(say, knob));
        return this;
    }

    /** A way to put it right that no single planned value decides. */
    public Demand putRight(String say) {
        ways.add(new Way(say, null));
        return this;
    }

    private void start(String what) {
        if (open != null) {
            throw new IllegalStateException("a demand about \"" + open + "\" was never finished");
        }
        open = what;
    }

    private Demand close(Part part) {
        open = null;
        parts.add(part);
        return this;
    }

    public String rule() {
        return rule;
    }

    public Fact fact() {
        return fact;
    }

    public List<Condition> conditions() {
        return List.copyOf(conditions);
    }

    public List<Part> parts() {
        return List.copyOf(parts);
    }

    public List<Way> ways() {
        return List.copyOf(ways);
    }

    /** The subject's own weight, or null where the rule's counts. */
    public Weight weight() {
        return weight;
    }

    public boolean hiddenBreaks() {
        return hiddenBreaks;
    }

    /** Whether every part that was started was also finished, and there is at least one. */
    public boolean finished() {
        return open == null && !parts.isEmpty();
    }

    /** A started part about a number. */
    public final class Number {
        private final String what;
        private final Shown<Double> value;

        private Number(String what, Shown<Double> value) {
            this.what = what;
            this.value = value;
        }

        public Demand isAtMost(String limit) {
            return isAtMost(new Bound.Named(limit));
        }

        public Demand isAtMost(Bound bound) {
            return close(new Part.Numeric(what, value, Limit.Kind.AT_MOST, bound));
        }

        public Demand isAtLeast(String limit) {
            return isAtLeast(new Bound.Named(limit));
        }

        public Demand isAtLeast(Bound bound) {
            return close(new Part.Numeric(what, value, Limit.Kind.AT_LEAST, bound));
        }

        public Demand isBetween(Bound bound) {
            return close(new Part.Numeric(what, value, Limit.Kind.BETWEEN, bound));
        }
    }

    /** A started part about a word. */
    public final class Word {
        private final String what;
        private final Shown<String> value;

        private Word(String what, Shown<String> value) {
            this.what = what;
            this.value = value;
        }

        /** The word must stand in the named list, or must not, as the list itself says. */
        public Demand fits(String list) {
            return close(new Part.Worded(what, value, list));
        }
    }
}
