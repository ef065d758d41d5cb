package bayproof.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.cases.Changed;
import bayproof.demand.Limit;
import bayproof.facts.WindowedValue.Result;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import bayproof.solve.OperatingPoint;
import bayproof.solve.Solution;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import bayproof.vocabulary.Window;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
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

    private final Random random = new Random(20261120);
    private final List<String> outside = new ArrayList<>();
    private int drawn;

    @Test
    void aValueLiesBetweenItsCorners() throws UnusableInput {
        for (String job : Jobs.CLEAN) {
            jobs(job, Jobs.asWritten(job).files());
        }
        for (Changed one : Changed.all()) {
            jobs(one.title(), one.evaluation().files());
        }
        assertTrue(drawn > 0);
        Tally.count("points drawn inside windows", drawn);
        assertEquals(List.of(), outside);
    }

    /** The job as it is, with every window open, with amplifiers of the other class, and with an alternator that gives almost nothing. */
    private void jobs(String title, JobFiles files) throws UnusableInput {
        check(title, files);
        JobFiles open = open(files);
        check(title + ", every window open", open);
        check(title + ", every window open, class AB", open.patched(patch("four-channel-class-d: { class: AB }, mono-class-d-300: { class: AB }")));
        check(title + ", every window open, worn alternator", open.patched(patch("alternator-120: { rated: 1 A }")));
    }

    private static MapTree patch(String parts) throws UnusableInput {
        return TreeReader.read(("parts: { parts: { " + parts + " } }").getBytes(StandardCharsets.UTF_8), "patch.yaml");
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

    private void check(String title, JobFiles files) throws UnusableInput {
        Job job = JobReader.bind(files);
        Model model = new Model(job);
        Amplifiers amplifiers = new Amplifiers(model);
        NetworkFacts facts = new NetworkFacts(model, amplifiers);
        check(title, job, facts, Question.DROP, corner -> drops(model, amplifiers, corner));
        for (Item.Alternator alternator : job.itemsOf(Item.Alternator.class)) {
            check(title, job, facts, Question.BALANCE, corner -> Map.of("what " + alternator.id() + " leaves at idle", facts.balance(alternator, corner)));
        }
    }

    /** For each item and level the volts lost in the worse of the two states, as the rules get them. */
    private static Map<String, Result> drops(Model model, Amplifiers amplifiers, Corner corner) {
        boolean charges = !model.job.itemsOf(Item.Alternator.class).isEmpty();
        List<SupplyNetwork> networks = (charges ? List.of(State.ON_BATTERY, State.CHARGING_FULL) : List.of(State.ON_BATTERY)).stream()
                .map(state -> new SupplyNetwork(model, amplifiers, corner, state)).toList();
        Map<String, Result> drops = new LinkedHashMap<>();
        for (Level level : List.of(Level.LOUD_PROGRAMME, Level.FULL_SINE)) {
            List<Solution> solutions = corner.isWhole() ? networks.stream().map(network -> network.solve(level)).toList() : List.of();
            for (Item item : model.job.items().values()) {
                if (item.hasTerminal("supply")) {
                    drops.put("drop of " + item.id() + " at " + level.words(), worst(item, networks, solutions));
                }
            }
        }
        return drops;
    }

    private static Result worst(Item item, List<SupplyNetwork> networks, List<Solution> solutions) {
        double worst = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < solutions.size(); i++) {
            if (!(solutions.get(i) instanceof OperatingPoint point) || networks.get(i).isDown(point, item)) {
                return new Result(Double.NaN, "no working state", null);
            }
            worst = Math.max(worst, networks.get(i).lostVolts(point, item));
        }
        return new Result(worst, null, null);
    }

    private void check(String title, Job job, NetworkFacts facts, Question question, Function<Corner, Map<String, Result>> values) {
        Corner bad = Corner.bad(job.limits(), question);
        Map<String, Result> atBad = values.apply(bad);
        if (!bad.isWhole() || bad.windows().isEmpty()) {
            return;
        }
        Map<String, Result> atGood = values.apply(Corner.good(job.limits(), question));
        for (ToDoubleFunction<Limit> point : points(bad, question)) {
            values.apply(Corner.inside(job.limits(), point)).forEach((what, inside) ->
                    compare(title + ", " + what, question, facts.cornerAllowance(question), inside, atGood.get(what), atBad.get(what)));
        }
    }

    private void compare(String title, Question question, double allowance, Result inside, Result atGood, Result atBad) {
        drawn++;
        if (inside.collapse() != null ? atBad.collapse() == null
                : atGood.collapse() != null || !isBetween(inside.value(), atGood.value(), atBad, question, allowance)) {
            outside.add(title + ": " + text(inside) + " is not between " + text(atGood) + " and " + text(atBad));
        }
    }

    /** From either corner each window moved alone, and points with every value that a window stands for drawn apart. */
    private List<ToDoubleFunction<Limit>> points(Corner corner, Question question) {
        List<ToDoubleFunction<Limit>> points = new ArrayList<>();
        for (Window window : corner.windows()) {
            for (boolean fromBad : new boolean[] {true, false}) {
                points.add(limit -> limit.name().equals(window.limit()) ? somewhere(limit)
                        : (question.badEnd(limit.name()) == Question.End.HIGH) == fromBad ? limit.high() : limit.low());
            }
        }
        for (int i = 0; i < DRAWS; i++) {
            points.add(this::somewhere);
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
    private double somewhere(Limit limit) {
        return switch (random.nextInt(4)) {
            case 0 -> limit.low();
            case 1 -> limit.high();
            default -> limit.low() + random.nextDouble() * (limit.high() - limit.low());
        };
    }
}
