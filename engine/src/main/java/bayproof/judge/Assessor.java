package bayproof.judge;

import bayproof.demand.Bound;
import bayproof.demand.Demand;
import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.demand.Outcome;
import bayproof.demand.Part;
import bayproof.demand.Weight;
import bayproof.judge.Verdict.Bounded;
import bayproof.judge.Verdict.Measured;
import bayproof.units.Dimension;
import bayproof.units.Units;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/** Turns a demand into an outcome, with three-valued logic over what is missing or assumed. */
final class Assessor {
    /** Outcome of one part. */
    private record Found(Outcome outcome, Weight weight, Measured measured, Bounded limit, Supplier<String> because, List<Need> needs,
                         List<Window> windows) {
    }

    private final RuleInfo rule;
    private final Demand demand;
    private final Limits limits;
    private final Weight own;

    Assessor(RuleInfo rule, Demand demand, Limits limits) {
        this.rule = rule;
        this.demand = demand;
        this.limits = limits;
        this.own = demand.weight() == null ? rule.weight() : demand.weight();
        if (own.compareTo(rule.weight()) > 0) {
            throw fault("weighs a subject heavier than its own @weight");
        }
    }

    private RuleFault fault(String what) {
        return new RuleFault("the rule in " + rule.file() + " " + what + " (" + demand.fact().subject() + ")");
    }

    /** The verdict, or the reason why the rule does not apply. */
    Object assess() {
        if (!demand.finished()) {
            throw fault("began a demand and did not finish it");
        }
        Set<Need> undecided = new LinkedHashSet<>();
        for (Demand.Condition condition : demand.conditions()) {
            if (condition.fact() instanceof Shown.Given<Boolean> given) {
                if (!given.value()) {
                    return new Judgment.NotApplicable(rule, demand.fact().subject(), condition.outside());
                }
            } else {
                undecided.addAll(condition.fact().needs());
            }
        }
        Found found = null;
        for (Part part : demand.parts()) {
            found = joined(found, found(part));
        }
        if (!undecided.isEmpty() && found.outcome() != Outcome.HOLDS) {
            undecided.addAll(found.outcome() == Outcome.UNSHOWN ? found.needs() : List.of());
            found = new Found(Outcome.UNSHOWN, heaviest(found.limit()), found.measured(), found.limit(),
                    () -> "whether this applies is not shown", new ArrayList<>(undecided), List.of());
        }
        return new Verdict(rule, demand.fact().subject(), found.outcome(), found.weight(), found.measured(), found.limit(),
                found.because(), found.needs(), found.windows(), demand.ways(), () -> FactMark.of(demand), demand.fact().at());
    }

    private Weight heaviest(Bounded bounded) {
        return bounded == null ? own : heaviest(bounded.limit());
    }

    /** Broken wins over unshown, unshown over holds; of two that hold a number is reported before a word. */
    private static Found joined(Found one, Found other) {
        if (one == null) {
            return other;
        }
        int byOutcome = Integer.compare(rank(other.outcome()), rank(one.outcome()));
        if (byOutcome > 0) {
            return other;
        }
        if (byOutcome < 0) {
            return one;
        }
        if (one.outcome() == Outcome.UNSHOWN) {
            Set<Need> needs = new LinkedHashSet<>(one.needs());
            needs.addAll(other.needs());
            List<Window> windows = new ArrayList<>(one.windows());
            windows.addAll(other.windows());
            return new Found(one.outcome(), heavier(one.weight(), other.weight()), one.measured() == null ? other.measured() : one.measured(),
                    one.limit() == null ? other.limit() : one.limit(), one.because(), new ArrayList<>(needs), windows);
        }
        if (one.outcome() == Outcome.BROKEN) {
            return other.weight().compareTo(one.weight()) > 0 ? other : one;
        }
        return one.measured() == null || one.measured().word() != null && other.measured() != null && other.measured().word() == null
                ? other : one;
    }

