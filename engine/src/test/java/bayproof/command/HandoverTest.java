package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** May the vehicle go? */
class HandoverTest {
    private static final String[] BROKEN = {"size: 8 AWG, length: 0.35 m", "size: 8 AWG, length: 1.40 m"};

    @TempDir
    private Path folder;

    @Test
    void aCleanJobMayGoAndTheFirstLineSaysSo() {
        for (String job : List.of(Jobs.TOUR.toString(), Jobs.TOUR.getParent().toString())) {
            Reply reply = Main.run("handover", job);
            assertEquals(0, reply.status(), reply.err());
            assertTrue(reply.out().startsWith("TAG T-1187  MAY GO"), reply.out());
            assertTrue(reply.out().contains("5 of 6 met; cargo changed with consent"), reply.out());
            assertAll(reply.out().lines().map(line -> () -> assertTrue(line.codePointCount(0, line.length()) <= 80, line)));
        }
    }

    @Test
    void whatIsBrokenKeepsItAndTheStatusIsThatOfAReview() throws Exception {
        String plan = Jobs.changed(Jobs.TOUR, folder, BROKEN);
        Reply reply = Main.run("handover", plan);
        assertEquals(1, reply.status());
        assertEquals(Main.run("review", plan, "--gate", "handover").status(), reply.status());
        assertTrue(reply.out().startsWith("TAG T-1187  MAY NOT GO - Move the fuse to within"), reply.out());
        JsonNode json = new ObjectMapper().readTree(Main.run("handover", plan, "--as", "json").out());
        assertTrue(!json.get("may-go").asBoolean() && json.get("counts").get("stop").asInt() > 0, json.toString());
    }

    @Test
    void whatIsNotShownIsAForm() throws Exception {
        String plan = Jobs.changed(Jobs.TOUR, folder, "kept: changed-with-consent", "kept: unknown");
        Reply reply = Main.run("handover", plan);
        assertEquals(1, reply.status());
        assertTrue(reply.out().contains("wishes.cargo.kept"), reply.out());
        assertTrue(Main.run("handover", plan, "--ask").out().contains("<sub>wishes.cargo.kept</sub>"));
    }
}
