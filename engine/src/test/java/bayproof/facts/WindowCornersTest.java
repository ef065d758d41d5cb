package bayproof.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.cases.Changed;
import bayproof.demand.Limit;
import bayproof.facts.WindowedValue.Ends;
import bayproof.facts.WindowedValue.Result;
import bayproof.graph.Link;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import bayproof.support.Tally;
import bayproof.sweep.TreeWriter;
import bayproof.vocabulary.Window;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * A value lies between its two corners wherever its windows stand; otherwise the table of bad ends is wrong, or the
 * question needs more corners.
 */
class WindowCornersTest {
    private static final int DRAWS = 6;
    /** Two corners may agree; what rounding leaves between them is no mistake. */
    private static final double ROUNDING = 1e-9;
    /** What a window stands for while nobody gives it. */
    private static final Set<String> WINDOWED = Set.of("metal", "rest", "resistance", "acceptance", "set-point", "body-return",
            "efficiency", "idle-output", "idle-draw", "minimum-volts");

    private static final long SEED = 20261120;

    private final Queue<String> outside = new ConcurrentLinkedQueue<>();
    private final LongAdder drawn = new LongAdder();

    /**
     * Two ways side by side share a current by what their joints happen to have, and no corner bounds that share. The rule this case
     * belongs to stops such a job.
     */
    private static final String SIDE_BY_SIDE = "one-fuse-per-path: The side amplifier gets a second cable from another outlet";

    @Test
    void aValueLiesBetweenItsCorners() {
        Set<String> networks = ConcurrentHashMap.newKeySet();
        Changed.withClean().filter(one -> !one.title().equals(SIDE_BY_SIDE) && networks.add(network(one.evaluation().files()))).parallel()
                .forEach(one -> jobs(one.title(), one.evaluation().files()));
        assertTrue(drawn.sum() > 0);
        Tally.count("points drawn inside windows", drawn.sum());
        assertEquals(List.of(), outside.stream().sorted().toList());
    }

    /** All that a network can depend on: what somebody looked at changes none. */
    private static String network(JobFiles files) {
        StringBuilder text = new StringBuilder();
        for (String kind : JobFiles.KINDS) {
            text.append(TreeWriter.write(kind.equals("plan") ? files.tree(kind).without("inspections") : files.tree(kind)));
        }
        return text.toString();
    }

    /** The job as it is, with every window open, with amplifiers of the other class, and with an alternator that gives almost nothing. */
    private void jobs(String title, JobFiles files) {
        Random random = new Random(SEED);
        check(title, files, random);
        JobFiles open = open(files);
        check(title + ", every window open", open, random);
        check(title + ", every window open, class AB", open.patched(patch("four-channel-class-d: { class: AB }, mono-class-d-300: { class: AB }")), random);
        check(title + ", every window open, worn alternator", open.patched(patch("alternator-120: { rated: 1 A }")), random);
    }

