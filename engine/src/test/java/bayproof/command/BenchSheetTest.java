package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** The bench sheet in each of its forms. */
class BenchSheetTest {
    /** A text that means something to every form it is printed in. */
    private static final String HOSTILE = "=1+1|<b>*x*</b>[a](http://b.c)";
    private static final String[] BROKEN = {"size: 8 AWG, length: 0.35 m", "size: 8 AWG, length: 1.40 m"};

    @TempDir
    private Path folder;

    private static JsonNode json(String plan) throws Exception {
        return new ObjectMapper().readTree(Main.run("sheet", plan, "--as", "json").out());
    }

    private static JsonNode row(JsonNode table, String id) {
        for (JsonNode row : table) {
            if (row.elements().next().asText().equals(id)) {
                return row;
            }
        }
        throw new AssertionError("no row " + id);
    }

    @Test
    void everyPageFitsItsPaperAndStandsInItsOrder() throws Exception {
        for (String plan : List.of(Jobs.TOUR.toString(), Jobs.CLEAN.toString(), Jobs.changed(folder, "length: 0.30 m", "length: 1.20 m", "size: 4 AWG, length: 0.70 m", "size: unknown"))) {
            for (String kind : List.of("", "--pins", "--put-back")) {
                String out = (kind.isEmpty() ? Main.run("sheet", plan) : Main.run("sheet", plan, kind)).out();
                assertAll(out.lines().map(each -> () -> assertTrue(each.codePointCount(0, each.length()) <= 80, each)));
                assertFalse(out.isEmpty() || out.contains("\u2610") || out.contains("NaN") || out.contains("null"), out);
            }
            Matcher pages = Pattern.compile("(?m)^([1-5] [A-Z ]+)  page ([1-5]) of 5").matcher(Main.run("sheet", plan).out());
            List<String> titles = new ArrayList<>();
            while (pages.find()) {
                titles.add(pages.group(1));
            }
            assertEquals(List.of("1 CUT LIST", "2 FUSES AND GROUNDS", "3 PINS AND SPEAKERS", "4 FIRST POWER", "5 HOURS"), titles);
        }
    }

    @Test
    void theFirstLinesSayWhatStandsInTheWay() throws Exception {
        Reply clean = Main.run("sheet", Jobs.TOUR.toString());
        assertEquals(0, clean.status());
        assertTrue(clean.out().lines().limit(2).toList().get(1).startsWith("GATE CLEARED: handover."), clean.out());
        Reply broken = Main.run("sheet", Jobs.changed(Jobs.TOUR, folder, BROKEN));
        assertEquals(1, broken.status());
        List<String> first = broken.out().lines().limit(4).toList();
        assertEquals("DO NOT BUILD - 1 STOP stands open.", first.get(1));
        assertTrue(first.get(2).startsWith("STOP  Move the fuse to within 1.01 m of the battery post"), broken.out());
        assertTrue(broken.out().contains("GATE CLEARED: none. In the way: order (1 stop"), broken.out());
        assertEquals(5, broken.out().lines().filter(line -> line.matches(".*page [1-5] of 5.*STOP OPEN: do not build")).count(), "pages hang apart");
    }

    /** Worked by hand: 0.95 + 2.10 + 0.80 = 3.85 m of routes; times 1.03 is 3.9655 m; and 2 x 60 mm is 4.0855 m, cut as 4.09 m. */
    @Test
    void aCutIsItsWayWithTheSpareThatIsSaid() throws Exception {
        JsonNode cut = row(json(Jobs.TOUR.toString()).get("cut-list"), "conv-feed-2");
        assertEquals(3.85, cut.at("/way/value").asDouble(), 1e-9);
        assertEquals(4.09, cut.at("/cut/value").asDouble(), 1e-9);
        assertEquals("8.37 mm2", cut.get("other-size").asText());
        // A whole centimeter stays one: 1.00 x 1.03 + 0.12 = 1.15. Slack at a hinge, 0.12 m, comes on top.
        JsonNode other = json(Jobs.changed(Jobs.TOUR, folder, "size: 2 AWG, length: 1.10 m", "size: 2 AWG, length: 1.00 m, slack: 120 mm, color: brown"));
        assertEquals(1.27, row(other.get("cut-list"), "house-feed-2").at("/cut/value").asDouble(), 1e-9);
        assertEquals("brown", row(other.get("cut-list"), "house-feed-2").get("color").asText());
    }

