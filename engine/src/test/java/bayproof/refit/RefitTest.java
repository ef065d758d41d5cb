package bayproof.refit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.Choices;
import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.read.MergePatch;
import bayproof.read.Sheet;
import bayproof.read.Tree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a move into another vehicle makes of names, clashes, faults, levels and hours. */
class RefitTest {
    private static final Path NEAR = Jobs.CASES.resolve("parade-van");
    private static final double HOUR = 3600;

    private static String sheet;
    private static String choices;

    @BeforeAll
    static void read() throws Exception {
        sheet = Files.readString(NEAR.resolve("vehicle.yaml"));
        choices = Files.readString(NEAR.resolve("choices.yaml"));
    }

    private static MapTree tree(String yaml) throws Exception {
        return TreeReader.read(yaml.getBytes(StandardCharsets.UTF_8), "made.yaml");
    }

    private static Evaluation tour(String plan, String vehicle) throws Exception {
        JobFiles files = Jobs.asWritten("tour-van").files();
        return Evaluation.of(files.with("plan", MergePatch.apply(files.tree("plan"), tree(plan))).with("vehicle", MergePatch.apply(files.tree("vehicle"), tree(vehicle))));
    }

    private static Refit refit(Evaluation job, MapTree vehicle, String decided) throws Exception {
        return Refit.of(job, vehicle, Choices.of(tree(decided), job.job(), Refit.bare(job.files(), vehicle)));
    }

    private static Refit near(String patch) throws Exception {
        return refit(Jobs.asWritten("tour-van"), MergePatch.apply(tree(sheet), tree(patch)), choices);
    }

    private static Row row(Refit refit, String key) {
        return refit.rows().stream().filter(row -> row.key().equals(key)).findFirst().orElseThrow(() -> new AssertionError("no row " + key));
    }

    private static Map<String, Fate> fates(Refit refit) {
        Map<String, Fate> fates = new TreeMap<>();
        refit.rows().forEach(row -> fates.put(row.key(), row.fate()));
        return fates;
    }

    // names

    @Test
    void anEqualNameDecidesNothingWhereSeveralFit() throws Exception {
        Refit refit = Refit.of(Jobs.asWritten("tour-van"), tree(sheet), Choices.none());
        Row converter = row(refit, "item converter");
        assertEquals(Fate.OPEN, converter.fate());
        assertEquals("which place in a zone of the kind cargo takes the part of rack-wall: rack-wall, stage-wall", converter.decisive().get(0).need().ask());
        // The place of the box follows from its space, that of a ground from what is nearest to what it grounds.
        assertEquals(Fate.CARRIES, row(refit, "item sub-1").fate());
        assertEquals("cargo-front", row(refit, "enclosure sub-box").where());
    }

    @Test
    void namesThatAreTurnedRoundInTheNewVehicleMakeNoDifference() throws Exception {
        // Names stand on the right of the choices alone: "old: new".
        String turned = turned(sheet, "rack-wall", "stage-wall");
        turned = turned(turned, "house-floor-nut", "cargo-floor-nut");
        turned = turned(turned, "radio-front-left", "radio-rear-right");
        turned = turned(turned, "firewall-left", "sub-box-gland");
        String decided = choices.replace("rack-wall: rack-wall", "rack-wall: stage-wall").replace("stage-wall: stage-wall", "stage-wall: rack-wall")
                .replace("radio-front-left: radio-front-left", "radio-front-left: radio-rear-right").replace("radio-rear-right: radio-rear-right", "radio-rear-right: radio-front-left");
        Refit refit = refit(Jobs.asWritten("tour-van"), tree(turned), decided);
        assertEquals(fates(near("{}")), fates(refit));
        assertEquals("stage-wall", row(refit, "item converter").where());
        assertEquals("cargo-floor-nut", row(refit, "item ground-house").where());
        assertEquals("sub-box-gland", row(refit, "hole firewall-left").where());
    }

    private static String turned(String text, String one, String other) {
        return text.replace(one, "\u0001").replace(other, one).replace("\u0001", other);
    }

    // where things go

    @Test
    void twoThingsInOneSpaceAreNamedAsAClash() throws Exception {
        Evaluation job = tour("items: { stool-box: { kind: enclosure, place: stage-wall, space: under-the-stage, height: 300 mm, width: 300 mm, depth: 200 mm } }",
                "spaces: { under-the-stage: { place: stage-wall } }");
        Refit refit = refit(job, tree(sheet), choices);
        for (String box : List.of("sub-box", "stool-box")) {
            Row row = row(refit, "enclosure " + box);
            assertEquals(Fate.OPEN, row.fate());
            assertTrue(row.decisive().stream().anyMatch(reason -> reason.say().contains("goes instead of") || reason.say().contains("clash with")), box + " " + row.reasons());
        }
        assertTrue(row(refit, "enclosure sub-box").decisive().get(0).say().equals("clash with stool-box: both would be at behind-partition"), row(refit, "enclosure sub-box").reasons().toString());
    }

