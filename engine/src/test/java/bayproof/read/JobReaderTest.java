package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** From files to a job: what was said, what was not, and what cannot be meant. */
class JobReaderTest {
    private static final String PLAN = """
            bayproof: 1
            items:
              fuse: { kind: fuse, rating: 30 A }
              lamp: { kind: accessory, draw: 2 A }
            runs:
              lead: { from: fuse.out, to: lamp.supply, LEAD }
            """;

    @TempDir
    Path folder;

    private Run lead(String said) throws UnusableInput {
        Written.file(folder, "plan.yaml", PLAN.replace("LEAD", said));
        return Written.job(folder).runs().get("lead");
    }

    private List<String> problems(String plan) {
        Written.file(folder, "plan.yaml", plan);
        return Written.problems(folder);
    }

    private void assertProblem(String plan, String... says) {
        List<String> problems = problems(plan);
        assertEquals(1, problems.size(), problems.toString());
        for (String part : says) {
            assertTrue(problems.get(0).contains(part), problems.get(0));
        }
    }

    // shown, missing, hidden

    @ParameterizedTest
    @ValueSource(strings = {"size: 4 AWG", "cover: unknown", "cover: \"unknown\"", "cover: ", "cover: ~", "cover: null"})
    void whatNobodySaidIsMissingAndKnowsWhereItWouldStand(String said) throws UnusableInput {
        Shown.Missing<String> cover = assertInstanceOf(Shown.Missing.class, lead(said).cover());
        assertEquals(List.of("runs.lead.cover"), cover.needs().stream().map(Need::path).toList());
        assertTrue(cover.needs().get(0).at().toString().contains("plan.yaml:6:"), cover.needs().get(0).at().toString());
    }

    @Test
    void whatWasSaidKnowsItsPlace() throws UnusableInput {
        Shown.Given<String> cover = assertInstanceOf(Shown.Given.class, lead("cover: braid").cover());
        assertEquals("braid", cover.value());
        assertTrue(cover.at().toString().endsWith("plan.yaml:6:51"), cover.at().toString());
    }

    @Test
    void whatCannotBeSeenIsAnAnswerOfItsOwn() throws UnusableInput {
        assertInstanceOf(Shown.Hidden.class, lead("cover: cannot-be-seen").cover());
        assertInstanceOf(Shown.Hidden.class, lead("length: cannot-be-seen").lengthMetres());
        assertInstanceOf(Shown.Hidden.class, lead("through: cannot-be-seen").through());
    }

    @Test
    void noneIsSaidAndIsNotSilence() throws UnusableInput {
        assertEquals(List.of(), assertInstanceOf(Shown.Given.class, lead("through: none").through()).value());
        assertEquals(List.of(), assertInstanceOf(Shown.Given.class, lead("through: []").through()).value());
        assertEquals("none", lead("cover: none").cover().orElse(""));
        assertInstanceOf(Shown.Missing.class, lead("through: unknown").through());
        assertInstanceOf(Shown.Missing.class, lead("size: 4 AWG").through());
    }

    @ParameterizedTest
    @CsvSource({"length: 18 in, 0.4572", "length: 0.45 m, 0.45", "length: 450mm, 0.45"})
    void aQuantityIsKeptInOneUnit(String said, double metres) throws UnusableInput {
        assertEquals(metres, lead(said).lengthMetres().orElse(0.0));
    }

