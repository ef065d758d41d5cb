package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.signoff.SignOffRecord;
import bayproof.support.Tally;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Signing a job and proving later what was signed. */
class SignOffTest {
    private static final int FLIPS_A_FILE = 12;

    @TempDir
    Path folder;

    private Path job;

    @BeforeEach
    void aJob() throws IOException {
        job = Path.of(Jobs.changed(folder)).getParent();
        Files.createDirectories(job.resolve("photos"));
        Files.write(job.resolve("photos").resolve("1.jpg"), new byte[] {1, 2, 3, 4, 5});
    }

    private String sign(String by) {
        Reply reply = Main.run("handover", job.toString(), "--sign", "--by", by);
        assertEquals(Reply.CLEAR, reply.status(), reply.out() + reply.err());
        Matcher head = Pattern.compile("(?m)^HEAD    ([0-9a-f-]{19})$").matcher(reply.out());
        assertTrue(head.find(), reply.out());
        return head.group(1);
    }

    private Reply prove(String... more) {
        String[] line = new String[3 + more.length];
        System.arraycopy(new String[] {"handover", job.toString(), "--prove"}, 0, line, 0, 3);
        System.arraycopy(more, 0, line, 3, more.length);
        return Main.run(line);
    }

    @Test
    void whatWasSignedMatchesAndItsHeadStandsOnTheSheet() {
        String head = sign("AB");
        Reply proof = prove();
        assertEquals(Reply.CLEAR, proof.status(), proof.out() + proof.err());
        assertTrue(proof.out().startsWith("MATCHES  1 entry") && proof.out().contains("WHAT THIS CANNOT SHOW"), proof.out());
        assertFalse(prove("--head", head).out().contains("WHAT THIS CANNOT SHOW"));
        assertTrue(Main.run("handover", job.toString()).out().contains("Head " + head + "."));
        assertTrue(Main.run("handover", job.toString(), "--as", "markdown").out().contains(head));
        proof.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
    }

    @Test
    void oneFlippedByteOfAnySignedFileIsReported() throws IOException {
        everyKind();
        sign("AB");
        Random random = new Random(17);
        int flips = 0;
        for (Path file : List.of(job.resolve("plan.yaml"), job.resolve("vehicle.yaml"), job.resolve("readings.yaml"), folder.resolve("tour").resolve("seeds").resolve("parts.yaml"),
                job.resolve("limits.yaml"), job.resolve("waivers.yaml"), job.resolve("pins.csv"), job.resolve("inspections.csv"), job.resolve("photos").resolve("1.jpg"))) {
            byte[] whole = Files.readAllBytes(file);
            for (int i = 0; i < FLIPS_A_FILE; i++) {
                byte[] flipped = whole.clone();
                flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
                Files.write(file, flipped);
                Reply proof = prove();
                String line = proof.out().lines().filter(one -> one.contains("/" + file.getFileName()) || one.startsWith("  " + file.getFileName())).findFirst().orElse("");
                assertFalse(line.contains("same bytes"), file + ": " + proof.out());
                assertTrue(line.contains("same meaning") == (proof.status() == Reply.CLEAR), proof.out());
                flips++;
            }
            Files.write(file, whole);
            assertEquals(Reply.CLEAR, prove().status());
        }
        Tally.count("flipped bytes of signed files reported", flips);
    }

    /** A job with tables, shop limits, waivers and a photo. */
    private void everyKind() throws IOException {
        job = Path.of(Jobs.changed(Jobs.TOUR, folder.resolve("tour"), "readings: readings.yaml", "readings: readings.yaml\nlimits: limits.yaml\nwaivers: waivers.yaml")).getParent();
        Files.writeString(job.resolve("limits.yaml"), "bayproof: 1\nkind: limits\nlimits:\n  charging-fall: { at-most: 90 mV, reason: our meters read finer }\n");
        Files.writeString(job.resolve("waivers.yaml"), "bayproof: 1\nkind: waivers\nwaivers: {}\n");
        Files.createDirectories(job.resolve("photos"));
        Files.write(job.resolve("photos").resolve("1.jpg"), new byte[] {1, 2, 3, 4, 5});
    }

