package bayproof.review;

import bayproof.demand.Gate;
import bayproof.demand.Limits;
import bayproof.facts.FactBook;
import bayproof.judge.FormerRules;
import bayproof.judge.Court;
import bayproof.judge.Judgment;
import bayproof.judge.RuleTimes;
import bayproof.judge.Verdict;
import bayproof.read.Job;
import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.read.UnusableInput;
import bayproof.read.Waiver;
import bayproof.vocabulary.Fact;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One job from its files to its verdicts, over all gates.
 *
 * @param files    the files
 * @param job      what they say
 * @param facts    what was worked out
 * @param judgment what the rules say
 * @param waivers  waivers in force, by the {@link Verdict#key()} they accept
 * @param today    the day on which waivers are held against their last day
 */
public record Evaluation(JobFiles files, Job job, FactBook facts, Judgment judgment, Map<String, Waiver> waivers, LocalDate today) {

    /**
     * Evaluates a job as of today.
     *
     * @throws UnusableInput when its files cannot be used
     */
    public static Evaluation of(JobFiles files) throws UnusableInput {
        return of(files, LocalDate.now());
    }

    /**
     * Evaluates a job as of a day.
     *
     * @throws UnusableInput when its files cannot be used
     */
    public static Evaluation of(JobFiles files, LocalDate today) throws UnusableInput {
        return of(files, today, new Timing());
    }

    /**
     * Evaluates a job and notes where the time goes.
     *
     * @throws UnusableInput when its files cannot be used
     */
    public static Evaluation of(JobFiles files, LocalDate today, Timing timing) throws UnusableInput {
        Job job = bound(files);
        timing.ended("binding");
        FactBook facts = FactBook.of(job);
        timing.ended("facts");
        Evaluation evaluation = judged(files, job, facts, job.limits(), today, timing.rules());
        timing.ended("rules");
        return evaluation;
    }

    /**
     * Binds a job; a rule that it names is one of those there are.
     *
     * @throws UnusableInput when its files cannot be used
     */
    public static Job bound(JobFiles files) throws UnusableInput {
        return JobReader.bind(files, FormerRules::everyId);
    }

    /** Evaluates a job by other limits than those in force. */
    public static Evaluation of(JobFiles files, Job job, Limits limits) {
        return judged(files, job, FactBook.of(job), limits, LocalDate.now(), new RuleTimes());
    }

    /**
     * This evaluation, unless a reading of the finished job is one that its own wires and outputs rule out. A plan that is still being
     * changed may contradict what was read before: that is told where somebody relies on the readings.
     *
     * @throws UnusableInput naming each such reading, with the reason
     */
    public Evaluation withPossibleReadings() throws UnusableInput {
        PossibleReadings.check(job, facts.numbers().all());
        return this;
    }

    /** The waiver that accepts a verdict at a gate; null where none does. */
    public Waiver waiver(Verdict verdict, Gate gate) {
        Waiver waiver = waivers.get(verdict.key());
        Gate ends = waiver == null ? null : Waivers.lastsTo(waiver);
        return ends == null || gate.compareTo(ends) < 0 ? waiver : null;
    }

    /** Waivers accept verdicts, so they are judged once the rest is. */
    private static Evaluation judged(JobFiles files, Job job, FactBook facts, Limits limits, LocalDate today, RuleTimes times) {
        Judgment judgment = Court.judge(facts, limits, times);
        if (job.waivers().isEmpty()) {
            return new Evaluation(files, job, facts, judgment, Map.of(), today);
        }
        List<Fact> claims = Waivers.claims(job, judgment, today);
        List<Fact> all = new ArrayList<>(facts.facts());
        all.addAll(claims);
        Judgment whole = Court.further(judgment, claims, limits, times);
        return new Evaluation(files, job, new FactBook(List.copyOf(all), facts.numbers()), whole, Waivers.inForce(job, whole), today);
    }
}
