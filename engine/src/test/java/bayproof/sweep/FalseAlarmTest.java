package bayproof.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.demand.Outcome;
import bayproof.facts.Numbers;
import bayproof.graph.BodyGraph;
import bayproof.judge.Verdict;
import bayproof.read.JobFiles;
import bayproof.read.MergePatch;
import bayproof.read.Run;
import bayproof.read.Tree;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Changes that make nothing worse raise no alarm: a joint without loss, and a small thing more, at every gate. */
class FalseAlarmTest {
    /** Two figures that differ by less are the same: the solver stops at a billionth. */
    private static final double ROUNDING = 1e-9;

    /** Rules that speak of joints themselves and of cables in one piece. A rule on the list that never speaks fails the test. */
    private static final Map<String, String> OF_JOINTS = Map.of(
            "main-cable-in-one-piece", "it asks that the cable from a battery has no joint, lossless or not");

    private final Queue<String> wrong = new ConcurrentLinkedQueue<>();
    private final Set<String> spoke = ConcurrentHashMap.newKeySet();

    /**
     * A run, and the end in whose place it is cut.
     *
     * @param inside whether both halves lie in one zone, so that neither is cooler than the whole was
     */
    private record Cut(Run run, String near, boolean inside) {
    }

    @Test
    void aRunInTwoHalvesIsTheSameRun() {
        for (String job : Jobs.CLEAN) {
            Evaluation base = Jobs.asWritten(job);
            List<Cut> cuts = cuts(base);
            cuts.parallelStream().forEach(cut -> same(base, InLine.cut(base.files(), base, cut.run(), cut.near()), cut.inside(),
                    job + ": " + cut.run().id() + " cut near its " + cut.near()));
            JobFiles all = base.files();
            for (Cut cut : cuts) {
                if (cut.inside()) {
                    all = InLine.cut(all, base, cut.run(), cut.near());
                }
            }
            same(base, all, true, job + ": every run inside a zone cut");
            Tally.count("sweep mutations", cuts.size() + 1);
        }
        assertEquals(List.of(), wrong.stream().sorted().toList());
        assertEquals(new TreeSet<>(OF_JOINTS.keySet()), new TreeSet<>(spoke), "rules on the list that speak");
    }

    private static List<Cut> cuts(Evaluation base) {
        BodyGraph body = new BodyGraph(base.job());
        List<Cut> cuts = new ArrayList<>();
        for (Run run : base.job().plan().runs().values()) {
            boolean inside = new HashSet<>(body.endZones(run).orElse(List.of())).size() == 1;
            // Inside a zone both ends are alike; a way through holes is cut before the first of them and behind the last.
            List<String> ends = !inside ? List.of("from", "to") : List.of(cuts.size() % 2 == 0 ? "from" : "to");
            ends.stream().filter(near -> InLine.canBeCut(base, run, near)).forEach(near -> cuts.add(new Cut(run, near, inside)));
        }
        return cuts;
    }

    /**
     * A clean job, and a small thing more for it with everything said.
     *
     * @param changes what is added to the plan
     * @param needed what has to be on hand before the vehicle is taken apart
     */
    private record Addition(String job, List<String> changes, List<String> needed) {
    }

    /** A fan of a tenth of an ampere beside what is there: its own fuse, feed, return and ground point. */
    private static final String FAN = """
            items:
              added-fan: { part: rack-fan, draw: 0.1 A, place: PLACE, clearance: 30 mm,
                mount: { fastener: rivet-nut, fasteners: 4, thread: M4, tip: 10 mm, free-depth: 40 mm, behind: [], seen-by: apprentice with camera } }
              added-fuse: { part: bolt-holder, rating: 5 A, place: PLACE }
              added-point: { part: weld-nut-ground, place: cargo-floor-nut, surface: bare-metal, structure: welded-body, fastener: weld-nut,
                shares: none, sealed: yes }
            runs:
              added-feed-1:
                { from: SOURCE, to: added-fuse.in, size: 14 AWG, length: 0.10 m, metal: copper, insulation: 105 °C, cover: none, through: [],
                  support: 250 mm, diameter: 3 mm, bend: 35 mm, near: {}, tied-to: none, label: both-ends,
                  ends: { from: { terminal: ring-m6, takes: 14 AWG, metals: [ copper ], method: indent-crimp, tool: small-crimper },
                          to: { terminal: ring-m6, takes: 14 AWG, metals: [ copper ], method: indent-crimp, tool: small-crimper } } }
              added-feed-2:
                { from: added-fuse.out, to: added-fan.supply, size: 14 AWG, length: 0.30 m, metal: copper, insulation: 105 °C, through: [],
                  support: 250 mm, diameter: 3 mm, bend: 35 mm, near: {}, tied-to: none, label: both-ends,
                  ends: { from: { terminal: ring-m6, takes: 14 AWG, metals: [ copper ], method: indent-crimp, tool: small-crimper },
                          to: { terminal: plug, takes: 14 AWG, metals: [ copper ], method: indent-crimp, tool: small-crimper } } }
              added-ground:
                { from: added-fan.ground, to: added-point.stud, size: 14 AWG, length: 0.30 m, metal: copper, insulation: 105 °C, through: [],
                  support: 250 mm, diameter: 3 mm, bend: 35 mm, near: {}, tied-to: none, label: both-ends,
                  ends: { from: { terminal: plug, takes: 14 AWG, metals: [ copper ], method: indent-crimp, tool: small-crimper },
                          to: { terminal: ring-m6, takes: 14 AWG, metals: [ copper ], method: indent-crimp, tool: small-crimper } } }
            """;

