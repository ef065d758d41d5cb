package bayproof.report.refit;

import bayproof.judge.Verdict;
import bayproof.refit.Fate;
import bayproof.refit.Reason;
import bayproof.refit.Row;
import bayproof.report.Amounts;
import bayproof.report.Plain;
import bayproof.review.Remedy;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One row in words: verdicts with their numbers, facts, and what is missing. */
final class RowText {
    private static final int MOST_ASKED = 3;

    private final Map<String, Remedy> remedies;

    /** @param remedies how to put a broken verdict right, by its key */
    RowText(Map<String, Remedy> remedies) {
        this.remedies = remedies;
    }

    /** What the row is about: its name, and for a run what it serves for. */
    static String name(Row row) {
        return row.serves().isEmpty() ? row.id() : row.id() + " (" + row.serves() + ")";
    }

    /** Why it fares so; empty where it carries over as it is. */
    String why(Row row) {
        if (row.fate() == Fate.OPEN) {
            return asked(row);
        }
        Set<String> parts = new LinkedHashSet<>();
        row.decisive().forEach(reason -> parts.add(say(reason)));
        return String.join("; ", parts);
    }

    /** One reason with what to do. */
    String say(Reason reason) {
        if (reason.verdict() == null) {
            return reason.say() + (reason.instead() == null ? "" : "; instead: " + reason.instead());
        }
        Remedy remedy = remedies.get(reason.verdict().key());
        String number = number(reason.verdict());
        String said = remedy == null ? reason.say() : remedy.say();
        return Plain.text(said).replaceAll("\\.$", "") + " (" + (number.isEmpty() || remedy == null ? "" : number + ", ") + reason.fact()
                + (reason.ofOld() ? ", a fault of the old job as well" : "") + ")"
                + (remedy == null && reason.instead() != null ? "; instead: " + reason.instead() : "");
    }

    private static String number(Verdict verdict) {
        if (verdict.measured() == null) {
            return "";
        }
        String measured = Amounts.print(verdict.measured());
        return verdict.limit() == null || verdict.limit().limit().unit() == null ? measured : measured + ", " + Amounts.bound(verdict.limit());
    }

    /** What to find out, the first few. */
    private static String asked(Row row) {
        Set<String> asks = new LinkedHashSet<>();
        row.decisive().forEach(reason -> asks.add(reason.verdict() == null && reason.need() != null && !reason.say().equals(reason.need().ask())
                ? reason.say() + ": " + reason.need().ask() : reason.say()));
        List<String> some = new ArrayList<>(asks);
        String more = some.size() > MOST_ASKED ? " and " + (some.size() - MOST_ASKED) + " more" : "";
        return String.join("; ", some.subList(0, Math.min(MOST_ASKED, some.size()))) + more;
    }
}