    @Test
    void whatNobodyMeasuredIsABlankAndItsTotalToo() throws Exception {
        String plan = Jobs.changed(Jobs.TOUR, folder, "size: 2 AWG, length: 2.40 m", "size: 2 AWG, length: unknown");
        String out = Main.run("sheet", plan).out();
        assertEquals(unmeasured(Main.run("sheet", Jobs.TOUR.toString()).out()) + 1, unmeasured(out));
        assertTrue(out.contains("2 AWG (33.6 mm2): 7 cables, total ........ (1 not measured)"), out);
        assertTrue(out.matches("(?s).*\\[ \\]  house-feed-3 +red \\* +\\.{8}  house-fuse\\.out.*"), out);
        JsonNode json = json(plan);
        assertTrue(row(json.get("cut-list"), "house-feed-3").get("cut").isNull() && row(json.get("cut-totals"), "2 AWG").get("total").isNull(), json.toString());
        assertEquals(12.22, row(json.get("cut-totals"), "8 AWG").at("/total/value").asDouble(), 1e-9);
    }

    private static int unmeasured(String sheet) {
        Matcher head = Pattern.compile("(?m)^NOT MEASURED  ([0-9]+) of 84 cables\\.").matcher(sheet);
        assertTrue(head.find(), sheet);
        return Integer.parseInt(head.group(1));
    }

    @Test
    void aSpeakerCableHasItsWindowAndAnOutputItsTargetWhereTheFactsHoldThem() throws Exception {
        JsonNode speakers = json(Jobs.TOUR.toString()).get("speakers");
        // The plan itself sets 14 V with a tone of 1 kHz; the coil's DC resistance lies below its nominal 4 ohm, and copper reads more when it is warm.
        assertEquals(14, row(speakers, "amp-front.ch-1").at("/target/value").asDouble(), 1e-9);
        assertEquals(1000, row(speakers, "amp-front.ch-1").at("/tone/value").asDouble(), 1e-9);
        double least = row(speakers, "amp-front.ch-1").at("/reads-least/value").asDouble();
        double most = row(speakers, "amp-front.ch-1").at("/reads-most/value").asDouble();
        assertTrue(2 < least && least < most && most < 4, least + " to " + most);
        String out = Main.run("sheet", Jobs.TOUR.toString()).out().replaceAll("\\s+", " ");
        assertTrue(out.contains("turn the gain up until the output reads 14 V AC, with a tone of 1 kHz at 0 dBFS"), out);
        String unmeasured = Jobs.changed(Jobs.TOUR, folder, "target: 14 V", "target: unknown");
        JsonNode open = row(json(unmeasured).get("speakers"), "amp-front.ch-1");
        assertTrue(open.get("target").isNull(), open.toString());
        assertTrue(Main.run("sheet", unmeasured).out().replaceAll("\\s+", " ").contains("until the output reads ........ V AC"));
    }

    @Test
    void aTargetSaysAtWhichVolumeItHoldsOrAsks() throws Exception {
        String known = Main.run("sheet", Jobs.TOUR.toString()).out().replaceAll("\\s+", " ");
        assertTrue(known.contains("the source's volume step 24 of 30, and no further") && !known.contains("does not say one volume"), known);
        String open = Main.run("sheet", Jobs.changed(Jobs.TOUR, folder, "of: [ radio-rear-left ], expects: full, settings-made-on: flat, set-at-volume: 24 of 30",
                "of: [ radio-rear-left ], expects: full, settings-made-on: flat")).out().replaceAll("\\s+", " ");
        assertTrue(open.contains("ASK The plan does not say one volume of the source at which these targets hold.") && open.contains("the source's volume step ........, and"), open);
        // 45 W into 4 ohm is 13.42 V (root of watts times ohms), less than the target of 14 V.
        assertTrue(known.contains("amp-side.ch-1 (side left)") && known.contains("Limiter off meanwhile, then at 45 W, 13.42 V AC."), known);
    }

    @Test
    void aWideWindowSaysWhatItDoesNotExclude() throws Exception {
        String known = Main.run("sheet", Jobs.TOUR.toString()).out();
        assertFalse(known.contains("WIDE") || known.contains("CANNOT TELL"), known);
        String wide = Main.run("sheet", Jobs.changed(Jobs.TOUR, folder, "sub-1: { part: sub-10in-dual-4,", "sub-1: { part: sub-10in-dual-4, dc-resistance: { coil-1: unknown, coil-2: unknown },",
                "sub-2: { part: sub-10in-dual-4,", "sub-2: { part: sub-10in-dual-4, dc-resistance: { coil-1: unknown, coil-2: unknown },",
                "resistance: 3.5 ohm, to-body: 500 kohm, dc: 4 mV", "resistance: unknown, to-body: 500 kohm, dc: 4 mV")).out().replaceAll("\\s+", " ");
        assertTrue(wide.contains("WIDE amp-sub.ch-1: the DC resistance of a coil is not written, so its window is 65 % to 95 % of the nominal impedance."), wide);
        // By hand: one coil shorted leaves 4 | 8 = 2.67 ohm, up to 2.5 ohm at 95 %, and the net as planned begins at 65 % of 4 ohm, 2.6 ohm: cold and warm copper make them meet.
        assertTrue(wide.contains("CANNOT TELL amp-sub.ch-1: a reading in this window does not exclude: ") && wide.contains("Lift one branch and read again."), wide);
    }

