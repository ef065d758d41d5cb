package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** May I open the old vehicle tomorrow? */
class RefitJobTest {
    private static final Path CASES = Jobs.TOUR.getParent().getParent();
    private static final String NEAR = CASES.resolve("parade-van").resolve("vehicle.yaml").toString();
    private static final String FAR = CASES.resolve("harbor-bus").resolve("vehicle.yaml").toString();
    private static final String CHOICES = CASES.resolve("parade-van").resolve("choices.yaml").toString();
    private static final int SCREEN = 24;

    @TempDir
    private Path folder;

    private static Reply refit(String into, String... more) {
        List<String> words = new ArrayList<>(List.of("refit", Jobs.TOUR.toString(), "--into", into, "--choices", CHOICES));
        words.addAll(List.of(more));
        return Main.run(words.toArray(new String[0]));
    }

    @Test
    void theFirstScreenAnswersAndCountsAllFourKinds() {
        Reply reply = refit(NEAR);
        assertEquals(1, reply.status(), reply.err());
        String head = reply.out().substring(0, reply.out().indexOf("\n---"));
        assertTrue(head.lines().count() <= SCREEN, head);
        assertTrue(head.contains("DO NOT OPEN THE OLD VEHICLE YET - 2 do not carry over, 2 cannot be told yet."), head);
        assertTrue(head.replace('\n', ' ').matches(".*\\d+ rows: carries over \\d+, carries over after a change 2, does not carry over 2, cannot tell yet 2\\..*"), head);
        assertTrue(head.contains("house-battery") && head.contains("conv-feed-2"), head);
        assertAll(reply.out().lines().map(line -> () -> assertTrue(line.codePointCount(0, line.length()) <= 80, line)));
    }

    @Test
    void jsonHoldsWhatThePagesSay() throws Exception {
        Reply reply = refit(FAR, "--as", "json");
        assertEquals(1, reply.status(), reply.err());
        JsonNode json = new ObjectMapper().readTree(reply.out());
        assertFalse(json.get("may-open").asBoolean());
        assertTrue(json.get("answer").asText().startsWith("DO NOT OPEN"), json.get("answer").asText());
        int rows = 0;
        for (String kind : List.of("carries", "changed", "open", "not")) {
            rows += json.get("counts").get(kind).asInt();
        }
        assertEquals(json.get("rows").size(), rows);
        assertTrue(json.get("ask").size() > 0 && json.get("have").size() > 0 && json.get("put-back").size() > 0);
        assertTrue(json.get("have").get(0).get("days").asInt() > 0);
        assertEquals("holes", json.get("stop-before-step").asText());
        assertTrue(json.get("cannot-be-undone").get("works").size() > 0);
        assertTrue(json.get("changed-verdicts").get("worse").size() > 0 && json.get("changed-verdicts").get("not-applicable").size() > 0);
        assertEquals(4, json.get("levels").get("channels").size());
        assertEquals(7, json.get("levels").get("outputs").size());
        assertEquals(6.02, json.get("levels").get("channels").get(0).get("mid-tone-decibels").asDouble(), 0.005);
        JsonNode hours = json.get("hours");
        assertEquals(2, hours.get("people").asInt());
        assertTrue(hours.get("low").get("seconds").asDouble() < hours.get("likely").get("seconds").asDouble()
                && hours.get("likely").get("seconds").asDouble() < hours.get("high").get("seconds").asDouble());
        assertTrue(hours.get("likely").get("critical-path").size() > 0 && hours.get("steps").size() > 0);
        assertEquals(reply.out(), refit(FAR, "--as", "json").out());
    }

    @Test
    void markdownHoldsThePages() {
        String page = refit(FAR, "--as", "markdown").out();
        for (String heading : List.of("1 WHAT BECOMES OF EACH THING", "2 BEFORE YOU OPEN IT", "3 CHANGED VERDICTS", "4 LEVELS", "5 HOURS", "STOP POINT", "ORDER, MAKE, BORROW")) {
            assertTrue(page.contains(heading), heading);
        }
        assertTrue(page.contains("| --- |") || page.contains("|---|"), page.substring(0, 400));
    }

    @Test
    void aPlanIsWrittenReadsWithoutErrorAndItsReviewIsTheToDoList() throws Exception {
        Path plan = Files.createDirectories(folder.resolve("bus")).resolve("plan.yaml");
        assertEquals(1, refit(FAR, "--write", plan.toString()).status());
        Reply review = Main.run("review", plan.toString(), "--gate", "before-teardown");
        assertEquals(1, review.status(), review.err());
        // What was planted is still to be done there.
        for (String rule : List.of("nothing-vital-behind", "ground-on-fixed-structure", "restraint-wait-kept", "payload-kept", "speaker-fits-its-place", "interface-fits-radio")) {
            assertTrue(review.out().contains(rule), rule);
        }
    }

    @Test
    void nothingIsOverwrittenUnlessTold() throws Exception {
        Path plan = Files.writeString(folder.resolve("plan.yaml"), "# kept by hand\n");
        Reply refused = refit(NEAR, "--write", plan.toString());
        assertEquals(2, refused.status(), refused.out());
        assertEquals("# kept by hand\n", Files.readString(plan));
        assertEquals(1, refit(NEAR, "--write", plan.toString(), "--replace").status());
        assertTrue(Files.readString(plan).contains("bayproof: 1"));
        Reply itself = refit(NEAR, "--write", Jobs.TOUR.toString(), "--replace");
        assertEquals(2, itself.status(), itself.out());
        assertEquals(2, refit(NEAR, "--replace").status());
    }

    @Test
    void whatIsMissingOrWrongIsSaid() {
        assertEquals(2, Main.run("refit", Jobs.TOUR.toString()).status());
        Reply wrong = Main.run("refit", Jobs.TOUR.toString(), "--into", CHOICES);
        assertEquals(2, wrong.status(), wrong.out());
    }
}