    private static Weight heavier(Weight one, Weight other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    private static int rank(Outcome outcome) {
        return outcome == Outcome.BROKEN ? 2 : outcome == Outcome.UNSHOWN ? 1 : 0;
    }

    private Found found(Part part) {
        if (part instanceof Part.Numeric numeric) {
            return numeric(numeric, numeric.bound());
        }
        if (part instanceof Part.Worded worded) {
            return worded(worded);
        }
        if (part instanceof Part.True statement) {
            return statement(statement);
        }
        if (part instanceof Part.Present present) {
            return given(present.what(), present.value(), "present");
        }
        Part.Attested attested = (Part.Attested) part;
        Found found = given(attested.what(), attested.value(), "present");
        return attested.value() instanceof Shown.Given<Attestation> given
                ? holds(Measured.of(given.value().who() + ", " + given.value().when() + ", " + given.value().evidence()), null,
                () -> attested.what() + ": " + given.value().who() + ", " + given.value().when()) : found;
    }

    private Found holds(Measured measured, Bounded limit, Supplier<String> because) {
        return new Found(Outcome.HOLDS, heaviest(limit), measured, limit, because, List.of(), List.of());
    }

    private Found unshown(String what, List<Need> needs, Bounded limit) {
        return new Found(Outcome.UNSHOWN, heaviest(limit), null, limit, () -> what + " is not shown", needs, List.of());
    }

    private Found given(String what, Shown<?> value, String sense) {
        if (value instanceof Shown.Missing || value instanceof Shown.Hidden && !demand.hiddenBreaks()) {
            return unshown(what, value.needs(), null);
        }
        if (value instanceof Shown.Hidden) {
            return new Found(Outcome.BROKEN, own, null, null, () -> what + " cannot be seen", value.needs(), List.of());
        }
        if (value instanceof Shown.Collapsed<?> collapsed) {
            return new Found(Outcome.BROKEN, own, null, null, collapsed::reason, List.of(), List.of());
        }
        if (value instanceof Shown.Assumed) {
            throw fault("was given a window for " + what + ", which is no number");
        }
        return holds(null, null, () -> what + ": " + sense);
    }

    private Found worded(Part.Worded part) {
        if (!(part.value() instanceof Shown.Given<String> given)) {
            return given(part.what(), part.value(), "present");
        }
        Limit list = limits.named(part.list());
        boolean wanted = list.kind() == Limit.Kind.ONE_OF;
        if (!wanted && list.kind() != Limit.Kind.NONE_OF) {
            throw fault("holds a word against " + list.name() + ", which is no list of words to be in or not in");
        }
        boolean fits = list.words().contains(given.value()) == wanted;
        Bounded bounded = new Bounded(list, wanted ? "one-of" : "absent", Double.NaN, Double.NaN, Double.NaN);
        Measured measured = Measured.of(given.value());
        Supplier<String> because = () -> part.what() + " is " + given.value() + (wanted ? "; one of: " : "; none of: ") + String.join(", ", list.words());
        return fits ? holds(measured, bounded, because)
                : new Found(Outcome.BROKEN, own, measured, bounded, because, List.of(), List.of());
    }

    private Found statement(Part.True part) {
        if (!(part.value() instanceof Shown.Given<Boolean> given)) {
            return given(part.what(), part.value(), "present");
        }
        String seen = part.seen().orElse("");
        Measured measured = seen.isEmpty() ? null : Measured.of(seen);
        return given.value() ? holds(measured, null, () -> part.what() + ": yes" + (seen.isEmpty() ? "" : ", " + seen))
                : new Found(Outcome.BROKEN, own, measured, null, () -> part.what() + ": no" + (seen.isEmpty() ? "" : ", " + seen), List.of(), List.of());
    }

    // numbers

    private Found numeric(Part.Numeric part, Bound bound) {
        if (bound instanceof Bound.Named named) {
            return held(part, limits.named(named.limit()));
        }
        if (bound instanceof Bound.Chosen chosen) {
            return chosen(part, chosen);
        }
        if (bound instanceof Bound.NamedBy named) {
            return named.limit() instanceof Shown.Given<String> given ? held(part, limits.named(given.value()))
                    : unshown(part.what(), named.limit().needs(), null);
        }
        Bound.Own equipment = (Bound.Own) bound;
        if (!(equipment.value() instanceof Shown.Given<Double> given)) {
            Set<Need> needs = new LinkedHashSet<>(equipment.value().needs());
            needs.addAll(part.value().needs());
            return unshown(equipment.name(), new ArrayList<>(needs), null);
        }
        return held(part, new Limit(equipment.name(), equipment.unit(), part.sense(), List.of(new Limit.Step(null, given.value())),
                Double.NaN, Double.NaN, List.of(), equipment.name(), "the equipment's own data", "seen", List.of(), null));
    }

    /** One demand with a choice: where the choosing fact is missing, the same outcome either way stands. */
    private Found chosen(Part.Numeric part, Bound.Chosen chosen) {
        Limit whenTrue = limits.named(chosen.whenTrue());
        Limit whenFalse = limits.named(chosen.whenFalse());
        if (chosen.fact() instanceof Shown.Given<Boolean> given) {
            return held(part, given.value() ? whenTrue : whenFalse);
        }
        Found one = held(part, whenTrue);
        Found other = held(part, whenFalse);
        Found worse = rank(other.outcome()) > rank(one.outcome())
                || other.outcome() == one.outcome() && other.weight().compareTo(one.weight()) > 0 ? other : one;
        if (one.outcome() == other.outcome()) {
            return worse;
        }
        Set<Need> needs = new LinkedHashSet<>(chosen.fact().needs());
        needs.addAll(one.outcome() == Outcome.UNSHOWN ? one.needs() : other.outcome() == Outcome.UNSHOWN ? other.needs() : List.of());
        return new Found(Outcome.UNSHOWN, heavier(heaviest(whenTrue), heaviest(whenFalse)), worse.measured(), worse.limit(), () -> worse.because().get() + "; it holds if "
                + (one.outcome() == Outcome.HOLDS ? whenTrue : whenFalse).says(), new ArrayList<>(needs), List.of());
    }

    private Found held(Part.Numeric part, Limit limit) {
        if (limit.kind() != part.sense()) {
            throw fault("holds a number against " + limit.name() + " in a sense that it does not have");
        }
        Shown<Double> value = part.value();
        if (value instanceof Shown.Missing || value instanceof Shown.Hidden) {
            return value instanceof Shown.Hidden && demand.hiddenBreaks() ? given(part.what(), value, "")
                    : unshown(part.what(), value.needs(), bounded(limit, Double.NaN));
        }
        if (value instanceof Shown.Collapsed<Double> collapsed) {
            return new Found(Outcome.BROKEN, heaviest(limit), null, bounded(limit, Double.NaN), collapsed::reason, List.of(),
                    List.of());
        }
        if (value instanceof Shown.Given<Double> given) {
            return compared(part, limit, given.value(), List.of());
        }
        Shown.Assumed<Double> assumed = (Shown.Assumed<Double>) value;
        Found good = compared(part, limit, assumed.good(), assumed.windows().all());
        Found bad = assumed.bad() != null ? compared(part, limit, assumed.bad(), assumed.windows().all())
                : new Found(Outcome.BROKEN, heaviest(limit), null, bounded(limit, Double.NaN),
                assumed.calculation(), List.of(), assumed.windows().all());
        if (bad.outcome() == good.outcome()) {
            return bad;
        }
        return new Found(Outcome.UNSHOWN, heaviest(limit), null, bounded(limit, Double.NaN), () -> part.what() + " lies between "
                + (assumed.bad() == null ? "no working state" : print(assumed.bad(), limit)) + " and " + print(assumed.good(), limit) + "; " + words(limit, bad.limit()), needs(assumed.windows().ranked()),
                assumed.windows().ranked());
    }

    /** Each window that moves the value alone stands as a question, the weightiest first; where none does, all do. */
    private List<Need> needs(List<Window> ranked) {
        boolean anyAlone = ranked.stream().anyMatch(window -> window.weighs() > 0);
        return ranked.stream().filter(window -> window.weighs() > 0 || !anyAlone)
                .flatMap(window -> window.paths().stream().map(path -> new Need(path, limits.named(window.limit()).says(), demand.fact().at())))
                .toList();
    }

    private Found compared(Part.Numeric part, Limit limit, double value, List<Window> windows) {
        if (Double.isNaN(value)) {
            throw fault("was given no number for " + part.what());
        }
        boolean within;
        Weight crossed = null;
        if (limit.kind() == Limit.Kind.BETWEEN) {
            within = value >= limit.low() && value <= limit.high();
            crossed = within ? null : own;
        } else {
            for (Limit.Step step : limit.steps()) {
                boolean over = limit.kind() == Limit.Kind.AT_MOST ? value > step.value() : value < step.value();
                if (over) {
                    Weight weight = step.weight() == null ? own : step.weight();
                    crossed = crossed == null ? weight : heavier(crossed, weight);
                }
            }
            within = crossed == null;
        }
        Bounded bounded = bounded(limit, value);
        Supplier<String> because = () -> part.what() + " is " + print(value, limit) + "; " + words(limit, bounded);
        return new Found(within ? Outcome.HOLDS : Outcome.BROKEN, within ? heaviest(limit) : crossed,
                Measured.of(value, limit.unit()), bounded, because, List.of(), windows);
    }

    private Weight heaviest(Limit limit) {
        if (limit.steps().isEmpty()) {
            return own;
        }
        Weight heaviest = Weight.ADVISE;
        for (Limit.Step step : limit.steps()) {
            heaviest = heavier(heaviest, step.weight() == null ? own : step.weight());
        }
        return heaviest;
    }

    private static Bounded bounded(Limit limit, double value) {
        String sense = limit.kind() == Limit.Kind.AT_MOST ? "at-most" : limit.kind() == Limit.Kind.AT_LEAST ? "at-least" : "between";
        if (limit.kind() == Limit.Kind.BETWEEN) {
            return new Bounded(limit, sense, limit.low(), limit.high(), Double.NaN);
        }
        double next = Double.NaN;
        for (Limit.Step step : limit.steps().subList(1, limit.steps().size())) {
            boolean crossed = limit.kind() == Limit.Kind.AT_MOST ? value > step.value() : value < step.value();
            if (!crossed) {
                next = step.value();
                break;
            }
        }
        return new Bounded(limit, sense, limit.steps().get(0).value(), Double.NaN, next);
    }

    private static String words(Limit limit, Bounded bounded) {
        return switch (limit.kind()) {
            case AT_MOST -> "at most " + print(bounded.value(), limit);
            case AT_LEAST -> "at least " + print(bounded.value(), limit);
            default -> print(limit.low(), limit) + " to " + print(limit.high(), limit) + " fits";
        };
    }

    private static String print(double value, Limit limit) {
        return Units.print(value, Dimension.ofSymbol(limit.unit()));
    }
}
