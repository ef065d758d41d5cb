package bayproof.report;

import bayproof.review.Timing;
import java.util.Locale;
import java.util.Map;

/** Where the time of a command went. */
public final class TimingPage {
    private static final double NANOSECONDS = 1e6;
    private static final int COLUMN = 34;

    private TimingPage() {
    }

    /** The stages in their order, then the rules, the slowest first. */
    public static Paper of(Timing timing) {
        Paper page = new Paper().line("TIME  ms");
        timing.stages().forEach((stage, time) -> row(page, "  " + stage, time));
        row(page, "  all of these", timing.stages().values().stream().mapToLong(Long::longValue).sum());
        page.line("The rule base loads beside the reading; what is left of that counts as rules.");
        Map<String, Long> rules = timing.rules().all();
        if (!rules.isEmpty()) {
            page.blank().line("RULES  ms to speak and be assessed; finding what each speaks about is shared");
            rules.entrySet().stream().sorted(Map.Entry.<String, Long>comparingByValue().reversed())
                    .forEach(entry -> row(page, "  " + entry.getKey(), entry.getValue()));
        }
        return page;
    }

    private static void row(Paper page, String name, long time) {
        page.row(Plain.padded(name, COLUMN) + String.format(Locale.ROOT, "%9.2f", time / NANOSECONDS));
    }
}
