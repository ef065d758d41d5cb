package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The audit of an archive: a clean job, one with a fuse too far away, one that cannot be read. */
class JobsAuditTest {
    /** Signal 2 in a mask of signals. */
    private static final long INTERRUPT = 1L << 1;

    private static final String FEED = "main-fuse.in, size: 4 AWG, length: 0.30 m";
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    private Path root;

    @BeforeEach
    void anArchive() throws IOException {
        root = folder.resolve("archive");
        Jobs.changed(root.resolve("a"), "tag: T-1042", "tag: T-1042, promised: 2026-12-03");
        Jobs.changed(root.resolve("b"), "tag: T-1042", "tag: T-1042, promised: 2026-12-02", FEED, FEED.replace("0.30 m", "1.20 m"));
    }

    private Reply jobs(String... more) {
        List<String> line = new ArrayList<>(List.of("handover", "--jobs", root.toString(), "--today", "2026-11-30"));
        line.addAll(List.of(more));
        return Main.run(line.toArray(new String[0]));
    }

    @Test
    void theSummarySaysWhichMayGoAndWhatHoldsTheOthers() {
        Reply reply = jobs("--all");
        assertEquals(Reply.COUNTS, reply.status(), reply.err());
        String page = reply.out();
        assertTrue(page.contains("2 jobs below") && page.replaceAll("\\s+", " ").contains("1 may go, 1 may not, 0 cannot be read."), page);
        assertTrue(page.contains("T-1042    2026-12-02 NO       The conductor from the battery post to its fuse"), page);
        assertTrue(page.contains("T-1042    2026-12-03 yes"), page);
        assertTrue(page.contains("fuse-near-battery") && page.contains("stop 1, fix 0, advise 0") && page.contains("BY AGE"), page);
        page.lines().forEach(line -> assertTrue(line.length() <= 80, line));
        assertEquals(page, jobs("--all").out(), "the same bytes for the same input");
    }

    @Test
    void betweenTwoVisitsAnAuditAsksForNoMoreThanTheHandover() throws IOException {
        String run = "feed-work-lamp-1:\n    { from: block-stage.out-6, to: work-lamp-1.supply, size: 12 AWG, length: 2.00 m, metal: copper, insulation: 105 °C, through: [],\n"
                + "      support: 250 mm, diameter: 4 mm, bend: 50 mm, near: {}, tied-to: none, label: ";
        String plan = Jobs.changed(Jobs.TOUR, root.resolve("visit"), "unfinished: none }", "unfinished: [ feed-work-lamp-1 ] }", run + "both-ends", run
                + "none, unfinished: { fuse: out, end: capped, tag: tagged, who: lead, when: 2026-11-27, evidence: photos 59 and 60 }");
        assertEquals(Reply.COUNTS, Main.run("review", plan, "--gate", "handover").status(), "its label would count if it were connected");
        assertEquals(Reply.CLEAR, Main.run("handover", plan).status(), Main.run("handover", plan).out());
        String page = Main.run("handover", "--jobs", root.resolve("visit").toString(), "--all").out();
        assertTrue(page.replaceAll("\\s+", " ").contains("1 may go, 0 may not"), page);
    }

    @Test
    void aBrokenJobIsReportedAndDoesNotStopTheRest() throws IOException {
        Path broken = Files.createDirectories(root.resolve("c"));
        Files.writeString(broken.resolve("plan.yaml"), "bayproof: 1\nitems: [ nonsense\n");
        Path empty = Files.createDirectories(root.resolve("d"));
        Files.writeString(empty.resolve("plan.yaml"), "bayproof: 1\n");
        Reply reply = jobs();
        assertEquals(Reply.UNUSABLE, reply.status());
        assertTrue(reply.out().replaceAll("\\s+", " ").contains("1 may not, 2 cannot be read") && reply.out().contains("plan.yaml:") && reply.out().contains("nothing in it to judge")
                || reply.out().contains("Nothing in it to judge") || reply.out().contains("There is nothing in it to judge"), reply.out());
        assertTrue(reply.out().contains("T-1042    2026-12-02 NO"), reply.out());
    }

