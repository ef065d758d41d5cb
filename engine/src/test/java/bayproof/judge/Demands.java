package bayproof.judge;

import bayproof.demand.Demand;
import bayproof.demand.Gate;
import bayproof.demand.Judge;
import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.demand.Weight;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import bayproof.vocabulary.Windows;
import java.lang.reflect.Proxy;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.kie.api.definition.rule.Rule;

/** Demands made by hand, judged by limits made by hand. */
final class Demands {
    static final At HERE = new At("plan.yaml", 7, 3);
    static final RuleInfo RULE = new RuleInfo("trial", "tests", Weight.STOP, Gate.BEFORE_ORDER, "thing");

    private record Thing(String subject, At at) implements Fact {
    }

    private Demands() {
    }

    static Demand demand() {
        Rule rule = (Rule) Proxy.newProxyInstance(Demands.class.getClassLoader(), new Class<?>[] {Rule.class},
                (proxy, method, arguments) -> method.getName().equals("getName") ? "trial" : null);
        return new Judge().demand(rule, new Thing("items.thing", HERE));
    }

    static Object assess(Demand demand, Limit... limits) {
        Map<String, Limit> byName = new TreeMap<>();
        for (Limit limit : limits) {
            byName.put(limit.name(), limit);
        }
        return new Assessor(RULE, demand, new Limits(byName)).assess();
    }

    /** Outcome as its word. */
    static String outcome(Demand demand, Limit... limits) {
        return assess(demand, limits) instanceof Verdict verdict ? verdict.outcome().word() : "not-applicable";
    }

    static Limit atMost(String name, Limit.Step... steps) {
        return new Limit(name, "m", Limit.Kind.AT_MOST, List.of(steps), Double.NaN, Double.NaN, List.of(), "says " + name, "source", "seen",
                List.of(), null);
    }

    static Limit atLeast(String name, double value) {
        return new Limit(name, "m", Limit.Kind.AT_LEAST, List.of(new Limit.Step(null, value)), Double.NaN, Double.NaN, List.of(), "says " + name,
                "source", "seen", List.of(), null);
    }

    static Limit between(String name, double low, double high) {
        return new Limit(name, "m", Limit.Kind.BETWEEN, List.of(), low, high, List.of(), "says " + name, "source", "seen", List.of(), null);
    }

    static Limit words(String name, Limit.Kind kind, String... words) {
        return new Limit(name, null, kind, List.of(), Double.NaN, Double.NaN, List.of(words), "says " + name, "source", "seen", List.of(), null);
    }

    static Limit window(String name) {
        return new Limit(name, "m", Limit.Kind.WINDOW, List.of(), 1, 2, List.of(), "says " + name, "source", "seen", List.of(), null);
    }

    static Need need(String path) {
        return new Need(path, "what " + path + " is", HERE);
    }

    static Shown<Boolean> statement(String word) {
        return switch (word) {
            case "unknown" -> Shown.missing(need("items.thing.fact"));
            case "hidden" -> new Shown.Hidden<>(need("items.thing.fact"));
            case "collapsed" -> new Shown.Collapsed<>("no working state");
            default -> Shown.of(Boolean.valueOf(word));
        };
    }

    /** A number; {@code bad..good} is a window, a bad end of {@code none} one without a working state. */
    static Shown<Double> number(String text) {
        if (text.equals("unknown")) {
            return Shown.missing(need("items.thing.length"));
        }
        if (text.equals("hidden")) {
            return new Shown.Hidden<>(need("items.thing.length"));
        }
        if (text.equals("collapsed")) {
            return new Shown.Collapsed<>("no working state");
        }
        int dots = text.indexOf("..");
        if (dots < 0) {
            return Shown.of(Double.valueOf(text));
        }
        String bad = text.substring(0, dots);
        return new Shown.Assumed<>(bad.equals("none") ? null : Double.valueOf(bad), Double.valueOf(text.substring(dots + 2)),
                Windows.unweighed(List.of(new Window("items.thing.rest", "rest", 1, 2, 0))), () -> "no working state at the bad end");
    }
}
