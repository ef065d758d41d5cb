package bayproof.report;

import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import java.util.ArrayList;
import java.util.List;

/** The answer to "may I?", with what it rests on in the same line, and what may be done meanwhile. */
final class Answer {
    private final Standing standing;

    Answer(Standing standing) {
        this.standing = standing.whole();
    }

    /** The answer in one line where the page's width allows it; where all holds, the two zeros can be spared for that. */
    String line() {
        String whole = verdict() + (standing.counts() ? " - " : ". ") + broken() + ". " + restsOn();
        return standing.counts() || Plain.length(whole) <= Paper.WIDTH ? whole : verdict() + ". " + restsOn();
    }

    private String verdict() {
        if (standing.counts()) {
            boolean onlyAdvice = standing.due().stream().filter(standing::counts).allMatch(one -> one.weight() == Weight.ADVISE);
            return onlyAdvice ? "LOOK AGAIN BEFORE " + GateWords.loudNoun(standing.gate())
                    : "DO NOT " + GateWords.loud(standing.gate()) + " YET";
        }
        String what = switch (standing.threshold()) {
            case ADVISE -> "NOTHING STANDS";
            case FIX -> "NO STOP OR FIX STANDS";
            case STOP -> "NO STOP STANDS";
        };
        return what + " AGAINST " + GateWords.loudNoun(standing.gate());
    }

    private String broken() {
        List<String> parts = new ArrayList<>();
        parts.add(standing.broken(Weight.STOP) + " stop");
        parts.add(standing.broken(Weight.FIX) + " fix");
        if (standing.broken(Weight.ADVISE) > 0) {
            parts.add(standing.broken(Weight.ADVISE) + " advise");
        }
        return String.join(", ", parts);
    }

    private String restsOn() {
        int waived = standing.waived().size();
        return Plain.count(standing.questions().facts().size(), "fact") + " not shown, " + standing.assumed().size() + " assumed"
                + (waived == 0 ? "." : ", " + waived + " waived.");
    }

    /** What may be done today. */
    String today() {
        if (standing.barred() == null) {
            List<String> on = new ArrayList<>();
            int assumed = standing.assumed().size();
            if (assumed > 0) {
                on.add("on " + Plain.count(assumed, "assumed value"));
            }
            int waived = standing.waived().size();
            if (waived > 0) {
                on.add("with " + Plain.count(waived, "check") + " waived");
            }
            int open = standing.due().size() - standing.due(Outcome.HOLDS).size() - waived;
            if (open > 0) {
                on.add("with " + Plain.count(open, "lighter check") + " open");
            }
            return standing.gate().act() + (on.isEmpty() ? "" : ", " + String.join(", ", on)) + ".";
        }
        List<String> may = new ArrayList<>(List.of("measure", "photograph", "quote", "correct the plan"));
        may.addAll(GateWords.actsBefore(standing.barred().ordinal()));
        return String.join(", ", may) + ".";
    }

    /** What has to wait. */
    String notYet() {
        int first = standing.barred() == null ? standing.gate().ordinal() + 1 : standing.barred().ordinal();
        List<String> acts = GateWords.actsFrom(first);
        return acts.isEmpty() ? "nothing that these rules look at." : String.join(", ", acts) + ".";
    }
}
