package bayproof.report.worksheet;

import bayproof.demand.Limits;
import bayproof.units.Dimension;
import bayproof.worksheet.PutBack;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What has to go back into the vehicle, with hours. */
final class PutBackPage {
    /** Groups in the order of the work, with what heads them. */
    private static final Map<String, String> GROUPS = Map.of("plug", "CONNECTORS", "pin", "FACTORY WIRES", "speaker", "SPEAKER OPENINGS", "hole", "HOLES AND BOOTS",
            "ground", "GROUNDS", "fastening", "WHAT WAS SCREWED ON");
    private static final List<String> ORDER = List.of("plug", "pin", "speaker", "hole", "ground", "fastening");

    private final PutBack back;
    private final Limits limits;

    PutBackPage(PutBack back, Limits limits) {
        this.back = back;
        this.limits = limits;
    }

    Page page() {
        List<Block> blocks = new ArrayList<>(SheetHead.cautions("Battery off and the restraint wait over before a seat, a trim of an airbag or a yellow plug is touched.",
                "Pull every added fuse first, and cover both sides of a second battery."));
        blocks.add(new Block.Words("", "Found from what the plan touches and from its list of kept parts. A factory part that was taken off and is written nowhere is not on this sheet: look at the photos of the check-in."));
        kept(blocks);
        for (String group : ORDER) {
            List<PutBack.Part> parts = back.parts().stream().filter(part -> part.group().equals(group)).toList();
            if (parts.isEmpty()) {
                continue;
            }
            boolean kept = parts.stream().anyMatch(PutBack.Part::kept);
            blocks.add(new Block.Heading(GROUPS.get(group)));
            blocks.add(new Block.Grid(kept ? List.of("", "what", "where", "put back", "the part lies") : List.of("", "what", "where", "put back"),
                    parts.stream().map(part -> row(part, kept)).toList()));
        }
        if (back.parts().isEmpty()) {
            blocks.add(new Block.Words("", "The plan touches nothing of the vehicle."));
        }
        hours(blocks);
        return new Page("PUT BACK", blocks);
    }

    private static List<String> row(PutBack.Part part, boolean kept) {
        List<String> row = new ArrayList<>(List.of(Block.BOX, part.id(), part.where().isEmpty() ? "-" : part.where(), part.back()));
        if (kept) {
            row.add(!part.kept() ? "-" : part.lies().orElse("").isEmpty() ? Block.BLANK : Say.text(part.lies()));
        }
        return row;
    }

    private void kept(List<Block> blocks) {
        blocks.add(new Block.Heading("PARTS KEPT"));
        List<PutBack.Kept> kept = back.kept().orElse(List.of());
        if (kept.isEmpty()) {
            blocks.add(new Block.Words("", back.kept().isGiven() ? "The plan says that none was taken off for good." : "NOT WRITTEN: nobody listed what was taken off. Ask before anything is taken apart."));
            return;
        }
        blocks.add(new Block.Grid(List.of("", "part", "lies", "who has it", "taken off by"), kept.stream().map(part -> List.of(Block.BOX, part.id(), Say.text(part.lies()),
                Say.text(part.with()), part.off().isEmpty() ? Block.BLANK : part.off())).toList()));
    }

    private void hours(List<Block> blocks) {
        blocks.add(new Block.Heading("HOURS"));
        if (back.work().isEmpty()) {
            blocks.add(new Block.Words("", "The plan names no step of the work: no hours."));
            return;
        }
        blocks.add(new Block.Grid(List.of("", "step of the plan", "now", "hours"), back.work().stream().map(one -> List.of(Block.BOX, one.step(),
                one.waiting() ? "waited for again" : one.again() ? "done again" : "undone", Say.hours(one.seconds()))).toList()));
        blocks.add(new Block.Words("", "Worked " + Say.hours(back.workedSeconds()) + ", waited " + Say.hours(back.waitingSeconds()) + ". To undo a step takes "
                + Say.amount(limits.named("take-out-share").value(), Dimension.RATIO) + " of its hours: " + limits.named("take-out-share").source() + ". Closing holes and paint come on top: " + Block.BLANK + " h."));
    }

    List<Table> tables() {
        Table parts = new Table("put-back").text("group", "id", "where", "put-back");
        back.parts().forEach(part -> parts.row(part.group(), part.id(), part.where(), part.back()));
        Table kept = new Table("kept-parts").text("id", "lies", "with", "taken-off-by");
        back.kept().orElse(List.of()).forEach(part -> kept.row(part.id(), part.lies(), part.with(), part.off()));
        Table hours = new Table("put-back-hours").text("step", "does", "how").number("hours", Dimension.TIME);
        back.work().forEach(one -> hours.row(one.step(), one.does(), one.waiting() ? "waited" : one.again() ? "again" : "undone", one.seconds()));
        return List.of(parts, kept, hours);
    }
}
