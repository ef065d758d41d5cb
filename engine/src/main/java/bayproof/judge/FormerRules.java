package bayproof.judge;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Collections;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Ids that rules had and have no more. What was signed, waived or audited under an old id is read on under the new one;
 * of a withdrawn rule it is said when it went, and why.
 */
public final class FormerRules {
    private static final String FILE = "/bayproof/former.properties";
    private static final Pattern RENAMED = Pattern.compile("renamed to ([a-z][a-z0-9-]*) in ([0-9]+)");
    private static final Pattern WITHDRAWN = Pattern.compile("withdrawn in ([0-9]+): (\\S.*)");

    private static final class Built {
        static final FormerRules RULES = load();
    }

    /**
     * What became of one id.
     *
     * @param now     its new id; null where the rule was withdrawn
     * @param version the rule base that has it no more
     * @param reason  why it was withdrawn; empty where it was renamed
     */
    public record Former(String id, String now, String version, String reason) {
        /** As a sentence. */
        public String says() {
            return now != null ? id + " is called " + now + " since rule base " + version + "."
                    : id + " was withdrawn in rule base " + version + ": " + reason;
        }
    }

    private final Map<String, Former> byId = new TreeMap<>();

    private FormerRules(Map<String, String> entries) {
        entries.forEach((id, text) -> {
            Matcher renamed = RENAMED.matcher(text);
            Matcher withdrawn = WITHDRAWN.matcher(text);
            if (renamed.matches()) {
                byId.put(id, new Former(id, renamed.group(1), renamed.group(2), ""));
            } else if (withdrawn.matches()) {
                byId.put(id, new Former(id, null, withdrawn.group(1), withdrawn.group(2)));
            } else {
                throw new RuleFault("the list of former rules cannot be read at " + id + ": " + text);
            }
        });
        byId.keySet().forEach(this::current);
    }

    /** The list of this rule base. */
    public static FormerRules built() {
        return Built.RULES;
    }

    /**
     * A list of its own.
     *
     * @param entries what became of each id, as the file says it
     * @throws RuleFault where an entry cannot be read, or renamings run in a circle
     */
    public static FormerRules of(Map<String, String> entries) {
        return new FormerRules(entries);
    }

    private static FormerRules load() {
        try (InputStream in = FormerRules.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new RuleFault("the list of former rules is not in this build");
            }
            Properties said = new Properties();
            said.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            Map<String, String> entries = new TreeMap<>();
            said.stringPropertyNames().forEach(id -> entries.put(id, said.getProperty(id)));
            return new FormerRules(entries);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Ids of the rules there are, and of those there were. */
    public static Collection<String> everyId() {
        TreeSet<String> ids = new TreeSet<>(built().byId.keySet());
        ids.addAll(RuleBase.built().rules().keySet());
        return ids;
    }

    /** Everything on the list, by old id. */
    public Map<String, Former> all() {
        return Collections.unmodifiableMap(byId);
    }

    /** What became of an id; null where it is on no list. */
    public Former of(String id) {
        return byId.get(id);
    }

    /** What became of an id in the end, however often it was renamed before; null where it is on no list. */
    public Former last(String id) {
        Former withdrawn = byId.get(current(id));
        return withdrawn == null ? byId.get(id) : withdrawn;
    }

    /** The id a rule has now, however often it was renamed; the id itself where it never was, or was withdrawn. */
    public String current(String id) {
        String now = id;
        for (int steps = 0; byId.containsKey(now) && byId.get(now).now() != null; steps++) {
            if (steps > byId.size()) {
                throw new RuleFault("the list of former rules runs in a circle at " + id);
            }
            now = byId.get(now).now();
        }
        return now;
    }
}
