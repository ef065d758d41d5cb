package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.review.Questions;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a review asks for, as a list, as a form, as a table and as JSON. */
class AskTest {
    private static final int WIDTH = 80;

    @TempDir
    private Path folder;
    private String plan;

    @BeforeEach
    void aPlanWithMuchLeftOpen() throws Exception {
        plan = Jobs.changed(folder, "metal: copper, ", "", "size: 4 AWG, ", "", "diameter: 10 mm, ", "", "bend: 120 mm", "bend: unknown", "label: both-ends", "label: unknown",
                "fastener: rivet-nut, ", "", "method: hex-crimp, ", "");
    }

    private JsonNode json(String... more) throws Exception {
        List<String> line = new ArrayList<>(List.of("review", plan, "--gate=handover", "--as=json"));
        line.addAll(List.of(more));
        return new ObjectMapper().readTree(Main.run(line.toArray(new String[0])).out());
    }

    @Test
    void aReviewEndsWithAtMostTwentyFiveQuestionsAndSaysHowManyThereAre() throws Exception {
        String page = Main.run("review", plan, "--gate=handover").out();
        String asked = page.substring(page.indexOf("\nQUESTIONS"));
        Matcher number = Pattern.compile("(?m)^ ?([0-9]+)  \\S").matcher(asked);
        int last = 0;
        while (number.find()) {
            assertEquals(++last, Integer.parseInt(number.group(1)));
        }
        JsonNode json = json();
        int all = json.get("questions").size();
        assertTrue(all > Questions.BUDGET, all + " questions");
        assertEquals(Questions.BUDGET, last);
        List<String> lines = asked.lines().toList();
        assertEquals(Questions.BUDGET + " of " + all + " questions; behind all of them stand " + json.at("/counts/unshown").asInt() + " checks.", lines.get(lines.size() - 1));
        assertTrue(asked.contains("--ask=all"), asked);
    }

    /** Every check that is not shown stands behind a question, the numbers fall, and all answers together clear all checks. */
    @Test
    void nothingIsDropped() throws Exception {
        JsonNode json = json();
        List<String> facts = new ArrayList<>();
        int before = Integer.MAX_VALUE;
        int clears = 0;
        for (JsonNode question : json.get("questions")) {
            assertTrue(question.get("holds-up").asInt() <= before, question.toString());
            assertTrue(question.get("clears").asInt() >= clears, question.toString());
            before = question.get("holds-up").asInt();
            clears = question.get("clears").asInt();
            question.get("facts").forEach(fact -> facts.add(fact.get("path").asText()));
        }
        assertEquals(json.at("/counts/unshown").asInt(), clears);
        json.get("verdicts").forEach(verdict -> {
            if (verdict.get("outcome").asText().equals("unshown")) {
                verdict.get("missing").forEach(need -> assertTrue(facts.contains(need.get("path").asText())
                        || need.get("path").asText().startsWith("items."), need.toString()));
            }
        });
        assertEquals(json.get("counts"), json("--ask").get("counts"));
    }

    @Test
    void theFormHoldsEveryFactOfItsQuestionsOnceAndFitsItsPaper() throws Exception {
        List<String> wanted = new ArrayList<>();
        json().get("questions").forEach(question -> question.get("facts").forEach(fact -> wanted.add(fact.get("path").asText())));
        Reply reply = Main.run("review", plan, "--gate=handover", "--ask", "all");
        assertEquals(1, reply.status());
        List<String> paths = new ArrayList<>();
        Matcher path = Pattern.compile("<sub>(.*)</sub>").matcher(reply.out());
        while (path.find()) {
            paths.add(path.group(1));
        }
        assertEquals(wanted.stream().sorted().toList(), paths.stream().filter(one -> !one.startsWith("form.")).sorted().toList());
        assertAll(reply.out().lines().map(line -> () -> assertTrue(line.length() <= WIDTH, line)));
        List<String> headings = reply.out().lines().filter(line -> line.startsWith("## ")).map(line -> line.replaceAll(" \\(.*", "")).toList();
        assertTrue(headings.containsAll(List.of("## Under the hood", "## Cargo", "## Radio and dash")), headings.toString());
        assertEquals(headings.stream().distinct().toList(), headings);
        String table = Main.run("review", plan, "--gate=handover", "--ask=all", "--as=csv").out();
        assertEquals(wanted.size() + 3, table.lines().count());
    }

    @Test
    void whatIsDueLaterIsOnlyCounted() {
        String page = Main.run("review", plan).out().replaceAll("\\s+", " ");
        assertTrue(page.matches(".*Later gates, from before-teardown on, wait for [0-9]+ checks more.*"), page);
    }

    @Test
    void wrongFormsAreRefused() {
        assertAll(
                () -> assertEquals(2, Main.run("review", plan, "--as=csv").status()),
                () -> assertEquals(2, Main.run("review", plan, "--ask=some").status()),
                () -> assertEquals(1, Main.run("review", "--ask", plan, "--gate=handover").status()));
    }
}