    private static MapTree patch(String parts) {
        try {
            return TreeReader.read(("parts: { parts: { " + parts + " } }").getBytes(StandardCharsets.UTF_8), "patch.yaml");
        } catch (UnusableInput e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private static Job bound(String title, JobFiles files) {
        try {
            return JobReader.bind(files);
        } catch (UnusableInput e) {
            throw new AssertionError(title + ":\n" + e.getMessage(), e);
        }
    }

    private static JobFiles open(JobFiles files) {
        JobFiles open = files.with("readings", files.tree("readings").without("readings"));
        for (String kind : List.of("plan", "vehicle", "parts")) {
            open = open.with(kind, (MapTree) open(open.tree(kind)));
        }
        return open;
    }

    private static Tree open(Tree tree) {
        if (!(tree instanceof MapTree map)) {
            return tree;
        }
        MapTree result = map;
        for (Entry entry : map.entries().values()) {
            result = WINDOWED.contains(entry.key()) ? result.without(entry.key()) : result.with(entry.key(), open(entry.value()));
        }
        return result;
    }

    private void check(String title, JobFiles files, Random random) {
        Job job = bound(title, files);
        Model model = new Model(job);
        Amplifiers amplifiers = new Amplifiers(model);
        SolvedNetworks networks = new SolvedNetworks(model, amplifiers);
        NetworkFacts facts = new NetworkFacts(model, amplifiers, networks);
        LinkCurrents currents = new LinkCurrents(model, networks);
        List<Link> judged = new CurrentFacts(model, networks).judged();
        check(title, model, random, Question.DROP, corner -> atDrops(model, facts, currents, judged, networks.at(corner)), () -> ends(model, networks, facts, currents, judged));
        if (!job.itemsOf(Item.Charger.class).isEmpty()) {
            check(title, model, random, Question.BALANCE, corner -> Map.of("what is left at idle", facts.balance(corner)), Map::of);
        }
    }

    /** What is lost on the way to each item, and the current in each fuse and conductor, at each level that the rules ask for. */
    private static Map<String, Result> atDrops(Model model, NetworkFacts facts, LinkCurrents currents, List<Link> judged,
                                               SolvedCorner corner) {
        Map<String, Result> values = new LinkedHashMap<>();
        for (Level level : List.of(Level.LOUD_PROGRAMME, Level.FULL_SINE)) {
            for (Item item : model.job.items().values()) {
                if (item.hasTerminal("supply")) {
                    values.put(drop(item, level), facts.drop(item, level, corner));
                }
            }
            judged.forEach(link -> values.put(current(link, level), currents.at(link, level, corner)));
        }
        return values;
    }

    private static String drop(Item item, Level level) {
        return "drop of " + item.id() + " at " + level.words();
    }

    private static String current(Link link, Level level) {
        return "current in " + link.kind() + " " + link.id() + " at " + level.words();
    }

    /** The ends of each value as the rules get them: some have more corners than two. */
    private static Map<String, Ends> ends(Model model, SolvedNetworks networks, NetworkFacts facts, LinkCurrents currents, List<Link> judged) {
        Map<String, Ends> ends = new HashMap<>();
        for (Level level : List.of(Level.LOUD_PROGRAMME, Level.FULL_SINE)) {
            model.job.items().values().stream().filter(item -> item.hasTerminal("supply")).forEach(item -> ends.put(drop(item, level),
                    networks.ends(SolvedNetworks.cornerAllowance(model, Question.DROP), corner -> facts.drop(item, level, corner))));
            judged.forEach(link -> ends.put(current(link, level), currents.ends(link, level)));
        }
        return ends;
    }

    private void check(String title, Model model, Random random, Question question, Function<Corner, Map<String, Result>> values,
                       Supplier<Map<String, Ends>> moreCorners) {
        Corner bad = Corner.bad(model.job.limits(), question);
        Map<String, Result> atBad = values.apply(bad);
        if (!bad.isWhole() || bad.windows().isEmpty()) {
            return;
        }
        Map<String, Result> atGood = values.apply(Corner.good(model.job.limits(), question));
        Map<String, Ends> ends = moreCorners.get();
        double allowance = SolvedNetworks.cornerAllowance(model, question);
        for (ToDoubleFunction<Limit> point : points(bad, question, random)) {
            values.apply(Corner.inside(model.job.limits(), point)).forEach((what, inside) -> {
                if (ends.containsKey(what)) {
                    compare(title + ", " + what, question, 0, inside, ends.get(what).good(), ends.get(what).bad());
                } else {
                    compare(title + ", " + what, question, allowance, inside, atGood.get(what), atBad.get(what));
                }
            });
        }
    }

    private void compare(String title, Question question, double allowance, Result inside, Result atGood, Result atBad) {
        drawn.increment();
        if (inside.collapse() != null ? atBad.collapse() == null
                : atGood.collapse() != null || !isBetween(inside.value(), atGood.value(), atBad, question, allowance)) {
            outside.add(title + ": " + text(inside) + " is not between " + text(atGood) + " and " + text(atBad));
        }
    }

    /** From either corner each window moved alone, and points with every value that a window stands for drawn apart. */
    private List<ToDoubleFunction<Limit>> points(Corner corner, Question question, Random random) {
        List<ToDoubleFunction<Limit>> points = new ArrayList<>();
        for (Window window : corner.windows()) {
            for (boolean fromBad : new boolean[] {true, false}) {
                points.add(limit -> limit.name().equals(window.limit()) ? somewhere(limit, random)
                        : (question.badEnd(limit.name()) == Question.End.HIGH) == fromBad ? limit.high() : limit.low());
            }
        }
        for (int i = 0; i < DRAWS; i++) {
            points.add(limit -> somewhere(limit, random));
        }
        return points;
    }

    private static boolean isBetween(double value, double good, Result bad, Question question, double allowance) {
        // Turned so that bad is high: a large drop, little left at idle.
        double sign = question == Question.DROP ? 1 : -1;
        double slack = ROUNDING * Math.max(1, Math.abs(value));
        return sign * value >= sign * good - allowance * Math.abs(good) - slack
                && (bad.collapse() != null || sign * value <= sign * bad.value() + allowance * Math.abs(bad.value()) + slack);
    }

    private static String text(Result result) {
        return result.collapse() == null ? String.valueOf(result.value()) : result.collapse();
    }

    /** Often an end, otherwise anywhere between; each value that a window stands for is drawn apart. */
    private static double somewhere(Limit limit, Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> limit.low();
            case 1 -> limit.high();
            default -> limit.low() + random.nextDouble() * (limit.high() - limit.low());
        };
    }
}
