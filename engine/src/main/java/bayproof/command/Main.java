package bayproof.command;

import bayproof.judge.Judgment;
import bayproof.judge.Verdict;
import bayproof.read.JobFiles;
import bayproof.read.UnusableInput;
import bayproof.review.Evaluation;
import java.nio.file.Path;

/** Entry point. */
public final class Main {
    public static void main(String[] arguments) throws Exception {
        try {
            Evaluation e = Evaluation.of(JobFiles.read(Path.of(arguments[0]), null));
            for (Verdict v : e.judgment().verdicts()) {
                System.out.println(v.outcome() + " " + v.weight() + " " + v.rule().id() + " " + v.subject() + ": " + v.because() + " " + v.needs() + " margin " + v.marginFraction());
            }
            for (Judgment.NotApplicable n : e.judgment().notApplicable()) {
                System.out.println("n/a " + n.rule().id() + " " + n.subject() + " " + n.reason());
            }
            e.facts().numbers().all().forEach((k, v) -> System.out.println(k + " = " + v));
        } catch (UnusableInput e) {
            System.out.println(e.getMessage());
        }
    }
}
