package bayproof.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.Item;
import bayproof.read.JobFiles;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the ends of runs are joined to, the job is judged or refused; nothing else happens. */
class MiswiringTest {
    private static final int TRIALS = 300;
    private static final long SEED = 20261201;
    /** Things of the kinds that lead current on, in every job. */
    private static final String MORE = "{ plan: { items: { more-joint: { kind: joint, resistance: 1 mohm }, more-relay: { part: relay-30 }, more-load: { part: load-resistor-4 },"
            + " more-source: { kind: traction-converter, rated: 60 A, set-point: 14 V, control: fixed } } } }";

    private static JobFiles patched(JobFiles files, String patch) throws UnusableInput {
        return files.patched(TreeReader.read(patch.getBytes(StandardCharsets.UTF_8), "patch.yaml"));
    }

    @Test
    void runsWithOtherEndsAreJudgedOrRefused() throws UnusableInput {
        Random random = new Random(SEED);
        int judged = 0;
        int refused = 0;
        List<String> wrong = new ArrayList<>();
        for (String job : Jobs.CLEAN) {
            JobFiles files = patched(Jobs.asWritten(job).files(), MORE);
            Evaluation base = Evaluation.of(files);
            List<String> ends = new ArrayList<>(List.of("unknown", "body"));
            for (Item item : base.job().items().values()) {
                item.terminals().forEach(terminal -> ends.add(item.id() + "." + terminal.replace("*", "1")));
            }
            List<String> runs = new ArrayList<>(base.job().plan().runs().keySet());
            for (int i = 0; i < TRIALS; i++) {
                String patch = patch(runs, ends, random);
                try {
                    Evaluation.of(patched(files, patch)).judgment().verdicts().forEach(verdict -> verdict.because());
                    judged++;
                } catch (UnusableInput e) {
                    refused++;
                } catch (RuntimeException e) {
                    wrong.add(job + " " + patch + ": " + e);
                }
            }
        }
        Tally.count("jobs with runs joined at random", judged + refused);
        assertTrue(refused > 0 && judged > refused, judged + " judged, " + refused + " refused");
        assertEquals(List.of(), wrong);
    }

    /** One more run from anywhere to anywhere, and up to three of the plan with another end. */
    private static String patch(List<String> runs, List<String> ends, Random random) {
        StringBuilder patch = new StringBuilder("{ plan: { runs: { more-run: { from: " + any(ends, random) + ", to: " + any(ends, random) + ", size: 8 AWG, length: 1 m }");
        TreeSet<String> moved = new TreeSet<>();
        for (int i = random.nextInt(4); i > 0 && !runs.isEmpty(); i--) {
            moved.add(any(runs, random));
        }
        moved.forEach(run -> patch.append(", ").append(run).append(": { ").append(random.nextBoolean() ? "from: " : "to: ").append(any(ends, random)).append(" }"));
        return patch.append(" } } }").toString();
    }

    private static String any(List<String> of, Random random) {
        return of.get(random.nextInt(of.size()));
    }

    /** A feed through a speaker, and a return through a signal cable: neither is part of the power network. */
    @ParameterizedTest
    @ValueSource(strings = {"feed-interface: { from: speaker-right.coil-1 }, more-run: { from: speaker-right.coil-1, to: block.out-2, size: 8 AWG, length: 1 m }",
        "ground-3: { to: amp-front.signal-1 }, more-run: { from: start-battery.negative, to: interface.signal-1, size: 8 AWG, length: 1 m }"})
    void whatNoPowerConductorFeedsIsAskedForItsRun(String runs) throws UnusableInput {
        Evaluation job = Evaluation.of(patched(Jobs.asWritten("street-show").files(), "{ plan: { runs: { " + runs + " } } }"));
        assertTrue(job.judgment().verdicts().stream().anyMatch(verdict -> verdict.rule().id().equals("drop-loud-programme") && verdict.subject().equals("items.interface")
                && verdict.needs().stream().anyMatch(need -> need.path().equals("runs"))));
    }
}
