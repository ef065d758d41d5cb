package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A parts book or vehicle sheet without a plan. */
class SheetTest {
    private static final Path PARTS = Path.of("../seeds/parts.yaml");
    private static final Path VEHICLE = Path.of("../cases/street-show/vehicle.yaml");

    @TempDir
    private Path folder;

    private String changed(Path file, String... changes) throws Exception {
        String text = Files.readString(file);
        for (int i = 0; i < changes.length; i += 2) {
            String before = text;
            text = text.replace(changes[i], changes[i + 1]);
            assertNotEquals(before, text, changes[i]);
        }
        return Files.writeString(folder.resolve(file.getFileName()), text).toString();
    }

    @Test
    void theFilesOfTheCleanJobsLackNothing() {
        Reply book = Main.run("review", PARTS.toString());
        assertEquals(0, book.status(), book.out() + book.err());
        Reply sheet = Main.run("review", VEHICLE.toString());
        assertEquals(0, sheet.status(), sheet.out() + sheet.err());
        assertAll((book.out() + sheet.out()).lines().map(line -> () -> assertTrue(line.codePointCount(0, line.length()) <= 80, line)));
    }

    @Test
    void aMissingValueIsNamedWithTheRulesThatWaitForIt() throws Exception {
        Reply book = Main.run("review", changed(PARTS, "    minimum-load: 2 ohm\n    minimum-load-bridged: 4 ohm\n    rated-output: 50 W\n",
                "    minimum-load-bridged: 4 ohm\n    rated-output: 50 W\n"));
        assertEquals(1, book.status(), book.err());
        assertTrue(book.out().matches("(?s)PARTS BOOK .*DATA MISSING - 1 value in 1 of [0-9]+ parts; .*\nfour-channel-class-d  amplifier  parts\\.yaml:[0-9]+\n"
                + "  minimum-load: least rated load of one channel\n    waits: [A-Z]+ amplifier-load-minimum.*"), book.out());
        Reply sheet = Main.run("review", changed(VEHICLE, "own-load: 28 A", "own-load: unknown", "variant: R-210, ", ""), "--as=json");
        assertEquals(1, sheet.status(), sheet.err());
        JsonNode missing = new ObjectMapper().readTree(sheet.out()).get("missing");
        assertEquals(2, missing.size(), missing.toString());
        assertEquals("supply.own-load", missing.at("/1/key").asText());
        assertTrue(missing.at("/1/waits").toString().contains("charge-balance-idle") || missing.at("/1/assumes").toString().contains("charge-balance-idle"),
                missing.toString());
        assertTrue(missing.at("/0/waits").toString().contains("interface-fits-radio"), missing.toString());
    }

    @Test
    void everyMistakeIsNamedAtOnceAndAnOptionForPlansIsRefused() throws Exception {
        Reply book = Main.run("review", changed(PARTS, "rest: 12.65 V", "rest: 12.65", "kind: alternator\n", "kind: alternatr\n", "set-point: 14.2 V", "set-point: many"));
        assertEquals(2, book.status());
        assertTrue(book.err().contains("Did you mean alternator") && book.err().contains("\"12.65\""), book.err());
        Reply sheet = Main.run("review", changed(VEHICLE, "zone: dash }", "zone: dahs }", "start-dip: 8.8 V", "start-dib: 8.8 V"));
        assertEquals(2, sheet.status());
        assertTrue(sheet.err().contains("Did you mean dash") && sheet.err().contains("Did you mean start-dip"), sheet.err());
        Reply gate = Main.run("review", PARTS.toString(), "--gate", "handover");
        assertEquals(2, gate.status());
        assertTrue(gate.err().contains("--gate belongs to a plan"), gate.err());
    }

    /** The same part in a table that a book names, and in a table alone. */
    @Test
    void partsMayStandInATable() throws Exception {
        Path table = Files.writeString(folder.resolve("ours.csv"), "id,kind,class,channels,minimum-load [ohm],rated-output [W],rated-load [ohm],idle-draw [A]\n"
                + "amp-x,amplifier,D,1,2,300,4,1.1\n");
        Path book = Files.writeString(folder.resolve("book.yaml"), "bayproof: 1\nkind: parts\nparts: ours.csv\n");
        for (Path file : new Path[] {table, book}) {
            Reply reply = Main.run("review", file.toString());
            assertEquals(1, reply.status(), reply.err());
            assertTrue(reply.out().contains("amp-x  amplifier  ours.csv:2") && reply.out().contains("  mass: mass of the item"), reply.out());
            Path plan = Files.writeString(folder.resolve("plan.yaml"), "bayproof: 1\nparts: [ " + file.getFileName()
                    + " ]\nitems: { amp: { part: amp-x }, sub: { kind: speaker, coils: { coil-1: 1 ohm } } }\nspeaker-wiring: { amp.ch-1: { net: sub.coil-1 } }\n");
            Reply review = Main.run("review", plan.toString(), "--topic=speakers");
            assertTrue(review.out().contains("1 ohm, at least 2 ohm"), review.out() + review.err());
        }
        Files.writeString(table, "id,kind,channels\namp-x,amplifier,many\n");
        Reply wrong = Main.run("review", table.toString());
        assertEquals(2, wrong.status());
        assertTrue(wrong.err().contains("ours.csv:2:17:"), wrong.err());
    }
}
