package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import bayproof.vocabulary.At;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvReaderTest {
    private static final List<Class<?>> RUNS = List.of(Run.class);

    private static MapTree runs(String text) throws UnusableInput {
        return CsvReader.read(text.getBytes(StandardCharsets.UTF_8), "runs.csv", RUNS);
    }

    private static Object plain(String text) throws UnusableInput {
        return AsTable.plain(runs(text));
    }

    private static String refused(String text) {
        return assertThrows(UnusableInput.class, () -> runs(text)).getMessage();
    }

    // what a cell means

    @Test
    void aRowGivesWhatTheSameEntryGivesInYaml() throws UnusableInput {
        MapTree yaml = TreeReader.read("""
                feed-1: { from: a.b, size: 4 AWG, length: 0.35 m, along: [ bay-left, sill-left ], through: none,
                  ends: { from: { terminal: ring-m8, metals: [ copper ] }, to: { terminal: ring-m6 } }, near: { exhaust: 500 mm } }
                feed-2: { from: c.d, near: {} }
                """.getBytes(StandardCharsets.UTF_8), "runs.yaml");
        assertEquals(AsTable.plain(yaml), plain("""
                id,from,size,length [m],along,through,ends.from.terminal,ends.from.metals,ends.to.terminal,near.exhaust,near
                feed-1,a.b,4 AWG,0.35,bay-left | sill-left,none,ring-m8,copper,ring-m6,500 mm,
                feed-2,c.d,,,,,,,,,none
                """));
    }

    @Test
    void aSpreadsheetsExportOpensAsItIs() throws UnusableInput {
        assertEquals(Map.of("feed-1", Map.of("from", "a.b", "cover", "split; tube", "length", "1.25 m", "along", List.of("one", "two"))),
                plain("\uFEFF\"id\";from;\"cover\";length;along;;\r\nfeed-1;\u00A0a.b ;\"split; tube\";1,25 m;\"one\r\ntwo\";;\r\n;;;;;;\r\n"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "; | length [m] | 0,35 | 0.35 m", "; | length [m] | 0.35 | 0.35 m", "; | length | 35 cm | 35 cm", "; | length [m] | 35 cm | 35 cm",
        "; | length [m] | unknown | unknown", "; | length [mm] | ,5 | .5 mm", "; | size | 2,5 mm2 | 2.5 mm2", "; | size [AWG] | 1/0 | 1/0 AWG",
        ", | size [mm2] | 2.5 | 2.5 mm2", "; | insulation [°C] | 105 | 105 °C", "; | label | 1,5 | 1,5", "; | length | 0.375 in | 0.375 in"})
    void unitsStandInTheCellOrInTheHeader(char separator, String header, String cell, String value) throws UnusableInput {
        String key = header.replaceAll(" .*", "");
        assertEquals(Map.of("feed-1", Map.of(key, value)), plain("id" + separator + header + "\nfeed-1" + separator + cell + "\n"));
    }

    @Test
    void everyValueKnowsItsCell() throws UnusableInput {
        MapTree table = runs("\uFEFFid,from,\"to\",length [m]\r\n\"feed-1\", \"a.\r\nb\",é, 0.35\r\nfeed-2,,\"x\"\"y\",9\n");
        MapTree first = (MapTree) table.get("feed-1");
        assertEquals(new At("runs.csv", 2, 1), table.entries().get("feed-1").keyAt());
        assertEquals(new At("runs.csv", 2, 11), first.get("from").at());
        assertEquals(new At("runs.csv", 3, 4), first.get("to").at());
        assertEquals(new At("runs.csv", 3, 7), first.get("length").at());
        MapTree second = (MapTree) table.get("feed-2");
        assertEquals("x\"y", ((ScalarTree) second.get("to")).text());
        assertEquals(new At("runs.csv", 4, 16), second.get("length").at());
    }

    // mistakes

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "from,id~n~a,b | 1:1 | does not begin with the column",
        "id,from~nr,a,b | 2:5 | more cells than the header",
        "id,from,~nr,a,b | 2:5 | nothing in the header",
        "id,from,from | 1:9 | a second time",
        "id,from~nr,a~nr,b | 3:1 | a second time (first at line 2)",
        "id,from~n,a | 2:1 | has no id",
        "id,ends..to | 1:4 | does not name a field",
        "id,length [m | 1:4 | does not name a field",
        "id,near,near.exhaust~nr,none,5 m | 2:8 | as a whole and in parts",
        "id,near.exhaust,near~nr,5 m,none | 2:7 | as a whole and in parts",
        "id,from~nr,\"a | 2:3 | never closed",
        "id,from~nr,\"a\"b | 2:6 | follows the closing quote",
        "id;length~nr;1.200 m | 2:3 | may be a decimal one",
        "id,from~nr,a\u0007b | 2:4 | nobody can see",
        "id\tfrom~nr\ta | 1:1 | separated by tabs"})
    void aMistakeIsNamedWithItsPlace(String text, String place, String says) {
        String message = refused(text.replace("~n", "\n"));
        assertTrue(message.startsWith("runs.csv:" + place + ": "), message);
        assertTrue(message.contains(says), message);
        assertEquals(1, message.lines().count(), message);
    }

    @Test
    void whatIsTooLargeForAJobIsRefused() {
        assertTrue(refused("id" + ",a".repeat(CsvCells.MOST_COLUMNS)).contains("cells stand in one row"));
        assertTrue(refused("id\n" + "a\n".repeat(CsvCells.MOST_ROWS + 1)).contains("rows stand in this table"));
        assertTrue(refused("x".repeat(TreeReader.MOST_BYTES + 1)).contains("larger than"));
    }

    @Test
    void textThatIsNotUtf8SaysHowToSaveIt() {
        UnusableInput refusal = assertThrows(UnusableInput.class, () -> CsvReader.read("id,insulation\na,105 °C\n".getBytes(StandardCharsets.ISO_8859_1),
                "runs.csv", RUNS));
        assertTrue(refusal.getMessage().contains("CSV UTF-8"), refusal.getMessage());
    }

    // tables in jobs

    private static final Map<String, Collection<? extends Class<?>>> TABLES = Map.of("items", Item.KINDS.values(), "runs", RUNS,
            "pins", List.of(Plan.PinUse.class));

    @ParameterizedTest
    @ValueSource(strings = {"street-show", "tour-van"})
    void theTablesOfAJobReadLikeItsGroups(String job) throws UnusableInput, IOException {
        JobFiles files = JobFiles.read(Jobs.plan(job), null);
        for (String key : TABLES.keySet()) {
            readsAlike((MapTree) files.tree("plan").get(key), TABLES.get(key));
        }
        readsAlike((MapTree) files.tree("parts").get("parts"), Item.KINDS.values());
    }

    private static void readsAlike(MapTree group, Collection<? extends Class<?>> rows) throws IOException, UnusableInput {
        for (char separator : new char[] {',', ';'}) {
            String text = written(AsTable.rows(group), separator);
            assertEquals(AsTable.plain(group), AsTable.plain(CsvReader.read(text.getBytes(StandardCharsets.UTF_8), "x.csv", rows)));
        }
    }

    @Test
    void aKeyIsAListInEveryKindOfItemOrInNone() {
        for (Class<? extends Item> one : Item.KINDS.values()) {
            for (Class<? extends Item> other : Item.KINDS.values()) {
                Layout.of(one).forEach((key, slot) -> {
                    Layout.Slot same = Layout.of(other).get(key);
                    assertTrue(same == null || same.form() == slot.form(), key + " of " + one + " and " + other);
                });
            }
        }
    }

    @Test
    void aPatchChangesOnePinOfATable() throws UnusableInput {
        JobFiles files = JobFiles.read(Jobs.plan("tour-van"), null);
        MapTree change = TreeReader.read("plan: { pins: { radio-a.4: { color: green, identified: { by: null } } } }"
                .getBytes(StandardCharsets.UTF_8), "case.yaml");
        Plan.PinUse pin = JobReader.bind(files.patched(change)).plan().pins().get("radio-a.4");
        assertEquals("green", pin.color().orElse(""));
        assertEquals("interface.memory", pin.connectedTo().orElse(""));
        assertEquals("pins.radio-a.4.identified.by", pin.identified().by().needs().get(0).path());
    }

    private static String bound(Path folder, String plan, Map<String, String> tables) throws IOException {
        for (Map.Entry<String, String> table : tables.entrySet()) {
            Files.writeString(folder.resolve(table.getKey()), table.getValue());
        }
        Path file = Files.writeString(folder.resolve("plan.yaml"), "bayproof: 1\n" + plan);
        try {
            JobReader.bind(JobFiles.read(file, null));
            return "";
        } catch (UnusableInput e) {
            return e.getMessage().replace(folder + java.io.File.separator, "");
        }
    }

    @Test
    void mistakesInATableReadLikeThoseInThePlan(@TempDir Path folder) throws IOException {
        String all = bound(folder, "items: i.csv\nruns: r.csv\npins: p.csv\nparts: [ book.yaml ]\n", Map.of(
                "i.csv", "id,kind,part,place,ratng\nf,fuse,,tray,80 A\nb,fuze,,,\nc,,holdr,,\nd,amplifier,,,\n",
                "r.csv", "id;from;to;length\nfeed;f.in;f.aut;0,35\nback;body;f.in;0,3 m\n",
                "p.csv", "id,function\nradio-a.4,constant-suply\nradio,speaker\n",
                "book.yaml", "bayproof: 1\nkind: parts\nparts: book.csv\n",
                "book.csv", "id,kind,rating\nholder,fuse,40 A\n"));
        assertEquals("""
                i.csv:1:20: "ratng" is not a key that is known here. Did you mean rating?
                i.csv:3:3: "fuze" is not a kind of item. Did you mean fuse?
                i.csv:4:4: "holdr" is not a part of the parts books this plan names. Did you mean holder?
                p.csv:2:11: "constant-suply" is not an answer to "function". Did you mean constant-supply?
                p.csv:3:1: "radio" does not say which cavity of a connector it is. Write connector, dot and cavity, such as radio-a.4.
                r.csv:2:11: "aut" is not a terminal of f. Did you mean out?
                r.csv:2:17: "0.35" cannot be read as "length". "0.35" has no unit. Write a length as "18 in" or "0.45 m".""", all);
    }

    @Test
    void aKeyOfAnotherKindIsNamedInItsRow(@TempDir Path folder) throws IOException {
        String all = bound(folder, "items: i.csv\n", Map.of("i.csv", "id,kind,rating,class\nf,fuse,80 A,\na,amplifier,80 A,D\n"));
        assertTrue(all.startsWith("i.csv:3:13: \"rating\" is not a key that is known here."), all);
    }

    @Test
    void aTableThatIsNotThereIsNamedWhereThePlanNamesIt(@TempDir Path folder) throws IOException {
        assertEquals("plan.yaml:2:7: the file \"r.CSV\" is not there. Files are looked for beside the one that names them; "
                + "correct the name or take the line out.", bound(folder, "runs: r.CSV\n", Map.of()));
    }

    // the oracle

    private static String written(List<List<String>> rows, char separator) throws IOException {
        StringWriter out = new StringWriter();
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.EXCEL.builder().setDelimiter(separator).get())) {
            printer.printRecords(rows);
        }
        return out.toString();
    }

    @Test
    void cellsAreThoseACommonLibrarySees() throws IOException, UnusableInput {
        Random random = new Random(20261125);
        int tables = 500;
        for (int i = 0; i < tables; i++) {
            char separator = random.nextBoolean() ? ',' : ';';
            List<List<String>> rows = new ArrayList<>(List.of(List.of("id", "a", "b")));
            for (int row = random.nextInt(5); row > 0; row--) {
                rows.add(List.of("r" + row, noise(random), noise(random)));
            }
            String text = written(rows, separator);
            List<List<String>> expected = new ArrayList<>();
            try (CSVParser parser = CSVParser.parse(text, CSVFormat.EXCEL.builder().setDelimiter(separator).get())) {
                for (CSVRecord record : parser) {
                    expected.add(record.stream().map(CsvReaderTest::oneLine).toList());
                }
            }
            assertEquals(separator, CsvCells.separator(text));
            Problems problems = new Problems();
            List<List<String>> seen = CsvCells.read("x.csv", text, separator, problems).stream()
                    .map(row -> row.stream().map(CsvCells.Cell::text).toList()).toList();
            assertTrue(problems.isEmpty());
            assertEquals(expected, seen, text);
        }
        Tally.count("tables read as a common library reads them", tables);
    }

    private static String oneLine(String cell) {
        return cell.replaceAll("\r\n|\r|\n", " ").replaceAll("^[ \t\u00A0]+|[ \t\u00A0]+$", "");
    }

    private static String noise(Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(8); i > 0; i--) {
            text.append(List.of(",", ";", "\"", "\n", "\r\n", " ", "é", "x", "1", "\t").get(random.nextInt(10)));
        }
        return text.toString();
    }
}
