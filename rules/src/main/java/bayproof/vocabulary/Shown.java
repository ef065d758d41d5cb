package bayproof.vocabulary;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A value that can be missing. Rules never look inside one on their left side: a demand does, and a missing value
 * gives the outcome "unshown", never silence.
 *
 * @param <T> the value's type; quantities are doubles in SI units
 */
public sealed interface Shown<T> {

    /**
     * A value somebody gave, or one worked out from such values.
     *
     * @param value       the value
     * @param at          where it stands in the files; null for a value worked out
     * @param calculation writes the formula with its numbers put in; null for a value that was simply given
     */
    record Given<T>(T value, At at, Supplier<String> calculation) implements Shown<T> {
        public Given {
            Objects.requireNonNull(value);
        }
    }

    /** A value nobody gave; {@code needs} is never empty. */
    record Missing<T>(List<Need> needs) implements Shown<T> {
        public Missing {
            needs = List.copyOf(needs);
            if (needs.isEmpty()) {
                throw new IllegalArgumentException("a missing value says what would show it");
            }
        }
    }

    /** Somebody looked and could not see it: an answer of its own, which a demand judges as not met. */
    record Hidden<T>(Need need) implements Shown<T> {
    }

    /**
     * A value that rests on windows: worked out once with every window at its bad end, once at its good end.
     *
     * @param bad         value with all windows at the end that is bad for the question asked
     * @param good        value with all windows at the good end
     * @param windows     the windows it rests on
     * @param calculation writes the formula with the numbers of the bad end put in
     */
    record Assumed<T>(T bad, T good, Windows windows, Supplier<String> calculation) implements Shown<T> {
    }

    /** There is no such value because the network has no working state: every demand on it is broken. */
    record Collapsed<T>(String reason) implements Shown<T> {
    }

    static <T> Shown<T> of(T value) {
        return new Given<>(value, null, null);
    }

    static <T> Shown<T> at(T value, At at) {
        return new Given<>(value, at, null);
    }

    static <T> Shown<T> of(T value, Supplier<String> calculation) {
        return new Given<>(value, null, calculation);
    }

    static <T> Shown<T> missing(Need... needs) {
        return new Missing<>(List.of(needs));
    }

    static <T> Shown<T> missing(List<Need> needs) {
        return new Missing<>(needs);
    }

    /** Where a given value stands, else {@code other}. */
    default At atOr(At other) {
        return this instanceof Given<T> given && given.at() != null ? given.at() : other;
    }

    default boolean isGiven() {
        return this instanceof Given;
    }

    /** The value when it was given, else {@code other}. For printing and walking only, never for judging. */
    default T orElse(T other) {
        return this instanceof Given<T> given ? given.value() : other;
    }

    /** What is missing: empty unless this is missing or hidden. */
    default List<Need> needs() {
        if (this instanceof Missing<T> missing) {
            return missing.needs();
        }
        return this instanceof Hidden<T> hidden ? List.of(hidden.need()) : List.of();
    }

    /** A value worked out from this one; what is missing, hidden or collapsed stays so. */
    default <R> Shown<R> map(Function<? super T, ? extends R> step) {
        if (this instanceof Given<T> given) {
            return Shown.of(step.apply(given.value()));
        }
        if (this instanceof Missing<T> missing) {
            return new Missing<>(missing.needs());
        }
        if (this instanceof Hidden<T> hidden) {
            return new Hidden<>(hidden.need());
        }
        if (this instanceof Collapsed<T> collapsed) {
            return new Collapsed<>(collapsed.reason());
        }
        Assumed<T> assumed = (Assumed<T>) this;
        return new Assumed<>(step.apply(assumed.bad()), step.apply(assumed.good()), assumed.windows(), null);
    }

    /** Like {@link #map} where the step itself may find something missing. A window cannot choose a path: it is refused. */
    default <R> Shown<R> then(Function<? super T, Shown<R>> step) {
        if (this instanceof Given<T> given) {
            return step.apply(given.value());
        }
        return map(value -> {
            throw new IllegalStateException("a window cannot choose a path");
        });
    }

    /** Two values joined; when both are missing, everything that is missing is named. */
    default <U, R> Shown<R> with(Shown<U> other, BiFunction<? super T, ? super U, ? extends R> join) {
        if (this instanceof Missing || other instanceof Missing || this instanceof Hidden || other instanceof Hidden) {
            List<Need> needs = new ArrayList<>(needs());
            for (Need need : other.needs()) {
                if (!needs.contains(need)) {
                    needs.add(need);
                }
            }
            return needs.size() == 1 && (this instanceof Hidden || other instanceof Hidden)
                    ? new Hidden<>(needs.get(0)) : new Missing<>(needs);
        }
        if (other instanceof Collapsed<U> collapsed) {
            return new Collapsed<>(collapsed.reason());
        }
        return then(mine -> other.map(theirs -> join.apply(mine, theirs)));
    }
}
