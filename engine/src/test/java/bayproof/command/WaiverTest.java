package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A decision to accept a verdict: what it changes, what it never changes, and what ends it. */
class WaiverTest {
    private static final String LENGTH = "main-fuse.in, size: 4 AWG, length: 0.30 m";
    private static final String READINGS = "readings: readings.yaml";

    @TempDir
    Path folder;

    /** The clean job with the main fuse 1.2 m away, and a waiver by the entry that the program itself prints. */
    private String job(String... changes) throws IOException {
        String plan = Jobs.changed(folder, LENGTH, LENGTH.replace("0.30 m", "1.20 m"), READINGS, READINGS + "\nwaivers: waivers.yaml");
        Path waivers = Path.of(plan).resolveSibling("waivers.yaml");
        Files.writeString(waivers, "bayproof: 1\nkind: waivers\n");
        String page = Main.run("why", "fuse-near-battery", "--in", plan).out();
        Matcher entry = Pattern.compile("(?m)^    a-name:\\n(?:      .*\\n)+").matcher(page);
        assertTrue(entry.find(), page);
        String text = entry.group().replaceAll("(?m)^  ", "").replace("reason: unknown", "reason: no nearer place in this vehicle")
                .replaceFirst("initials: unknown, role: unknown", "initials: AB, role: lead")
                .replaceFirst("initials: unknown, role: unknown", "initials: CD, role: owner")
                .replace("date: unknown", "date: 2026-11-20").replace("until: unknown", "until: 2026-12-05");
        for (int i = 0; i < changes.length; i += 2) {
            assertTrue(text.contains(changes[i]), text);
            text = text.replace(changes[i], changes[i + 1]);
        }
        Files.writeString(waivers, "bayproof: 1\nkind: waivers\nwaivers:\n" + text);
        return plan;
    }

    private static Reply on(String day, String plan, String... more) {
        String[] line = new String[4 + more.length];
        System.arraycopy(new String[] {"review", plan, "--today", day}, 0, line, 0, 4);
        System.arraycopy(more, 0, line, 4, more.length);
        return Main.run(line);
    }

    @Test
    void anAcceptedVerdictKeepsItsOutcomeAndCountsNoMore() throws IOException {
        String plan = job();
        Reply reply = on("2026-11-30", plan);
        assertEquals(Reply.CLEAR, reply.status(), reply.out() + reply.err());
        assertTrue(reply.out().contains(", 1 waived."), reply.out());
        assertTrue(reply.out().lines().limit(24).anyMatch(line -> line.startsWith("WAIVED  STOP fuse-near-battery feed-1, by the lead until 5 Dec")), reply.out());
        assertTrue(reply.out().contains("BROKEN  1 check\n") && reply.out().contains("WAIVED  1 check\n"), reply.out());
        assertTrue(reply.out().replaceAll("\\s+", " ").contains("Waived: no nearer place in this vehicle. By AB (lead) with CD (owner), 20 Nov 2026 until 5 Dec 2026"), reply.out());
        JsonNode json = new ObjectMapper().readTree(on("2026-11-30", plan, "--as", "json").out());
        assertEquals(1, json.at("/counts/waived").asInt());
        assertFalse(json.at("/bayproof/counts-against").asBoolean());
        boolean seen = false;
        for (JsonNode verdict : json.get("verdicts")) {
            if (verdict.has("waived")) {
                seen = true;
                assertEquals("broken", verdict.get("outcome").asText());
                assertEquals("no nearer place in this vehicle", verdict.at("/waived/reason").asText());
                assertEquals("lead", verdict.at("/waived/by").asText());
            }
        }
        assertTrue(seen);
    }

    /** Former ids stand in a list of the test resources. */
    @Test
    void aWaiverUnderAFormerIdGoesOnAndOneOfAWithdrawnRuleIsToldWhy() throws IOException {
        String plan = job("rule: fuse-near-battery", "rule: fuse-close-to-battery");
        Reply reply = on("2026-11-30", plan);
        assertEquals(Reply.CLEAR, reply.status(), reply.out() + reply.err());
        assertTrue(reply.out().contains(", 1 waived."), reply.out());
        Path waivers = Path.of(plan).resolveSibling("waivers.yaml");
        Files.writeString(waivers, Files.readString(waivers).replace("fuse-close-to-battery", "main-fuse-painted-red"));
        assertTrue(on("2026-11-30", plan).out().replaceAll("\\s+", " ").contains("main-fuse-painted-red was withdrawn in rule base 3: a color tells nobody what a fuse guards"));
    }