    @Test
    void ofTwoSpacesTheOneThatTheBoxFitsIntoIsTaken() throws Exception {
        Refit refit = near("{ places: { bench: { zone: cargo } }, spaces: { under-the-bench: { place: bench, positions: { seats-back: { height: 200 mm } } } } }");
        assertEquals("cargo-front", row(refit, "enclosure sub-box").where());
        Refit both = near("{ places: { bench: { zone: cargo } }, spaces: { under-the-bench: { place: bench, positions: { seats-back: { height: 900 mm } } } } }");
        assertEquals("which space in a zone of the kind cargo takes the part of behind-partition: behind-partition, under-the-bench",
                row(both, "enclosure sub-box").decisive().get(0).need().ask());
    }

    @Test
    void aRuleAboutAZoneThatTheNewVehicleLacksDoesNotApplyAndIsListed() throws Exception {
        Refit refit = near("{ zones: { roof: { kind: outside } } }");
        Moved.Outside crash = refit.moved().outside().stream().filter(one -> one.rule().id().equals("holds-in-a-crash")).findFirst().orElseThrow();
        assertEquals("no place in a zone of the kind roof in this vehicle", crash.reason());
        assertTrue(crash.subjects().contains("items.stage-light-3"), crash.subjects().toString());
        assertTrue(refit.moved().worse().stream().noneMatch(move -> move.after().rule().id().equals("holds-in-a-crash")));
    }

    @Test
    void aPinThatSitsInAnotherCavityIsTheSamePin() throws Exception {
        Refit refit = near("{ connectors: { radio-b: { family: block-24 } } }");
        assertEquals("plug-in-harness", refit.after().job().plan().pins().get("radio-b.5").method().orElse(""));
        // The same wires two cavities further on.
        Refit shifted = near("{ connectors: { radio-b: { family: block-24, cavities: { 1: null, 2: null, 11: { function: speaker, output: radio-rear-right }, "
                + "12: { function: speaker, output: radio-rear-right } } } } }");
        assertTrue(shifted.after().job().plan().pins().keySet().containsAll(List.of("radio-b.11", "radio-b.12")), shifted.after().job().plan().pins().keySet().toString());
        for (Refit one : List.of(refit, shifted, near("{}"))) {
            assertTrue(one.moved().outside().stream().filter(gone -> gone.reason().contains("old vehicle")).flatMap(gone -> gone.subjects().stream())
                    .noneMatch(subject -> subject.startsWith("pins.")));
        }
    }

    // faults of the old job

    @Test
    void aFaultOfTheOldJobIsNamedAndNotCopied() throws Exception {
        Evaluation job = tour("items: { conv-fuse: { rating: 125 A } }", "{}");
        Refit refit = refit(job, tree(sheet), choices);
        assertTrue(refit.moved().faults().stream().anyMatch(fault -> fault.rule().id().equals("fuse-within-ampacity")), refit.moved().faults().toString());
        MapTree plan = refit.plan("vehicle.yaml", List.of("parts.yaml"), null);
        assertEquals("unknown", word(plan, "items", "conv-fuse", "rating"));
        assertEquals("40 A", word(plan, "items", "conv-out-fuse", "rating"));
    }

    private static String word(MapTree plan, String... keys) {
        Tree here = plan;
        for (String key : keys) {
            here = ((MapTree) here).get(key);
        }
        return ((ScalarTree) here).text();
    }

    @Test
    void thePlanKeepsKindsAndWhatCarriesOverAndTheRestIsUnknown() throws Exception {
        Refit refit = refit(Jobs.asWritten("tour-van"), Sheet.read(Jobs.CASES.resolve("harbor-bus").resolve("vehicle.yaml"), "vehicle").tree(), choices);
        MapTree plan = refit.plan("vehicle.yaml", List.of("parts.yaml"), null);
        assertEquals("interface", word(plan, "items", "interface", "kind"));
        assertEquals("four-channel-class-d", word(plan, "items", "amp-front", "part"));
        assertEquals("unknown", word(plan, "items", "stage-light-3", "place"));
        assertEquals("unknown", word(plan, "items", "house-battery", "mount", "fastener"));
        assertEquals("fuel-line", ((ScalarTree) ((Tree.ListTree) ((MapTree) ((MapTree) ((MapTree) plan.get("items")).get("house-battery")).get("mount")).get("behind")).items().get(0)).text());
        assertEquals("unknown", word(plan, "settings", "amp-side.ch-1", "gain", "target"));
        assertEquals("14 V", word(plan, "settings", "amp-side.ch-2", "gain", "target"));
        assertEquals("unknown", word(plan, "buses"));
        JobReader.bind(refit.after().files().with("plan", plan));
    }