    // what cannot be meant

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "lenght: 1 m | plan.yaml:6:44 | \"lenght\" is not a key that is known here. | Did you mean length?",
        "cover: split tube | plan.yaml:6:51 | \"split tube\" is not an answer to \"cover\". | Did you mean split-tube?",
        "cover: yes | plan.yaml:6:51 | \"yes\" is not an answer to \"cover\". | Use one of: none, split-tube",
        "length: 1.2 | plan.yaml:6:52 | \"1.2\" cannot be read as \"length\" | has no unit",
        "length: 3 V | plan.yaml:6:52 | \"3 V\" cannot be read as \"length\" | a length is needed",
        "length: -1 m | plan.yaml:6:52 | cannot be right | more than zero",
        "length: 0 m | plan.yaml:6:52 | cannot be right | more than zero",
        "length: 2000000 m | plan.yaml:6:52 | cannot be right | that large",
        "length: [ 1 m ] | plan.yaml:6:52 | must be one value | not a list",
        "size: 45 AWG | plan.yaml:6:50 | \"45 AWG\" is not a cable size | Write a gauge",
        "size: 33 mm2 | plan.yaml:6:50 | no data for the cable size \"33 mm2\" | a size that is made",
        "through: firewall | plan.yaml:6:53 | must be a list | [ one, two ]",
        "through: [ [ a ] ] | plan.yaml:6:55 | a list of plain words holds a list | one word",
        "insulation: hot | plan.yaml:6:56 | cannot be read as \"insulation\" | no-print"})
    void aMistakeIsNamedWithItsPlaceAndACure(String said, String at, String what, String cure) {
        assertProblem(PLAN.replace("LEAD", said), at, what, cure);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "to: lamp.supply | to: lmap.supply | \"lmap\" is not an item of this job. Did you mean lamp?",
        "to: lamp.supply | to: lamp.suply | \"suply\" is not a terminal of lamp. Did you mean supply?",
        "to: lamp.supply | to: lamp | is not a terminal (an item, a dot and its terminal)",
        "kind: accessory | kind: accesory | \"accesory\" is not a kind of item. Did you mean accessory?",
        "kind: accessory, | place: shelf, | nothing says what kind of thing \"lamp\" is. Name its part, or its kind",
        "kind: accessory | part: work-lamp | \"work-lamp\" is not a part of the parts books",
        "lamp: { kind: accessory, draw: 2 A } | lamp: accessory | \"lamp\" must be a group of keys",
        "fuse: { kind | Main_Fuse: { kind | \"Main_Fuse\" is not a name",
        "bayproof: 1 | bayproof: 2 | version is not 1",
        "bayproof: 1 | kind: plan | \"bayproof: 1\" is missing",
        "bayproof: 1 | {bayproof: 1, kind: vehicle} | not sound YAML"})
    void aNameThatIsNoneIsFoundWithWhatWasMeant(String right, String wrong, String says) {
        List<String> problems = problems(PLAN.replace(", LEAD", "").replace(right, wrong));
        assertTrue(problems.stream().anyMatch(problem -> problem.contains(says)), problems.toString());
    }

    @Test
    void aSignalCableEndsAtNoJoint() {
        String job = "bayproof: 1\nitems:\n  amp: { kind: amplifier, channels: 4 }\n  plug: { kind: joint, resistance: 0 ohm }\nruns:\n"
                + "  lead: { from: plug.joint, to: amp.END }\n";
        assertEquals(List.of(), problems(job.replace("END", "supply")));
        assertProblem(job.replace("END", "signal-1"), "plan.yaml:6:17", "ends at the joint plug.joint", "one run from plug to plug");
    }

    @Test
    void aRunHasTwoEnds() {
        String job = "bayproof: 1\nitems:\n  lamp: { kind: accessory, draw: 2 A }\nruns:\n  feed: { from: lamp.supply, to: END }\n";
        assertEquals(List.of(), problems(job.replace("END", "unknown")));
        assertProblem(job.replace("END", "lamp.supply"), "plan.yaml:5:34", "feed begins and ends at lamp.supply", "its other end");
    }

    @ParameterizedTest
    @ValueSource(strings = {"lamp.supply", "res.ends", "amp.signal-1"})
    void speakersHangOnOutputsAlone(String terminal) {
        String job = "bayproof: 1\nitems:\n  amp: { kind: amplifier, channels: 4 }\n  lamp: { kind: accessory, draw: 2 A }\n  res: { kind: load-resistor, ohms: 4 ohm }\n"
                + "speaker-wiring:\n  TERMINAL: { net: res.ends }\n";
        assertEquals(List.of(), problems(job.replace("TERMINAL", "amp.ch-1")));
        assertProblem(job.replace("TERMINAL", terminal), "plan.yaml:7:3", "is no output that speakers hang on", "such as amp.ch-1");
    }

    @Test
    void aFileOfAnotherKindOrNotThereIsRefused() {
        Written.file(folder, "vehicle.yaml", "bayproof: 1\nkind: parts\n");
        assertProblem(PLAN.replace(", LEAD", "") + "vehicle: vehicle.yaml\n", "vehicle.yaml:2:7", "of kind \"parts\"", "used as vehicle");
        assertProblem(PLAN.replace(", LEAD", "") + "vehicle: vehicel.yaml\n", "plan.yaml:7:10", "\"vehicel.yaml\" is not there");
    }

    @Test
    void countsAreWrittenPlainly() {
        for (String wrong : List.of("010", "4.0", "\"4\"", "four", "-4", "0x4")) {
            assertProblem("bayproof: 1\nitems:\n  amp: { kind: amplifier, channels: " + wrong + " }\n", "plan.yaml:3:37", "is not a whole number");
        }
        assertEquals(List.of(), problems("bayproof: 1\nitems:\n  amp: { kind: amplifier, channels: 4 }\n"));
    }

    @Test
    void allMistakesOfAllFilesAreNamedTogetherEachWithItsPlace() {
        Written.file(folder, "vehicle.yaml", "bayproof: 1\nkind: vehicle\nzones:\n  bay: { kind: engine }\n  cab: { sort: cargo }\n");
        List<String> problems = problems(PLAN.replace("LEAD", "size: 99 AWG, length: 2") + "vehicle: vehicle.yaml\n");
        assertEquals(4, problems.size(), problems.toString());
        problems.forEach(problem -> assertTrue(problem.matches("(?s)(plan|vehicle)\\.yaml:[1-9][0-9]*:[1-9][0-9]*: .*"), problem));
    }

    @Test
    void jsonSaysTheSame() throws UnusableInput {
        Run yaml = lead("size: 4 AWG, cover: unknown, through: []");
        Written.file(folder, "plan.json", """
                { "bayproof": 1, "items": { "fuse": { "kind": "fuse", "rating": "30 A" }, "lamp": { "kind": "accessory", "draw": "2 A" } },
                  "runs": { "lead": { "from": "fuse.out", "to": "lamp.supply", "size": "4 AWG", "cover": "unknown", "through": [] } } }
                """);
        Run json = JobReader.bind(JobFiles.read(folder.resolve("plan.json"), null)).runs().get("lead");
        assertEquals(yaml.size().orElse(""), json.size().orElse(null));
        assertInstanceOf(Shown.Missing.class, json.cover());
        assertEquals(yaml.through().orElse(null), json.through().orElse(List.of("none")));
    }

    // readings

    private static final String READING = "{ of: items.lamp.draw, value: 3 A, instrument: clamp meter, state: charging-idle, who: senior, when: 2026-11-20T09:00 }";

    private Shown<Double> drawWith(String reading) throws UnusableInput {
        Written.file(folder, "readings.yaml", "bayproof: 1\nkind: readings\nreadings:\n  one: " + reading + "\n");
        Written.file(folder, "plan.yaml", PLAN.replace(", LEAD", "") + "readings: readings.yaml\n");
        return ((Item.Accessory) Written.job(folder).items().get("lamp")).drawAmperes();
    }

    @Test
    void aReadingReplacesWhatWasPlanned() throws UnusableInput {
        Shown<Double> draw = drawWith(READING);
        assertEquals(3.0, draw.orElse(0.0));
        assertTrue(draw.atOr(null).file().endsWith("readings.yaml"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"value", "instrument", "state", "who", "when"})
    void aReadingThatLeavesSomethingOutReplacesNothing(String left) throws UnusableInput {
        assertEquals(2.0, drawWith(READING.replaceAll(left + ": [^,}]*(, )?", "")).orElse(0.0));
        assertEquals(2.0, drawWith(READING.replaceAll(left + ": [^,}]*", left + ": unknown ")).orElse(0.0));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "of: items.lamp.draw | of: items.lmap.draw | \"items.lmap.draw\" is not the path of a value that can be measured. Did you mean items.lamp.draw",
        "value: 3 A | value: 3 V | given in V. Give it in A",
        "value: 3 A | value: -3 A | cannot be right",
        "state: charging-idle | state: idling | \"idling\" is not an answer to \"state\"",
        "who: senior | whom: senior | \"whom\" is not a key that is known here"})
    void aReadingThatCannotBeMeantIsRefused(String right, String wrong, String says) {
        Written.file(folder, "readings.yaml", "bayproof: 1\nkind: readings\nreadings:\n  one: " + READING.replace(right, wrong) + "\n");
        assertProblem(PLAN.replace(", LEAD", "") + "readings: readings.yaml\n", "readings.yaml:4:", says);
    }

    @Test
    void oneValueHasOneReading() {
        Written.file(folder, "readings.yaml", "bayproof: 1\nkind: readings\nreadings:\n  one: " + READING + "\n  two: " + READING + "\n");
        assertProblem(PLAN.replace(", LEAD", "") + "readings: readings.yaml\n", "readings.yaml:5:3", "a second reading");
    }
}
