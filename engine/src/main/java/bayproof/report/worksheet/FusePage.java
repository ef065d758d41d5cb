package bayproof.report.worksheet;

import bayproof.demand.Limits;
import bayproof.facts.FuseStation;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;
import bayproof.worksheet.Grounds;
import bayproof.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Page 2: fuses with their labels, and grounds. */
final class FusePage {
    private static final int MOST_NAMES = 4;

    private final Job job;
    private final Worksheet sheet;

    FusePage(Worksheet sheet) {
        this.sheet = sheet;
        this.job = sheet.job();
    }

    Page page() {
        List<Block> blocks = new ArrayList<>(SheetHead.cautions("Every fuse stays out until page 4. A battery post is live whatever is switched off: cover it."));
        blocks.add(new Block.Heading("FUSES"));
        if (sheet.fuses().isEmpty()) {
            blocks.add(new Block.Words("", "The plan names no fuse."));
        } else {
            blocks.add(new Block.Grid(List.of("", "fuse", "rating", "where", "from the post", "holder", "cable behind"),
                    sheet.fuses().stream().map(this::fuse).toList()));
            labels(blocks);
        }
        blocks.add(new Block.Heading("GROUNDS"));
        blocks.add(sheet.grounds().isEmpty() ? new Block.Words("", "The plan names no ground point.")
                : new Block.Grid(List.of("", "ground", "where", "metal, fastener", "torque", "cables on it"), sheet.grounds().stream().map(FusePage::ground).toList()));
        blocks.add(new Block.Words("", "Torque: from the vehicle maker's papers or the fastener's data sheet; where there is none, write the wrench used, mark the nut and look again after the first hot drive."));
        return new Page("2 FUSES AND GROUNDS", blocks);
    }

    private List<String> fuse(FuseStation fuse) {
        String post = fuse.post() == null ? "no way from a post" : Say.amount(fuse.metresFromPost(), Dimension.LENGTH) + "\n" + fuse.post();
        return List.of(Block.BOX, fuse.id(), Say.amount(fuse.ratingAmperes(), Dimension.CURRENT), Say.text(fuse.item().place()), post,
                holder(fuse.item()), behind(fuse));
    }

    private static String holder(Item item) {
        if (item instanceof Item.Fuse fuse) {
            return holder(fuse.holderAmperes(), fuse.holderTakes(), fuse.holderSealed());
        }
        Item.FuseBlock block = (Item.FuseBlock) item;
        return holder(block.holderAmperes(), block.holderTakes(), block.holderSealed());
    }

    private static String holder(Shown<Double> amperes, Shown<String> takes, Shown<String> sealed) {
        return "to " + Say.amount(amperes, Dimension.CURRENT) + "\nto " + Say.text(takes) + "\n"
                + sealed.map(yes -> yes.equals("yes") ? "sealed" : "not sealed").orElse("sealed? " + Block.BLANK);
    }

    private String behind(FuseStation fuse) {
        return fuse.behind().isEmpty() ? "nothing" : fuse.behind().stream().map(id -> id + "\n" + size(id)).collect(Collectors.joining("\n"));
    }

    private String size(String run) {
        return job.runs().get(run).size().orElse(Block.BLANK);
    }

    // labels

    static Block.Labels labels(Worksheet sheet) {
        Limits limits = sheet.job().limits();
        String tag = sheet.job().plan().job().tag().orElse("");
        List<FuseLabel> labels = sheet.fuses().stream().map(fuse -> new FuseLabel(fuse.id(), Say.amount(fuse.ratingAmperes(), Dimension.CURRENT),
                fuse.behind().isEmpty() ? "nothing behind it" : fuse.behind().stream()
                        .map(id -> id + sheet.job().runs().get(id).size().map(size -> ", " + size).orElse("")).collect(Collectors.joining("; ")), tag)).toList();
        return new Block.Labels(labels, limits.named("fuse-label-width").value(), limits.named("fuse-label-height").value());
    }

    private void labels(List<Block> blocks) {
        Block.Labels labels = labels(sheet);
        blocks.add(new Block.Heading("FUSE LABELS"));
        blocks.add(new Block.Words("", "At true size each is " + Say.amount(labels.widthMetres(), Dimension.LENGTH) + " wide and "
                + Say.amount(labels.heightMetres(), Dimension.LENGTH) + " high. To print them so: bayproof sheet PLAN --as markdown --to FOLDER writes "
                + Printout.LABELS + "; print it at 100 % and measure the line on it."));
        blocks.add(labels);
    }

    // grounds

    private static List<String> ground(Grounds.Ground ground) {
        Item.GroundPoint point = ground.point();
        String metal = point == null ? "ground bar" : Say.text(point.surface()) + " of " + Say.text(point.structure()) + "\n" + Say.text(point.fastener())
                + "\n" + point.sealed().map(yes -> yes.equals("yes") ? "seal the joint" : "not sealed").orElse("sealed? " + Block.BLANK);
        return List.of(Block.BOX, ground.id(), Say.text(ground.place()), metal, Block.BLANK,
                ground.arriving().size() + ": " + Say.list(ground.arriving(), MOST_NAMES));
    }
}