    @Test
    void theHandoverSaysWhatItGoesWith() throws IOException {
        String plan = job();
        Reply reply = Main.run("handover", plan, "--today", "2026-11-30");
        assertEquals(Reply.CLEAR, reply.status(), reply.out());
        assertTrue(reply.out().startsWith("TAG T-1042  MAY GO - 1 accepted by the lead until 5 Dec.\n"), reply.out());
        assertTrue(Main.run("handover", plan, "--today", "2026-12-06").out().contains("MAY NOT GO - Move the fuse"));
    }

    @Test
    void everySheetShowsWhoAcceptedItAndWhy() throws IOException {
        String plan = job();
        String reason = "nearer place in this vehicle";
        for (String[] line : new String[][] {{"sheet", plan}, {"sheet", plan, "--as", "markdown"}, {"sheet", plan, "--as", "json"}, {"review", plan, "--as", "sarif"},
            {"review", plan, "--as", "junit"}, {"handover", plan, "--as", "markdown"}, {"handover", plan, "--as", "json"}, {"handover", plan, "--customer"},
            {"handover", plan, "--as", "sarif"}, {"handover", plan, "--as", "junit"}}) {
            String[] dated = Arrays.copyOf(line, line.length + 2);
            dated[line.length] = "--today";
            dated[line.length + 1] = "2026-11-30";
            Reply reply = Main.run(dated);
            assertEquals(Reply.CLEAR, reply.status(), String.join(" ", line) + reply.out() + reply.err());
            assertTrue(reply.out().replaceAll("\\s+", " ").contains(reason), String.join(" ", line) + "\n" + reply.out());
            assertFalse(reply.out().contains("STOP OPEN"), reply.out());
        }
        String jobs = Main.run("handover", "--jobs", folder.toString(), "--all", "--today", "2026-11-30").out();
        assertTrue(jobs.replaceAll("\\s+", " ").contains("1 waived: fuse-near-battery, no " + reason), jobs);
        assertTrue(Main.run("sheet", plan, "--today", "2026-12-06").out().contains("STOP OPEN"), "the day after its last one");
        String customer = Main.run("handover", plan, "--customer", "--today", "2026-11-30").out();
        assertFalse(customer.contains("fuse-near-battery"), "no rule on the customer's page");
    }

