package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The review as JSON, as another program reads it. */
class JsonTest {
    @TempDir
    private Path folder;

    private static JsonNode read(String... line) throws Exception {
        return new ObjectMapper().readTree(Main.run(line).out());
    }

    @Test
    void everyVerdictHasItsKeysAndTheCountsAgree() throws Exception {
        JsonNode json = read("review", Jobs.changed(folder, "length: 0.30 m", "length: 1.20 m", "reading: 12.6 V", "reading: unknown"), "--as", "json");
        List<String> keys = new ArrayList<>();
        json.fieldNames().forEachRemaining(keys::add);
        assertTrue(keys.containsAll(List.of("bayproof", "job", "counts", "verdicts", "not-applicable", "assumed", "due-later", "numbers")), keys.toString());
        int[] counts = new int[3];
        for (JsonNode verdict : json.get("verdicts")) {
            for (String key : List.of("rule", "subject", "outcome", "weight", "gate", "because", "at")) {
                assertTrue(verdict.hasNonNull(key), key + " in " + verdict);
            }
            assertTrue(verdict.at("/at/line").asInt() > 0 && verdict.at("/at/column").asInt() > 0, verdict.toString());
            counts[List.of("holds", "broken", "unshown").indexOf(verdict.get("outcome").asText())]++;
        }
        assertEquals(counts[0], json.at("/counts/holds").asInt());
        assertEquals(counts[1], json.at("/counts/broken").asInt());
        assertEquals(counts[2], json.at("/counts/unshown").asInt());
        assertEquals(json.get("due-later").size(), json.at("/counts/due-later").asInt());
        assertEquals(0, json.at("/counts/waived").asInt(-1));
    }

    @Test
    void aBrokenNumberHasItsLimitItsMarginAndAPatchThatMendsIt() throws Exception {
        JsonNode json = read("review", Jobs.changed(folder, "length: 0.30 m", "length: 1.20 m"), "--as=json");
        JsonNode broken = null;
        for (JsonNode verdict : json.get("verdicts")) {
            if (verdict.get("outcome").asText().equals("broken")) {
                broken = verdict;
            }
        }
        assertEquals("fuse-near-battery", broken.get("rule").asText());
        assertEquals(1.2, broken.at("/measured/value").asDouble(), 1e-12);
        assertEquals("m", broken.at("/measured/unit").asText());
        assertEquals(1.016, broken.at("/limit/value").asDouble(), 1e-12);
        assertEquals("at-most", broken.at("/limit/sense").asText());
        assertEquals(-0.184, broken.at("/margin/value").asDouble(), 1e-12);
        assertTrue(broken.at("/remedy/patch/plan/runs/feed-1/length").asText().endsWith(" m"), broken.toString());
        assertTrue(broken.get("sources").size() > 0, broken.toString());
    }

    @Test
    void whatIsAssumedIsListedWithWhatRestsOnIt() throws Exception {
        JsonNode json = read("review", Jobs.CLEAN.toString(), "--as=json");
        for (JsonNode assumed : json.get("assumed")) {
            assertTrue(assumed.get("low").asDouble() < assumed.get("high").asDouble(), assumed.toString());
            assertTrue(assumed.get("unit").isTextual() && assumed.get("carries").size() > 0, assumed.toString());
        }
        assertTrue(json.get("assumed").size() > 0);
        assertTrue(json.get("numbers").size() > 0 && json.at("/numbers/runs.feed-1.ampacity/calculation").asText().contains("4 AWG"));
    }

    @Test
    void neitherTheMachinesFoldersNorWhoPreparedThePlanIsPrinted() throws Exception {
        String plan = Jobs.changed(folder, "prepared-by: apprentice", "prepared-by: somebody");
        String text = Main.run("review", plan, "--as", "json").out();
        assertFalse(text.contains(folder.toString()) || text.contains("somebody"), text);
        assertEquals(text, Main.run("review", plan, "--as", "json").out(), "the same bytes for the same input");
        assertTrue(Main.run("review", Jobs.CLEAN.toString(), "--as", "json").out().contains("\"../cases/street-show/plan.yaml\""));
    }
}
