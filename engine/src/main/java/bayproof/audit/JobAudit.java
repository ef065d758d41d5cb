package bayproof.audit;

import bayproof.audit.JobResult.Accepted;
import bayproof.audit.JobResult.Comeback;
import bayproof.audit.JobResult.State;
import bayproof.demand.Gate;
import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.judge.Verdict;
import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.read.Plan;
import bayproof.read.Problem;
import bayproof.read.UnusableInput;
import bayproof.read.Visit;
import bayproof.review.AcceptedValue;
import bayproof.review.Connected;
import bayproof.review.Evaluation;
import bayproof.signoff.Chain;
import bayproof.signoff.Entry;
import bayproof.signoff.Photos;
import bayproof.signoff.SignedSource;
import bayproof.signoff.SignedVerdict;
import bayproof.vocabulary.Need;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Audits jobs one at a time; may be used by several threads.
 *
 * @param root      the archive's folder
 * @param limits    shop limits in place of those the plans name; null for none
 * @param gate      this gate and every one before it are judged
 * @param threshold the lightest weight that counts
 * @param today     the day on which waivers are held against their last day
 */
public record JobAudit(Path root, Path limits, Gate gate, Weight threshold, LocalDate today) {

    /** What becomes of a job. Whatever is wrong with it is part of the result. */
    JobResult audit(Path plan) {
        String name = root.relativize(plan).toString().replace('\\', '/');
        try {
            SignedSource source = new SignedSource();
            Evaluation evaluation = Evaluation.of(JobFiles.read(plan, limits, source), today).withPossibleReadings();
            new Photos(plan.getParent()).check(evaluation.job());
            if (JobReader.isEmpty(evaluation.job())) {
                return failed(name, State.UNREADABLE, "there is nothing in it to judge");
            }
            return result(name, plan, evaluation, source.mark(limits));
        } catch (UnusableInput e) {
            Problem first = e.problems().get(0);
            return failed(name, State.UNREADABLE, first.at().file().replaceAll(".*[/\\\\]", "") + ":" + first.at().line() + ": " + first.what()
                    + (e.problems().size() > 1 ? " (and " + (e.problems().size() - 1) + " more)" : ""));
        } catch (RuntimeException | StackOverflowError e) {
            return failed(name, State.FAULT, e.getClass().getSimpleName() + (e.getMessage() == null ? "" : ": " + e.getMessage()));
        }
    }

    private static JobResult failed(String name, State state, String why) {
        return new JobResult(name, state, "", "", -1, why, List.of(), List.of(), "", List.of());
    }

    private JobResult result(String name, Path plan, Evaluation evaluation, String files) {
        Connected connected = Connected.of(evaluation.job());
        List<Verdict> against = evaluation.judgment().verdicts().stream()
                .filter(verdict -> verdict.outcome() != Outcome.HOLDS && isDue(verdict) && connected.isDue(verdict)).toList();
        List<Verdict> counting = against.stream().filter(verdict -> verdict.weight().atLeast(threshold) && evaluation.waiver(verdict, gate) == null).toList();
        List<Accepted> waived = against.stream().filter(verdict -> evaluation.waiver(verdict, gate) != null)
                .map(verdict -> new Accepted(verdict.rule().id(), verdict.subject(), evaluation.waiver(verdict, gate).reason().orElse(""))).toList();
        Plan.Head head = evaluation.job().plan().job();
        return new JobResult(name, counting.isEmpty() ? State.MAY_GO : State.MAY_NOT_GO, head.tag().orElse(""), head.promised().orElse(""),
                age(head.date().orElse("")), counting.isEmpty() ? "" : holds(counting.get(0)), waived, counting.stream().map(JobAudit::open).toList(), files,
                comebacks(plan, evaluation));
    }

    private boolean isDue(Verdict verdict) {
        return verdict.rule().gate().compareTo(gate) <= 0;
    }

    private static String holds(Verdict verdict) {
        String asks = verdict.needs().stream().map(Need::ask).findFirst().orElse(null);
        return verdict.outcome() == Outcome.UNSHOWN && asks != null ? "not shown: " + asks + " (" + verdict.subject() + ")"
                : verdict.because() + " (" + verdict.subject() + ")";
    }

    private static OpenCheck open(Verdict verdict) {
        // The same few subjects stand in thousands of jobs: each is kept once.
        return new OpenCheck(verdict.rule().id(), verdict.subject().intern(), verdict.outcome().word().intern(), verdict.weight().word().intern(),
                verdict.measured() != null && verdict.measured().word() != null ? verdict.measured().word() : AcceptedValue.of(verdict),
                verdict.limit() == null ? null : verdict.limit().limit().name());
    }

    private int age(String date) {
        try {
            return (int) Math.max(0, ChronoUnit.DAYS.between(LocalDate.parse(date), today));
        } catch (DateTimeParseException e) {
            return -1;
        }
    }

    private List<Comeback> comebacks(Path plan, Evaluation evaluation) {
        List<Comeback> comebacks = new ArrayList<>();
        for (Visit visit : evaluation.job().plan().visits().values()) {
            if (visit.reason().orElse("").equals("comeback")) {
                comebacks.add(comeback(plan, evaluation, visit.date().orElse(""), visit.rule().orElse("")));
            }
        }
        return comebacks;
    }

    /** What was not shown when it left: by the last entry before the day it came back; without one, what is not shown now. */
    private Comeback comeback(Path plan, Evaluation evaluation, String day, String rule) {
        Entry left = left(plan, day);
        Stream<String> unshown = left != null
                ? left.verdicts().stream().filter(verdict -> verdict.outcome().equals(Outcome.UNSHOWN.word()) && Gate.of(verdict.gate()).compareTo(gate) <= 0).map(SignedVerdict::rule)
                : evaluation.judgment().of(Outcome.UNSHOWN).stream().filter(this::isDue).map(verdict -> verdict.rule().id());
        return new Comeback(day, rule, unshown.distinct().sorted().toList(), left != null);
    }

    private static Entry left(Path plan, String day) {
        try {
            return Chain.read(plan.getParent()).entries().stream().filter(entry -> entry.when().compareTo(day) < 0).reduce(null, (before, entry) -> entry);
        } catch (IOException e) {
            return null;
        }
    }
}
