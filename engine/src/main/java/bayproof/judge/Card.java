package bayproof.judge;

import bayproof.read.Tree;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The page that explains a rule.
 *
 * @param title    the demand in a few words
 * @param sources  where the demand comes from
 * @param limits   names of the limits it uses
 * @param noWaiver why nobody may accept that it is broken; null where somebody may
 * @param caution  what can hurt while doing the work; null where nothing special can
 * @param sections text under each heading, in the order of the page
 */
public record Card(String title, List<String> sources, List<String> limits, String noWaiver, String caution, Map<String, String> sections) {
    private static final String FENCE = "---\n";
    private static final Map<String, Card> READ = new ConcurrentHashMap<>();

    /**
     * The card of a rule.
     *
     * @throws RuleFault when the rule has no sound card
     */
    public static Card of(RuleInfo rule) {
        return READ.computeIfAbsent(rule.id(), id -> read(rule));
    }

    private static Card read(RuleInfo rule) {
        String file = "/bayproof/rules/" + rule.topic() + "/" + rule.id() + ".md";
        try (InputStream in = Card.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new RuleFault("the rule " + rule.id() + " has no card");
            }
            return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n"), rule.id() + ".md");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (UnusableInput | ClassCastException e) {
            throw new RuleFault("the card of the rule " + rule.id() + " cannot be read: " + e.getMessage(), e);
        }
    }

    static Card parse(String text, String name) throws UnusableInput {
        int end = text.indexOf("\n" + FENCE, FENCE.length());
        if (!text.startsWith(FENCE) || end < 0) {
            throw new RuleFault("the card " + name + " does not begin with its data between two lines of ---");
        }
        MapTree head = TreeReader.read(text.substring(FENCE.length(), end + 1).getBytes(StandardCharsets.UTF_8), name);
        return new Card(word(head, "title"), list(head, "sources"), list(head, "limits"),
                head.get("no-waiver") instanceof ScalarTree reason ? reason.text() : null,
                head.get("caution") instanceof ScalarTree caution ? caution.text() : null,
                sections(text.substring(end + 1 + FENCE.length())));
    }

    private static String word(MapTree head, String key) {
        return ((ScalarTree) head.get(key)).text();
    }

    private static List<String> list(MapTree head, String key) {
        List<String> texts = new ArrayList<>();
        if (head.get(key) instanceof ListTree list) {
            for (Tree item : list.items()) {
                texts.add(((ScalarTree) item).text());
            }
        }
        return List.copyOf(texts);
    }

    private static Map<String, String> sections(String body) {
        Map<String, String> sections = new LinkedHashMap<>();
        for (String part : body.split("(?m)^## ")) {
            int line = part.indexOf('\n');
            if (line > 0 && !part.startsWith("# ") && !part.isBlank() && !part.strip().startsWith("# ")) {
                sections.put(part.substring(0, line).strip(), part.substring(line + 1).strip());
            }
        }
        return sections;
    }
}
