package bayproof.signoff;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Signs again and again until somebody kills it, and says each entry aloud once it has been told that it is kept. */
final class SigningLoop {
    private static final int PADDING = 20_000;

    private SigningLoop() {
    }

    public static void main(String[] arguments) throws Exception {
        Map<String, Object> content = Map.of("by", "AB", "when", "2026-11-30T12:00:00Z", "gate", "handover", "may-go", true,
                "rule-base", Map.of("version", "1", "date", "2026-11-25"), "files", List.of(), "verdicts", List.of(), "padding", "x".repeat(PADDING));
        System.out.println("begin");
        while (true) {
            System.out.println(SignOffRecord.append(Path.of(arguments[0]), () -> content).hash());
        }
    }
}
