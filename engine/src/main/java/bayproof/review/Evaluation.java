package bayproof.review;

import bayproof.demand.Limits;
import bayproof.facts.FactBook;
import bayproof.judge.Court;
import bayproof.judge.Judgment;
import bayproof.read.Job;
import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.read.UnusableInput;

/**
 * One job from its files to its verdicts, over all gates.
 *
 * @param files    the files
 * @param job      what they say
 * @param facts    what was worked out
 * @param judgment what the rules say
 */
public record Evaluation(JobFiles files, Job job, FactBook facts, Judgment judgment) {

    /**
     * Evaluates a job.
     *
     * @throws UnusableInput when its files cannot be used
     */
    public static Evaluation of(JobFiles files) throws UnusableInput {
        return of(files, new Timing());
    }

    /**
     * Evaluates a job and notes where the time goes.
     *
     * @throws UnusableInput when its files cannot be used
     */
    public static Evaluation of(JobFiles files, Timing timing) throws UnusableInput {
        Job job = JobReader.bind(files);
        timing.ended("binding");
        FactBook facts = FactBook.of(job);
        timing.ended("facts");
        Judgment judgment = Court.judge(facts, job.limits(), timing.rules());
        timing.ended("rules");
        return new Evaluation(files, job, facts, judgment);
    }

    /** Evaluates a job by other limits than those in force. */
    public static Evaluation of(JobFiles files, Job job, Limits limits) {
        FactBook facts = FactBook.of(job);
        return new Evaluation(files, job, facts, Court.judge(facts, limits));
    }
}
