package bayproof.facts;

import bayproof.facts.WindowedValue.Result;
import bayproof.graph.Link;
import bayproof.graph.Role;
import bayproof.read.Item;
import bayproof.solve.NoSolution;
import bayproof.solve.OperatingPoint;
import bayproof.solve.Solution;
import bayproof.units.Dimension;
import bayproof.vocabulary.ChargeSource;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.PoweredItem;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SourceKind;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** Facts about volts and current: what is lost on the way to each item, and what is left at idle. */
final class NetworkFacts {
    private static final double PER_AMPERE = 1e6;

    private final Model model;
    private final Amplifiers amplifiers;
    /** States in which a drop is judged; without an alternator there is no charging. */
    private final List<State> states;
    /** The network at both corners of what drops and currents ask for, worked out when first asked. */
    private Solved bad;
    private Solved good;
    private final Map<String, Solved> relieved = new HashMap<>();

    NetworkFacts(Model model, Amplifiers amplifiers) {
        this.model = model;
        this.amplifiers = amplifiers;
        this.states = model.job.itemsOf(Item.Alternator.class).isEmpty() ? List.of(State.ON_BATTERY)
                : List.of(State.ON_BATTERY, State.CHARGING_FULL);
    }

    void collect(Consumer<Fact> facts) {
        drops(facts);
        balance(facts);
    }

    // drops

    private void solveCorners() {
        if (bad == null) {
            bad = new Solved(Corner.bad(model.job.limits(), Question.DROP));
            good = bad.corner.isWhole() ? new Solved(Corner.good(model.job.limits(), Question.DROP)) : bad;
        }
    }

    private Solved relieved(String window) {
        return relieved.computeIfAbsent(window, name -> new Solved(Corner.relieved(model.job.limits(), Question.DROP, name)));
    }

    /**
     * Current of a fuse or run in the worse of the states. What is bad for a drop is bad for it too: constant-power loads
     * draw most where they get least.
     *
     * @param hangs whether the current of an item passes it; one of those below its cut-off leaves no current to judge
     */
    Shown<Double> amperes(Link link, Level level, Predicate<Item> hangs) {
        solveCorners();
        return WindowedValue.of(bad.corner, good.corner, bad.amperes(link, level, hangs), good.amperes(link, level, hangs),
                window -> relieved(window).amperes(link, level, hangs));
    }

    /** The solved states of one corner. */
    private final class Solved {
        final Corner corner;
        final Map<State, SupplyNetwork> networks = new EnumMap<>(State.class);
        private final Map<String, Solution> solutions = new HashMap<>();

        Solved(Corner corner) {
            this.corner = corner;
            for (State state : states) {
                networks.put(state, new SupplyNetwork(model, amplifiers, corner, state));
            }
        }

        Solution solution(State state, Level level) {
            return solutions.computeIfAbsent(state + " " + level, key -> networks.get(state).solve(level));
        }

        /** The worse of the states, as a share of the reference volts. */
        Result drop(Item item, Level level) {
            if (!corner.isWhole()) {
                return new Result(Double.NaN, null, null);
            }
            Result worst = null;
            for (State state : states) {
                Result result = drop(item, level, state);
                if (worst == null || result.collapse() != null || worst.collapse() == null && result.value() > worst.value()) {
                    worst = result;
                }
            }
            return worst;
        }

        /** The larger current of the states. */
        Result amperes(Link link, Level level, Predicate<Item> hangs) {
            if (!corner.isWhole()) {
                return new Result(Double.NaN, null, null);
            }
            Result worst = null;
            for (State state : states) {
                Result result = amperes(link, level, state, hangs);
                if (worst == null || result.collapse() != null || worst.collapse() == null && result.value() > worst.value()) {
                    worst = result;
                }
            }
            return worst;
        }

