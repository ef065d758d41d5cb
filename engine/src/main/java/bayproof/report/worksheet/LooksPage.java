package bayproof.report.worksheet;

import bayproof.read.InspectionList;
import bayproof.report.Plain;
import bayproof.units.Units;
import bayproof.vocabulary.Shown;
import bayproof.worksheet.OwedLooks.Look;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

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
        blocks.add(new Block.Words("", when + " For each: who looked, when, what shows it, what was wrong, what could not be seen. A look without all five is not shown."));
        int number = 0;
        for (List<Look> group : byThing(here)) {
            blocks.add(new Block.Heading(InspectionList.called(group.get(0).point().of()).toUpperCase(Locale.ROOT)));
            if (group.stream().allMatch(look -> look.done() == null)) {
                blocks.add(new Block.Words("", "who " + Block.BLANK + "  when " + Block.BLANK + "  shown by " + Block.BLANK));
            }
            for (Look look : group) {
                blocks.add(new Block.Step(++number, Plain.sentence(look.point().look()) + (look.point().second() ? " Not the one who made the plan." : ""), lines(look)));
            }
        }
        return new Page(title, blocks);
    }

    /** What is looked at on the same things stands together: one walk round the vehicle answers a group. */
    private static Collection<List<Look>> byThing(List<Look> looks) {
        return looks.stream().collect(Collectors.groupingBy(look -> look.point().of(), LinkedHashMap::new, Collectors.toList())).values();
    }

    private static List<String> lines(Look look) {
        List<String> lines = new ArrayList<>();
        if (look.point().measure() != null) {
            String measured = look.done() == null ? Block.BLANK : look.done().measured().map(value -> Units.print(value.si(), value.dimension())).orElse(Block.BLANK);
            lines.add(Plain.sentence(look.point().measure().worst()).replaceFirst("\\.$", ": ") + measured);
        }
        if (look.done() == null) {
            lines.add("wrong " + Block.BLANK + "  not seen " + Block.BLANK + "  " + look.point().id());
        } else {
            lines.add(Say.text(look.done().who()) + ", " + Say.text(look.done().when()) + ", " + Say.text(look.done().evidence()));
            lines.add("wrong " + things(look.done().faults()) + "  not seen " + things(look.done().leftOut()) + "  " + look.point().id());
        }
        return lines;
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
