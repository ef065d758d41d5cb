package bayproof.report.worksheet;

import bayproof.report.Plain;
import bayproof.units.Units;
import bayproof.vocabulary.Shown;
import bayproof.worksheet.OwedLooks.Look;
import java.util.ArrayList;
import java.util.List;

/** What is looked at with eyes and hands, to be filled in beside the vehicle. */
final class LooksPage {
    private final List<Look> looks;

    LooksPage(List<Look> looks) {
        this.looks = looks;
    }

    List<Page> pages() {
        List<Page> pages = new ArrayList<>();
        pages.add(page("1 BEFORE THE WORK", "The vehicle and the planned places, before anything is drilled or laid.", false));
        pages.add(page("2 WHEN THE WORK IS DONE", "Before the trim closes over it.", true));
        return pages;
    }

    private Page page(String title, String when, boolean after) {
        List<Look> here = looks.stream().filter(look -> look.point().afterWork() == after).toList();
        List<Block> blocks = new ArrayList<>();
        if (here.isEmpty()) {
            blocks.add(new Block.Words("", "This job owes no look here."));
            return new Page(title, blocks);
        }
        blocks.add(new Block.Words("", when + " One line each: who looked, when, what shows it, what was wrong, what could not be seen. A look without all five is not shown."));
        int number = 0;
        for (Look look : here) {
            blocks.add(new Block.Step(++number, Plain.sentence(look.point().look()) + (look.point().second() ? " Not the one who made the plan." : ""), lines(look)));
        }
        return new Page(title, blocks);
    }

    private static List<String> lines(Look look) {
        if (look.done() == null) {
            return List.of("who " + Block.BLANK + "  when " + Block.BLANK + "  shown by " + Block.BLANK, "wrong " + Block.BLANK + "  not seen " + Block.BLANK,
                    "inspections." + look.point().id());
        }
        return List.of("who " + Say.text(look.done().who()) + "  when " + Say.text(look.done().when()), "shown by " + Say.text(look.done().evidence()),
                "wrong " + things(look.done().faults()) + "  not seen " + things(look.done().leftOut()), "inspections." + look.point().id());
    }

    private static String things(Shown<List<String>> things) {
        return things.map(names -> names.isEmpty() ? "nothing" : String.join(", ", names)).orElse(Block.BLANK);
    }

    /** The columns are those of a table that a plan names as its inspections. */
    Table table() {
        Table table = new Table("inspections").text("id", "who", "when", "evidence", "faults", "left-out", "measured");
        for (Look look : looks) {
            if (look.done() == null) {
                table.row(look.point().id(), null, null, null, null, null, null);
            } else {
                table.row(look.point().id(), look.done().who(), look.done().when(), look.done().evidence(), cell(look.done().faults()), cell(look.done().leftOut()),
                        look.done().measured().map(value -> Units.print(value.si(), value.dimension())));
            }
        }
        return table;
    }

    private static Shown<String> cell(Shown<List<String>> things) {
        return things.map(names -> names.isEmpty() ? "none" : String.join(" ", names));
    }
}
