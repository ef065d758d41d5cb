package bayproof.report;

import bayproof.demand.Limit;
import bayproof.judge.Verdict;
import bayproof.vocabulary.Window;
import java.util.List;

/**
 * A value that is taken from a window, with the verdicts that rest on it.
 *
 * @param window  the window
 * @param limit   the limit that gives it
 * @param carries the verdicts
 */
record Carried(Window window, Limit limit, List<Verdict> carries) {
    Carried {
        carries = List.copyOf(carries);
    }
}