    @Test
    void bytesAndMeaningAreToldApart() throws IOException {
        sign("AB");
        Path plan = job.resolve("plan.yaml");
        Files.writeString(plan, "# looked at again\n" + Files.readString(plan));
        assertEquals(Reply.CLEAR, prove().status());
        assertTrue(prove().out().contains("plan.yaml  other bytes, same meaning"), prove().out());
        Files.writeString(plan, Files.readString(plan).replace("length: 5.20 m", "length: 5.21 m"));
        assertEquals(Reply.COUNTS, prove().status());
        assertTrue(prove().out().contains("plan.yaml  CHANGED: it says something else"), prove().out());
        Files.delete(job.resolve("photos").resolve("1.jpg"));
        assertTrue(prove().out().contains("photos/1.jpg  GONE"), prove().out());
    }

    @Test
    void aPhotoThatCameLaterOrThatAReadingNamesIsToldToo() throws IOException {
        Files.createDirectories(job.resolve("pictures"));
        Files.write(job.resolve("pictures").resolve("meter.jpg"), new byte[] {9, 8, 7});
        Path readings = job.resolve("readings.yaml");
        String before = Files.readString(readings);
        // SHA-256 of the bytes 9, 8, 7 as sha256sum prints it.
        String hash = "06df4f7e1394f1c57cc6583fba4d8060a5a66f4f4771c14aeff6b9af8a28c9b3";
        Files.writeString(readings, before.replaceFirst("who: ", "photo: pictures/meter.jpg, photo-hash: " + hash + ", who: "));
        sign("AB");
        assertTrue(prove().out().contains("pictures/meter.jpg  same bytes"), prove().out());
        Files.write(job.resolve("photos").resolve("2.jpg"), new byte[] {6});
        Reply proof = prove();
        assertEquals(Reply.COUNTS, proof.status());
        assertTrue(proof.out().contains("photos/2.jpg  NEW: it was not there when this was signed"), proof.out());
        Files.write(job.resolve("pictures").resolve("meter.jpg"), new byte[] {9, 8});
        Reply other = Main.run("handover", job.toString());
        assertEquals(Reply.UNUSABLE, other.status());
        assertTrue(other.err().replaceAll("\\s+", " ").contains("meter.jpg is another photo than the reading says"), other.err());
    }

    @Test
    void aRecordThatLostItsEndIsFoundByThePaper() throws IOException {
        String first = sign("AB");
        Path record = job.resolve(SignOffRecord.FILE);
        String before = Files.readString(record);
        String second = sign("CD");
        Files.writeString(record, before);
        assertEquals(Reply.CLEAR, prove().status());
        assertEquals(Reply.CLEAR, prove("--head", first).status());
        Reply cut = prove("--head", second);
        assertEquals(Reply.COUNTS, cut.status());
        assertTrue(cut.out().replaceAll("\\s+", " ").contains("the end of the record was cut off"), cut.out());
    }

    @Test
    void anEntryThatWasRewrittenIsReportedAndNothingIsSignedOverIt() throws IOException {
        sign("AB");
        sign("CD");
        Path record = job.resolve(SignOffRecord.FILE);
        Files.writeString(record, Files.readString(record).replaceFirst("\"by\":\"AB\"", "\"by\":\"EF\""));
        Reply proof = prove();
        assertEquals(Reply.COUNTS, proof.status());
        assertTrue(proof.out().contains("Entry 1 was changed after it was signed") && proof.out().contains("Entry 1 was rewritten"), proof.out());
        Reply signing = Main.run("handover", job.toString(), "--sign", "--by", "GH");
        assertEquals(Reply.UNUSABLE, signing.status());
        assertTrue(signing.err().contains("Nothing was signed"), signing.err());
    }

