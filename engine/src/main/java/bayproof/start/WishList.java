package bayproof.start;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The customer's wishes, as they were given when a job was begun. */
public final class WishList {
    private static final Pattern DAYS = Pattern.compile("([0-9]{1,3})( *(d|days?))?");
    private static final String UNKNOWN = "unknown";
    private static final String OPEN = "want: unknown";

    private final Map<String, String> answers = new LinkedHashMap<>();

    /** The questions by name of the wish. */
    public static Map<String, String> questions() {
        return Examples.texts("wishes");
    }

    /** Notes an answer; an empty one leaves the wish open. */
    public void answer(String wish, String answer) {
        if (!answer.isBlank() && !answer.strip().equals(UNKNOWN)) {
            answers.put(wish, answer.strip());
        }
    }

    /**
     * Asks for every wish that has no answer yet.
     *
     * @param asker puts a question and gives what was written; null when nobody answers any more
     */
    public void ask(UnaryOperator<String> asker) {
        for (Map.Entry<String, String> question : questions().entrySet()) {
            if (!answers.containsKey(question.getKey())) {
                String answer = asker.apply(question.getValue());
                if (answer == null) {
                    return;
                }
                answer(question.getKey(), answer);
            }
        }
    }

    /** Wishes without an answer, in the order they are asked. */
    public List<String> open() {
        List<String> open = new ArrayList<>(questions().keySet());
        open.removeAll(answers.keySet());
        return open;
    }

    /** What checks each wish that has an answer, by name of the wish, as the plan says it: a rule, a reading or a signature. */
    public Map<String, String> checks(String plan) {
        Map<String, String> checks = new LinkedHashMap<>();
        for (String wish : answers.keySet()) {
            Matcher line = Pattern.compile("(?m)^  " + Pattern.quote(wish) + ": .*checked-by: ([a-z]+), with: ([^}]*?) }$").matcher(plan);
            if (line.find()) {
                checks.put(wish, line.group(1) + ", " + line.group(2));
            }
        }
        return checks;
    }

    /** The plan's text with the answers in it. Days parked are a figure of the plan as well. */
    public String into(String plan) {
        String text = plan;
        for (Map.Entry<String, String> answer : answers.entrySet()) {
            Matcher line = Pattern.compile("(?m)^  " + Pattern.quote(answer.getKey()) + ": .*$").matcher(text);
            if (line.find()) {
                String said = answer.getValue().equals("none") ? "{ want: none }"
                        : line.group().substring(line.group().indexOf('{')).replace(OPEN, "want: " + YamlText.quoted(answer.getValue()));
                text = text.substring(0, line.start()) + line.group().substring(0, line.group().indexOf('{')) + said + text.substring(line.end());
            }
        }
        Matcher days = DAYS.matcher(answers.getOrDefault("days-parked", ""));
        return days.matches() ? text.replaceFirst("(?m)^parked: unknown", "parked: " + days.group(1) + " days") : text;
    }
}
