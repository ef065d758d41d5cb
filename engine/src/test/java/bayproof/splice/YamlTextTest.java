package bayproof.splice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.Tree;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values put into texts: the file says what it said and the value, and every other byte is what it was. */
class YamlTextTest {
    private static ScalarTree word(String text) {
        return new ScalarTree(text, false, Trees.NOWHERE);
    }

    private static String put(String text, String name, String path, String value) throws NotSpliced {
        return YamlText.put(text, name, List.of(path.split("/")), word(value));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(quoteCharacter = '§', delimiter = ';', value = {
        "{ a: 1 } ; b ; 2 m ; { a: 1, b: 2 m }",
        "{} ; b ; 2 m ; { b: 2 m }",
        "{ a: unknown, c: 3 } ; a ; 2 m ; { a: 2 m, c: 3 }",
        "{ a: 'unknown' } ; a ; 2 m ; { a: '2 m' }",
        "{ a: , c: 3 } ; a ; 2 m ; { a: 2 m , c: 3 }",
        "{ a: ~ } ; a ; x ; { a: x }",
        "{ a: 1, } ; b ; x ; { a: 1, b: x, }",
        "{ g: { a: 1 } } ; g/b ; x ; { g: { a: 1, b: x } }",
        "{ g: unknown } ; g/b ; x ; { g: { b: x } }",
        "{ a: 1 } ; g/h/b ; x ; { a: 1, g: { h: { b: x } } }",
        "{ a: \"1 m\" } ; b ; 2 m ; { a: \"1 m\", b: \"2 m\" }",
        "{ a: \"1 m\" } ; b ; 4 ; { a: \"1 m\", b: 4 }",
        "{ a: x } ; b ; u, v ; { a: x, b: \"u, v\" }",
        "a: 1 # note ; b ; 2 m ; a: 1 # note§NL§b: 2 m",
        "a: # note ; a ; 2 m ; a: 2 m # note"
    })
    void aValueIsPutInTheStyleOfItsPlace(String before, String path, String value, String after) throws NotSpliced {
        assertEquals(after.replace("§NL§", "\n"), put(before, "x.yaml", path, value));
    }

    @Test
    void jsonStaysJson() throws Exception {
        assertEquals("{\"a\": \"1 m\", \"b\": \"-15 °C\"}", put("{\"a\": \"1 m\"}", "x.json", "b", "-15 °C"));
        assertEquals("{\n  \"a\": {\n    \"c\": 3,\n    \"b\": \"2 m\"\n  }\n}\n", put("{\n  \"a\": {\n    \"c\": 3\n  }\n}\n", "x.json", "a/b", "2 m"));
        assertEquals("{\n  \"a\": \"no\"\n}", put("{\n  \"a\": null\n}", "x.json", "a", "no"));
    }

    @Test
    void commentsIndentationLineEndsAndMarksStay() throws Exception {
        String text = "\uFEFF# head\r\nitems:\r\n    amp:   # the amplifier\r\n        class: D   # seen\r\n\r\n    # speakers\r\n    sub: { part: x }\r\n# end\r\n";
        assertEquals(text.replace("class: D   # seen\r\n", "class: D   # seen\r\n        mass: 3.2 kg\r\n"), put(text, "x.yaml", "items/amp/mass", "3.2 kg"));
        assertEquals(text.replace("{ part: x }\r\n", "{ part: x }\r\n    box: { mass: 9 kg }\r\n"), new String(YamlText.put(text, "x.yaml", List.of("items", "box"),
                new MapTree(Map.of("mass", new Tree.Entry("mass", Trees.NOWHERE, word("9 kg"))), Trees.NOWHERE))));
        assertEquals("a:\n  b: |\n    text\n  c: x\nd: 1\n", put("a:\n  b: |\n    text\nd: 1\n", "x.yaml", "a/c", "x"));
        assertEquals("a: 1\nplaces:\n  rack: { zone: cargo }\n", put("a: 1\n", "x.yaml", "places/rack/zone", "cargo"));
    }

    @Test
    void aNameGoesBeforeTheOthersOfAList() throws Exception {
        ListTree both = new ListTree(List.of(word("parts.yaml"), word("../p.yaml")), Trees.NOWHERE);
        assertEquals("parts: [ parts.yaml, ../p.yaml ] # books\n", YamlText.putFirst("parts: [ ../p.yaml ] # books\n", "x.yaml", "parts", "parts.yaml", both));
        assertEquals("parts:\n  - parts.yaml\n  - ../p.yaml\n", YamlText.putFirst("parts:\n  - ../p.yaml\n", "x.yaml", "parts", "parts.yaml", both));
        assertEquals("{\"parts\": [\"parts.yaml\", \"../p.yaml\"]}", YamlText.putFirst("{\"parts\": [\"../p.yaml\"]}", "x.json", "parts", "parts.yaml", both));
        assertEquals("a: 1\nparts: [ parts.yaml, ../p.yaml ]\n", YamlText.putFirst("a: 1\n", "x.yaml", "parts", "parts.yaml", both));
    }

    @Test
    void whatIsGivenIsNeverReplaced() {
        assertThrows(NotSpliced.class, () -> put("{ a: 1 m }", "x.yaml", "a", "2 m"));
        assertThrows(NotSpliced.class, () -> put("{ a: 1 m }", "x.yaml", "a/b", "2 m"));
        assertThrows(NotSpliced.class, () -> put("a: &x 1\nb: *x\n", "x.yaml", "c", "2 m"));
    }

    // over many styles

    /** A small job file in one of many styles, with a way to a value that is still to be given. */
    record Sample(String text, String name, List<String> keys) {
    }

    @Provide
    Arbitrary<Sample> samples() {
        return Combinators.combine(Arbitraries.of("block", "flow", "lines", "json", "pretty"), Arbitraries.of("\n", "\r\n"), Arbitraries.of("", "\uFEFF"),
                Arbitraries.of(2, 4, 3), Arbitraries.of("", "\"", "'"), Arbitraries.of("", " # note, with { and }"), Arbitraries.of("", "unknown", "~"),
                Arbitraries.of(List.of("items", "amp", "mass"), List.of("items", "amp", "mount", "thread"), List.of("items", "new", "mass"),
                        List.of("places", "rack", "zone"), List.of("title"))).as(YamlTextTest::sample);
    }

    private static Sample sample(String form, String newline, String mark, int step, String quote, String comment, String open, List<String> keys) {
        boolean json = form.equals("json") || form.equals("pretty");
        String q = json ? "\"" : quote;
        String in = " ".repeat(step);
        String last = open.isEmpty() ? "" : "%s" + (json ? "null" : open.equals("~") ? "~" : q + open + q);
        String place = keys.get(keys.size() - 1);
        boolean ofAmp = keys.equals(List.of("items", "amp", "mass")) && !last.isEmpty();
        String key = json ? "\"" : "";
        String note = json ? "" : comment;
        List<String> lines = switch (form) {
            case "block" -> List.of("bayproof: 1" + note, "items:" + note, in + "amp:" + note, in + in + "class: " + q + "D" + q + note,
                    ofAmp ? in + in + String.format(last, place + ": ") + note : in + in + "channels: 4", "", in + "# speakers", in + "sub: { part: " + q + "s" + q + " }", "# end");
            case "flow" -> List.of("bayproof: 1", "items: { amp: { class: " + q + "D" + q + (ofAmp ? ", " + String.format(last, place + ": ") : "") + " }, sub: {} }" + note);
            case "lines" -> List.of("# head", "bayproof: 1", "items:", in + "amp:", in + in + "{ class: " + q + "D" + q + "," + note,
                    in + in + "  channels: 4" + (ofAmp ? ", " + String.format(last, place + ": ") : "") + " }" + note, in + "sub: {}");
            case "json" -> List.of("{" + key + "bayproof" + key + ":1," + key + "items" + key + ":{" + key + "amp" + key + ":{" + key + "class" + key + ": \"D\""
                    + (ofAmp ? "," + String.format(last, "\"" + place + "\": ") : "") + "}}}");
            default -> List.of("{", in + "\"bayproof\": 1,", in + "\"items\": {", in + in + "\"amp\": {", in + in + in + "\"class\": \"D\""
                    + (ofAmp ? "," : ""), ofAmp ? in + in + in + String.format(last, "\"" + place + "\": ") : "", in + in + "}", in + "}", "}");
        };
        return new Sample(mark + String.join(newline, lines) + newline, json ? "x.json" : "x.yaml", keys);
    }

    @Provide
    Arbitrary<Tree> values() {
        Arbitrary<Tree> words = Arbitraries.of("0.45 m", "4 AWG", "-15 °C", "copper", "yes", "4", "cannot-be-seen", "a: b", "x # y", "[1", "it's", "say \"x\"", "1, 2", "no-print:",
                "Ω", "\uD83D\uDD0C plug", "- x", "null").map(text -> new ScalarTree(text, text.equals("null"), Trees.NOWHERE));
        return Arbitraries.oneOf(words, words.list().ofMaxSize(3).map(list -> new ListTree(list, Trees.NOWHERE)));
    }

    @Property(tries = 2000)
    void theFileSaysWhatItSaidAndTheValueAndEveryOtherByteStays(@ForAll("samples") Sample sample, @ForAll("values") Tree value) throws Exception {
        String after = YamlText.put(sample.text(), sample.name(), sample.keys(), value);
        assertTrue(Trees.same(Trees.with(read(sample.text(), sample.name()), sample.keys(), value), read(after, sample.name())), after);
        assertKept(sample.text(), after);
    }

    private static MapTree read(String text, String name) throws UnusableInput {
        return TreeReader.read(text.getBytes(StandardCharsets.UTF_8), name);
    }

    /** All of the old text is in the new one, in its order; only an open value, and it alone, is gone. */
    private static void assertKept(String before, String after) {
        int from = 0;
        while (from < Math.min(before.length(), after.length()) && before.charAt(from) == after.charAt(from)) {
            from++;
        }
        int behind = 0;
        while (behind < Math.min(before.length(), after.length()) - from && before.charAt(before.length() - 1 - behind) == after.charAt(after.length() - 1 - behind)) {
            behind++;
        }
        String gone = before.substring(from, before.length() - behind);
        String come = after.substring(from, after.length() - behind);
        boolean openValue = "\"unknown\"'unknown'~null".contains(gone.strip());
        // A comma behind the last entry and a new line below its comment are two places: what stands between them stays.
        int at = -1;
        boolean among = true;
        for (char c : gone.toCharArray()) {
            at = come.indexOf(c, at + 1);
            among &= at >= 0;
        }
        assertTrue(openValue || among, () -> "gone: " + gone + "\ncome: " + come);
    }
}