    @Test
    void everyFuseIsMetFromItsPostOutwardAndWhatJoinsTwoSourcesComesLast() throws Exception {
        JsonNode fuses = json(Jobs.TOUR.toString()).get("fuses");
        assertEquals(16, fuses.size());
        assertEquals("start-battery.positive", row(fuses, "conv-fuse").get("post").asText());
        assertEquals(0.35, row(fuses, "conv-fuse").at("/from-post/value").asDouble(), 1e-9);
        // 0.16 m to the main fuse of the second battery and 1.10 m to the block.
        assertEquals(1.26, row(fuses, "block-audio.out-3").at("/from-post/value").asDouble(), 1e-9);
        assertEquals("converter.out", row(fuses, "house-link-fuse").get("other-source").asText());
        assertTrue(row(fuses, "house-fuse").get("other-source").isNull());
        String power = Main.run("sheet", Jobs.TOUR.toString()).out().split("4 FIRST POWER")[1].split("5 HOURS")[0];
        assertTrue(power.contains("stay OUT for now: house-link-fuse, conv-out-fuse"), power);
        String small = power.substring(power.indexOf("small fuses first"));
        assertTrue(small.indexOf("[ ]  house-fuse  ") < small.indexOf("[ ]  block-audio.out-1 ") && small.indexOf("[ ]  house-fuse ") > small.indexOf("[ ]  conv-fuse "), small);
        List<Integer> numbers = new ArrayList<>();
        Pattern.compile("(?m)^ ?([0-9]{1,2})  [A-Z]").matcher(power).results().forEach(found -> numbers.add(Integer.valueOf(found.group(1))));
        assertEquals(Stream.iterate(1, number -> number + 1).limit(numbers.size()).toList(), numbers);
        assertTrue(numbers.size() >= 10 && power.replaceAll("\\s+", " ").contains("Anything warm, any smell, any lamp: fuse out, call the lead."), power);
    }

    /** Added up by hand from the plan: 23.0 h of work and 0.25 h + 1.5 h of waiting; 80 % and 150 % of the work. */
    @Test
    void hoursAreSpreadWhereSomebodyWorksAndNotWhereSomebodyWaits() throws Exception {
        String out = Main.run("sheet", Jobs.TOUR.toString()).out();
        assertTrue(out.matches("(?s).*worked +18\\.40 h +23\\.00 h +34\\.50 h\n.*waited +1\\.75 h +1\\.75 h +1\\.75 h\n.*20\\.15 h +24\\.75 h +36\\.25 h\n.*"), out);
        String open = Main.run("sheet", Jobs.changed(Jobs.TOUR, folder, "strip: { do: teardown, after: [ seat-plugs ], hours: 1.5 h", "strip: { do: teardown, after: [ seat-plugs ], hours: unknown")).out();
        assertTrue(open.matches("(?s).*worked +\\.{8}  \\.{8}  \\.{8}\n.*") && open.contains("1 step without hours: the sums are blanks."), open);
    }

    @Test
    void whatTheVehicleMustGetBackFollowsWhatThePlanTouches() throws Exception {
        String plan = Jobs.changed(Jobs.TOUR, folder, "side-door-boot ], support: 300 mm, diameter: 6 mm, bend: 70 mm, near: {}, tied-to: none, label: both-ends, slack: 120 mm",
                "side-door-boot ], support: 300 mm, diameter: 6 mm, bend: 70 mm, near: {}, tied-to: none, label: both-ends, slack: 130 mm");
        Path pins = Path.of(plan).resolveSibling("pins.csv");
        Files.writeString(pins, Files.readString(pins).replace("interface.speaker-3,plug-in-harness", "interface.speaker-3,cut-and-join"));
        String out = Main.run("sheet", plan, "--put-back").out().replaceAll("\\s+", " ");
        assertAll(() -> assertTrue(out.contains("radio-b.3 gray join the cut factory wire again"), out),
                () -> assertTrue(out.contains("partition-right cabin to cargo drilled: close it"), out),
                () -> assertTrue(out.contains("woofer-left door-left-baffle old-woofer-left"), out),
                () -> assertFalse(out.contains("sub-1 "), "a woofer in its own box leaves no opening"),
                // By hand: steps done again 0.3 + 0.2 + 0.3 + 1.5 + 0.3 + 0.2 + 1.0 + 1.2 = 5.0 h, half of the 14.4 h of fitting, 0.25 h + 1.5 h of waiting.
                () -> assertTrue(out.contains("Worked 12.20 h, waited 1.75 h."), out));
    }

