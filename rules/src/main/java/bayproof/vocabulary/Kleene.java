package bayproof.vocabulary;

/** Three-valued logic: a missing part leaves the whole missing only where it could still decide it. */
public final class Kleene {
    private Kleene() {
    }

    /** False as soon as one is known to be false. */
    public static Shown<Boolean> and(Shown<Boolean> one, Shown<Boolean> other) {
        return is(one, false) || is(other, false) ? Shown.of(false) : one.with(other, (a, b) -> a && b);
    }

    /** True as soon as one is known to be true. */
    public static Shown<Boolean> or(Shown<Boolean> one, Shown<Boolean> other) {
        return is(one, true) || is(other, true) ? Shown.of(true) : one.with(other, (a, b) -> a || b);
    }

    /** Whether a statement is known to be as said. */
    public static boolean is(Shown<Boolean> statement, boolean value) {
        return statement.isGiven() && statement.orElse(null) == value;
    }
}
