package bayproof.solve;

/** Refuses values no network can have, naming the element. */
final class Checks {
    private Checks() {
    }

    static void ends(String kind, String id, String one, String other) {
        if (id == null || id.isEmpty() || one == null || one.isEmpty() || other == null || other.isEmpty()) {
            throw new IllegalArgumentException(kind + " " + id + ": an id and two nodes are needed");
        }
        if (one.equals(other)) {
            throw new IllegalArgumentException(kind + " " + id + ": both ends are the node " + one);
        }
    }

    static void above0(String kind, String id, String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    kind + " " + id + ": " + name + " must be finite and above 0, not " + value);
        }
    }

    static void atLeast0(String kind, String id, String name, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    kind + " " + id + ": " + name + " must be finite and not below 0, not " + value);
        }
    }
}