    @Test
    void markdownHoldsItsTablesTogetherWhateverAJobSays() throws Exception {
        String plan = Jobs.changed(Jobs.TOUR, folder, "title: Tour van sound and stage", "title: \"" + HOSTILE + "\"", "size: 2 AWG, length: 1.10 m",
                "size: 2 AWG, length: 1.10 m, color: \"" + HOSTILE + "\"");
        String text = Main.run("sheet", plan, "--as", "markdown").out();
        assertFalse(Pattern.compile("(?<!\\\\)(<b>|]\\(http|\\*x)").matcher(text).find(), "markup that is not ours");
        assertTrue(text.contains("\\<b\\>\\*x\\*\\</b\\>\\[a\\](http\\://b.c)"), text);
        int columns = 0;
        for (String line : text.lines().toList()) {
            int bars = line.replaceAll("\\\\.", "").replaceAll("[^|]", "").length();
            if (line.matches("\\|( --- \\|)+")) {
                columns = bars;
            } else if (line.startsWith("|") && columns > 0) {
                assertEquals(columns, bars, line);
            } else if (!line.startsWith("|")) {
                columns = 0;
            }
        }
    }

    @Test
    void aTableOfTheSpreadsheetRunsNoFormulaAndEveryRowIsWhole() throws Exception {
        String plan = Jobs.changed(Jobs.TOUR, folder, "size: 2 AWG, length: 1.10 m", "size: 2 AWG, length: 1.10 m, color: \"" + HOSTILE + ", \\\"q\\\"\"");
        Path tables = folder.resolve("tables");
        Reply reply = Main.run("sheet", plan, "--as", "csv", "--to", tables.toString());
        Path usual = Files.createFile(folder.resolve("usual"));
        try (Stream<Path> written = Files.list(tables)) {
            // Whoever may read any file made here may read these.
            assertAll(written.map(file -> () -> assertEquals(Files.getPosixFilePermissions(usual), Files.getPosixFilePermissions(file), file.toString())));
        }
        assertEquals(0, reply.status(), reply.err());
        try (Stream<Path> files = Files.list(tables)) {
            List<Path> written = files.sorted().toList();
            assertEquals(List.of("sheet-bands.csv", "sheet-boxes.csv", "sheet-cut-list.csv", "sheet-cut-totals.csv", "sheet-first-power.csv", "sheet-fuses.csv", "sheet-grounds.csv", "sheet-hours.csv",
                    "sheet-pins.csv", "sheet-speakers.csv"), written.stream().map(file -> file.getFileName().toString()).toList(), "and nothing half written");
            for (Path file : written) {
                // The library that spreadsheets' tables are read with elsewhere: it is not ours.
                try (CSVParser rows = CSVFormat.RFC4180.parse(Files.newBufferedReader(file))) {
                    List<CSVRecord> all = rows.getRecords();
                    for (CSVRecord row : all) {
                        assertEquals(all.get(0).size(), row.size(), file + ": " + row);
                        assertTrue(row.stream().noneMatch(cell -> cell.matches("(?s)[=+@-].*") && !cell.matches("-[0-9.]+")), row.toString());
                    }
                    assertTrue(all.size() > 1, file.toString());
                }
            }
        }
        assertTrue(Files.readString(tables.resolve("sheet-cut-list.csv")).contains("\"'" + HOSTILE + ", \"\"q\"\"\""), "kept behind an apostrophe");
    }

