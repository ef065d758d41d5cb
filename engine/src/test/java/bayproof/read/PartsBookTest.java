package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PartsBookTest {
    private static String mistakes(Path folder, String parts) throws IOException {
        Files.writeString(folder.resolve("book.yaml"), "bayproof: 1\nkind: parts\nparts: " + parts + "\n");
        Path plan = Files.writeString(folder.resolve("plan.yaml"),
                "bayproof: 1\nparts: [ book.yaml ]\nitems: { f: { part: holder, rating: 40 A }, b: { kind: fuse, part: bare } }\n");
        try {
            JobReader.bind(JobFiles.read(plan, null));
            return "";
        } catch (UnusableInput e) {
            return e.getMessage().replace(folder + File.separator, "");
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", value = {
        "holder: { kind: fuse }, bare: {}, spare: { kind: fuse, rating: 10 A } | -",
        "holder: { kind: fuse }, bare: {}, spare: { kind: fuse, ratng: 10 A } | book.yaml:3:65: \"ratng\" is not a key that is known here. Did you mean rating?",
        "holder: { kind: fuse }, bare: {}, spare: { kind: fuse, rating: 10 V } | book.yaml:3:73: \"10 V\" cannot be read as \"rating\"."
                + " \"10 V\" is a voltage, and a current is needed here. Write a current as \"30 mA\" or \"80 A\".",
        "holder: { kind: fuse, ratng: 10 A }, bare: {} | book.yaml:3:32: \"ratng\" is not a key that is known here. Did you mean rating?",
        "holder: { kind: fuse }, bare: {}, spare: { part: holder, kind: fuse } | book.yaml:3:53: a part cannot name another part. Write its values themselves.",
        "holder: { kind: fuse }, bare: {}, spare: 3 | book.yaml:3:44: a part is a group of keys."})
    void whatNoItemUsesIsReadAsWell(String parts, String mistake, @TempDir Path folder) throws IOException {
        assertEquals(mistake == null ? "" : mistake, mistakes(folder, "{ " + parts + " }").strip());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"[ a ] | a list", "3 | a value"})
    void partsHaveNames(String parts, String noun, @TempDir Path folder) throws IOException {
        assertEquals("book.yaml:3:8: \"parts\" must be a group of names, not " + noun + ".",
                mistakes(folder, parts).lines().filter(line -> line.startsWith("book")).findFirst().orElse(""));
    }
}
