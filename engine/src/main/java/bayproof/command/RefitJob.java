package bayproof.command;

import bayproof.read.Choices;
import bayproof.read.Job;
import bayproof.read.JobReader;
import bayproof.read.Plan;
import bayproof.read.Sheet;
import bayproof.read.Tree.MapTree;
import bayproof.read.UnusableInput;
import bayproof.refit.Refit;
import bayproof.report.refit.RefitJson;
import bayproof.report.refit.RefitPage;
import bayproof.review.Evaluation;
import bayproof.start.SheetText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The command that moves a job into another vehicle on paper. */
final class RefitJob {
    private static final List<String> FORMS = List.of("text", "markdown", "json");

    private RefitJob() {
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        String form = Review.oneOf("--as", order.word("--as", "text"), FORMS);
        if (!order.has("--into")) {
            throw new WrongUse("The new vehicle is not named.", "Add --into=NEW/vehicle.yaml.");
        }
        if (order.has("--replace") && !order.has("--write")) {
            throw new WrongUse("--replace belongs to --write.", "Name the plan to write as well: --write=NEW/plan.yaml.");
        }
        Evaluation before = Review.evaluate(order.subject(), order.word("--limits", null));
        if (JobReader.isEmpty(before.job())) {
            throw new WrongUse("There is nothing to move: " + order.subject() + " names no item and no run.", "Write at least one.");
        }
        MapTree vehicle = Sheet.read(Review.file(order.word("--into", "")), "vehicle").tree();
        Job bare = Refit.bare(before.files(), vehicle);
        Choices choices = order.has("--choices") ? Choices.read(Review.file(order.word("--choices", "")), before.job(), bare) : Choices.none();
        Refit refit = Refit.of(before, vehicle, choices);
        String written = order.has("--write") ? write(order, refit) : null;
        RefitPage page = new RefitPage(refit, written);
        String text = form.equals("json") ? RefitJson.of(refit, page) : form.equals("markdown") ? page.markdown() : page.text();
        return new Reply(refit.counts() ? Reply.COUNTS : Reply.CLEAR, text, "");
    }

    /** Writes the plan for the new vehicle, and says where. */
    private static String write(Order order, Refit refit) throws WrongUse {
        Path target = Review.path(order.word("--write", ""));
        Path folder = target.toAbsolutePath().normalize().getParent();
        if (folder == null || target.getFileName() == null || Files.isDirectory(target)) {
            throw new WrongUse(target + " is a folder.", "Name the file of the plan, such as " + target.resolve("plan.yaml") + ".");
        }
        if (target.toString().endsWith(".json")) {
            throw new WrongUse("The plan is written as YAML.", "Name a file that ends in .yaml.");
        }
        Path old = Review.path(order.subject()).toAbsolutePath().normalize();
        if (old.equals(folder.resolve(target.getFileName()))) {
            throw new WrongUse(target + " is the old plan.", "Name another file.");
        }
        Plan plan = refit.before().job().plan();
        List<String> parts = plan.parts().orElse(List.of()).stream().map(book -> seen(folder, old.resolveSibling(book))).toList();
        String limits = plan.limits().map(file -> seen(folder, old.resolveSibling(file))).orElse(null);
        MapTree tree = refit.plan(seen(folder, Review.path(order.word("--into", "")).toAbsolutePath()), parts, limits);
        String text = SheetText.of("Moved on paper from " + seen(folder, old) + ". What nobody knows of the new vehicle yet says unknown.", tree,
                List.of("items", "speaker-wiring", "settings", "pins", "pass-throughs", "audio-inputs", "steps", "wishes", "kept-parts"));
        KeptFiles.write(folder.toString(), Map.of(target.getFileName().toString(), text), order.has("--replace"));
        return order.word("--write", "").replace('\\', '/');
    }

    /** A file as it is named in another one of that folder. */
    private static String seen(Path folder, Path file) {
        return folder.relativize(file.normalize()).toString().replace('\\', '/');
    }
}
