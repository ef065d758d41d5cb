package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.figure.Figure;
import bayproof.figure.Figures;
import bayproof.judge.RuleBase;
import bayproof.read.LimitsInForce;
import bayproof.support.Tally;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Numbers and rules asked by hand. */
class FigureTest {
    private static final int WIDTH = 80;
    private static final Pattern SHELL_WORD = Pattern.compile("(?:[^ \"]|\"[^\"]*\")+");
    private static JsonNode tourVan;

    @TempDir
    private Path folder;

    /** A command line as a shell takes it apart. */
    private static String[] line(String text) {
        List<String> words = new ArrayList<>(List.of("figure"));
        Matcher word = SHELL_WORD.matcher(text);
        while (word.find()) {
            words.add(word.group().replace("\"", ""));
        }
        return words.toArray(String[]::new);
    }

    private static Reply ask(String text, String... more) {
        return Main.run(Stream.concat(Stream.of(line(text)), Stream.of(more)).toArray(String[]::new));
    }

    private static JsonNode json(String text) throws IOException {
        Reply reply = ask(text, "--as=json");
        assertTrue(reply.status() <= Reply.COUNTS, reply.err());
        return new ObjectMapper().readTree(reply.out());
    }

    private static double value(String text) throws IOException {
        return json(text).at("/values/0/value").asDouble(Double.NaN);
    }

