package bayproof.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Properties;

/**
 * What the rule base says of itself.
 *
 * @param version      number of the rule base
 * @param date         date of the rule base, ISO 8601
 * @param notLookedAt  what no rule of it looks at, as a list in words
 * @param topics       names of the tables of what the trade asks for, in the order of the work
 */
public record RuleBaseDate(String version, String date, String notLookedAt, List<String> topics) {
    private static final String FILE = "/bayproof/rulebase.properties";

    /** What the built-in rule base says. */
    public static RuleBaseDate built() {
        try (InputStream in = RuleBaseDate.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the rule base does not say its date");
            }
            Properties said = new Properties();
            said.load(in);
            return new RuleBaseDate(said.getProperty("version"), said.getProperty("date"), said.getProperty("not-looked-at"),
                    List.of(said.getProperty("topics").split(", *")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
