package bayproof.facts;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import bayproof.support.Jobs;
import bayproof.vocabulary.ChargeSource;
import bayproof.vocabulary.Shown;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A second battery stays in the network at idle, so that what nobody wrote of it is a window there as well. */
class SecondBatteryTest {
    @ParameterizedTest
    @CsvSource({"rest, battery-rest, 30 A", "resistance, battery-resistance, 30 A", "acceptance, battery-acceptance, 30 A",
        "rest, battery-rest, 5 A", "resistance, battery-resistance, 5 A", "acceptance, battery-acceptance, 5 A"})
    void whatNobodyWroteOfItIsAssumedAtIdle(String key, String window, String limit) throws UnusableInput {
        JobFiles files = JobFiles.read(Jobs.plan("tour-van"), null).patched(TreeReader.read(
                ("parts: { parts: { agm-100: { " + key + ": null }, converter-30: { limit: " + limit + " } } }").getBytes(StandardCharsets.UTF_8), "patch.yaml"));
        ChargeSource source = FactBook.of(JobReader.bind(files)).facts().stream().filter(ChargeSource.class::isInstance)
                .map(ChargeSource.class::cast).findFirst().orElseThrow();
        Shown.Assumed<Double> left = (Shown.Assumed<Double>) source.balanceAmperes();
        assertTrue(left.windows().all().stream().anyMatch(one -> one.limit().equals(window)), left.windows().all().toString());
        assertTrue(left.bad() <= left.good(), left.bad() + " at the bad end, " + left.good() + " at the good one");
    }
}
