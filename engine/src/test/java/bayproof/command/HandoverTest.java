package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.judge.RuleBase;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
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

    @Test
    void theCheckInSheetIsReadBackIntoTheFilesAndSaysWhoCheckedIn() throws Exception {
        String plan = Jobs.changed(Jobs.CLEAN, folder, "  floor: dry\n", "", "  who: apprentice\n  when: 2026-11-19T08:30\n", "", "windows: { before: faulty, ", "windows: { ");
        assertEquals(1, Main.run("handover", plan, "--gate=before-teardown").status());
        String sheet = Main.run("handover", plan, "--check-in").out();
        assertAll(sheet.lines().map(line -> () -> assertTrue(line.codePointCount(0, line.length()) <= 80, line)));
        String filled = answered(answered(answered(answered(sheet, "form.by", "apprentice"), "form.when", "2026-11-19T08:30"), "check-in.floor", "dry"),
                "functions.windows.before", "faulty");
        Path form = Files.writeString(folder.resolve("check-in.md"), filled);
        Reply reply = Main.run("handover", plan, "--filled", form.toString(), "--write");
        assertEquals(0, reply.status(), reply.out() + reply.err());
        Reply judged = Main.run("handover", plan);
        assertEquals(0, judged.status(), judged.out());
    }

    private static String answered(String form, String path, String answer) {
        String mark = "<sub>" + path + "</sub>";
        int from = form.indexOf(mark);
        assertTrue(from > 0, "no question for " + path);
        int line = form.indexOf("________________________", from);
        return form.substring(0, line) + answer + form.substring(line + 24);
    }

    @Test
    void aReadingReplacesWhatWasWrittenAndTheOldValueIsShown() throws Exception {
        String plan = Jobs.changed(Jobs.TOUR, folder);
        Path readings = Path.of(plan).resolveSibling("readings.yaml");
        Files.writeString(readings, Files.readString(readings)
                + "  load: { of: supply.own-load, value: 33 A, instrument: clamp meter, state: charging-idle, who: lead, when: 2026-11-26T13:20 }\n"
                + "  strap: { of: supply.links.body-strap.length, value: 0.40 m, instrument: string, state: supply-off, who: lead }\n");
        String page = Main.run("handover", plan, "--as", "json").out();
        for (JsonNode row : new ObjectMapper().readTree(page).get("planned-and-built")) {
            if (row.get("what").asText().equals("supply.own-load")) {
                assertEquals("30 A", row.get("planned").asText());
                assertEquals("33 A", row.get("built").asText());
                assertEquals("+3 A", row.get("difference").asText());
                assertTrue(Main.run("handover", plan).out().contains("DOES NOT COUNT"), "the reading without a time");
                return;
            }
        }
        throw new AssertionError(page);
    }

    @Test
    void readingsMayBeATable() throws Exception {
        String plan = Jobs.changed(Jobs.TOUR, folder, "readings: readings.yaml", "readings: readings.csv");
        StringBuilder table = new StringBuilder("id,of,value,instrument,state,who,when,place\n");
        int number = 0;
        for (String line : Files.readAllLines(Path.of(plan).resolveSibling("readings.yaml"))) {
            if (line.contains("{ of: ")) {
                Map<String, String> values = Arrays.stream(line.substring(line.indexOf('{') + 1, line.lastIndexOf('}')).split(", ")).map(one -> one.strip().split(": ", 2))
                        .collect(Collectors.toMap(one -> one[0], one -> one[1]));
                table.append("reading-").append(++number);
                List.of("of", "value", "instrument", "state", "who", "when", "place").forEach(key -> table.append(',').append(values.getOrDefault(key, "")));
                table.append('\n');
            }
        }
        assertTrue(number > 10, table.toString());
        Files.writeString(Path.of(plan).resolveSibling("readings.csv"), table.toString());
        Reply reply = Main.run("handover", plan);
        assertEquals(0, reply.status(), reply.out() + reply.err());
    }

    @Test
    void whatNoVehicleCanShowIsRefusedWithTheReason() throws Exception {
        Reply volts = Main.run("handover", Jobs.changed(Jobs.TOUR, folder, "feed-drop: 150 mV", "feed-drop: 150 V"));
        assertEquals(2, volts.status());
        assertTrue(volts.err().contains("cannot be 150 V"), volts.err());
        Reply joint = Main.run("handover", Jobs.changed(Jobs.TOUR, folder.resolve("b"), "joint-drop: 30 mV", "joint-drop: 300 mV"));
        assertTrue(joint.err().replaceAll("\\s+", " ").contains("one joint cannot lose 0.3 V where feed and ground of amp-front lose 0.24 V"), joint.err());
        Reply sleep = Main.run("handover", Jobs.changed(Jobs.TOUR, folder.resolve("c"), "third: { after: 90 min }", "third: { after: 9 min }"));
        assertEquals(2, sleep.status(), sleep.out());
    }

    @Test
    void whatTheJobsOwnCopperAndOutputRuleOutIsRefused() throws Exception {
        // amp-sub hangs on 0.60 m of 8 AWG: by ASTM B258 2.06 mohm a meter at 20 °C, 1.9 at 0 °C, 11.5 A: 13 mV are lost in the copper.
        Reply copper = Main.run("handover", Jobs.changed(Jobs.TOUR, folder, "feed-drop: 160 mV", "feed-drop: 1.6 mV"));
        assertEquals(2, copper.status(), copper.out());
        assertTrue(copper.err().replaceAll("\\s+", " ").contains("feed-drop cannot be 1.6 mV: the copper of the wire alone loses"), copper.err());
        Reply output = Main.run("handover", Jobs.changed(Jobs.TOUR, folder.resolve("b"), "measured: 13.6 V", "measured: 136 V"));
        assertEquals(2, output.status(), output.out());
        assertTrue(output.err().replaceAll("\\s+", " ").contains("gain.measured cannot be 136 V: at its rated power the output has"), output.err());
    }

    @Test
    void everyThingThatIsMeasuredOrTriedIsARowWithItsDifference() throws Exception {
        String plan = Jobs.changed(Jobs.TOUR, folder, "amp-front.ch-3: { net: tweeter-left.coil-1, polarity: as-marked", "amp-front.ch-3: { net: tweeter-left.coil-1, polarity: reversed");
        Path looks = Path.of(plan).resolveSibling("inspections.csv");
        Files.writeString(looks, Files.readString(looks).replace("log of the detector in the job folder,none", "log of the detector in the job folder,sub-2"));
        Map<String, JsonNode> rows = new HashMap<>();
        new ObjectMapper().readTree(Main.run("handover", plan, "--as", "json").out()).get("planned-and-built").forEach(row -> rows.put(row.get("what").asText(), row));
        for (String what : List.of("items.amp-front.under-load, feed and ground drop", "supply.sources.start-battery.charging.idle", "sleep.third.current",
                "speaker-wiring.amp-front.ch-1.resistance", "items.woofer-left, polarity", "settings.amp-front.ch-1.gain.measured", "fault codes", "heat-soak.joint",
                "items.amp-sub.under-load.case", "listening.whine", "listening.hiss", "listening.thump", "listening.echo", "listening.rattle")) {
            assertTrue(rows.containsKey(what) && !rows.get(what).get("difference").isNull() && !rows.get(what).get("planned").isNull(), what + ": " + rows.get(what));
        }
        assertTrue(rows.get("sleep.third.current").get("how").asText().contains("90 min after it was locked, latches closed, 12.00 m to the key, meter clamp"),
                rows.get("sleep.third.current").toString());
        assertEquals("moves out", rows.get("items.woofer-left, polarity").get("built").asText());
        assertEquals("moves in on a plus pulse", rows.get("items.tweeter-left, polarity").get("planned").asText(), "its leads are reversed");
        assertEquals("the other way", rows.get("items.sub-2, polarity").get("difference").asText());
        assertEquals("45 A to 90 A assumed", rows.get("supply.sources.alternator.idle-output").get("planned").asText(), "30 % to 60 % of 150 A");
    }

    @Test
    void aComebackBelongsToARuleThatThereIs() throws Exception {
        String visit = "  second: { date: 2026-12-10, reason: comeback, words: it whines, cause: a loose ground, hours: 1 h, rule: %s, unfinished: none }\n";
        String first = "  first: { date: 2026-11-27, reason: planned, unfinished: none }\n";
        Reply slip = Main.run("handover", Jobs.changed(Jobs.TOUR, folder, first, first + String.format(visit, "ground-metal-bare")));
        assertEquals(2, slip.status(), slip.out());
        assertTrue(slip.err().replaceAll("\\s+", " ").contains("\"ground-metal-bare\" is not a rule, or none. Did you mean"), slip.err());
        Reply none = Main.run("handover", Jobs.changed(Jobs.TOUR, folder.resolve("b"), first, first + String.format(visit, "none")));
        assertEquals(0, none.status(), none.out() + none.err());
        assertTrue(none.out().replaceAll("\\s+", " ").contains("\"it whines\" Found: a loose ground. Hours: 1.00 h. Rule: none."), none.out());
    }

    @Test
    void theFirstScreenHoldsWhatAnOwnerAsks() throws Exception {
        String page = Main.run("handover", Jobs.changed(Jobs.TOUR, folder, "booked: 27 h", "booked: 27 h, promised: 2026-11-27T17:00")).out();
        String screen = page.lines().limit(24).collect(Collectors.joining("\n"));
        for (String label : List.of("Promised      2026-11-27T17:00.", "Broken        0 stop, 0 fix", "Wishes        5 of 6", "Found things  1, decided 1", "Functions     13 of 13",
                "Fault codes   0 new.", "Unfinished    no run.", "Readings      farthest", "Signed        not yet.", "On paper      shop")) {
            assertTrue(screen.contains(label), label + "\n" + screen);
        }
    }

    @Test
    void aSleepReadingThatStillFallsIsNotAsleepYet() throws Exception {
        String plan = Jobs.changed(Jobs.TOUR, folder);
        Path readings = Path.of(plan).resolveSibling("readings.yaml");
        Files.writeString(readings, Files.readString(readings).replace("23.5 mA", "38 mA"));
        assertTrue(Main.run("handover", plan).out().startsWith("TAG T-1187  MAY NOT GO - Not asleep yet"), "it fell from 38 mA to 23 mA");
    }

    @Test
    void betweenTwoVisitsOnlyWhatIsConnectedIsDue() throws Exception {
        String run = "feed-work-lamp-1:\n    {";
        String left = "unfinished: none }", some = "unfinished: [ feed-work-lamp-1 ] }";
        String open = Jobs.changed(Jobs.TOUR, folder, left, some);
        assertTrue(Main.run("handover", open).out().startsWith("TAG T-1187  MAY NOT GO - not shown: whether its fuse is in or out"), "nobody says how it was left");
        String dead = Jobs.changed(Jobs.TOUR, folder.resolve("b"), left, some, run, run
                + " unfinished: { fuse: out, end: capped, tag: tagged, who: lead, when: 2026-11-27, evidence: photos 59 and 60 }, ");
        Reply reply = Main.run("handover", dead);
        assertEquals(0, reply.status(), reply.out() + reply.err());
        assertTrue(reply.out().contains("1 run: feed-work-lamp-1."), reply.out());
    }

    @Test
    void theCustomersPageIsOnePlainPageWithoutARule() {
        String page = Main.run("handover", Jobs.TOUR.toString(), "--customer").out();
        assertTrue(page.contains("page 1 of 1") && page.contains("16 CFR 700.10") && page.contains("This is no legal advice."), page);
        assertTrue(page.contains("conv fuse        battery tray  50 A"), page);
        RuleBase.built().rules().keySet().forEach(rule -> assertTrue(!page.contains(rule), rule));
        assertTrue(page.lines().count() <= 72, "one page");
        assertTrue(Main.run("handover", Jobs.TOUR.toString(), "--customer", "--as=markdown").out().startsWith("# Tour van sound and stage"));
    }
}
