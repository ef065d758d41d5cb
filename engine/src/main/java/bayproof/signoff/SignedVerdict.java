package bayproof.signoff;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A verdict as it was when somebody signed.
 *
 * @param measured the value as it was printed; null where there was none
 * @param limit    the limit as it was printed; null where there was none
 * @param waived   name of the waiver that accepted it; null where none did
 */
public record SignedVerdict(String rule, String subject, String outcome, String weight, String gate, String measured, String limit, String waived) {

    /** A name that is unique within one entry. */
    public String key() {
        return rule + " " + subject;
    }

    Map<String, Object> plain() {
        Map<String, Object> plain = new LinkedHashMap<>();
        plain.put("rule", rule);
        plain.put("subject", subject);
        plain.put("outcome", outcome);
        plain.put("weight", weight);
        plain.put("gate", gate);
        put(plain, "measured", measured);
        put(plain, "limit", limit);
        put(plain, "waived", waived);
        return plain;
    }

    private static void put(Map<String, Object> plain, String key, String value) {
        if (value != null) {
            plain.put(key, value);
        }
    }

    static SignedVerdict of(Map<?, ?> plain) {
        return new SignedVerdict((String) plain.get("rule"), (String) plain.get("subject"), (String) plain.get("outcome"), (String) plain.get("weight"),
                (String) plain.get("gate"), (String) plain.get("measured"), (String) plain.get("limit"), (String) plain.get("waived"));
    }
}
