package bayproof.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bayproof.read.JobFiles;
import bayproof.support.Tally;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Published worked examples as whole plans: the figure that the program prints against the figure in print. */
class PublishedPlanTest {
    /** Printed answer 4.0 V (a lighting trade's training page, weltrain05 lpage135); tolerance half its last digit. */
    @Test
    void aTwoWireRunOfSixteenGaugeLosesFourVolts() throws Exception {
        Evaluation evaluation = Evaluation.of(JobFiles.read(Path.of("../cases/published/two-wire-run/plan.yaml"), null));
        double share = evaluation.facts().numbers().all().get("items.lamp.drop-full-sine").value();
        assertEquals(4.0, share * evaluation.job().limits().named("drop-reference").value(), 0.05);
        Tally.count("outside checks", 1);
    }
}
