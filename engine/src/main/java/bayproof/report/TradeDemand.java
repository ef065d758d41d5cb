package bayproof.report;

import bayproof.demand.Gate;
import bayproof.demand.Weight;
import java.util.List;

/**
 * One thing that the trade asks for, whether or not a rule judges it. Exactly one of rule, reason and open rule is given.
 *
 * @param id      permanent name
 * @param topic   table it stands in
 * @param must    what has to be, one sentence
 * @param sources where it comes from, or that nobody published it
 * @param gate    when it is due
 * @param weight  what it means when it is not met
 * @param rule    id of the rule that judges it; null where none does
 * @param whyNot  reason why no rule can judge it; null where there is none
 * @param open    id of the rule that is to judge it one day; null where nothing is open
 */
public record TradeDemand(String id, String topic, String must, List<String> sources, Gate gate, Weight weight, String rule, String whyNot,
                          String open) {
    public TradeDemand {
        sources = List.copyOf(sources);
    }

    /** What becomes of a demand. */
    public enum State {
        /** A rule judges it. */
        RULED,
        /** No rule can, and it is said why. */
        REASONED,
        /** A rule is still to be written. */
        OPEN
    }

    public State state() {
        return rule != null ? State.RULED : whyNot != null ? State.REASONED : State.OPEN;
    }
}
