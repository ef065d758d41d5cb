package bayproof.solve;

/**
 * A conductor, fuse, joint or body path between two nodes.
 *
 * @param id   its name among the branches
 * @param from the node from which a positive current leaves
 * @param to   the node at which a positive current arrives
 * @param ohms its resistance at working temperature, ohm, finite and above 0
 */
public record Branch(String id, String from, String to, double ohms) {
    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if both ends are the same node, or the resistance is out of range
     */
    public Branch {
        Checks.ends("branch", id, from, to);
        Checks.above0("branch", id, "ohms", ohms);
    }
}
