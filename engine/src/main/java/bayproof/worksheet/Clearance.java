package bayproof.worksheet;

import bayproof.demand.Gate;
import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.judge.Judgment;
import bayproof.judge.Verdict;
import bayproof.read.Waiver;
import bayproof.review.Evaluation;
import bayproof.review.Remedies;
import bayproof.review.Remedy;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * How far the rules let the work go.
 *
 * @param gates  each gate in the order of the work
 * @param stops  what a rule of weight stop finds broken and nobody accepted, over all gates: nobody builds by a sheet of such a plan
 * @param waived what somebody accepted, with the waiver
 */
public record Clearance(List<AtGate> gates, List<Stop> stops, List<Waived> waived) {

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

    /** A verdict that is accepted for a time; it keeps its outcome. */
    public record Waived(Verdict verdict, Waiver waiver) {
    }

    /** How a job that was judged stands. */
    public static Clearance of(Evaluation evaluation) {
        Judgment judgment = evaluation.judgment();
        List<AtGate> gates = new ArrayList<>();
        boolean clear = true;
        for (Gate gate : Gate.values()) {
            List<Verdict> due = judgment.verdicts().stream().filter(verdict -> verdict.rule().gate() == gate && waiver(evaluation, verdict) == null).toList();
            clear &= due.stream().allMatch(verdict -> verdict.outcome() == Outcome.HOLDS);
            gates.add(new AtGate(gate, broken(due, Weight.STOP), broken(due, Weight.FIX), broken(due, Weight.ADVISE),
                    (int) due.stream().filter(verdict -> verdict.outcome() == Outcome.UNSHOWN).count(), clear));
        }
        List<Verdict> stops = judgment.of(Outcome.BROKEN).stream().filter(verdict -> verdict.weight() == Weight.STOP && waiver(evaluation, verdict) == null).toList();
        Map<String, Remedy> remedies = Remedies.of(evaluation, stops);
        return new Clearance(gates, stops.stream().map(verdict -> new Stop(verdict.rule().id(), verdict.subject(),
                remedies.containsKey(verdict.key()) ? remedies.get(verdict.key()).say() : verdict.because())).toList(),
                judgment.verdicts().stream().filter(verdict -> waiver(evaluation, verdict) != null).map(verdict -> new Waived(verdict, waiver(evaluation, verdict))).toList());
    }

    private static Waiver waiver(Evaluation evaluation, Verdict verdict) {
        return evaluation.waiver(verdict, verdict.rule().gate());
    }

    private static int broken(List<Verdict> due, Weight weight) {
        return (int) due.stream().filter(verdict -> verdict.outcome() == Outcome.BROKEN && verdict.weight() == weight).count();
    }

    /** The last gate that nothing stands against; null where there is none. */
    public Gate last() {
        return gates.stream().filter(AtGate::cleared).map(AtGate::gate).reduce(null, (before, gate) -> gate);
    }
}
