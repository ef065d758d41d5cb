package bayproof.report;

import bayproof.demand.Gate;
import bayproof.demand.Limit;
import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.judge.Judgment;
import bayproof.judge.Verdict;
import bayproof.read.Waiver;
import bayproof.review.Evaluation;
import bayproof.review.Focus;
import bayproof.review.Questions;
import bayproof.review.Remedies;
import bayproof.review.Remedy;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Window;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * How a job stands at a gate: its verdicts sorted into those that are due and those that come later, with the questions
 * that are open and the values that are assumed. Every report is made from this.
 */
public final class Standing {
    private final Evaluation evaluation;
    private final Gate gate;
    private final Weight threshold;
    private final Map<String, Remedy> remedies;
    private final List<Verdict> due;
    private final List<Verdict> later;
    private final List<Judgment.NotApplicable> notApplicable;
    private final Questions questions;
    private final Standing whole;
    private final Focus focus;

    private Standing(Evaluation evaluation, Gate gate, Weight threshold, Predicate<Verdict> judged) {
        this.evaluation = evaluation;
        this.gate = gate;
        this.threshold = threshold;
        this.remedies = Remedies.of(evaluation);
        this.due = evaluation.judgment().verdicts().stream().filter(judged).filter(verdict -> isDue(verdict.rule().gate())).toList();
        this.later = evaluation.judgment().verdicts().stream().filter(judged).filter(verdict -> !isDue(verdict.rule().gate()))
                .sorted(Comparator.<Verdict, Gate>comparing(verdict -> verdict.rule().gate()).thenComparing(verdict -> verdict)).toList();
        this.notApplicable = evaluation.judgment().notApplicable();
        this.questions = Questions.of(evaluation, due);
        this.whole = this;
        this.focus = null;
    }

    private Standing(Standing whole, Focus focus) {
        this.evaluation = whole.evaluation;
        this.gate = whole.gate;
        this.threshold = whole.threshold;
        this.remedies = whole.remedies;
        this.due = whole.due.stream().filter(focus::shows).toList();
        this.later = whole.later.stream().filter(focus::shows).toList();
        this.notApplicable = whole.notApplicable.stream().filter(focus::shows).toList();
        this.questions = Questions.of(evaluation, due);
        this.whole = whole;
        this.focus = focus;
    }

    /**
     * How a job stands.
     *
     * @param gate      this gate and every one before it are judged
     * @param threshold the lightest weight that counts against the job
     */
    public static Standing of(Evaluation evaluation, Gate gate, Weight threshold) {
        return of(evaluation, gate, threshold, verdict -> true);
    }

    /**
     * How the part of a job stands that is due at all.
     *
     * @param judged tells of each verdict whether it is
     */
    public static Standing of(Evaluation evaluation, Gate gate, Weight threshold, Predicate<Verdict> judged) {
        return new Standing(evaluation, gate, threshold, judged);
    }

    /** The part of it that somebody wants to see. What counts is still everything: see {@link #whole()}. */
    public Standing narrowed(Focus wanted) {
        return new Standing(whole, wanted);
    }

    /** Everything, whatever is shown of it: the answer, the counts and the exit status come from here. */
    Standing whole() {
        return whole;
    }

    /** What is shown; null where all is. */
    Focus focus() {
        return focus;
    }

    private boolean isDue(Gate when) {
        return when.compareTo(gate) <= 0;
    }

    /** Whether anything that is due counts against the job. */
    public boolean counts() {
        return whole.due.stream().anyMatch(this::counts);
    }

    /** Broken or unshown, at or above the threshold, and not waived. */
    public boolean counts(Verdict verdict) {
        return verdict.outcome() != Outcome.HOLDS && verdict.weight().atLeast(threshold) && waiver(verdict) == null;
    }

    /** The waiver that accepts a verdict at this gate; null where none does. */
    public Waiver waiver(Verdict verdict) {
        return evaluation.waiver(verdict, gate);
    }

    /** What is due and waived, heaviest first. */
    public List<Verdict> waived() {
        return due.stream().filter(verdict -> waiver(verdict) != null).toList();
    }

    /** The first gate, up to the one judged, at which something counts; null where nothing does. */
    Gate barred() {
        return due.stream().filter(this::counts).map(verdict -> verdict.rule().gate()).min(Comparator.naturalOrder()).orElse(null);
    }

    public Evaluation evaluation() {
        return evaluation;
    }

    public Gate gate() {
        return gate;
    }

    Weight threshold() {
        return threshold;
    }

    /** All verdicts that are due, heaviest first. */
    public List<Verdict> due() {
        return due;
    }

    public List<Verdict> due(Outcome outcome) {
        return due.stream().filter(verdict -> verdict.outcome() == outcome).toList();
    }

    /** Verdicts of later gates, by gate. */
    List<Verdict> later() {
        return later;
    }

    List<Judgment.NotApplicable> notApplicable() {
        return notApplicable;
    }

    public int broken(Weight weight) {
        return (int) due.stream().filter(verdict -> verdict.outcome() == Outcome.BROKEN && verdict.weight() == weight && waiver(verdict) == null).count();
    }

    /** How to put a broken verdict right; null where nobody knows a way. */
    public Remedy remedy(Verdict verdict) {
        return remedies.get(verdict.key());
    }

    /** What a verdict waits for. */
    List<Need> needs(Verdict verdict) {
        return Questions.needs(verdict, evaluation.job().limits());
    }

    Limit limit(Window window) {
        return evaluation.job().limits().named(window.limit());
    }

    /** Open questions of what is due. */
    public Questions questions() {
        return questions;
    }

    /** Values taken from windows by what is due, by name of the limit. */
    public List<Carried> assumed() {
        Map<String, Window> windows = new TreeMap<>();
        Map<String, List<Verdict>> carries = new TreeMap<>();
        for (Verdict verdict : due) {
            for (Window window : verdict.windows()) {
                String key = window.limit() + "\n" + window.path();
                windows.putIfAbsent(key, window);
                List<Verdict> carried = carries.computeIfAbsent(key, any -> new ArrayList<>());
                // Verdicts come one after the other: comparing the objects is enough, and comparing their content costs a cold start.
                if (carried.isEmpty() || carried.get(carried.size() - 1) != verdict) {
                    carried.add(verdict);
                }
            }
        }
        return windows.entrySet().stream()
                .map(entry -> new Carried(entry.getValue(), limit(entry.getValue()), carries.get(entry.getKey()))).toList();
    }

    /** The shop's own figures in force, by name of the limit. */
    List<Limit> shopLimits() {
        return evaluation.job().limits().all().stream().filter(limit -> limit.changed() != null).toList();
    }
}
