package bayproof.figure;

import bayproof.units.Dimension;
import java.util.List;

/**
 * A value that a figure is worked out from.
 *
 * @param name      its name before the equals sign
 * @param kind      how it is written
 * @param dimension what a quantity measures; null for other kinds
 * @param words     words that may stand there; empty for other kinds
 * @param otherwise text that stands for it where it is left out; null where it may not be, empty where nothing stands for it
 * @param says      what it is, a noun phrase
 */
public record Input(String name, Kind kind, Dimension dimension, List<String> words, String otherwise, String says) {

    /** How a value is written. */
    public enum Kind {
        /** A number with its unit. */
        QUANTITY,
        /** One or more of them, with commas between. */
        QUANTITIES,
        /** A whole number without a unit. */
        COUNT,
        /** A plain number above zero without a unit. */
        NUMBER,
        /** A cable size. */
        SIZE,
        /** A word of a list. */
        WORD,
        /** Voice coils in series and in parallel. */
        NET
    }

    static Input quantity(String name, Dimension dimension, String says) {
        return new Input(name, Kind.QUANTITY, dimension, List.of(), null, says);
    }

    static Input quantities(String name, Dimension dimension, String says) {
        return new Input(name, Kind.QUANTITIES, dimension, List.of(), null, says);
    }

    static Input count(String name, String says) {
        return new Input(name, Kind.COUNT, null, List.of(), null, says);
    }

    static Input number(String name, String says) {
        return new Input(name, Kind.NUMBER, null, List.of(), null, says);
    }

    static Input size(String name, String says) {
        return new Input(name, Kind.SIZE, null, List.of(), null, says);
    }

    static Input word(String name, List<String> words, String says) {
        return new Input(name, Kind.WORD, null, words, null, says);
    }

    static Input yesNo(String name, String says) {
        return word(name, List.of("yes", "no"), says);
    }

    static Input net(String says) {
        return new Input("net", Kind.NET, null, List.of(), null, says);
    }

    /** The same, with a text that stands for it where it is left out. */
    Input or(String text) {
        return new Input(name, kind, dimension, words, text, says);
    }

    /** The same; it may be left out, and nothing stands for it then. */
    Input optional() {
        return or("");
    }

    public boolean needed() {
        return otherwise == null;
    }

    /** How it is written, for help. */
    public String written() {
        return switch (kind) {
            case QUANTITY -> dimension.noun() + " such as " + dimension.examples();
            case QUANTITIES -> dimension.noun() + " such as " + dimension.examples() + ", or several with commas between";
            case COUNT -> "a whole number such as \"4\"";
            case NUMBER -> "a number such as \"0.45\"";
            case SIZE -> "a cable size such as \"4 AWG\" or \"25 mm2\"";
            case WORD -> "one of " + String.join(", ", words);
            case NET -> "voice coils such as \"4 ohm + 4 ohm | 4 ohm + 4 ohm\" (+ in series, | in parallel; \"4 ohm behind 4.7 uF\" is fed through a capacitor)";
        };
    }
}
