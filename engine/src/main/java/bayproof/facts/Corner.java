package bayproof.facts;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;

/**
 * Takes values for one way of working out a question, each window at one of its ends, and remembers which windows
 * were needed and which values nobody gave.
 */
final class Corner {
    private final Limits limits;
    /** The figure of a window for the value at a path. */
    private final ToDoubleBiFunction<Limit, String> choice;
    private final Set<Need> needs = new LinkedHashSet<>();
    private final Map<String, Set<String>> standsFor = new TreeMap<>();

    private Corner(Limits limits, ToDoubleBiFunction<Limit, String> choice) {
        this.limits = limits;
        this.choice = choice;
    }

    static Corner bad(Limits limits, Question question) {
        return new Corner(limits, (limit, path) -> end(limit, question.badEnd(limit.name())));
    }

    static Corner good(Limits limits, Question question) {
        return new Corner(limits, (limit, path) -> end(limit, question.badEnd(limit.name()).other()));
    }

    /** All windows at their bad ends but one. */
    static Corner relieved(Limits limits, Question question, String window) {
        return new Corner(limits, (limit, path) -> {
            Question.End bad = question.badEnd(limit.name());
            return end(limit, limit.name().equals(window) ? bad.other() : bad);
        });
    }

    /**
     * All windows at their bad ends, or all at their good ends, but those of some items or runs at the other end.
     *
     * @param apart paths of the items and runs
     */
    static Corner apart(Limits limits, Question question, boolean bad, Set<String> apart) {
        return new Corner(limits, (limit, path) -> {
            boolean other = apart.stream().anyMatch(own -> path.equals(own) || path.startsWith(own + "."));
            Question.End end = question.badEnd(limit.name());
            return end(limit, bad != other ? end : end.other());
        });
    }

    /** Any point inside the windows. */
    static Corner inside(Limits limits, ToDoubleFunction<Limit> choice) {
        return new Corner(limits, (limit, path) -> choice.applyAsDouble(limit));
    }

    private static double end(Limit limit, Question.End end) {
        return end == Question.End.LOW ? limit.low() : limit.high();
    }

    /** A value that has to be given; where it is not, the need is remembered and the answer means nothing. */
    double given(Shown<Double> value) {
        needs.addAll(value.needs());
        return value.orElse(Double.NaN);
    }

    /** The same for any type; null where it is not given. */
    <T> T givenOrNull(Shown<T> value) {
        needs.addAll(value.needs());
        return value.orElse(null);
    }

    /** A value that is taken from a window where nobody gave it. */
    double orWindow(Shown<Double> value, String window) {
        if (value instanceof Shown.Given<Double> given) {
            return given.value();
        }
        return window(window, value.needs().get(0).path());
    }

    /** A value of a window that no field holds. */
    double window(String name, String path) {
        Limit limit = limits.named(name);
        standsFor.computeIfAbsent(name, any -> new LinkedHashSet<>()).add(path);
        return choice.applyAsDouble(limit, path);
    }

    void need(Need need) {
        needs.add(need);
    }

    boolean isWhole() {
        return needs.isEmpty();
    }

    List<Need> needs() {
        return new ArrayList<>(needs);
    }

    List<Window> windows() {
        return standsFor.entrySet().stream().map(entry -> window(limits.named(entry.getKey()), List.copyOf(entry.getValue()))).toList();
    }

    private static Window window(Limit limit, List<String> paths) {
        String first = paths.get(0);
        return new Window(paths.size() == 1 ? first : first.substring(0, Math.max(first.indexOf('.'), 0)), paths, limit.name(),
                limit.low(), limit.high(), 0);
    }
}
