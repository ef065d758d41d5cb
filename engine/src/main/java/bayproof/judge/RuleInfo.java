package bayproof.judge;

import bayproof.demand.Gate;
import bayproof.demand.Weight;

/**
 * What a rule says of itself.
 *
 * @param id     permanent name
 * @param topic  folder it lies in
 * @param weight the heaviest weight it can give
 * @param gate   when it is due
 * @param about  what it speaks about, as a noun phrase
 */
public record RuleInfo(String id, String topic, Weight weight, Gate gate, String about) implements Comparable<RuleInfo> {
    @Override
    public int compareTo(RuleInfo other) {
        return id.compareTo(other.id);
    }

    /** Path of its DRL in the sources, for messages. */
    public String file() {
        return "rules/" + topic + "/" + id + ".drl";
    }
}
