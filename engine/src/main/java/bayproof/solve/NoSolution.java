package bayproof.solve;

import java.util.List;

/**
 * The network settles nowhere: no choice of source conditions carries what the loads ask for.
 *
 * @param reason  why, in words for the reader
 * @param loadIds the loads that have no operating point for this reason, sorted
 */
public record NoSolution(String reason, List<String> loadIds) implements Solution {
    /** Keeps its own copy of the list. */
    public NoSolution {
        loadIds = List.copyOf(loadIds);
    }
}
