package bayproof.facts;

import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import bayproof.vocabulary.Windows;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/** Works a value out at both corners of its windows and says what it rests on. */
final class WindowedValue {
    /**
     * What one corner gave.
     *
     * @param value       the value; NaN where there is none
     * @param collapse    why the network has no working state; null where it has one
     * @param calculation writes the formula with its numbers put in
     */
    record Result(double value, String collapse, Supplier<String> calculation) {
        /** The same with the value moved by a share of its size. */
        Result moved(double share) {
            return plus(share * Math.abs(value));
        }

        /** The same with an amount added to the value. */
        Result plus(double amount) {
            return amount == 0 || collapse != null ? this : new Result(value + amount, null, calculation);
        }
    }

    /** Both ends of a value, worked out at all corners that it has. */
    record Ends(Result bad, Result good) {
    }

    private WindowedValue() {
    }

    /**
     * The value as a fact.
     *
     * @param bad     corner with all windows at their bad ends, already worked out
     * @param good    corner with all windows at their good ends, already worked out
     * @param atBad   result at the bad corner
     * @param atGood  result at the good corner
     * @param alone   works the result out with one window relieved, by name of its limit
     */
    static Shown<Double> of(Corner bad, Corner good, Result atBad, Result atGood, Function<String, Result> alone) {
        List<Need> needs = bad.needs();
        if (!needs.isEmpty()) {
            return Shown.missing(needs);
        }
        if (atGood.collapse() != null) {
            return new Shown.Collapsed<>(atGood.collapse());
        }
        List<Window> windows = bad.windows();
        if (windows.isEmpty()) {
            return Shown.of(atBad.value(), atBad.calculation());
        }
        return new Shown.Assumed<>(atBad.collapse() == null ? atBad.value() : null, atGood.value(),
                new Ranked(windows, atBad, alone), atBad.collapse() == null ? atBad.calculation() : atBad::collapse);
    }

    /** Windows that weigh themselves when somebody asks. */
    private static final class Ranked implements Windows {
        private final List<Window> windows;
        private final Result atBad;
        private final Function<String, Result> alone;
        private List<Window> ranked;

        Ranked(List<Window> windows, Result atBad, Function<String, Result> alone) {
            this.windows = windows;
            this.atBad = atBad;
            this.alone = alone;
        }

        @Override
        public List<Window> all() {
            return windows;
        }

        @Override
        public synchronized List<Window> ranked() {
            if (ranked == null) {
                ranked = windows.stream().map(window -> {
                    Result relieved = alone.apply(window.limit());
                    double moves = relieved.collapse() != null ? 0
                            : atBad.collapse() != null ? Double.POSITIVE_INFINITY : Math.abs(relieved.value() - atBad.value());
                    return window.weighing(moves);
                }).sorted(Comparator.comparingDouble(Window::weighs).reversed().thenComparing(Window::limit)).toList();
            }
            return ranked;
        }
    }
}