    @Test
    void ofTwoProcessesThatSignAtOnceTheSecondIsTold() throws Exception {
        Process first = process(SlowSigner.class.getName(), job.toString());
        assertEquals("locked", first.inputReader().readLine());
        Process second = process(Main.class.getName(), "handover", job.toString(), "--sign", "--by", "CD");
        String told = new String(second.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(Reply.UNUSABLE, second.waitFor(), told);
        assertTrue(told.replaceAll("\\s+", " ").contains("Somebody else is signing this job at this moment. Nothing was signed."), told);
        first.outputWriter().append('\n').close();
        assertEquals(0, first.waitFor());
        Process again = process(Main.class.getName(), "handover", job.toString(), "--sign", "--by", "CD");
        assertTrue(new String(again.getInputStream().readAllBytes(), StandardCharsets.UTF_8).startsWith("SIGNED  entry 2 by CD"));
        assertEquals(Reply.CLEAR, again.waitFor());
        assertEquals(2, Files.readAllLines(job.resolve(SignOffRecord.FILE)).size());
    }

    private static Process process(String... command) throws IOException {
        List<String> line = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-cp", System.getProperty("java.class.path")));
        line.addAll(List.of(command));
        return new ProcessBuilder(line).start();
    }

    @Test
    void aJobThatMayNotGoIsSignedAsWhatItIs() throws IOException {
        Path plan = job.resolve("plan.yaml");
        Files.writeString(plan, Files.readString(plan).replace("main-fuse.in, size: 4 AWG, length: 0.30 m", "main-fuse.in, size: 4 AWG, length: 1.20 m"));
        Reply reply = Main.run("handover", job.toString(), "--sign", "--by", "AB");
        assertEquals(Reply.COUNTS, reply.status());
        assertTrue(reply.out().contains("MAY NOT GO - Move the fuse"), reply.out());
        assertTrue(prove().out().replaceAll("\\s+", " ").contains("may not go (handover)"), prove().out());
    }

    @Test
    void tenAttestationsInTwoMinutesWereTickedInOneGo() throws IOException {
        job = Path.of(Jobs.changed(Jobs.TOUR, folder.resolve("tour"))).getParent();
        assertFalse(Main.run("handover", job.toString()).out().contains("ticked in one go"));
        Path pins = job.resolve("pins.csv");
        String text = Files.readString(pins);
        // Every pin was proved within one minute.
        String hasty = text.replaceAll("2026-11-19T[0-9:]+", "2026-11-19T10:20");
        assertFalse(hasty.equals(text));
        Files.writeString(pins, hasty);
        Reply reply = Main.run("handover", job.toString());
        assertTrue(reply.out().replaceAll("\\s+", " ").contains("ticked in one go: 30 by apprentice"), reply.out());
        assertTrue(Main.run("handover", job.toString(), "--sign", "--by", "AB").out().contains("Ticked in one go"));
        assertTrue(Files.readString(job.resolve(SignOffRecord.FILE)).contains("\"one-go\":[{\"count\":30,"));
    }

    @Test
    void wrongUseIsExplained() {
        for (String[] line : new String[][] {{"--sign"}, {"--sign", "--by", "A B"}, {"--by", "AB"}, {"--head", "3fa9-01c2"}, {"--prove", "--head", "paper"}, {"--sign", "--prove"}}) {
            String[] whole = new String[2 + line.length];
            System.arraycopy(new String[] {"handover", job.toString()}, 0, whole, 0, 2);
            System.arraycopy(line, 0, whole, 2, line.length);
            assertEquals(Reply.UNUSABLE, Main.run(whole).status(), String.join(" ", whole));
        }
        assertEquals(Reply.COUNTS, prove().status(), "nobody signed yet");
        assertTrue(prove().out().startsWith("NOT SIGNED"), prove().out());
    }
}
