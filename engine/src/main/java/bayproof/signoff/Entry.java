package bayproof.signoff;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One entry of a record: what somebody signed, chained to the entry before by that one's hash. */
public final class Entry {
    static final long FORMAT = 1;

    private final Map<String, Object> content;
    private final String hash;

    private Entry(Map<String, Object> content) {
        this.content = content;
        this.hash = hashOf(content);
    }

    /** The hash of everything in an entry but the hash itself. */
    private static String hashOf(Map<String, Object> content) {
        Map<String, Object> bare = new LinkedHashMap<>(content);
        bare.remove("hash");
        return Digest.of(CanonicalJson.write(bare));
    }

    /** An entry that follows another; {@code null} for the first. */
    static Entry after(Entry before, Map<String, Object> signed) {
        Map<String, Object> content = new LinkedHashMap<>(signed);
        content.put("format", FORMAT);
        content.put("number", before == null ? 1 : before.number() + 1);
        content.put("before", before == null ? null : before.hash());
        content.put("hash", hashOf(content));
        return new Entry(content);
    }

    /**
     * An entry as its line says it.
     *
     * @throws IOException when the line is no such entry
     */
    static Entry of(String line) throws IOException {
        Map<String, Object> content = CanonicalJson.read(line);
        if (!Long.valueOf(FORMAT).equals(content.get("format")) || !(content.get("number") instanceof Long) || !(content.get("hash") instanceof String)
                || !(content.get("files") instanceof List) || !(content.get("verdicts") instanceof List)
                || !(content.get("rule-base") instanceof Map)) {
            throw new IOException("no entry");
        }
        Entry entry = new Entry(content);
        if (!entry.line().equals(line)) {
            throw new IOException("not in the form in which entries are written");
        }
        return entry;
    }

    String line() {
        return CanonicalJson.write(content);
    }

    /** Whether the entry says the hash that it has. */
    boolean fitsItself() {
        return hash.equals(content.get("hash"));
    }

    /** The hash of this entry, worked out from what it says. */
    public String hash() {
        return hash;
    }

    /** The hash that it says the entry before it had; null for the first. */
    String before() {
        return (String) content.get("before");
    }

    public long number() {
        return (Long) content.get("number");
    }

    /** Initials of who signed. */
    public String by() {
        return String.valueOf(content.get("by"));
    }

    /** When, in universal time, ISO 8601. */
    public String when() {
        return String.valueOf(content.get("when"));
    }

    /** What the rules said then: whether the vehicle may go. */
    public boolean mayGo() {
        return Boolean.TRUE.equals(content.get("may-go"));
    }

    /** The last gate that was judged. */
    public String gate() {
        return String.valueOf(content.get("gate"));
    }

    /** Version and date of the rule base. */
    public String ruleBase() {
        Map<?, ?> base = (Map<?, ?>) content.get("rule-base");
        return base.get("version") + " of " + base.get("date");
    }

    public List<SignedFile> files() {
        return ((List<?>) content.get("files")).stream().map(one -> SignedFile.of((Map<?, ?>) one)).toList();
    }

    public List<SignedVerdict> verdicts() {
        return ((List<?>) content.get("verdicts")).stream().map(one -> SignedVerdict.of((Map<?, ?>) one)).toList();
    }
}