    private static List<Figure> all() {
        return Stream.concat(Figures.numbers().stream().map(Figure.class::cast), Figures.rules().stream()).toList();
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyExampleIsAnsweredAndSaysWhereItComesFrom(Figure figure) throws IOException {
        Reply reply = ask(figure.name() + " " + figure.example());
        assertTrue(reply.status() <= Reply.COUNTS && reply.err().isEmpty(), figure.name() + ": " + reply.err());
        reply.out().lines().forEach(one -> assertTrue(one.codePointCount(0, one.length()) <= WIDTH, one));
        assertTrue(reply.out().contains("  Source: ") || reply.out().contains("    Source: ") || reply.out().contains(", as given."), reply.out());
        JsonNode json = json(figure.name() + " " + figure.example());
        assertTrue(json.get("given").size() >= figure.inputs().stream().filter(input -> input.needed()).count(), json.toString());
        if (json.has("rule")) {
            assertTrue(json.at("/measured/value").isNumber() && json.at("/limit/value").isNumber(), json.toString());
            assertEquals(reply.status() == Reply.COUNTS ? "broken" : "holds", json.get("outcome").asText(), json.toString());
        } else {
            assertTrue(json.at("/values/0/value").isNumber() && !json.get("source").asText().isEmpty(), json.toString());
        }
        Tally.count("figures by hand", 1);
    }

    @Test
    void everyRuleWithANumberCanBeAskedOrSaysWhyNot() throws IOException {
        TreeSet<String> numeric = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("../rules/src/main/resources/bayproof/rules"))) {
            for (Path file : files.filter(one -> one.toString().endsWith(".drl")).toList()) {
                if (Files.readString(file).contains(".number(")) {
                    numeric.add(file.getFileName().toString().replace(".drl", ""));
                }
            }
        }
        assertTrue(numeric.size() > 40);
        TreeSet<String> answered = new TreeSet<>(Figures.notByHand().keySet());
        Figures.rules().forEach(rule -> assertTrue(answered.add(rule.name()), rule.name() + " is there twice"));
        assertEquals(numeric, answered);
    }

    @Test
    void theListNamesEverythingOnce() {
        String list = Main.run("figure").out();
        for (Figure figure : all()) {
            assertEquals(1, list.lines().filter(one -> one.startsWith("  " + figure.name() + ": ")).count(), figure.name());
        }
        Figures.notByHand().keySet().forEach(rule -> assertTrue(list.contains("  " + rule + ": "), rule));
        int others = RuleBase.built().rules().size() - Figures.rules().size() - Figures.notByHand().size();
        assertTrue(list.contains(others + " other rules hold no number"), list);
    }

    // the same functions as on a plan

    private static JsonNode tourVan(String path) throws IOException {
        if (tourVan == null) {
            tourVan = new ObjectMapper().readTree(Main.run("review", Jobs.TOUR.toString(), "--gate=handover", "--as=json").out());
        }
        JsonNode number = tourVan.get("numbers").get(path);
        assertTrue(number != null, path);
        return number;
    }

    private static double judged(String rule, String subject) throws IOException {
        tourVan("steps.hours");
        for (JsonNode verdict : tourVan.get("verdicts")) {
            if (verdict.get("rule").asText().equals(rule) && verdict.get("subject").asText().equals(subject)) {
                return verdict.at("/measured/value").asDouble(Double.NaN);
            }
        }
        return Double.NaN;
    }

    /** Values as the plan of the tour van has them: by hand the same doubles come out. */
    @Test
    void byHandItIsWhatThePlanGives() throws IOException {
        String laid = "size=2 AWG insulation=105 °C ambient=40 °C";
        assertEquals(tourVan("runs.house-feed-1.ampacity").get("value").asDouble(), value("ampacity " + laid));
        assertEquals(judged("fuse-within-ampacity", "runs.house-feed-1"), json("fuse-within-ampacity fuse=100 A " + laid).at("/measured/value").asDouble());
        assertEquals(tourVan("settings.amp-sub.ch-1.gain-needed").get("value").asDouble(), json("gain-within-range target=13.5 V level=-5 dBFS arrives=4 V power=150 W "
                + "load=4 ohm least-input=0.2 V most-input=8 V").at("/measured/value").asDouble());
        assertEquals(tourVan("settings.amp-front.ch-1.full-volts").get("value").asDouble(), value("target-volts power=50 W load=4 ohm"));
        assertEquals(tourVan("speaker-wiring.amp-sub.ch-1.load").get("value").asDouble(), value("load \"net=4 ohm + 4 ohm | 4 ohm + 4 ohm\""));
        assertEquals(judged("parked-days", "supply.sources.start-battery"), json("parked-days capacity=70 Ah standby=23 mA wished=10 d").at("/measured/value").asDouble());
        assertEquals(judged("delay-matches-distance", "settings.amp-front.ch-1"),
                json("delay-matches-distance delay=4.38 ms distance=1.10 m farthest=2.60 m").at("/measured/value").asDouble(), 1e-6);
        assertEquals(judged("corner-above-resonance", "items.tweeter-left"), json("corner-above-resonance corner=3.5 kHz resonance=1.2 kHz").at("/measured/value").asDouble());
        assertEquals(judged("gain-target-within-output", "settings.amp-sub.ch-1"),
                json("gain-target-within-output target=13.5 V level=-5 dBFS power=150 W load=4 ohm").at("/measured/value").asDouble());
    }

    // outside values

    /**
     * Published answers: how-to pages on setting gain (50 W, 4 ohm: 14.142 V); 29 CFR 1910.95 Table G-16 (100 dB(A): 2 h); NIOSH noise page (100 dB(A): 15 min); a teaching page on
     * 1910.95 (4 h at 90, 2 h at 95, 2 h at 85 dB(A): 112.5 %); the correction of lecture notes 34870, lesson 9 (5 ohm, 3 kHz: 10.61 uF); open-encyclopedia text "Audio power"
     * (5 A, 14.4 V, 60 %: about 43 W); a forum's worked example (contour.org, number 91188: two 3 ohm in parallel 1.5 ohm, bridged 0.75 per half).
     */
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '\'', value = {
        "target-volts power=50 W load=4 ohm; 0; 14.142; 0.0005",
        "exposure level=100 dBA; 0; 7200; 0.5",
        "exposure level=100 dBA; 1; 900; 0.5",
        "sound-dose level=90 dBA, 95 dBA, 85 dBA time=4 h, 2 h, 2 h; 0; 1.125; 0.0005",
        "sound-dose level=90 dBA, 95 dBA, 85 dBA time=4 h, 2 h, 2 h; 2; 90.85; 0.005",
        "capacitor corner=3 kHz load=5 ohm; 0; 10.61e-6; 0.005e-6",
        "plausible-power fuses=5 A class=AB efficiency=60 %; 0; 43; 0.5",
        "load \"net=3 ohm | 3 ohm\" bridged=yes; 0; 1.5; 0.05",
        "load \"net=3 ohm | 3 ohm\" bridged=yes; 1; 0.75; 0.005"})
    void publishedAnswers(String asked, int which, double published, double halfUnit) throws IOException {
        assertEquals(published, json(asked).at("/values/" + which + "/value").asDouble(Double.NaN), halfUnit);
        Tally.count("outside checks", 1);
    }

    /**
     * Published answers, of rules: lecture notes 34870 of a technical university, lesson 9 (second-order Butterworth, one turned round: +3.0 dB; Linkwitz-Riley of fourth order: 0 dB) and
     * lesson 8, problem 2b (radius 3.75 cm, 9.8 cm long, 90 L: 31 Hz, within the half millimeter of the printed length); a forum's worked example (contour.org, number 91188: two 3 ohm
     * in parallel, bridged 0.75 per half).
     */
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '\'', value = {
        "bands-add-up low-pass=3 kHz high-pass=3 kHz low-pass-shape=butterworth low-pass-order=2 high-pass-shape=butterworth high-pass-order=2 inverted=yes; 3.0; 0.05",
        "bands-add-up low-pass=3 kHz high-pass=3 kHz; 0; 0.05",
        "port-tuned-as-wanted diameter=75 mm length=98 mm air=90 L wanted=31 Hz; 1; 0.002",
        "bridged-half-minimum \"net=3 ohm | 3 ohm\" least=2 ohm; 0.75; 0.005"})
    void publishedAnswersOfRules(String asked, double published, double halfUnit) throws IOException {
        assertEquals(published, json(asked).at("/measured/value").asDouble(Double.NaN), halfUnit);
        Tally.count("outside checks", 1);
    }

    // limits

    @Test
    void aShopsOwnFigureIsInForce() throws IOException {
        Path shop = Files.writeString(folder.resolve("limits.yaml"), "bayproof: 1\nkind: limits\nlimits:\n"
                + "  bus-stub: { at-most: 20 cm, reason: short looms only }\n");
        assertEquals(Reply.CLEAR, ask("bus-stub-short length=25 cm").status());
        Reply own = ask("bus-stub-short length=25 cm", "--limits", shop.toString());
        assertEquals(Reply.COUNTS, own.status(), own.out() + own.err());
        assertTrue(own.out().contains("short looms only"), own.out());
    }

    @Test
    void everyFastenerWithAFigureCanBeAsked() throws Exception {
        List<String> names = LimitsInForce.read(null).all().stream().map(limit -> limit.name()).filter(name -> name.startsWith("holds-")).toList();
        assertTrue(names.size() > 10);
        for (String name : names) {
            String thread = name.replaceAll(".*-(m[0-9]+|screw-[0-9]|band)$", "$1");
            String fastener = name.substring("holds-".length(), name.length() - thread.length() - 1);
            Reply reply = ask("holds-in-a-crash fasteners=4 fastener=" + fastener + " thread=" + (thread.startsWith("m") ? thread.toUpperCase(java.util.Locale.ROOT) : thread) + " mass=4 kg");
            assertTrue(reply.status() <= Reply.COUNTS, reply.err());
        }
    }

    // mistakes

    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '\'', value = {
        "dropp; Did you mean drop?",
        "fuse-near-batery length=1 m; Did you mean fuse-near-battery?",
        "owner-known who=me; holds no number against a limit",
        "pin-proved-first reading=12 V; cannot be asked by hand: somebody has to vouch",
        "drop curent=30 A; Did you mean current?",
        "drop current=30 A; Not given: size",
        "drop current=30 size=4 AWG length=3 m; has no unit",
        "drop current=30 V size=4 AWG length=3 m; is a voltage",
        "drop current=30 A current=40 A size=4 AWG length=3 m; is given twice",
        "drop 30 A; is no value",
        "drop current=30 A size=5 AWGG length=3 m; is not a cable size",
        "load \"net=4 ohm +\"; a coil is missing",
        "load net=4; has no unit",
        "load \"net=0 ohm | 4 ohm\"; cannot be",
        "sound-dose level=90 dBA, 95 dBA time=1 h; 2 levels and 1 times",
        "meter-reading \"net=4 ohm behind 4.7 uF\"; open circuit",
        "ampacity size=4 AWG insulation=60 °C ambient=90 °C; may carry no current",
        "holds-in-a-crash fasteners=4 fastener=strap thread=M5 mass=4 kg; There is no figure for",
        "draw class=E power=100 W; is none of its words",
        "standby-days capacity=70 Ah standby=0 A; give no number",
        "port-tuned-as-wanted diameter=75 mm length=98 mm air=0 L wanted=31 Hz; give no number",
        "crossovers-meet low-pass=0 Hz high-pass=90 Hz; give no number",
        "bands-add-up low-pass=3 kHz high-pass=3 kHz low-pass-order=3; no linkwitz-riley filter of order 3",
        "closed-box-peak resonance=34 Hz mechanical-q=0 electrical-q=0.9 equivalent=49 L air=40 L resistance=6 ohm; is no number above zero",
        "cone-within-travel resonance=28 Hz mechanical-q=5 electrical-q=0.45 equivalent=60 L air=40 L resistance=3 ohm cone=320 cm2 volts=20 V linear=9 mm diameter=80 mm; a diameter and a length"})
    void whatIsWrongIsSaidWithTheFix(String asked, String says) {
        Reply reply = ask(asked);
        assertEquals(Reply.UNUSABLE, reply.status(), reply.out());
        assertTrue(reply.err().replaceAll("\\s+", " ").contains(says), reply.err());
        assertFalse(reply.err().contains("a fault of ours"), reply.err());
    }

    @Test
    void aNameAloneSaysWhatItTakes() {
        Reply reply = Main.run("figure", "tweeter-high-passed");
        assertEquals(Reply.CLEAR, reply.status());
        assertTrue(reply.out().contains("  corner: ") && reply.out().contains("bayproof figure tweeter-high-passed corner=2.5 kHz"), reply.out());
    }
}
