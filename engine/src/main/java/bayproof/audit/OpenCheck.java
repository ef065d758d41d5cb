package bayproof.audit;

import bayproof.judge.FormerRules;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A check that counts against a job.
 *
 * @param outcome  broken or unshown
 * @param weight   the weight of its verdict
 * @param measured the value as it is printed; null where there is none
 * @param limit    name of the limit it was held against; null where there is none
 */
public record OpenCheck(String rule, String subject, String outcome, String weight, String measured, String limit) {

    String key() {
        return rule + " " + subject;
    }

    /** As plain JSON. */
    public Map<String, Object> plain() {
        Map<String, Object> plain = new LinkedHashMap<>();
        plain.put("rule", rule);
        plain.put("subject", subject);
        plain.put("outcome", outcome);
        plain.put("weight", weight);
        plain.put("measured", measured);
        plain.put("limit", limit);
        return plain;
    }

    /** A check as an audit kept it, its rule under the id that it has now. */
    static OpenCheck of(Map<?, ?> plain) {
        return new OpenCheck(FormerRules.built().current((String) plain.get("rule")), (String) plain.get("subject"), (String) plain.get("outcome"), (String) plain.get("weight"),
                (String) plain.get("measured"), (String) plain.get("limit"));
    }
}