    // levels

    /** 20 log10(2) = 6.02 dB; of a sum of two channels of which one doubles 20 log10(1.5) = 3.52 dB (textbook). */
    @Test
    void eachOutputMovesByTheChannelsThatItPlays() throws Exception {
        Refit refit = near("{ outputs: { radio-front-left: { loud: { low-tone: 8.20 V, mid-tone: 8.00 V, high-tone: 7.80 V } } } }");
        assertEquals(6.02, refit.levels().output("amp-front.ch-1").decibels().orElse(0.0), 0.005);
        assertEquals(0, refit.levels().output("amp-front.ch-2").decibels().orElse(9.0), 1e-9);
        assertEquals(3.52, refit.levels().output("amp-sub.ch-1").decibels().orElse(0.0), 0.005);
        assertEquals(Fate.CHANGED, row(refit, "setting amp-sub.ch-1").fate());
        assertEquals(Fate.CARRIES, row(refit, "setting amp-front.ch-2").fate());
        // Quiet at 0.50 V of 8.00 V: 14 V at the high step read 14 x 0.50 / 8.00 V at the low one.
        assertEquals(0.875, refit.levels().output("amp-front.ch-1").lowStepVolts().orElse(0.0), 0.0005);
        assertEquals(1.75, refit.levels().output("amp-front.ch-2").lowStepVolts().orElse(0.0), 0.0005);
    }

    @Test
    void whatAnOutputPlaysIsAskedForWhereTheChannelsMoveApart() throws Exception {
        Evaluation job = tour("settings: { amp-front.ch-1: { inputs: null } }", "{}");
        MapTree doubled = MergePatch.apply(tree(sheet), tree("{ outputs: { radio-front-left: { loud: { mid-tone: 8.00 V } } } }"));
        assertEquals("settings.amp-front.ch-1.inputs", row(refit(job, doubled, choices), "setting amp-front.ch-1").decisive().get(0).need().path());
        assertEquals(Fate.CARRIES, row(refit(job, tree(sheet), choices), "setting amp-front.ch-1").fate());
    }

    // hours

    @Test
    void aShopsOwnHoursReplaceTheDefaults() throws Exception {
        JobFiles files = Jobs.asWritten("tour-van").files();
        Evaluation job = Evaluation.of(files.with("limits", tree("bayproof: 1\nkind: limits\nlimits:\n  refit-hours-new-cable: { value: 3 h, reason: mean of our last twelve vans }\n"
                + "  hours-high: { value: 300 %, reason: our worst van }\n")));
        WorkStep own = step(refit(job, tree(sheet), choices), "run conv-feed-2 made");
        assertEquals(3 * HOUR, own.likely(), 1e-6);
        assertEquals(9 * HOUR, own.high(), 1e-6);
        assertEquals("the shop: mean of our last twelve vans", own.from());
        WorkStep common = step(near("{}"), "run conv-feed-2 made");
        assertEquals("run conv-feed-2", common.causedBy());
        assertTrue(common.from().contains("common practice, no source"), common.from());
    }

    private static WorkStep step(Refit refit, String id) {
        return refit.hours().steps().stream().filter(step -> step.id().equals(id)).findFirst().orElseThrow(() -> new AssertionError("no step " + id));
    }

    @Test
    void moreHandsShortenTheClockAndNotTheLongestChain() throws Exception {
        RefitHours one = refit(Jobs.asWritten("tour-van"), tree(sheet), choices.replace("people: 2", "people: 1")).hours();
        RefitHours two = near("{}").hours();
        assertTrue(two.likely().seconds() < one.likely().seconds());
        assertEquals(one.likely().chainSeconds(), two.likely().chainSeconds(), 1e-9);
        assertTrue(two.likely().seconds() >= two.likely().chainSeconds());
        assertFalse(two.likely().chain().isEmpty());
    }

    @Test
    void whatHasNoPlaceIsNeitherOrderedNorMade() throws Exception {
        Refit refit = near("{ zones: { roof: { kind: outside } } }");
        assertTrue(refit.provisions().stream().noneMatch(one -> one.row().contains("stage-light-3")));
        assertNull(refit.hours().steps().stream().filter(step -> "item stage-light-3".equals(step.causedBy())).findFirst().orElse(null));
    }
}
