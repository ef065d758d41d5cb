package bayproof.report.refit;

import bayproof.read.Job;
import bayproof.refit.Lasting;
import bayproof.refit.Provision;
import bayproof.refit.Refit;
import bayproof.report.Cautions;
import bayproof.report.Days;
import bayproof.report.Plain;
import bayproof.report.worksheet.Block;
import bayproof.report.worksheet.Page;
import bayproof.report.worksheet.Say;
import bayproof.worksheet.PutBack;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What comes before the old vehicle is opened: questions, parts, what goes back, what cannot be undone, where to stop. */
final class BeforePage {
    private static final int MOST_LISTED = 12;

    private final Refit refit;
    private final AskList asks;

    BeforePage(Refit refit, AskList asks) {
        this.refit = refit;
        this.asks = asks;
    }

    Page page() {
        List<Block> blocks = new ArrayList<>();
        ask(blocks);
        have(blocks);
        putBack(blocks);
        lasting(blocks);
        return new Page("2 BEFORE YOU OPEN IT", blocks);
    }

    private void ask(List<Block> blocks) {
        blocks.add(new Block.Heading("ASK AND MEASURE, what most waits for it first"));
        if (asks.all().isEmpty()) {
            blocks.add(new Block.Words("", "Nothing: no row waits for a fact."));
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        for (AskList.Ask ask : asks.all()) {
            List<String> finds = new ArrayList<>();
            for (int i = 0; i < ask.says().size(); i++) {
                String unit = i < ask.paths().size() ? asks.unit(ask.paths().get(i)) : "";
                finds.add(Plain.text(ask.says().get(i)) + (unit.isEmpty() ? "" : " [" + unit + "]"));
            }
            String instead = ask.instead() == null ? "" : "\nIf you cannot know it: " + Plain.text(ask.instead());
            rows.add(List.of(ask.where(), ask.thing(), String.join("; ", finds) + instead, String.valueOf(ask.rows().size()), Block.BLANK));
        }
        blocks.add(new Block.Grid(List.of("where", "look at", "find out", "rows", "answer"), rows));
    }

    // parts

    private void have(List<Block> blocks) {
        blocks.add(new Block.Heading("ORDER, MAKE, BORROW"));
        List<Provision> provisions = refit.provisions();
        if (provisions.isEmpty()) {
            blocks.add(new Block.Words("", "Nothing: what is there is enough."));
            return;
        }
        LocalDate opens = Provision.opens(refit.choices().decided());
        String planned = refit.after().job().plan().job().date().orElse("");
        blocks.add(new Block.Grid(List.of("", "how", "what", "days", "latest begin"), provisions.stream().map(one -> List.of(Block.BOX, one.how(), one.what(),
                one.days() + (one.asked() ? "" : " (default)"), latest(one, planned))).toList()));
        blocks.add(new Block.Words("", opens == null ? "Nobody said when the old vehicle is opened: write \"opens\" into the choices, and each line gets its day."
                : "The old vehicle is opened on " + Days.day(opens.toString(), "") + ". Default days are common practice, no source: ask, and write them under \"delivery\" into the choices."));
    }

    private static String latest(Provision one, String planned) {
        if (one.latest() == null) {
            return Block.BLANK;
        }
        String day = one.latest().toString();
        return Days.day(day, "") + (planned.compareTo(day) > 0 && planned.length() == day.length() ? ", TOO LATE" : "");
    }

    // what goes back

    private void putBack(List<Block> blocks) {
        Job old = refit.before().job();
        PutBack back = PutBack.of(old);
        Map<String, List<String>> groups = new LinkedHashMap<>();
        back.parts().forEach(part -> groups.computeIfAbsent(part.group(), any -> new ArrayList<>()).add(part.id()));
        blocks.add(new Block.Heading("WHAT GOES BACK INTO THE OLD VEHICLE"));
        groups.forEach((group, ids) -> blocks.add(new Block.Words(Plain.padded(group, 10), ids.size() + ": " + Say.list(ids, MOST_LISTED))));
        Map<String, ?> kept = old.plan().keptParts().orElse(Map.of());
        blocks.add(new Block.Words("kept parts", kept.isEmpty() ? "none written: look at the photos of the check-in" : String.join(", ", kept.keySet())));
        blocks.add(new Block.Words("", "Worked " + Say.hours(back.workedSeconds()) + ", waited " + Say.hours(back.waitingSeconds()) + ". Each of them in words: bayproof sheet OLD --put-back."));
    }

    // what lasts

    private void lasting(List<Block> blocks) {
        Lasting lasting = refit.lasting();
        blocks.add(new Block.Heading("CANNOT BE UNDONE IN THE NEW VEHICLE (" + lasting.works().size() + ")"));
        for (String work : lasting.works().subList(0, Math.min(MOST_LISTED, lasting.works().size()))) {
            blocks.add(new Block.Words(Block.BOX, work));
        }
        if (lasting.works().size() > MOST_LISTED) {
            blocks.add(new Block.Words("", "and " + (lasting.works().size() - MOST_LISTED) + " more of that kind."));
        }
        blocks.add(new Block.Words("Whose word", lasting.owner() == null ? "the owner's, and nobody wrote whose vehicle it is. A driver's word is none."
                : "the owner's: " + lasting.owner() + (lasting.word() == null ? ". Nobody wrote that they agreed." : ". Agreed: " + lasting.word() + ".")));
        blocks.add(new Block.Heading("STOP POINT"));
        blocks.add(new Block.Words("", lasting.stop() == null ? "The plan names no step that leaves a trace: write the steps, so that there is a place to stop at."
                : "Before the step " + lasting.stop() + " of the plan both vehicles can still go as they came: the system out, the old vehicle restored, nothing drilled. "
                + "If the new vehicle turns out not to suit, stop there, and agree on the price of stopping now."));
        blocks.add(new Block.Words("CAUTION", "Battery off and the restraint wait over before a seat, a trim of an airbag or a yellow plug is touched, in either vehicle."));
        blocks.add(new Block.Words("CAUTION", Cautions.FIRST_COMES));
    }
}