    @Test
    void itsLastDayStillCountsAndTheNextOneDoesNot() throws IOException {
        String plan = job();
        assertEquals(Reply.CLEAR, on("2026-12-05", plan).status());
        Reply after = on("2026-12-06", plan);
        assertEquals(Reply.COUNTS, after.status());
        assertTrue(after.out().contains("1 stop, 1 fix") && after.out().contains("it was 2026-12-05"), after.out());
        assertEquals(Reply.COUNTS, on("2026-11-19", plan).status(), "nobody accepts ahead of the day");
        assertEquals(after, on("2026-12-06", plan), "the same day gives the same page");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "measured: 1.20 m | measured: 1.10 m | the value is 1.20 m, accepted was 1.10 m",
        "limit: 1.02 m | limit: 1.10 m | the limit is 1.02 m, it was 1.10 m",
        "facts: \" | facts: \"0 | a fact that the rule read has changed",
        "subject: runs.feed-1 | subject: runs.feed-9 | nothing judges runs.feed-9 by fuse-near-battery",
        "initials: CD | initials: ab | a shop with one signer disconnects the branch"})
    void whatItWasNotGivenForEndsIt(String text, String other, String reason) throws IOException {
        Reply reply = on("2026-11-30", job(text, other));
        assertEquals(Reply.COUNTS, reply.status());
        assertTrue(reply.out().replaceAll("\\s+", " ").contains(reason), reply.out());
        assertFalse(reply.out().contains(", 1 waived"), reply.out());
    }

    @Test
    void aBetterValueAndAnotherSpellingEndNothing() throws IOException {
        assertEquals(Reply.CLEAR, on("2026-11-30", job("measured: 1.20 m", "measured: 1.30 m", "limit: 1.02 m", "limit: 40 in")).status());
    }

    @Test
    void whatNobodyWroteAcceptsNothingAndIsAskedForFromWhoeverDecides() throws IOException {
        Reply reply = on("2026-11-30", job("reason: no nearer place in this vehicle", "reason: unknown"));
        assertEquals(Reply.COUNTS, reply.status());
        assertTrue(reply.out().contains("whoever decides"), reply.out());
    }

    @Test
    void aFactThatTheRuleReadEndsIt() throws IOException {
        String plan = job();
        Files.writeString(Path.of(plan), Files.readString(Path.of(plan)).replace(LENGTH.replace("0.30 m", "1.20 m") + ", metal: copper, insulation: 105 °C, cover: closed-tube",
                LENGTH.replace("0.30 m", "1.20 m") + ", metal: copper, insulation: 105 °C, cover: none"));
        Reply reply = on("2026-11-30", plan);
        assertEquals(Reply.COUNTS, reply.status());
        assertTrue(reply.out().contains("waiver-in-force"), reply.out());
    }

    @Test
    void whatIsNotShownIsAcceptedUntilAGateOrADay() throws IOException {
        String plan = Jobs.changed(folder, "parked: 240 h", "parked: unknown", READINGS, READINGS + "\nwaivers: waivers.yaml");
        Path waivers = Path.of(plan).resolveSibling("waivers.yaml");
        Files.writeString(waivers, "bayproof: 1\nkind: waivers\n");
        JsonNode open = new ObjectMapper().readTree(on("2026-11-30", plan, "--as", "json").out());
        StringBuilder entries = new StringBuilder();
        for (JsonNode verdict : open.get("verdicts")) {
            if (verdict.get("outcome").asText().equals("unshown")) {
                String page = Main.run("why", verdict.get("rule").asText(), "--in", plan).out();
                Matcher mark = Pattern.compile("facts: (\"[0-9a-f]+\")").matcher(page);
                assertTrue(mark.find(), page);
                entries.append("  w").append(entries.length()).append(": { rule: ").append(verdict.get("rule").asText()).append(", subject: ")
                        .append(verdict.get("subject").asText()).append(", facts: ").append(mark.group(1)).append(", reason: the customer is asked on Monday, "
                        + "by: { initials: AB, role: lead }, second: { initials: CD, role: owner }, date: 2026-11-20, measured-by: GATE }\n");
            }
        }
        assertTrue(entries.length() > 0);
        String text = "bayproof: 1\nkind: waivers\nwaivers:\n" + entries;
        Files.writeString(waivers, text.replace("GATE", "before-power"));
        assertEquals(Reply.CLEAR, on("2026-11-30", plan).status(), on("2026-11-30", plan).out());
        assertEquals(Reply.COUNTS, on("2026-11-30", plan, "--gate", "before-power").status());
        Files.writeString(waivers, text.replace("GATE", "2026-12-01"));
        assertEquals(Reply.CLEAR, on("2026-12-01", plan).status());
        assertEquals(Reply.COUNTS, on("2026-12-02", plan).status());
        Files.writeString(waivers, text.replace(", measured-by: GATE", ", until: 2026-12-01"));
        assertEquals(Reply.COUNTS, on("2026-11-30", plan).status(), "a last day alone accepts nothing that is not shown");
    }

    @Test
    void mistakesInTheFileAreToldWithTheirPlace() throws IOException {
        String plan = job("date: 2026-11-20", "date: 20.11.2026", "until: 2026-12-05", "untill: 2026-12-05");
        Reply reply = on("2026-11-30", plan);
        assertEquals(Reply.UNUSABLE, reply.status());
        assertTrue(reply.err().contains("waivers.yaml:13:11") && reply.err().contains("Did you mean until") && reply.err().contains("2026-11-20"), reply.err());
        assertEquals(Reply.UNUSABLE, Main.run("review", plan, "--today", "tomorrow").status());
    }
}
