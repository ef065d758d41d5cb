package bayproof.figure;

import bayproof.demand.Limits;
import bayproof.units.Dimension;
import java.util.List;

/**
 * A number that a rule, a sheet or a picture uses.
 *
 * @param name    its name
 * @param says    what it is, a noun phrase
 * @param inputs  what it is worked out from
 * @param example values that a person may give
 * @param source  where the formula comes from
 * @param sum     works it out; may say that the values do not fit together
 */
public record NumberFigure(String name, String says, List<Input> inputs, String example, String source, Sum sum) implements Figure {

    /** The sum itself, made of the functions that the engine uses. */
    @FunctionalInterface
    public interface Sum {
        Worked of(Given given) throws FigureMistake;
    }

    /**
     * One value of an answer.
     *
     * @param name      what it is; empty where the figure itself is
     * @param si        the value
     * @param dimension what it measures; null for a plain number
     */
    public record Value(String name, double si, Dimension dimension) {
    }

    /**
     * An answer.
     *
     * @param values      its values
     * @param remark      what else there is to say, a sentence; may be empty
     * @param calculation the formula with its numbers put in
     */
    public record Worked(List<Value> values, String remark, String calculation) {
        static Worked of(double si, Dimension dimension, String calculation) {
            return new Worked(List.of(new Value("", si, dimension)), "", calculation);
        }
    }

    public NumberFigure {
        inputs = List.copyOf(inputs);
    }

    /**
     * Works it out.
     *
     * @param words  {@code name=value}
     * @param limits figures in force
     * @throws FigureMistake when it cannot be worked out from these
     */
    public Answer ask(List<String> words, Limits limits) throws FigureMistake {
        Given given = Given.read(this, words, limits);
        Worked worked = sum.of(given);
        for (Value value : worked.values()) {
            if (!Double.isFinite(value.si())) {
                throw noNumber();
            }
        }
        return new Answer(given, worked);
    }

    /** What was given and what came out. */
    public record Answer(Given given, Worked worked) {
    }
}
