package bayproof.figure;

import bayproof.demand.Limits;
import bayproof.judge.Court;
import bayproof.judge.Judgment;
import bayproof.judge.Verdict;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Fact;
import java.util.Comparator;
import java.util.List;

/**
 * A rule asked with values instead of a plan. The compiled rule itself speaks: its limit, its weight, its verdict.
 *
 * @param name    the rule's id
 * @param inputs  what its sum is worked out from
 * @param example values that a person may give
 * @param sum     works the sum out and puts it into the fact that the rule speaks about
 */
public record RuleFigure(String name, List<Input> inputs, String example, Sum sum) implements Figure {
    /** Subject of every fact made here. */
    static final String SUBJECT = "by-hand";
    static final At AT = new At(SUBJECT, 1, 1);

    /** The sum, made of the functions that the engine uses. */
    @FunctionalInterface
    public interface Sum {
        Asked of(Given given) throws FigureMistake;
    }

    /**
     * A fact with its sum worked out.
     *
     * @param calculation the formula with its numbers put in; empty where the value is given as it is
     */
    public record Asked(Fact fact, String calculation) {
        static Asked of(Fact fact) {
            return new Asked(fact, "");
        }
    }

    /**
     * What the rule says.
     *
     * @param verdict     the verdict; null where the rule does not apply
     * @param outside     why it does not apply; null where it does
     * @param calculation the formula with its numbers put in; may be empty
     */
    public record Answer(Given given, Verdict verdict, String outside, String calculation) {
    }

    public RuleFigure {
        inputs = inputs.stream().sorted(Comparator.comparing(Input::needed).reversed()).toList();
    }

    /**
     * Asks the rule.
     *
     * @param words  {@code name=value}
     * @param limits figures in force
     * @throws FigureMistake when the sum cannot be worked out from these
     */
    public Answer ask(List<String> words, Limits limits) throws FigureMistake {
        Given given = Given.read(this, words, limits);
        Asked asked;
        try {
            asked = sum.of(given);
        } catch (IllegalArgumentException e) {
            // No air, no load, no frequency: what the solver refuses.
            throw noNumber();
        }
        Object said = Court.judge(name, asked.fact(), limits);
        if (said instanceof Verdict verdict && verdict.measured() != null && verdict.measured().word() == null && !Double.isFinite(verdict.measured().number())) {
            throw noNumber();
        }
        return said instanceof Verdict verdict ? new Answer(given, verdict, null, asked.calculation())
                : new Answer(given, null, ((Judgment.NotApplicable) said).reason(), asked.calculation());
    }
}
