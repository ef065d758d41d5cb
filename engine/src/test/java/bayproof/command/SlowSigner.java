package bayproof.command;

import bayproof.signoff.SignOffRecord;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** A process that holds the record of a job until it is told to go on. */
final class SlowSigner {
    private SlowSigner() {
    }

    public static void main(String[] arguments) throws Exception {
        SignOffRecord.<Exception>append(Path.of(arguments[0]), () -> {
            System.out.println("locked");
            System.in.read();
            return Map.of("by", "AB", "when", "2026-11-30T12:00:00Z", "gate", "handover", "may-go", true,
                    "rule-base", Map.of("version", "1", "date", "2026-11-25"), "files", List.of(), "verdicts", List.of());
        });
    }
}
