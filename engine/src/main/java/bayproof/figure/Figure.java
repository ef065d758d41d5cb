package bayproof.figure;

import java.util.List;

/** Something that can be worked out by hand. */
public sealed interface Figure permits NumberFigure, RuleFigure {
    String name();

    /** The values it is worked out from, those that are needed first. */
    List<Input> inputs();

    /** Values that a person may give, {@code name=value} behind one another, with quotes where a shell needs them. */
    String example();

    /** The whole command of the example. */
    default String command() {
        return "bayproof figure " + name() + " " + example();
    }

    /** What is said where the values lead to nothing. */
    default FigureMistake noNumber() {
        return FigureMistake.of("These values give no number for " + name() + ".", "Such as: " + command());
    }
}
