package bayproof.report.refit;

import bayproof.demand.Outcome;
import bayproof.judge.Verdict;
import bayproof.refit.Moved;
import bayproof.refit.Refit;
import bayproof.report.Amounts;
import bayproof.report.Plain;
import bayproof.report.worksheet.Block;
import bayproof.report.worksheet.Page;
import bayproof.report.worksheet.Say;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Verdicts that the new vehicle changes, both ways, and the faults the old job has in itself. */
final class MovedPage {
    private static final int MOST_NAMED = 6;

    private final Moved moved;

    MovedPage(Refit refit) {
        this.moved = refit.moved();
    }

    Page page() {
        List<Block> blocks = new ArrayList<>();
        moves(blocks, "HELD IN THE OLD VEHICLE, NOT IN THE NEW ONE", moved.worse());
        moves(blocks, "HOLDS IN THE NEW VEHICLE, NOT IN THE OLD ONE", moved.better());
        blocks.add(new Block.Heading("NOT APPLICABLE IN THE NEW VEHICLE (" + moved.outside().size() + ")"));
        if (moved.outside().isEmpty()) {
            blocks.add(new Block.Words("", "No rule that spoke in the old vehicle is silent in the new one."));
        } else {
            blocks.add(new Block.Grid(List.of("rule", "spoke of", "why not now"), moved.outside().stream()
                    .map(one -> List.of(one.rule().id(), Say.list(one.subjects(), MOST_NAMED), Plain.text(one.reason()))).toList()));
        }
        blocks.add(new Block.Heading("FAULTS OF THE OLD JOB ITSELF (" + moved.faults().size() + ")"));
        if (moved.faults().isEmpty()) {
            blocks.add(new Block.Words("", "None. What is broken in the new vehicle comes from the new vehicle."));
        }
        moved.faults().forEach(fault -> blocks.add(new Block.Words(fault.weight().name(), fault.subject() + ": " + Plain.text(fault.because()) + " (" + fault.rule().id()
                + "). Not copied: the value stands open in the new plan.")));
        return new Page("3 CHANGED VERDICTS", blocks);
    }

    private static void moves(List<Block> blocks, String heading, List<Moved.Move> moves) {
        blocks.add(new Block.Heading(heading + " (" + moves.size() + ")"));
        if (moves.isEmpty()) {
            blocks.add(new Block.Words("", "None."));
            return;
        }
        Map<String, List<Moved.Move>> alike = new LinkedHashMap<>();
        moves.forEach(move -> alike.computeIfAbsent(move.after().rule().id() + outcome(move.before()) + outcome(move.after()), any -> new ArrayList<>()).add(move));
        blocks.add(new Block.Grid(List.of("rule", "was", "is", "of", "first of them"), alike.values().stream().map(some -> {
            Moved.Move first = some.get(0);
            return List.of(first.after().rule().id(), outcome(first.before()), outcome(first.after()), Say.list(some.stream().map(move -> move.after().subject()).toList(), MOST_NAMED),
                    number(first.before()) + " > " + number(first.after()));
        }).toList()));
    }

    private static String outcome(Verdict verdict) {
        return verdict.outcome() == Outcome.UNSHOWN ? "not shown" : verdict.outcome().name().toLowerCase(Locale.ROOT);
    }

    private static String number(Verdict verdict) {
        return verdict.measured() == null ? outcome(verdict) : Plain.text(Amounts.print(verdict.measured()));
    }
}
