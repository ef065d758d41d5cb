package bayproof.review;

import bayproof.judge.Verdict;
import java.util.List;

/**
 * One look at one thing, with everything that it answers.
 *
 * @param thing  what to look at
 * @param facts  what to find out there, what most checks wait for first
 * @param checks verdicts that wait for any of it, heaviest first; most of them wait for other things as well
 * @param clears how many waiting verdicts wait for nothing else once this question and all before it are answered
 */
public record Question(Thing thing, List<OpenFact> facts, List<Verdict> checks, int clears) {
    public Question {
        facts = List.copyOf(facts);
        checks = List.copyOf(checks);
    }
}
