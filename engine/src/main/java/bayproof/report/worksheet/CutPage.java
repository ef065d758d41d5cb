package bayproof.report.worksheet;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.report.Plain;
import bayproof.units.Dimension;
import bayproof.worksheet.CutList;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Page 1: what to cut, one size after the other. */
final class CutPage {
    private static final String USUAL = " *";
    /** Column of the length to cut. */
    private static final int CUT = 3;

    private final CutList cuts;
    private final Limits limits;

    CutPage(CutList cuts, Limits limits) {
        this.cuts = cuts;
        this.limits = limits;
    }

    Page page() {
        List<Block> blocks = new ArrayList<>();
        int all = cuts.cuts().size();
        if (cuts.unmeasured() > 0) {
            blocks.add(new Block.Words("NOT MEASURED", cuts.unmeasured() + " of " + Plain.count(all, "cable") + ". Their length is a blank: measure the way with a string, "
                    + "write it in, then cut. Cut nothing by guess."));
        }
        for (CutList.Group group : cuts.groups()) {
            group(blocks, group);
        }
        terminals(blocks);
        foot(blocks);
        return new Page("1 CUT LIST", blocks);
    }

    private void group(List<Block> blocks, CutList.Group group) {
        String size = group.size() == null ? "SIZE NOT WRITTEN " + Block.BLANK : group.size() + " (" + group.other() + ")";
        String total = group.unmeasured() == 0 ? "total " + Say.cut(group.totalMetres())
                : "total " + Block.BLANK + " (" + group.unmeasured() + " not measured)";
        blocks.add(new Block.Heading(size + ": " + Plain.count(group.cuts().size(), "cable") + ", " + total));
        Set<String> crimps = new TreeSet<>();
        group.cuts().forEach(cut -> List.of(cut.from(), cut.to()).forEach(end -> crimps.add(crimp(end))));
        boolean open = crimps.remove(crimp(null));
        boolean alike = crimps.size() <= 1;
        if (alike) {
            blocks.add(new Block.Words("", crimps.isEmpty() ? "No end says how it is made: tool " + Block.BLANK
                    : (open ? "Every end with a terminal: " : "Every end: ") + crimps.iterator().next() + "." + (open ? " The others: tool " + Block.BLANK : "")));
        }
        List<List<String>> rows = new ArrayList<>();
        for (CutList.Cut cut : group.cuts()) {
            rows.add(List.of(Block.BOX, cut.id(), color(cut), Say.cut(cut.cutMetres()),
                    Say.text(cut.from().at()) + "\n" + Say.text(cut.to().at()), end(cut.from(), alike) + "\n" + end(cut.to(), alike)));
        }
        blocks.add(new Block.Grid(List.of("", "cable", "color", "CUT", "from, to", alike ? "terminal" : "terminal, tool"), rows, CUT));
        for (CutList.Cut cut : group.cuts()) {
            if (cut.fuseRule() && cut.wayMetres().isGiven()) {
                blocks.add(new Block.Words("TRIM", cut.id() + " to " + Say.cut(cut.wayMetres())
                        + " when it is fitted: it joins a battery post to its fuse, and every length left over counts."));
            }
        }
    }

    private static String color(CutList.Cut cut) {
        return cut.color().isGiven() ? Say.text(cut.color()) : cut.usualColor() == null ? Block.BLANK : cut.usualColor() + USUAL;
    }

    private static String end(CutList.End end, boolean alike) {
        return Say.text(end.terminal()) + (alike ? "" : ", " + crimp(end));
    }

    private static String crimp(CutList.End end) {
        String tool = end == null ? Block.BLANK : Say.text(end.tool());
        String method = end == null ? Block.BLANK : Say.text(end.method());
        return method.equals(Block.BLANK) && tool.equals(Block.BLANK) ? Block.BLANK : method + " with " + tool;
    }

    private void terminals(List<Block> blocks) {
        Map<String, Integer> terminals = cuts.terminals();
        if (!terminals.isEmpty()) {
            blocks.add(new Block.Heading("LAY OUT"));
            blocks.add(new Block.Grid(List.of("", "pieces", "terminal"), terminals.entrySet().stream()
                    .map(one -> List.of(Block.BOX, String.valueOf(one.getValue()), one.getKey())).toList()));
        }
        long open = cuts.cuts().stream().flatMap(cut -> List.of(cut.from(), cut.to()).stream()).filter(end -> !end.terminal().isGiven()).count();
        if (open > 0) {
            blocks.add(new Block.Words("", Plain.count((int) open, "end") + " without a written terminal: " + Block.BLANK));
        }
    }

    private void foot(List<Block> blocks) {
        Limit share = limits.named("cut-spare-share");
        Limit end = limits.named("cut-spare-each-end");
        blocks.add(new Block.Heading("HOW THE CUT IS FOUND"));
        blocks.add(new Block.Words("", "CUT = way + " + Say.amount(share.value(), Dimension.RATIO) + " + slack at a hinge + "
                + Say.amount(end.value(), Dimension.LENGTH) + " at each end, to the next whole centimeter. "
                + Say.amount(share.value(), Dimension.RATIO) + ": " + share.source() + ". "
                + Say.amount(end.value(), Dimension.LENGTH) + ": " + end.source() + ". A total adds up what is cut, without waste of the drum."));
        blocks.add(new Block.Words("", "The size in brackets is the metal of that gauge by ASTM B258, or the gauge nearest to a metric size."));
        boolean usual = cuts.cuts().stream().anyMatch(cut -> !cut.color().isGiven() && cut.usualColor() != null);
        if (usual) {
            blocks.add(new Block.Words("*", "usual color of such a cable, because the plan gives none (limits cable-color-feed, -return, -control)."));
        }
    }
}