    @Test
    void aFolderWithoutJobsIsNoArchive() throws IOException {
        assertEquals(Reply.UNUSABLE, Main.run("handover", "--jobs", Files.createDirectories(folder.resolve("none")).toString()).status());
        assertEquals(Reply.UNUSABLE, Main.run("handover", "--jobs", folder.resolve("nowhere").toString()).status());
        assertEquals(Reply.UNUSABLE, Main.run("handover", "--against", "x").status());
    }

    // against a kept audit

    private Path kept() throws IOException {
        return Files.writeString(folder.resolve("saved.json"), jobs("--as", "json").out());
    }

    @Test
    void theSameJobsAndRulesDifferInNothing() throws IOException {
        Reply reply = jobs("--against", kept().toString());
        assertTrue(reply.out().contains("JUDGED DIFFERENTLY  none of 2 jobs"), reply.out());
    }

    @Test
    void anotherLimitIsTheReason() throws IOException {
        Path kept = kept();
        Path limits = Files.writeString(folder.resolve("limits.yaml"),
                "bayproof: 1\nkind: limits\nlimits:\n  fuse-distance-sheathed: { at-most: { stop: 25 cm }, reason: our own }\n");
        Reply reply = jobs("--against", kept.toString(), "--limits", limits.toString());
        String page = reply.out().replaceAll("\\s+", " ");
        assertTrue(page.contains("1 job of 2") && page.contains("was nothing against it; is broken, stop, 300 mm. Because the limit fuse-distance-sheathed was at most 1.02 m (else STOP) "
                + "and is at most 250 mm (else STOP)."), reply.out());
    }

    @Test
    void aNewRuleAndAChangedJobAreTheReason() throws IOException {
        Path kept = kept();
        ObjectNode saved = (ObjectNode) JSON.readTree(kept.toFile());
        for (JsonNode job : saved.get("jobs")) {
            ((ObjectNode) job).putArray("open");
        }
        List<String> rules = new ArrayList<>();
        saved.get("rules").forEach(rule -> rules.add(rule.asText()));
        assertTrue(rules.remove("fuse-near-battery"));
        rules.forEach(saved.putArray("rules")::add);
        Files.writeString(kept, JSON.writeValueAsString(saved));
        assertTrue(jobs("--against", kept.toString()).out().replaceAll("\\s+", " ").contains("Because the rule is new."));
        Path plan = root.resolve("b/cases/street-show/plan.yaml");
        Files.writeString(plan, Files.readString(plan) + "# looked at\n");
        assertTrue(jobs("--against", kept.toString()).out().replaceAll("\\s+", " ").contains("the rule is new; the job's files have changed."));
        Files.writeString(kept, "{\"bayproof\":{}}");
        assertEquals(Reply.UNUSABLE, jobs("--against", kept.toString()).status());
    }

    @Test
    void whatWasKeptUnderAFormerIdIsReadAsTheRuleItIsNow() throws IOException {
        Path limits = Files.writeString(folder.resolve("limits.yaml"),
                "bayproof: 1\nkind: limits\nlimits:\n  fuse-distance-sheathed: { at-most: { stop: 25 cm }, reason: our own }\n");
        String then = jobs("--as", "json", "--limits", limits.toString()).out();
        assertTrue(then.contains("\"rule\":\"fuse-near-battery\"") || then.contains("\"rule\" : \"fuse-near-battery\""), then);
        Path kept = Files.writeString(folder.resolve("saved.json"), then.replace("\"fuse-near-battery\"", "\"fuse-close-to-battery\""));
        Reply reply = jobs("--against", kept.toString(), "--limits", limits.toString());
        assertTrue(reply.out().contains("JUDGED DIFFERENTLY  none of 2 jobs"), reply.out());
    }

    // what came back

