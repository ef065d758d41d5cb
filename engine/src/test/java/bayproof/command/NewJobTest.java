package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.start.Examples;
import bayproof.start.WishList;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** A new job out of an example. */
class NewJobTest {
    private static final int WIDTH = 80;
    /** So many facts are asked of somebody who begins: what one walk around the vehicle and seven questions answer. */
    private static final int SHORT = 30;
    private static final Pattern NOT_SHOWN = Pattern.compile("DO NOT ORDER YET - 0 stop, 0 fix\\. ([0-9]+) facts? not shown, [0-9]+ assumed\\.");

    @TempDir
    private Path folder;

    private Reply make(String name, String... more) {
        return Main.run(Stream.concat(Stream.of("new", folder.resolve(name).toString()), Stream.of(more)).toArray(String[]::new));
    }

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    static Stream<String> examples() {
        return Examples.all().keySet().stream();
    }

    static Stream<String> wholeExamples() {
        return examples().filter(example -> !example.equals("ten-lines"));
    }

    @Test
    void theListHasOneExampleALineItsNameFirst() {
        Reply list = Main.run("new", "--list");
        assertEquals(0, list.status());
        List<String> lines = list.out().lines().toList();
        assertEquals(List.copyOf(Examples.all().keySet()), lines.stream().map(line -> line.split(" ")[0]).toList());
        assertAll(lines.stream().map(line -> () -> assertTrue(line.length() <= WIDTH, line)));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void anExampleStandsAloneAndSaysWhatIsNext(String example) throws Exception {
        Reply made = make(example, "--from", example);
        assertEquals(0, made.status(), made.err());
        assertTrue(made.out().contains("Next: bayproof review " + folder.resolve(example) + "/plan.yaml") || made.out().replaceAll("\\s+", "").contains("plan.yaml"), made.out());
        assertEquals(List.of(example), left(), "nothing else is left behind");
        Reply review = Main.run("review", folder.resolve(example).resolve("plan.yaml").toString());
        assertEquals(1, review.status(), review.err());
        Matcher head = NOT_SHOWN.matcher(review.out());
        assertTrue(head.find(), review.out());
        if (!example.equals("ten-lines")) {
            assertTrue(Integer.parseInt(head.group(1)) <= SHORT, head.group());
            Reply book = Main.run("review", folder.resolve(example).resolve("parts.yaml").toString());
            assertEquals(0, book.status(), book.out() + book.err());
        }
    }

    /** The examples are plans that can be carried out: with what a walk around a usual vehicle finds, nothing stands against ordering. */
    @ParameterizedTest
    @MethodSource("wholeExamples")
    void withPlausibleAnswersNothingStandsAgainstOrdering(String example) throws Exception {
        assertEquals(0, make(example, Stream.concat(Stream.of("--from", example), WishList.questions().keySet().stream().map(wish -> "--wish=" + wish + "=none"))
                .toArray(String[]::new)).status());
        Path job = folder.resolve(example);
        FilledExample.fill(job);
        Reply review = Main.run("review", job.resolve("plan.yaml").toString());
        assertTrue(review.out().contains("NOTHING STANDS AGAINST ORDERING."), review.out() + review.err());
        assertEquals(0, review.status());
    }

    /** The folder stands alone in an editor: each file names a schema that lies beside it and that it agrees with. */
    @ParameterizedTest
    @MethodSource("examples")
    void eachFileNamesASchemaBesideItAndAgreesWithIt(String example) throws Exception {
        assertEquals(0, make(example, "--from", example).status());
        Path job = folder.resolve(example);
        for (String kind : example.equals("ten-lines") ? List.of("plan") : List.of("plan", "vehicle", "parts")) {
            String text = Files.readString(job.resolve(kind + ".yaml"));
            assertEquals("# yaml-language-server: $schema=schema/" + kind + ".schema.json", text.lines().findFirst().orElse(""));
            JsonSchema schema = JsonSchemaFactory.getInstance(VersionFlag.V202012)
                    .getSchema(Files.readString(job.resolve("schema/" + kind + ".schema.json")));
            Object plain = new Load(LoadSettings.builder().build()).loadFromString(text);
            assertEquals(Set.of(), schema.validate(new ObjectMapper().valueToTree(plain)), kind);
        }
        try (Stream<Path> schemas = Files.list(job.resolve("schema"))) {
            assertEquals(example.equals("ten-lines") ? 1 : 3, schemas.count());
        }
    }

    @Test
    void nothingThatIsThereIsTouched() throws Exception {
        Path there = Files.createDirectory(folder.resolve("there"));
        Files.writeString(there.resolve("plan.yaml"), "mine");
        Files.writeString(folder.resolve("file"), "mine");
        for (String name : List.of("there", "file")) {
            Reply reply = make(name, "--from=one-amplifier");
            assertEquals(2, reply.status());
            assertEquals("", reply.out());
            assertTrue(reply.err().replaceAll("\\s+", " ").contains("is there already. Nothing was written."), reply.err());
        }
        assertEquals("mine", Files.readString(there.resolve("plan.yaml")));
        assertEquals("mine", Files.readString(folder.resolve("file")));
        assertEquals(2, make("not/here/job", "--from=one-amplifier").status());
        assertEquals(List.of("file", "there"), left());
    }

    @Test
    void aSlipIsNamedWithWhatWasMeant() throws Exception {
        assertAll(
                () -> assertMeant("one-amplifier", make("a", "--from=one-amplifer")),
                () -> assertMeant("spare-wheel", make("a", "--from=one-amplifier", "--wish=spare-weel=none")),
                () -> assertTrue(make("a", "--from=one-amplifier", "--wish=seats").err().contains("--wish=seats=none"), "an answer is missing"),
                () -> assertTrue(make("a").err().contains("--from=one-amplifier") || make("a").err().replaceAll("\\s+", "").contains("--from=one-amplifier"), "nothing to copy from"),
                () -> assertTrue(Main.run("new").err().contains("bayproof new my-job --from=one-amplifier"), "without anything it teaches"));
        assertEquals(2, Main.run("new").status());
        assertEquals(List.of(), left());
    }

    private static void assertMeant(String meant, Reply reply) {
        assertEquals(2, reply.status());
        assertTrue(reply.err().contains("Did you mean " + meant), reply.err());
    }

    @Test
    void wishesGoIntoThePlanAndWhatIsOpenIsSaid() throws Exception {
        String hostile = "loud \"enough\" \\ } for\u001b[2J\u202E the square";
        Reply made = make("job", "--from=one-amplifier", "--wish=seats=both slide as before", "--wish", "days-parked=10 days", "--wish=child-anchors=none",
                "--wish=loudness=" + hostile);
        assertEquals(0, made.status(), made.err());
        assertTrue(made.out().replaceAll("\\s+", " ").contains("Nobody will check this yet: spare-wheel, cargo, removable."), made.out());
        assertTrue(made.out().contains("  seats          rule, enclosure-fits-space\n"), made.out());
        String plan = Files.readString(folder.resolve("job/plan.yaml"));
        assertTrue(plan.contains("parked: 10 days ") && plan.contains("seats:         { want: \"both slide as before\", checked-by: rule, with: enclosure-fits-space }")
                && plan.contains("child-anchors: { want: none }"), plan);
        assertFalse(plan.contains("\u001b") || plan.contains("\u202E"), plan);
        JsonNode verdicts = new ObjectMapper().readTree(Main.run("review", folder.resolve("job/plan.yaml").toString(), "--as=json").out()).get("verdicts");
        Set<String> open = new java.util.TreeSet<>();
        verdicts.forEach(verdict -> {
            if (verdict.get("rule").asText().equals("wishes-bound") && !verdict.get("outcome").asText().equals("holds")) {
                open.add(verdict.get("subject").asText() + " " + verdict.get("outcome").asText());
            }
        });
        assertEquals(Set.of("wishes.spare-wheel unshown", "wishes.cargo unshown", "wishes.removable unshown"), open);
    }

    @Test
    void theSevenQuestionsAreThoseThatThePlanIsJudgedFor() throws Exception {
        assertEquals(new java.util.TreeSet<>(WishList.questions().keySet()),
                new java.util.TreeSet<>(bayproof.read.LimitsInForce.read(null).named("wishes-asked").words()));
        WishList wishes = new WishList();
        wishes.answer("seats", "none");
        List<String> asked = new java.util.ArrayList<>();
        wishes.ask(question -> {
            asked.add(question);
            return asked.size() == 3 ? null : "";
        });
        assertEquals(3, asked.size(), "no further question after the end of the input, and none that has an answer");
        assertEquals(6, wishes.open().size());
    }
}
