package bayproof.signoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.support.Tally;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record: its form, what it notices, and what a killed process leaves. */
class SignOffRecordTest {
    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve(SignOffRecord.FILE);
    }

    private static Map<String, Object> content(String by) {
        return Map.of("by", by, "when", "2026-11-30T12:00:00Z", "gate", "handover", "may-go", true, "rule-base",
                Map.of("version", "1", "date", "2026-11-25"), "files", List.of(), "verdicts", List.of());
    }

    private Entry sign(String by) throws Exception {
        return SignOffRecord.append(folder, () -> content(by));
    }

    // the form, against what others published

    @Test
    void stringsAndOrderAreThoseOfRfc8785() {
        // RFC 8785 3.2.2.2 and 3.2.3: the standard's own examples.
        assertEquals("{\"literals\":[null,true,false],\"string\":\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}",
                CanonicalJson.write(Map.of("string", "\u20ac$\u000f\nA'B\"\\\\\"/", "literals", Arrays.asList(null, true, false))));
        Map<String, Object> names = new LinkedHashMap<>();
        names.put("\u20ac", "Euro Sign");
        names.put("\r", "Carriage Return");
        names.put("\ufb33", "Hebrew Letter Dalet With Dagesh");
        names.put("1", "One");
        names.put("\ud83d\ude00", "Emoji: Grinning Face");
        names.put("\u0080", "Control");
        names.put("\u00f6", "Latin Small Letter O With Diaeresis");
        assertEquals("{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\",\"\u00f6\":\"Latin Small Letter O With Diaeresis\","
                + "\"\u20ac\":\"Euro Sign\",\"\ud83d\ude00\":\"Emoji: Grinning Face\",\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}", CanonicalJson.write(names));
    }

    @Test
    void theHashIsSha256() {
        // FIPS 180-4, the example "abc".
        assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Digest.of("abc".getBytes(StandardCharsets.US_ASCII)));
    }

    @Test
    void aNumberThatIsNotWholeHasNoPlaceInARecord() {
        assertThrows(IllegalArgumentException.class, () -> CanonicalJson.write(Map.of("a", 0.1)));
        assertThrows(IOException.class, () -> CanonicalJson.read("{\"a\":0.1}"));
        assertThrows(IOException.class, () -> CanonicalJson.read("{\"a\":1,\"a\":2}"));
    }

    @Test
    void meaningIsWhatIsSaidAndNotHowItIsWritten() throws Exception {
        String yaml = "bayproof: 1\nitems:\n  amp: { kind: amplifier, channels: 4 }   # note\n";
        String json = "{\"items\": {\"amp\": {\"channels\": \"4\", \"kind\": \"amplifier\"}}, \"bayproof\": 1}";
        String meaning = Digest.meaning(yaml.getBytes(StandardCharsets.UTF_8), "plan.yaml");
        assertEquals(meaning, Digest.meaning(json.getBytes(StandardCharsets.UTF_8), "plan.yaml"));
        assertTrue(!meaning.equals(Digest.meaning(yaml.replace("4", "5").getBytes(StandardCharsets.UTF_8), "plan.yaml")));
        assertTrue(!meaning.equals(Digest.meaning(yaml.replace("kind: amplifier", "kind: unknown").getBytes(StandardCharsets.UTF_8), "plan.yaml")));
    }

    // what is noticed

    @Test
    void anEntryNamesTheOneBefore() throws Exception {
        Entry first = sign("AB");
        Entry second = sign("CD");
        assertNull(first.before());
        assertEquals(first.hash(), second.before());
        assertEquals(2, second.number());
        Chain chain = Chain.read(folder);
        assertEquals(List.of(), chain.faults());
        assertEquals(second.hash(), chain.last().hash());
        assertEquals(first.hash(), chain.byHead(Digest.shortened(first.hash()).toUpperCase(Locale.ROOT)).hash());
    }

    @Test
    void everyFlippedByteOfARecordIsNoticed() throws Exception {
        sign("AB");
        sign("CD");
        sign("EF");
        byte[] whole = Files.readAllBytes(file());
        for (int i = 0; i < whole.length; i++) {
            byte[] flipped = whole.clone();
            flipped[i] ^= 1;
            Files.write(file(), flipped);
            assertTrue(!Chain.read(folder).faults().isEmpty(), "byte " + i + " was flipped and nobody noticed");
        }
        Tally.count("flipped bytes of a record noticed", whole.length);
    }

    @Test
    void aRewrittenEntryIsCalledSoByTheOneAfterIt() throws Exception {
        sign("AB");
        Entry second = sign("CD");
        Entry third = sign("EF");
        List<String> lines = new ArrayList<>(Files.readAllLines(file()));
        Chain chain = Chain.read(folder);
        // Somebody who knows the form: the second entry gets another signer and the hash that goes with it.
        lines.set(1, Entry.after(chain.entries().get(0), content("XY")).line());
        Files.write(file(), lines);
        assertEquals(List.of("entry 2 was rewritten: entry 3 was signed over another one"), Chain.read(folder).faults());
        // With the rest written anew as well the record fits together: only paper tells.
        lines.set(2, Entry.after(Entry.of(lines.get(1)), content("EF")).line());
        Files.write(file(), lines);
        assertEquals(List.of(), Chain.read(folder).faults());
        assertNull(Chain.read(folder).byHead(third.hash()));
        assertNull(Chain.read(folder).byHead(second.hash()));
    }

    @Test
    void aLineThatWasTakenOutIsMissed() throws Exception {
        sign("AB");
        sign("CD");
        sign("EF");
        List<String> lines = new ArrayList<>(Files.readAllLines(file()));
        lines.remove(1);
        Files.write(file(), lines);
        assertEquals(List.of("entry 2 is missing"), Chain.read(folder).faults());
        lines.remove(0);
        Files.write(file(), lines);
        assertEquals(List.of("entries 1 to 2 are missing"), Chain.read(folder).faults());
    }

    @Test
    void aCutTailIsNoticedInsideAnEntryAndBetweenTwoByPaperAlone() throws Exception {
        Entry first = sign("AB");
        Entry second = sign("CD");
        byte[] whole = Files.readAllBytes(file());
        int firstLine = first.line().length() + 1;
        for (int length = 1; length < whole.length; length++) {
            Files.write(file(), Arrays.copyOf(whole, length));
            Proof proof = Proof.of(folder, Digest.shortened(second.hash()));
            assertTrue(!proof.matches(), "cut to " + length);
            assertEquals(length == firstLine, proof.chain().faults().isEmpty(), "cut to " + length);
        }
        Files.write(file(), Arrays.copyOf(whole, firstLine));
        assertTrue(Proof.of(folder, null).matches(), "without the paper a record that lost its last entry looks whole");
        assertNull(Proof.of(folder, second.hash()).paper().entry());
        assertNotNull(Proof.of(folder, first.hash()).paper().entry());
    }

    // two at once, and killed

    @Test
    void theSecondSignerIsToldAndNothingIsLost() throws Exception {
        Exception[] seen = new Exception[1];
        Entry entry = SignOffRecord.append(folder, () -> {
            try {
                SignOffRecord.append(folder, () -> content("CD"));
            } catch (SignOffRecord.Busy | SignOffRecord.Damaged | IOException e) {
                seen[0] = e;
            }
            return content("AB");
        });
        assertTrue(seen[0] instanceof SignOffRecord.Busy, String.valueOf(seen[0]));
        assertEquals(1, Chain.read(folder).entries().size());
        assertEquals(1, entry.number());
        sign("CD");
        assertEquals(2, Chain.read(folder).entries().size());
    }

    @Test
    void nothingIsPutOnTopOfADamagedRecord() throws Exception {
        sign("AB");
        String text = Files.readString(file());
        Files.writeString(file(), text.replace("\"AB\"", "\"XY\""));
        assertThrows(SignOffRecord.Damaged.class, () -> sign("CD"));
        assertEquals(text.replace("\"AB\"", "\"XY\""), Files.readString(file()));
    }

    @Test
    void fiftyKillsLoseNothingThatWasAcknowledgedAndLeaveNothingHalfWritten() throws Exception {
        Kills kills = new Kills(new Random().nextLong());
        kills.run(folder, 50);
        assertEquals(List.of(), kills.wrong());
        assertTrue(kills.total() > 50, "the processes hardly came to sign: " + kills);
        Tally.count("kills of a signing process without loss", 50);
    }
}
