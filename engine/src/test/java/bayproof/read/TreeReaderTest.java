package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What would make two readers disagree is refused by name and place; what is sound is read as it stands. */
class TreeReaderTest {
    private static List<Problem> problems(byte[] bytes, String name) {
        return assertThrows(UnusableInput.class, () -> TreeReader.read(bytes, name)).problems();
    }

    private static List<Problem> problems(String text, String name) {
        return problems(text.getBytes(StandardCharsets.UTF_8), name);
    }

    static Stream<Arguments> traps() {
        return Stream.of(
                Arguments.of("a: &x 1", 1, 4, "an anchor (&x)"),
                Arguments.of("a: 1\nb: { c: *x }", 2, 9, "an alias (*x)"),
                Arguments.of("a: !!str 1", 1, 4, "a tag (!!str)"),
                Arguments.of("a: !mine { b: 1 }", 1, 4, "a tag (!mine)"),
                Arguments.of("a: !mine [ 1 ]", 1, 4, "a tag (!mine)"),
                Arguments.of("a:\n  <<: { b: 1 }", 2, 3, "a merge key (<<)"),
                Arguments.of("a: 1\nb: 2\na: 3", 3, 1, "\"a\" stands here a second time (first at line 1)"),
                Arguments.of("x: { a: 1, a: 2 }", 1, 12, "\"a\" stands here a second time"),
                Arguments.of("a: 1\n---\nb: 2", 3, 1, "a second document"),
                Arguments.of("? [ a, b ]\n: 1", 1, 3, "a key must be a plain word"),
                Arguments.of("a: [ 1, 2", 1, 10, "not sound YAML"),
                Arguments.of("a: 1\n b: 2", 2, 3, "not sound YAML"),
                Arguments.of("- 1\n- 2", 1, 1, "holds no keys"),
                Arguments.of("just a word", 1, 1, "holds no keys"),
                Arguments.of("", 1, 1, "holds no keys"),
                Arguments.of("a: 1\nb: x\u0007y", 2, 5, "a character that is no text"));
    }

    @ParameterizedTest
    @MethodSource("traps")
    void aTrapIsRefusedByNameAndPlace(String text, int line, int column, String says) {
        Problem problem = problems(text, "plan.yaml").get(0);
        assertTrue(problem.what().contains(says), problem.toString());
        assertEquals("plan.yaml:" + line + ":" + column, problem.at().toString(), problem.toString());
    }

    static Stream<Arguments> jsonTraps() {
        return Stream.of(
                Arguments.of("{ \"a\": 1, \"a\": 2 }", 1, 11, "\"a\" stands here a second time"),
                Arguments.of("{ \"a\": 1 } { }", 1, 12, "something follows"),
                Arguments.of("{\n  \"a\": 1,\n}", 3, 1, "not sound JSON"),
                Arguments.of("{ \"a\": tru }", 1, 11, "not sound JSON"),
                Arguments.of("[ 1 ]", 1, 1, "holds no keys"),
                Arguments.of("", 1, 1, "holds no keys"));
    }

    @ParameterizedTest
    @MethodSource("jsonTraps")
    void theSameHoldsForJson(String text, int line, int column, String says) {
        Problem problem = problems(text, "plan.json").get(0);
        assertTrue(problem.what().contains(says), problem.toString());
        assertEquals("plan.json:" + line + ":" + column, problem.at().toString(), problem.toString());
    }

    @Test
    void everythingWrongIsNamedTogether() {
        List<Problem> problems = problems("a: &x 1\nb: *x\nc: !!int 3\nc: 4\n", "plan.yaml");
        assertEquals(List.of(1, 2, 3, 4), problems.stream().map(problem -> problem.at().line()).toList());
    }

    // size

    @Test
    void aFileMayHaveFourMebibytes() throws UnusableInput {
        String most = "a: 1\n" + " ".repeat(TreeReader.MOST_BYTES - 5);
        assertEquals("{\"a\":\"1\"}", Written.text(TreeReader.read(most.getBytes(StandardCharsets.UTF_8), "plan.yaml")));
        assertTrue(problems(most + " ", "plan.yaml").get(0).what().contains("larger than 4 MiB"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan.yaml", "plan.json"})
    void keysNestThirtyTwoDeep(String name) throws UnusableInput {
        TreeReader.read(nested(32).getBytes(StandardCharsets.UTF_8), name);
        assertTrue(problems(nested(33), name).get(0).what().contains("deeper than 32 levels"));
        assertTrue(problems(nested(100_000), name).get(0).what().contains("deeper than 32 levels"));
    }

    private static String nested(int deep) {
        return "{ \"a\": ".repeat(deep) + "1" + " }".repeat(deep);
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan.yaml", "plan.json"})
    void aFileHoldsTwoHundredThousandValues(String name) {
        assertTrue(problems("{ \"a\": [ 1" + ", 1".repeat(200_000) + " ] }", name).get(0).what().contains("more than 200000 values"));
    }

    // what is sound

    @ParameterizedTest
    @ValueSource(strings = {"a: yes", "a: 010", "a: 1e3", "a: 2026-11-20", "a: on", "a: 0x1F", "a: 12:30:45", "a: .5", "a: NaN"})
    void aValueKeepsItsSpelling(String text) {
        assertEquals("{\"a\":\"" + text.substring(3) + "\"}", Written.text(Written.yaml(text)));
    }

    @Test
    void byteOrderMarksLineEndsAndCommentsChangeNothing() {
        String text = "a: 1\nb:\n  c: [ x, y ]\n";
        String wanted = "{\"a\":\"1\",\"b\":{\"c\":[\"x\",\"y\"]}}";
        assertEquals(wanted, Written.text(Written.yaml(text)));
        assertEquals(wanted, Written.text(Written.yaml("\uFEFF" + text.replace("\n", "\r\n"))));
        assertEquals(wanted, Written.text(Written.yaml("# head\na: 1 # one\nb: { c: [ \"x\", 'y' ] }")));
        assertEquals(wanted, Written.text(Written.json("\uFEFF{ \"a\": 1, \"b\": { \"c\": [ \"x\", \"y\" ] } }")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a:", "a: ~", "a: null", "a: # nothing"})
    void nothingWrittenIsEmpty(String text) {
        assertEquals("{\"a\":null}", Written.text(Written.yaml(text)));
    }

    @Test
    void aValueKnowsItsPlace() {
        Tree value = ((Tree.MapTree) Written.yaml("a: 1\r\nb:\r\n  cd: x").get("b")).get("cd");
        assertEquals("file.yaml:3:7", value.at().toString());
        assertEquals("file.json:2:9", Written.json("{\n  \"cd\": \"x\" }").get("cd").at().toString());
    }

    @Test
    void whatIsNoTextOrNotThereIsRefused() {
        assertTrue(problems(new byte[] {'a', ':', ' ', (byte) 0xC3, '('}, "plan.yaml").get(0).what().contains("not UTF-8"));
        assertTrue(assertThrows(UnusableInput.class, () -> TreeReader.read(Path.of("no-such-plan.yaml"), "no-such-plan.yaml")).getMessage().contains("it is not there"));
    }
}
