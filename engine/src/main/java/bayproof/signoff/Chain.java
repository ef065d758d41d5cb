package bayproof.signoff;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The entries of a record, and everything in which they do not fit together.
 *
 * @param entries the entries that can be read, in the order of the file
 * @param faults  what is wrong, a sentence each; empty where the record is whole
 */
public record Chain(List<Entry> entries, List<String> faults) {
    public Chain {
        entries = List.copyOf(entries);
        faults = List.copyOf(faults);
    }

    /** Reads the record of a job; a job without one has no entries and no faults. */
    public static Chain read(Path folder) throws IOException {
        byte[] bytes = SignOffRecord.bytes(folder);
        List<Entry> entries = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        String text;
        try {
            text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            text = new String(bytes, StandardCharsets.UTF_8);
        }
        int lineNumber = 0;
        for (int from = 0; from < text.length();) {
            int end = text.indexOf('\n', from);
            String line = text.substring(from, end < 0 ? text.length() : end);
            lineNumber++;
            read(line, lineNumber, end < 0, entries, faults);
            from = end < 0 ? text.length() : end + 1;
        }
        return new Chain(entries, faults);
    }

    private static void read(String line, int number, boolean cut, List<Entry> entries, List<String> faults) {
        Entry entry;
        try {
            entry = Entry.of(line);
        } catch (IOException | ClassCastException e) {
            faults.add("line " + number + (cut ? " is half an entry: the end of the record was cut off inside it" : " is damaged: it is no entry any more"));
            return;
        }
        if (cut) {
            faults.add("line " + number + " has lost its end");
        }
        Entry before = entries.isEmpty() ? null : entries.get(entries.size() - 1);
        if (!entry.fitsItself()) {
            faults.add("entry " + entry.number() + " was changed after it was signed: it does not have the hash it says");
        }
        if (before != null ? !before.hash().equals(entry.before()) : entry.before() != null) {
            faults.add(gap(before, entry));
        }
        if (before != null && entry.when().compareTo(before.when()) < 0) {
            faults.add("entry " + entry.number() + " says it is older than the entry before it");
        }
        entries.add(entry);
    }

    private static String gap(Entry before, Entry entry) {
        long expected = before == null ? 1 : before.number() + 1;
        if (entry.number() > expected) {
            return expected == entry.number() - 1 ? "entry " + expected + " is missing" : "entries " + expected + " to " + (entry.number() - 1) + " are missing";
        }
        return before == null ? "entry " + entry.number() + " was signed over another one, which is gone"
                : "entry " + before.number() + " was rewritten: entry " + entry.number() + " was signed over another one";
    }

    /** The last entry; null where there is none. */
    public Entry last() {
        return entries.isEmpty() ? null : entries.get(entries.size() - 1);
    }

    /** The head as it is written on paper; null where nothing was signed. */
    public String head() {
        return entries.isEmpty() ? null : Digest.shortened(last().hash());
    }

    /** The entry of a head from paper, however it is grouped; null where the record holds none such. */
    public Entry byHead(String written) {
        String wanted = plainHead(written);
        return wanted.isEmpty() ? null : entries.stream().filter(entry -> entry.hash().startsWith(wanted)).findFirst().orElse(null);
    }

    /** A head from paper without what groups it. */
    public static String plainHead(String written) {
        return written.toLowerCase(Locale.ROOT).replaceAll("[\\s-]", "");
    }
}