        private Result amperes(Link link, Level level, State state, Predicate<Item> hangs) {
            Solution solution = solution(state, level);
            String when = state.words() + ", " + level.words();
            if (solution instanceof NoSolution none) {
                return new Result(Double.NaN, "no working state " + when + ": " + none.reason(), null);
            }
            OperatingPoint point = (OperatingPoint) solution;
            for (Item item : networks.get(state).powered()) {
                if (networks.get(state).isDown(point, item) && hangs.test(item)) {
                    return new Result(Double.NaN, "no working state " + when + ": " + item.id() + " gets less than it needs to run", null);
                }
            }
            // A current is told from small differences of volts: what lies below a microampere is rounding.
            double amperes = Math.rint(Math.abs(SupplyNetwork.amperes(point, link)) * PER_AMPERE) / PER_AMPERE;
            return new Result(amperes, null, () -> Model.print(amperes, Dimension.CURRENT) + " (" + when + ")");
        }

        private Result drop(Item item, Level level, State state) {
            Solution solution = solution(state, level);
            String when = state.words() + ", " + level.words();
            if (solution instanceof NoSolution none) {
                return new Result(Double.NaN, "no working state " + when + ": " + none.reason(), null);
            }
            OperatingPoint point = (OperatingPoint) solution;
            if (networks.get(state).isDown(point, item)) {
                return new Result(Double.NaN, "no working state " + when + ": " + item.id() + " gets "
                        + SupplyNetwork.volts(point.voltsAcross(item.id() + ".supply", item.id() + ".ground"))
                        + ", less than it needs to run", null);
            }
            SupplyNetwork network = networks.get(state);
            double reference = model.value("drop-reference");
            double lost = network.lostVolts(point, item);
            return new Result(lost / reference, null, () -> SupplyNetwork.volts(network.postVolts(point, item)) + " at the battery posts - "
                    + SupplyNetwork.volts(network.postVolts(point, item) - lost) + " at " + item.id() + " = " + SupplyNetwork.volts(lost)
                    + ", over " + SupplyNetwork.volts(reference) + " (" + when + ", "
                    + Model.print(network.itemAmperes(point, item), Dimension.CURRENT) + ")");
        }
    }

    private void drops(Consumer<Fact> facts) {
        List<Item> powered = model.job.items().values().stream().filter(item -> item.hasTerminal("supply")).toList();
        if (powered.isEmpty()) {
            return;
        }
        solveCorners();
        BiFunction<String, Item, Solved> alone = (window, item) -> relieved(window);
        for (Item item : powered) {
            Shown<Double> loud = drop(bad, good, item, Level.LOUD_PROGRAMME, alone);
            Shown<Double> sine = drop(bad, good, item, Level.FULL_SINE, alone);
            note(item.path() + ".drop-loud-programme", loud, Dimension.RATIO);
            note(item.path() + ".drop-full-sine", sine, Dimension.RATIO);
            if (bad.corner.isWhole() && bad.solution(State.ON_BATTERY, Level.FULL_SINE) instanceof OperatingPoint point) {
                model.numbers.put(item.path() + ".current-full-sine", bad.networks.get(State.ON_BATTERY).itemAmperes(point, item),
                        Dimension.CURRENT, () -> "on battery, full sine, every window at its bad end");
            }
            facts.accept(new PoweredItem(item.path(), item.at(), loud, sine, thicker(item)));
        }
    }

    private Shown<Double> drop(Solved bad, Solved good, Item item, Level level, BiFunction<String, Item, Solved> alone) {
        double allowance = cornerAllowance(Question.DROP);
        return WindowedValue.of(bad.corner, good.corner, bad.drop(item, level).moved(allowance), good.drop(item, level).moved(-allowance),
                window -> alone.apply(window, item).drop(item, level));
    }

    /** The run that loses most per ampere on the way to an item and back is the one to thicken. */
    private Knob thicker(Item item) {
        List<Item.Battery> batteries = model.job.itemsOf(Item.Battery.class);
        if (batteries.isEmpty()) {
            return null;
        }
        Link worst = null;
        double most = 0;
        for (String[] ends : new String[][] {{item.id() + ".supply", ".positive"}, {item.id() + ".ground", ".negative"}}) {
            List<Link> way = model.wiring.way(ends[0], batteries.get(0).id() + ends[1]);
            for (Link link : way == null ? List.<Link>of() : way) {
                if (link.kind() == Link.Kind.RUN && !model.job.isFactory(link.run()) && link.run().size().isGiven()
                        && model.wiring.role(link.run()) != Role.UNKNOWN) {
                    double weight = model.lengthMetres(link.run()).orElse(0.0)
                            / model.conductors().areaSquareMetres(link.run().size().orElse(null));
                    if (weight > most) {
                        most = weight;
                        worst = link;
                    }
                }
            }
        }
        return worst == null ? null : new Ladders(model).thicker(worst.run());
    }

