package bayproof.signoff;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A file as it was when somebody signed.
 *
 * @param file    its path as seen from the job's folder, with slashes
 * @param kind    plan, vehicle, parts, readings, limits, waivers, table or photo
 * @param sha256  hash of its bytes
 * @param meaning hash of what it says; null where only bytes can be compared
 */
public record SignedFile(String file, String kind, String sha256, String meaning) {
    static final String PHOTO = "photo";

    Map<String, Object> plain() {
        Map<String, Object> plain = new LinkedHashMap<>();
        plain.put("file", file);
        plain.put("kind", kind);
        plain.put("sha256", sha256);
        plain.put("meaning", meaning);
        return plain;
    }

    static SignedFile of(Map<?, ?> plain) {
        return new SignedFile((String) plain.get("file"), (String) plain.get("kind"), (String) plain.get("sha256"), (String) plain.get("meaning"));
    }
}