    @Test
    void fuseLabelsAreAtTrueSizeWithALineToProveIt() throws Exception {
        String plan = Jobs.changed(Jobs.TOUR, folder, "tag: T-1187", "tag: \"<T&'1\"");
        Path wall = folder.resolve("wall");
        assertEquals(0, Main.run("sheet", plan, "--as=markdown", "--to=" + wall).status());
        byte[] svg = Files.readAllBytes(wall.resolve("fuse-labels.svg"));
        Element root = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(svg)).getDocumentElement();
        assertTrue(root.getAttribute("width").endsWith("mm") && root.getAttribute("height").endsWith("mm"));
        String[] box = root.getAttribute("viewBox").split(" ");
        assertEquals(root.getAttribute("width"), box[2] + "mm", "one unit of the picture is one millimeter");
        assertEquals(root.getAttribute("height"), box[3] + "mm");
        assertEquals(16, root.getElementsByTagName("rect").getLength());
        Element label = (Element) root.getElementsByTagName("rect").item(0);
        assertEquals("50 x 20", label.getAttribute("width") + " x " + label.getAttribute("height"));
        assertTrue(((Element) root.getElementsByTagName("path").item(0)).getAttribute("d").contains("h50"));
        assertTrue(root.getTextContent().contains("50 A") && root.getTextContent().contains("<T&'1"), root.getTextContent());
        assertTrue(Files.readString(wall.resolve("sheet.md")).contains("](fuse-labels.svg)"));
    }

    @Test
    void whatCannotBeAskedIsRefusedWithWhatToWrite() {
        String plan = Jobs.TOUR.toString();
        assertAll(() -> assertRefused("--to FOLDER", "sheet", plan, "--as", "csv"),
                () -> assertRefused("Leave it out", "sheet", plan, "--to", folder.toString()),
                () -> assertRefused("Write --pins --filled", "sheet", plan, "--filled", "x.csv"),
                () -> assertRefused("Ask for one of them", "sheet", plan, "--pins", "--put-back"),
                () -> assertRefused("Did you mean markdown", "sheet", plan, "--as", "markdwn"),
                () -> assertRefused("Did you mean sheet", "shet", plan),
                () -> assertRefused("Name a folder", "sheet", plan, "--as", "csv", "--to", Files.writeString(folder.resolve("file"), "x").toString()));
    }

    private static void assertRefused(String fix, String... line) {
        Reply reply = Main.run(line);
        assertEquals(2, reply.status(), reply.out());
        assertTrue(reply.err().replaceAll("\\s+", " ").contains(fix), reply.err());
    }

    @Test
    void unitsOfTheCountryChangeWhatIsReadAndNothingElse() throws Exception {
        String us = Main.run("sheet", Jobs.TOUR.toString(), "--units=us").out();
        // 0.41 m for a way of 0.16 m: 6.3 in to trim to.
        assertTrue(us.contains("TRIM  house-feed-1 to 6.3 in"), us);
        assertFalse(Pattern.compile("\\d m( |$)", Pattern.MULTILINE).matcher(us.substring(us.indexOf("1 CUT LIST"), us.indexOf("2 FUSES"))).find(), us);
        assertEquals(Main.run("sheet", Jobs.TOUR.toString(), "--as=json").out(), Main.run("sheet", Jobs.TOUR.toString(), "--as=json", "--units=us").out());
    }

    @Test
    void whatWasTakenOffIsFoundAgain() throws Exception {
        String back = Main.run("sheet", Jobs.TOUR.toString(), "--put-back").out();
        assertTrue(back.contains("[ ]  old-woofer-left    shelf 5, crate with the tag  shop        doors"), back);
        assertTrue(back.replaceAll("\\s+", " ").contains("woofer-left door-left-baffle old-woofer-left shelf 5, crate with"), back);
        String unwritten = Main.run("sheet", Jobs.changed(Jobs.TOUR, folder, "  old-woofer-left: { lies: \"shelf 5, crate with the tag\", with: shop }\n", ""), "--put-back").out();
        assertFalse(unwritten.contains("[ ]  old-woofer-left"), unwritten);
        assertTrue(Pattern.compile("woofer-left +door-left-baffle +old-woofer-left +\\.{8}").matcher(unwritten).find(), unwritten);
    }

    @Test
    void levelsSayWhatClipsFirstAndWhatAnotherSourceLevelReads() throws Exception {
        String sheet = Main.run("sheet", Jobs.TOUR.toString()).out().replaceAll("\\s+", " ");
        // 4 V and 0.5 V at 1 kHz: 20 log10(8) = 18.06 dB; 14 V / 8 = 1.75 V.
        assertTrue(sheet.contains("front-left 4 V 0.5 V -18.1 dB") && sheet.contains("amp-front.ch-1 14 V AC 1.75 V AC"), sheet);
        assertTrue(sheet.contains("So these loads may fall to: 3.2 ohm (amp-front.ch-1"), sheet);
        assertTrue(sheet.contains("Clips first: processor.out-1, at just this level."), sheet);
        String hot = Main.run("sheet", Jobs.changed(Jobs.TOUR, folder, "target: 14 V", "target: 20 V")).out().replaceAll("\\s+", " ");
        // 20 V asked of 14.142 V at rated power: 3.01 dB too much.
        assertTrue(hot.contains("CLIPS ALREADY: amp-front.ch-1, by 3.01 dB."), hot);
    }
}
