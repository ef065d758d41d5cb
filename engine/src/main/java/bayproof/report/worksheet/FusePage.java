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
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Page 2: fuses with their labels, and grounds. */
final class FusePage {
    private static final int MOST_NAMES = 3;
    private static final int RATING = 2;

    private final Job job;
    private final Worksheet sheet;

    FusePage(Worksheet sheet) {
        this.sheet = sheet;
        this.job = sheet.job();
    }

    Page page() {
        List<Block> blocks = new ArrayList<>(SheetHead.cautions("Every fuse stays out until page 4. A battery post is live whatever is switched off: cover it."));
        if (sheet.fuses().isEmpty()) {
            blocks.add(new Block.Words("", "The plan names no fuse."));
        } else {
            fuses(blocks);
            holders(blocks);
            labels(blocks);
        }
        blocks.add(new Block.Heading("GROUNDS"));
        blocks.add(sheet.grounds().isEmpty() ? new Block.Words("", "The plan names no ground point.")
                : new Block.Grid(List.of("", "ground", "where", "metal, fastener", "torque", "cables on it"), sheet.grounds().stream().map(FusePage::ground).toList()));
        sheet.grounds().stream().filter(ground -> ground.arriving().size() > MOST_NAMES)
                .forEach(ground -> blocks.add(new Block.Words(ground.id(), String.join(", ", ground.arriving()))));
        blocks.add(new Block.Words("", "Torque: from the vehicle maker's papers or the fastener's data sheet; where there is none, write the wrench used, mark the nut and look again after the first hot drive."));
        return new Page("2 FUSES AND GROUNDS", blocks);
    }

    private void fuses(List<Block> blocks) {
        Map<String, List<FuseStation>> byPost = new LinkedHashMap<>();
        sheet.fuses().forEach(fuse -> byPost.computeIfAbsent(String.valueOf(fuse.post()), any -> new ArrayList<>()).add(fuse));
        byPost.forEach((post, fuses) -> {
            blocks.add(new Block.Heading(fuses.get(0).post() == null ? "FUSES THAT NO SOURCE FEEDS" : "FUSES FROM " + post));
            blocks.add(new Block.Grid(List.of("", "fuse", "rating", "where", "from post", "cable behind"), fuses.stream().map(this::fuse).toList(), RATING));
        });
    }

    private List<String> fuse(FuseStation fuse) {
        return List.of(Block.BOX, fuse.id(), Say.amount(fuse.ratingAmperes(), Dimension.CURRENT), Say.text(fuse.item().place()),
                Say.cut(fuse.metresFromPost()), fuse.behind().isEmpty() ? "nothing" : fuse.behind().stream()
                        .map(id -> id + ", " + job.runs().get(id).size().orElse(Block.BLANK)).collect(Collectors.joining("\n")));
    }

    private void holders(List<Block> blocks) {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        for (FuseStation fuse : sheet.fuses()) {
            rows.put(fuse.item().id(), fuse.item() instanceof Item.Fuse one ? holder(one.id(), one.holderAmperes(), one.holderTakes(), one.holderSealed())
                    : holder((Item.FuseBlock) fuse.item()));
        }
        blocks.add(new Block.Heading("HOLDERS"));
        blocks.add(new Block.Grid(List.of("", "holder", "made for", "takes", "sealed"), List.copyOf(rows.values())));
    }

    private static List<String> holder(Item.FuseBlock block) {
        return holder(block.id(), block.holderAmperes(), block.holderTakes(), block.holderSealed());
    }

    private static List<String> holder(String id, Shown<Double> amperes, Shown<String> takes, Shown<String> sealed) {
        return List.of(Block.BOX, id, Say.amount(amperes, Dimension.CURRENT), "up to " + Say.text(takes), Say.text(sealed));
    }

    // labels

    static Block.Labels labels(Worksheet sheet) {
        Limits limits = sheet.job().limits();
        String tag = sheet.job().plan().job().tag().orElse("");
        List<FuseLabel> labels = sheet.fuses().stream().map(fuse -> new FuseLabel(fuse.id(), Say.amount(fuse.ratingAmperes(), Dimension.CURRENT),
                guards(fuse, sheet.job()), tag)).toList();
        return new Block.Labels(labels, limits.named("fuse-label-width").value(), limits.named("fuse-label-height").value());
    }

    /** The cables behind a fuse with their sizes, each size once. */
    private static String guards(FuseStation fuse, Job job) {
        Set<String> sizes = new LinkedHashSet<>();
        fuse.behind().forEach(id -> job.runs().get(id).size().map(sizes::add));
        return fuse.behind().isEmpty() ? "nothing behind it" : String.join(", ", fuse.behind()) + (sizes.isEmpty() ? "" : ", " + String.join(", ", sizes));
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
                ground.arriving().size() <= MOST_NAMES ? String.join("\n", ground.arriving()) : ground.arriving().size() + " cables,\nsee below");
    }
}
