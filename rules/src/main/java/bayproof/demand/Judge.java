package bayproof.demand;

import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import org.kie.api.definition.rule.Rule;

/** Collects what the rules ask for during one evaluation. One instance per evaluation, used by one thread. */
public final class Judge {
    private final List<Demand> demands = new ArrayList<>();

    /** Begins the demand of a rule on one subject; a consequence calls it exactly once. */
    public Demand demand(Rule rule, Fact fact) {
        Demand demand = new Demand(rule.getName(), fact);
        demands.add(demand);
        return demand;
    }

    /** One of two limits, chosen by a fact. */
    public Bound choose(Shown<Boolean> fact, String whenTrue, String whenFalse) {
        return new Bound.Chosen(fact, whenTrue, whenFalse);
    }

    /** A limit whose name a fact gives. */
    public Bound limitFor(Shown<String> name) {
        return new Bound.NamedBy(name);
    }

    /** A figure of the equipment itself. */
    public Bound own(Shown<Double> value, String unit, String name) {
        return new Bound.Own(value, unit, name);
    }

    public List<Demand> demands() {
        return List.copyOf(demands);
    }
}
