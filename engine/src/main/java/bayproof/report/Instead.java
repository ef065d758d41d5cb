package bayproof.report;

import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.TreeMap;

/** What to do where a fact cannot be known: a reading or a look that answers the same rule. */
final class Instead {
    private static final String FILE = "/bayproof/shared/instead.yaml";

    /** Read when the first question is printed. */
    private static final class Built {
        static final Instead TEXTS = read();
    }

    private final Map<String, String> byKey;

    private Instead(Map<String, String> byKey) {
        this.byKey = byKey;
    }

    static Instead built() {
        return Built.TEXTS;
    }

    private static Instead read() {
        try (InputStream in = Instead.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the table instead.yaml is not built in");
            }
            MapTree table = (MapTree) TreeReader.read(in.readAllBytes(), "instead.yaml").get("instead");
            Map<String, String> texts = new TreeMap<>();
            for (Entry entry : table.entries().values()) {
                texts.put(entry.key(), ((ScalarTree) entry.value()).text());
            }
            return new Instead(texts);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (UnusableInput e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }

    /** All texts by key. */
    Map<String, String> all() {
        return byKey;
    }

    /** The text for a question, by the limit that stands in for the fact or by the fact's last keys; null where there is none. */
    String of(Question question) {
        String path = question.need().path();
        int last = path.lastIndexOf('.');
        String text = question.limit() == null ? null : byKey.get(question.limit());
        if (text == null) {
            text = byKey.get(path.substring(last + 1));
        }
        return text == null && last > 0 ? byKey.get(path.substring(path.lastIndexOf('.', last - 1) + 1, last)) : text;
    }
}