    @Test
    void aComebackNamesWhatWasNotShownWhenItLeft() throws IOException {
        String plan = Jobs.changed(Jobs.TOUR, root.resolve("e"), "parked: 240 h", "parked: unknown");
        Main.run("handover", plan, "--sign", "--by", "AB");
        Files.writeString(Path.of(plan), Files.readString(Path.of(plan)).replace("parked: unknown", "parked: 240 h").replaceFirst("(?m)^visits:\n",
                "visits:\n  again: { date: 2999-01-10, reason: comeback, words: it would not start, cause: the standby was too high, hours: 2 h, rule: parked-days, unfinished: none, done: [] }\n"));
        String page = jobs().out();
        assertTrue(page.contains("COMEBACKS  1 of 1 job"), page);
        assertTrue(page.replaceAll("\\s+", " ").contains("belongs to parked-days; not shown when it left:") && page.contains("parked-days"), page);
        JsonNode json = JSON.readTree(jobs("--as", "json").out());
        for (JsonNode job : json.get("jobs")) {
            if (job.get("comebacks").size() > 0) {
                assertTrue(job.at("/comebacks/0/from-record").asBoolean());
                assertTrue(job.at("/comebacks/0/unshown").size() > 0);
                return;
            }
        }
        throw new AssertionError("no comeback in " + json);
    }

    // an interrupt, and the bar

    @Test
    void anInterruptEndsWithWhatIsDone() throws IOException, InterruptedException {
        for (int i = 0; i < 1000; i++) {
            Path job = Files.createDirectories(root.resolve("many-" + i));
            for (String file : List.of("plan.yaml", "vehicle.yaml", "readings.yaml", "pins.csv", "inspections.csv")) {
                Files.copy(Jobs.TOUR.resolveSibling(file), job.resolve(file));
            }
            Files.writeString(job.resolve("plan.yaml"), Files.readString(job.resolve("plan.yaml")).replace("../../seeds/parts.yaml", "../a/seeds/parts.yaml"));
        }
        Path out = folder.resolve("out.txt");
        boolean deaf = interruptsAreIgnored();
        // On a busy machine the program may not have begun when it is interrupted: then it gets more time.
        for (int seconds = 4; seconds < 40; seconds *= 2) {
            Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp", System.getProperty("java.class.path"),
                    Main.class.getName(), "handover", "--jobs", root.toString()).redirectOutput(out.toFile()).redirectError(ProcessBuilder.Redirect.DISCARD).start();
            assertFalse(process.waitFor(seconds, TimeUnit.SECONDS), "it ended before it could be interrupted");
            new ProcessBuilder("kill", deaf ? "-TERM" : "-INT", String.valueOf(process.pid())).start().waitFor();
            assertTrue(process.waitFor(60, TimeUnit.SECONDS));
            String page = Files.readString(out);
            if (!page.isEmpty()) {
                assertTrue(page.startsWith("JOBS  ") && page.contains("STOPPED  before all were done") && page.endsWith("\n"), page);
                assertEquals(deaf ? 143 : 130, process.exitValue(), "the status of a program that a signal ended");
                return;
            }
        }
        throw new AssertionError("an interrupt left nothing printed");
    }

    /** A shell starts what runs in the background deaf to interrupts, and so are the programs started from there; both signals end in one hook. */
    private static boolean interruptsAreIgnored() throws IOException {
        Path status = Path.of("/proc/self/status");
        if (!Files.isReadable(status)) {
            return false;
        }
        return Files.readAllLines(status).stream().filter(line -> line.startsWith("SigIgn:"))
                .anyMatch(line -> (Long.parseUnsignedLong(line.substring(line.indexOf(':') + 1).strip(), 16) & INTERRUPT) != 0);
    }

    @Test
    void theBarFitsItsLine() {
        assertEquals("[===============               ] 1000 of 2000 jobs, 17 may not go ", ProgressBar.text(1000, 2000, 17));
        assertEquals(Reply.COUNTS, jobs().status());
        assertEquals("", jobs().err(), "no bar where nobody reads at a terminal");
    }
}