    /** What is looked at once there is an accessory. */
    private static final String FIRST_ACCESSORY = """
            inspections:
              no-blue-lamp: { who: lead, when: 2026-11-24T08:00, evidence: photo 601, faults: [], left-out: [] }
              no-red-lamp-forward: { who: lead, when: 2026-11-24T08:02, evidence: photo 602, faults: [], left-out: [] }
              no-moving-picture-for-driver: { who: lead, when: 2026-11-24T08:04, evidence: photo 603, faults: [], left-out: [] }
            """;

    private static Addition fan(String job, String before, String place, String source) {
        return new Addition(job, List.of(before, FAN.replace("PLACE", place).replace("SOURCE", source)), List.of("added-fan"));
    }

    private static final List<Addition> ADDITIONS = List.of(fan("street-show", FIRST_ACCESSORY, "rack-wall", "block.in"),
            fan("tour-van", "{}", "rack-wall", "block-audio.in"));

    @Test
    void aSmallThingMoreMakesNothingWorse() {
        for (Addition addition : ADDITIONS) {
            Evaluation base = Jobs.asWritten(addition.job());
            MapTree plan = base.files().tree("plan");
            for (String change : addition.changes()) {
                plan = MergePatch.apply(plan, read(change));
            }
            Evaluation after = evaluated(needing(base.files().with("plan", plan), addition.needed()), addition.job());
            for (Verdict verdict : after.judgment().verdicts()) {
                if (verdict.outcome() != Outcome.HOLDS) {
                    wrong.add(addition.job() + ": " + verdict.key() + " " + verdict.outcome().word() + ": " + verdict.because());
                }
            }
            Map<String, Verdict> now = byKey(after);
            base.judgment().verdicts().stream().filter(verdict -> !now.containsKey(verdict.key()))
                    .forEach(verdict -> wrong.add(addition.job() + ": " + verdict.key() + " is judged no more"));
            assertTrue(now.size() > base.judgment().verdicts().size(), "what was added is judged as well");
            Tally.count("sweep mutations", 1);
        }
        assertEquals(List.of(), wrong.stream().sorted().toList());
    }

    /** What is added lies ready before the first panel comes off, and is fitted with the rest. */
    private static JobFiles needing(JobFiles files, List<String> added) {
        JobFiles result = files;
        for (Spot spot : Spot.all(files, "plan")) {
            if (spot.steps().size() == 3 && spot.isUnder("steps") && spot.steps().get(2).equals("do")
                    && Set.of("teardown", "fit").contains(spot.text(files))) {
                Spot needs = new Spot("plan", List.of("steps", spot.steps().get(1), "needs"));
                ListTree before = (ListTree) needs.in(files);
                List<Tree> more = new ArrayList<>(before.items());
                added.forEach(name -> more.add(new Tree.ScalarTree(name, false, before.at())));
                result = needs.holding(result, new ListTree(more, before.at()));
            }
        }
        return result;
    }

    private static MapTree read(String text) {
        try {
            return TreeReader.read(text.getBytes(StandardCharsets.UTF_8), "addition.yaml");
        } catch (UnusableInput e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    /** No verdict is worse, none is gone, and each number is the one it was where heat and way are. */
    private void same(Evaluation before, JobFiles files, boolean exactly, String title) {
        Evaluation after = evaluated(files, title);
        Map<String, Verdict> now = byKey(after);
        for (Verdict verdict : now.values()) {
            if (verdict.outcome() != Outcome.HOLDS) {
                worse(verdict, title);
            }
        }
        for (Verdict verdict : before.judgment().verdicts()) {
            Verdict one = now.containsKey(verdict.key()) ? now.get(verdict.key()) : now.get(onward(verdict.key()));
            if (one == null) {
                wrong.add(title + ": " + verdict.key() + " is judged no more");
            } else if (exactly && !OF_JOINTS.containsKey(verdict.rule().id()) && !Double.isNaN(verdict.margin()) && one.outcome() == Outcome.HOLDS
                    && (differ(verdict.measured().number(), one.measured().number()) || differ(verdict.limit().value(), one.limit().value()))) {
                wrong.add(title + ": " + verdict.key() + " was " + verdict.measured().number() + " against " + verdict.limit().value()
                        + ", now " + one.measured().number() + " against " + one.limit().value());
            }
        }
        Map<String, Numbers.Figure> figures = after.facts().numbers().all();
        before.facts().numbers().all().forEach((path, figure) -> {
            Numbers.Figure one = figures.containsKey(path) ? figures.get(path) : figures.get(onward(path));
            if (one == null || exactly && differ(figure.value(), one.value())) {
                wrong.add(title + ": the figure " + path + " was " + figure.value() + ", now " + (one == null ? "gone" : one.value()));
            }
        });
    }

    private void worse(Verdict verdict, String title) {
        if (OF_JOINTS.containsKey(verdict.rule().id())) {
            spoke.add(verdict.rule().id());
        } else {
            wrong.add(title + ": " + verdict.key() + " " + verdict.outcome().word() + ": " + verdict.because());
        }
    }

    /** The same path of the other half of a run. */
    private static String onward(String path) {
        return path.replaceFirst("(runs\\.[a-z0-9-]+)", "$1" + InLine.ON);
    }

    private static boolean differ(double one, double other) {
        return Math.abs(one - other) > ROUNDING * Math.max(Math.abs(one), Math.abs(other)) + 1e-12;
    }

    private static Map<String, Verdict> byKey(Evaluation evaluation) {
        return evaluation.judgment().verdicts().stream().collect(Collectors.toMap(Verdict::key, verdict -> verdict));
    }

    private static Evaluation evaluated(JobFiles files, String title) {
        try {
            return Evaluation.of(files);
        } catch (UnusableInput e) {
            throw new AssertionError(title + ":\n" + e.getMessage(), e);
        }
    }
}
