package bayproof.facts;

import bayproof.facts.WindowedValue.Result;
import bayproof.graph.Link;
import bayproof.graph.Role;
import bayproof.read.Item;
import bayproof.solve.NoSolution;
import bayproof.solve.OperatingPoint;
import bayproof.solve.Solution;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.ChargeSource;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.PoweredItem;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SourceKind;
import java.util.List;
import java.util.function.Consumer;

/** Facts about volts and current: what is lost on the way to each item, and what is left at idle. */
final class NetworkFacts {
    private final Model model;
    private final Amplifiers amplifiers;
    private final SolvedNetworks networks;

    NetworkFacts(Model model, Amplifiers amplifiers, SolvedNetworks networks) {
        this.model = model;
        this.amplifiers = amplifiers;
        this.networks = networks;
    }

    void collect(Consumer<Fact> facts) {
        drops(facts);
        balance(facts);
    }

    // drops

    private void drops(Consumer<Fact> facts) {
        List<Item> powered = model.job.items().values().stream().filter(item -> item.hasTerminal("supply")).toList();
        if (powered.isEmpty()) {
            return;
        }
        SolvedCorner bad = networks.bad();
        for (Item item : powered) {
            Shown<Double> loud = drop(item, Level.LOUD_PROGRAMME);
            Shown<Double> sine = drop(item, Level.FULL_SINE);
            note(item.path() + ".drop-loud-programme", loud, Dimension.RATIO);
            note(item.path() + ".drop-full-sine", sine, Dimension.RATIO);
            if (bad.corner().isWhole() && bad.settled(State.ON_BATTERY, Level.FULL_SINE).point() != null) {
                SolvedCorner.Settled here = bad.settled(State.ON_BATTERY, Level.FULL_SINE);
                model.numbers.put(item.path() + ".current-full-sine", here.network().itemAmperes(here.point(), item),
                        Dimension.CURRENT, () -> "on battery, full sine, every window at its bad end");
            }
            facts.accept(new PoweredItem(item.path(), item.at(), loud, sine, thicker(item)));
        }
    }

    private Shown<Double> drop(Item item, Level level) {
        return networks.windowed(SolvedNetworks.cornerAllowance(model, Question.DROP), corner -> drop(item, level, corner));
    }

    /** The worse of the states, as a share of the reference volts. */
    Result drop(Item item, Level level, SolvedCorner corner) {
        return corner.worst(level, one -> one == item, here -> {
            double reference = model.value("drop-reference");
            double lost = here.network().lostVolts(here.point(), item);
            return new Result(Sums.share(lost, reference), null, () -> {
                double post = here.network().postVolts(here.point(), item);
                return SupplyNetwork.volts(post) + " at the battery posts - " + SupplyNetwork.volts(post - lost) + " at " + item.id() + " = "
                        + SupplyNetwork.volts(lost) + ", over " + SupplyNetwork.volts(reference) + " (" + here.when() + ", "
                        + Model.print(here.network().itemAmperes(here.point(), item), Dimension.CURRENT) + ")";
            });
        });
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

    // balance

    /** What all that charge leave between them; where one is an alternator, a converter beside it is no subject of its own. */
    private void balance(Consumer<Fact> facts) {
        List<Item.Alternator> alternators = model.job.itemsOf(Item.Alternator.class);
        for (Item.Charger charger : model.job.itemsOf(Item.Charger.class)) {
            if (charger instanceof Item.Alternator) {
                facts.accept(new ChargeSource(charger.path(), charger.at(), SourceKind.ALTERNATOR, left(charger, false), left(charger, true), acceptance()));
            } else if (alternators.isEmpty()) {
                Shown<Double> left = left(charger, true);
                facts.accept(new ChargeSource(charger.path(), charger.at(), SourceKind.TRACTION_CONVERTER, left, left, acceptance()));
            }
        }
    }

    /** What the vehicle's own batteries take while they are charged. */
    private Shown<Double> acceptance() {
        Shown<Double> sum = Shown.of(0.0);
        for (Item.Battery battery : model.job.itemsOf(Item.Battery.class)) {
            if (battery.path().startsWith("supply.")) {
                sum = sum.with(battery.acceptanceAmperes(), Double::sum);
            }
        }
        return sum;
    }

    private Shown<Double> left(Item.Charger charger, boolean full) {
        Corner bad = Corner.bad(model.job.limits(), Question.BALANCE);
        Result atBad = balance(bad, full);
        Corner good = Corner.good(model.job.limits(), Question.BALANCE);
        Result atGood = bad.isWhole() ? balance(good, full) : atBad;
        double allowance = SolvedNetworks.cornerAllowance(model, Question.BALANCE);
        Shown<Double> left = WindowedValue.of(bad, good, atBad.moved(-allowance), atGood.moved(allowance),
                window -> balance(Corner.relieved(model.job.limits(), Question.BALANCE, window), full));
        note(charger.path() + (full ? ".balance-at-full" : ".balance-at-idle"), left, Dimension.CURRENT);
        return left;
    }

    Result balance(Corner corner) {
        return balance(corner, false);
    }

    /** Output at hot idle, or the full one, less everything drawn at the set point, with the battery left out. */
    private Result balance(Corner corner, boolean full) {
        List<Item.Charger> chargers = model.job.itemsOf(Item.Charger.class);
        double output = chargers.stream().mapToDouble(one -> full || !(one instanceof Item.Alternator alternator) ? corner.given(one.ratedAmperes())
                : idleOutput(alternator, corner)).sum();
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
        double drawn = chargers.stream().mapToDouble(one -> point.sourceAmperes(one.id())).sum();
        double own = model.job.vehicle().supply().ownLoadAmperes().orElse(0.0);
        return new Result(Sums.leftAmperes(output, drawn), null, () -> Model.print(output, Dimension.CURRENT) + (full ? " in full - " : " at hot idle - ")
                + Model.print(own, Dimension.CURRENT) + " of the vehicle itself - " + Model.print(drawn - own, Dimension.CURRENT)
                + " of the job (normal programme)");
    }

    private static double idleOutput(Item.Alternator alternator, Corner corner) {
        return alternator.idleAmperes() instanceof Shown.Given<Double> given ? given.value()
                : corner.given(alternator.ratedAmperes()) * corner.orWindow(alternator.idleAmperes(), "alternator-idle-share");
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