    /**
     * How far a value may lie outside its two corners, as a share of it. With several sources what is bad for one is
     * good for another, and every joint would need a corner of its own; the two ends are moved apart by this instead.
     */
    double cornerAllowance(Question question) {
        List<Item.Battery> batteries = model.job.itemsOf(Item.Battery.class);
        boolean joined = batteries.stream().anyMatch(one -> batteries.stream().anyMatch(other ->
                one != other && model.joined(one.id() + ".positive", other.id() + ".positive")));
        if (joined) {
            return model.value("corner-allowance-joined-batteries");
        }
        return question == Question.BALANCE && !model.job.itemsOf(Item.Converter.class).isEmpty()
                ? model.value("corner-allowance-converter") : 0;
    }

    // balance at idle

    private void balance(Consumer<Fact> facts) {
        for (Item.Alternator alternator : model.job.itemsOf(Item.Alternator.class)) {
            Corner bad = Corner.bad(model.job.limits(), Question.BALANCE);
            Result atBad = balance(alternator, bad);
            Corner good = Corner.good(model.job.limits(), Question.BALANCE);
            Result atGood = bad.isWhole() ? balance(alternator, good) : atBad;
            double allowance = cornerAllowance(Question.BALANCE);
            Shown<Double> left = WindowedValue.of(bad, good, atBad.moved(-allowance), atGood.moved(allowance),
                    window -> balance(alternator, Corner.relieved(model.job.limits(), Question.BALANCE, window)));
            note(alternator.path() + ".balance-at-idle", left, Dimension.CURRENT);
            facts.accept(new ChargeSource(alternator.path(), alternator.at(), SourceKind.ALTERNATOR, left));
        }
    }

    /** Output at hot idle less everything drawn at the set point, with the battery left out. */
    Result balance(Item.Alternator alternator, Corner corner) {
        double idle = alternator.idleAmperes() instanceof Shown.Given<Double> given ? given.value()
                : corner.given(alternator.ratedAmperes()) * corner.orWindow(alternator.idleAmperes(), "alternator-idle-share");
        SupplyNetwork network = new SupplyNetwork(model, amplifiers, corner, State.CHARGING_IDLE);
        if (!corner.isWhole()) {
            return new Result(Double.NaN, null, null);
        }
        Solution solution = network.solve(Level.NORMAL_PROGRAMME);
        if (solution instanceof NoSolution none) {
            return new Result(Double.NaN, "no working state charging idle, normal programme: " + none.reason(), null);
        }
        OperatingPoint point = (OperatingPoint) solution;
        for (Item item : network.powered()) {
            if (network.isDown(point, item)) {
                return new Result(Double.NaN, "no working state charging idle, normal programme: " + item.id() + " gets less than it needs to run", null);
            }
        }
        double drawn = point.sourceAmperes(alternator.id());
        double own = model.job.vehicle().supply().ownLoadAmperes().orElse(0.0);
        return new Result(idle - drawn, null, () -> Model.print(idle, Dimension.CURRENT) + " at hot idle - "
                + Model.print(own, Dimension.CURRENT) + " of the vehicle itself - " + Model.print(drawn - own, Dimension.CURRENT)
                + " of the job (normal programme)");
    }

    private void note(String path, Shown<Double> value, Dimension dimension) {
        if (value instanceof Shown.Given<Double> given) {
            model.numbers.put(path, given.value(), dimension, given.calculation());
        } else if (value instanceof Shown.Assumed<Double> assumed && assumed.bad() != null) {
            model.numbers.put(path, assumed.bad(), dimension, () -> assumed.calculation().get() + "; every window at its bad end, "
                    + Model.print(assumed.good(), dimension) + " at its good end");
        }
    }
}
