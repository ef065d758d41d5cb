package bayproof.report;

import bayproof.demand.Gate;
import bayproof.judge.Verdict;
import bayproof.read.Sizes;
import bayproof.review.Change;
import bayproof.review.Move;
import bayproof.review.Since;
import java.util.List;
import java.util.Locale;

/** What moved since another plan, as a section behind the review: how, why, and what was changed. */
public final class SincePage {
    private static final String MARGIN = "      ";
    private static final int LONGEST_VALUE = 60;

    private final Since since;
    private final Places places;
    private final Places placesBefore;
    private final Gate gate;
    private final Paper page = new Paper();

    private SincePage(Since since, String plan, String other, Gate gate) {
        this.since = since;
        this.places = new Places(plan);
        this.placesBefore = new Places(other);
        this.gate = gate;
    }

    /**
     * The section.
     *
     * @param plan  the plan's file as the user gave it
     * @param other the file it is compared with as the user gave it
     * @param gate  what is due later than this says so
     */
    public static Paper of(Since since, String plan, String other, Gate gate) {
        return new SincePage(since, plan, other, gate).paper(other);
    }

    private Paper paper(String other) {
        page.across().line("SINCE " + Places.slashed(other) + ": " + Plain.count(since.moves().size(), "check") + " moved, "
                + Plain.count(since.changes().size(), "change") + " in the files");
        for (Move.Sort sort : Move.Sort.values()) {
            List<Move> moves = since.of(sort);
            if (!moves.isEmpty()) {
                page.blank().line(sort.words().toUpperCase(Locale.ROOT) + "  " + Plain.count(moves.size(), "check"));
                moves.forEach(this::move);
            }
        }
        changes();
        return page;
    }

    private void move(Move move) {
        Verdict verdict = move.after() == null ? move.before() : move.after();
        boolean later = move.rule().gate().compareTo(gate) > 0;
        page.line("");
        page.parts(0, List.of(Plain.padded(verdict.weight().name(), 4) + "  " + move.subject(),
                (move.after() == null ? placesBefore : places).line(verdict.at()), move.rule().id(), later ? "due " + move.rule().gate().word() : ""));
        page.hanging(MARGIN + "Before: ", MARGIN.length(), said(move.before(), move.outsideBefore()));
        page.hanging(MARGIN + "Now: ", MARGIN.length(), said(move.after(), move.outsideAfter()));
        if (move.reasons().isEmpty()) {
            page.hanging(MARGIN + "Moved by: ", MARGIN.length(), since.tried() < since.changes().size() && since.tried() > 0
                    ? "none of the changes that were tried, alone." : "no single change alone.");
        }
        move.reasons().forEach(change -> page.hanging(MARGIN + "Moved by: ", MARGIN.length() + 2, words(change)));
    }

    private static String said(Verdict verdict, String outside) {
        if (verdict == null) {
            return outside == null ? "not there." : "does not apply: " + outside + ".";
        }
        String weight = switch (verdict.outcome()) {
            case BROKEN -> ", " + verdict.weight().name();
            case UNSHOWN -> ", could weigh " + verdict.weight().name();
            default -> "";
        };
        return Rest.word(verdict.outcome()).replace(" as planned", "").replace(" yet", "") + weight + ". " + Plain.sentence(verdict.because());
    }

    private static String words(Change change) {
        return Sizes.bothWays(change.dotted() + ": " + Plain.cut(Plain.text(change.was()), LONGEST_VALUE) + " -> "
                + Plain.cut(Plain.text(change.is()), LONGEST_VALUE));
    }

    private void changes() {
        page.blank().line("CHANGED IN THE FILES  " + (since.changes().isEmpty() ? "nothing" : Plain.count(since.changes().size(), "place")));
        for (Change change : since.changes()) {
            long moved = since.moves().stream().filter(move -> move.reasons().contains(change)).count();
            page.hanging("  ", 6, words(change) + (moved == 0 ? "" : "  (moves " + Plain.count((int) moved, "check") + ")"));
        }
        if (since.tried() > 0 && since.tried() < since.changes().size()) {
            page.line("Only the first " + since.tried() + " changes were tried as reasons.");
        }
    }
}
