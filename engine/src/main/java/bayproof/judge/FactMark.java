package bayproof.judge;

import bayproof.demand.Bound;
import bayproof.demand.Demand;
import bayproof.demand.Part;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * A short mark of everything a demand read but the number it held against its limit: two verdicts with the same mark
 * were given on the same facts. The number and the limit are compared by themselves, because a better one changes
 * nothing. Where a fact stands, and how a value was worked out, is not part of the mark.
 */
final class FactMark {
    private static final int CHARACTERS = 8;

    private FactMark() {
    }

    static String of(Demand demand) {
        List<String> read = new ArrayList<>();
        read.add(demand.rule() + " " + demand.fact().subject());
        demand.conditions().forEach(condition -> read.add("if " + text(condition.fact())));
        demand.parts().forEach(part -> read.add(text(part)));
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(String.join("\n", read).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, CHARACTERS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String text(Part part) {
        if (part instanceof Part.Numeric numeric) {
            return (numeric.value() instanceof Shown.Given ? "a number" : text(numeric.value())) + " " + text(numeric.bound());
        }
        if (part instanceof Part.Worded worded) {
            return worded.list() + " " + text(worded.value());
        }
        if (part instanceof Part.True statement) {
            return text(statement.value()) + " " + text(statement.seen());
        }
        return text(part instanceof Part.Present present ? present.value() : ((Part.Attested) part).value());
    }

    private static String text(Bound bound) {
        if (bound instanceof Bound.Chosen chosen) {
            return chosen.whenTrue() + " or " + chosen.whenFalse() + " " + text(chosen.fact());
        }
        return bound instanceof Bound.NamedBy named ? text(named.limit()) : bound instanceof Bound.Named named ? named.limit() : ((Bound.Own) bound).name();
    }

    private static String text(Shown<?> value) {
        if (value instanceof Shown.Given<?> given) {
            return given.value() instanceof Attestation word ? word.who() + ", " + word.when() + ", " + word.evidence() : String.valueOf(given.value());
        }
        if (value instanceof Shown.Assumed<?> assumed) {
            // Its two ends move with every other value of the job; what decides it are the windows.
            return "between, by " + assumed.windows().all().stream().map(Window::limit).distinct().sorted().toList();
        }
        return value instanceof Shown.Collapsed<?> collapsed ? collapsed.reason() : "missing " + value.needs().stream().map(Need::path).sorted().toList();
    }
}
