package bayproof.review;

import bayproof.judge.Verdict;
import bayproof.read.Address;
import bayproof.vocabulary.Need;
import java.util.List;

/**
 * A fact that nobody gave, with the verdicts that wait for it.
 *
 * @param need    what to find out
 * @param address where its answer is written; null where no file of a job holds it
 * @param limit   name of the limit that stands in for the fact meanwhile; null where nothing does
 * @param checks  the verdicts, heaviest first
 */
public record OpenFact(Need need, Address address, String limit, List<Verdict> checks) {
    public OpenFact {
        checks = List.copyOf(checks);
    }

    /** With what it is found out; null where eyes and hands do. */
    public String tool() {
        return address == null ? null : Looks.built().tool(address);
    }

    /** What to do where it cannot be known; null where nobody knows a way. */
    public String instead() {
        return Looks.built().instead(this);
    }
}
