package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.Seeds;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ten lines are enough for a useful "no", and what they leave open is asked for, never taken as good. */
class TenLinesTest {
    @TempDir
    private Path folder;

    private JsonNode verdicts(String... changes) throws Exception {
        String plan = Seeds.text("ten-lines/plan.yaml");
        for (int i = 0; i < changes.length; i += 2) {
            String before = plan;
            plan = plan.replace(changes[i], changes[i + 1]);
            assertNotEquals(before, plan, changes[i]);
        }
        Reply reply = Main.run("review", Files.writeString(folder.resolve("plan.yaml"), plan).toString(), "--as=json");
        assertEquals(1, reply.status(), reply.err());
        return new ObjectMapper().readTree(reply.out()).get("verdicts");
    }

    private static JsonNode verdict(JsonNode verdicts, String rule, String subject) {
        for (JsonNode verdict : verdicts) {
            if (verdict.get("rule").asText().equals(rule) && verdict.get("subject").asText().equals(subject)) {
                return verdict;
            }
        }
        throw new AssertionError("no verdict of " + rule + " on " + subject + " in " + verdicts);
    }

    private static void assertSays(String outcome, JsonNode verdicts, String rule, String subject) {
        JsonNode verdict = verdict(verdicts, rule, subject);
        assertEquals(outcome, verdict.get("outcome").asText(), verdict.toString());
    }

    /** 33 CFR 183.425 Table 5: 8 AWG of 125 °C insulation carries 90 A, and 150 A is more than one and a half times as much. */
    @Test
    void aFuseTooLargeForTheCableWhateverItsInsulation() throws Exception {
        JsonNode verdicts = verdicts("rating: 60 A", "rating: 150 A", "size: 4 AWG, length: 4.5 m", "size: 8 AWG, length: 4.5 m");
        assertSays("broken", verdicts, "fuse-within-ampacity", "runs.feed-2");
        assertEquals("stop", verdict(verdicts, "fuse-within-ampacity", "runs.feed-2").get("weight").asText());
    }

    /** The same table: 4 AWG carries 105 A at the lowest class and 170 A at 125 °C, so a fuse of 150 A is one thing or the other. */
    @Test
    void aFuseThatRestsOnTheInsulationIsAskedFor() throws Exception {
        JsonNode fuse = verdict(verdicts("rating: 60 A", "rating: 150 A"), "fuse-within-ampacity", "runs.feed-2");
        assertEquals("broken", fuse.get("outcome").asText(), "above 80 % of either");
        JsonNode lighter = verdict(verdicts(), "fuse-within-ampacity", "runs.feed-2");
        assertEquals("unshown", lighter.get("outcome").asText(), lighter.toString());
        assertTrue(lighter.get("missing").toString().contains("runs.feed-2.insulation"), lighter.toString());
    }

    /** Two coils of 2 ohm in parallel are 1 ohm (textbook); the amplifier is rated for 2. */
    @Test
    void aLoadTooLowForTheAmplifier() throws Exception {
        assertSays("broken", verdicts("sub.coil-1 + sub.coil-2", "sub.coil-1 | sub.coil-2"), "amplifier-load-minimum", "speaker-wiring.amp-sub.ch-1");
        assertSays("unshown", verdicts(), "amplifier-load-minimum", "speaker-wiring.amp-sub.ch-1");
    }

    /** 33 CFR 183.455(b)(2): not even in a sheath may the fuse sit more than 40 in, 1.016 m, from the battery. */
    @Test
    void aMainFuseTooFarAway() throws Exception {
        assertSays("broken", verdicts("length: 0.15 m", "length: 1.20 m"), "fuse-near-battery", "runs.feed-1");
        assertSays("holds", verdicts(), "fuse-near-battery", "runs.feed-1");
    }

    /**
     * 14 AWG has 8.29 ohm per kilometer at 20 °C (wire tables). 5 m of feed and 0.5 m of return lose 0.42 V at 9.3 A, which is
     * what 300 W at a third of full output take from 12 V at 90 %: 3.5 % of 12 V, over the 3 % of ABYC E-11, before any joint.
     */
    @Test
    void aCableThatLosesTooMuchWhateverTheRest() throws Exception {
        JsonNode verdicts = verdicts("4 AWG", "14 AWG", "length: 4.5 m", "length: 5.0 m");
        assertSays("broken", verdicts, "drop-loud-programme", "items.amp-sub");
        assertSays("holds", verdicts(), "drop-loud-programme", "items.amp-sub");
    }

    @Test
    void theRestIsAskedFor() throws Exception {
        for (JsonNode verdict : verdicts()) {
            assertNotEquals("broken", verdict.get("outcome").asText(), verdict.toString());
        }
        assertSays("unshown", verdicts(), "way-through-known", "runs.feed-2");
        assertSays("unshown", verdicts(), "interface-fits-radio", "items.amp-sub");
    }
}
