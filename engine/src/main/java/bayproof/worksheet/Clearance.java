package bayproof.worksheet;

import bayproof.demand.Gate;
import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.judge.Judgment;
import bayproof.judge.Verdict;
import bayproof.review.Evaluation;
import bayproof.review.Remedies;
import bayproof.review.Remedy;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * How far the rules let the work go.
 *
 * @param gates each gate in the order of the work
 * @param stops what a rule of weight stop finds broken, over all gates: nobody builds by a sheet of such a plan
 */
public record Clearance(List<AtGate> gates, List<Stop> stops) {

    /**
     * One gate with what is due at it and at no gate before.
     *
     * @param broken  verdicts by weight stop, fix and advise
     * @param unshown checks that wait for a fact
     * @param cleared whether nothing stands against it, nor against a gate before
     */
    public record AtGate(Gate gate, int stop, int fix, int advise, int unshown, boolean cleared) {
    }

    /** One broken rule: what to do, or what is wrong where nobody knows. */
    public record Stop(String rule, String subject, String say) {
    }

    /** How a job that was judged stands. */
    public static Clearance of(Evaluation evaluation) {
        Judgment judgment = evaluation.judgment();
        List<AtGate> gates = new ArrayList<>();
        boolean clear = true;
        for (Gate gate : Gate.values()) {
            List<Verdict> due = judgment.verdicts().stream().filter(verdict -> verdict.rule().gate() == gate).toList();
            clear &= due.stream().allMatch(verdict -> verdict.outcome() == Outcome.HOLDS);
            gates.add(new AtGate(gate, broken(due, Weight.STOP), broken(due, Weight.FIX), broken(due, Weight.ADVISE),
                    (int) due.stream().filter(verdict -> verdict.outcome() == Outcome.UNSHOWN).count(), clear));
        }
        List<Verdict> stops = judgment.of(Outcome.BROKEN).stream().filter(verdict -> verdict.weight() == Weight.STOP).toList();
        Map<String, Remedy> remedies = Remedies.of(evaluation, stops);
        return new Clearance(gates, stops.stream().map(verdict -> new Stop(verdict.rule().id(), verdict.subject(),
                remedies.containsKey(verdict.key()) ? remedies.get(verdict.key()).say() : verdict.because())).toList());
    }

    private static int broken(List<Verdict> due, Weight weight) {
        return (int) due.stream().filter(verdict -> verdict.outcome() == Outcome.BROKEN && verdict.weight() == weight).count();
    }

    /** The last gate that nothing stands against; null where there is none. */
    public Gate last() {
        return gates.stream().filter(AtGate::cleared).map(AtGate::gate).reduce(null, (before, gate) -> gate);
    }
}
