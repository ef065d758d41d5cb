package bayproof.command;

import bayproof.demand.Gate;
import bayproof.demand.Weight;
import bayproof.judge.RuleBase;
import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.read.UnusableInput;
import bayproof.report.JsonReview;
import bayproof.report.Standing;
import bayproof.report.TextReview;
import bayproof.review.Evaluation;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** The command that judges a plan. */
final class Review {
    private static final List<String> FORMS = List.of("text", "json");

    private Review() {
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        Gate gate = word("--gate", order.word("--gate", Gate.BEFORE_ORDER.word()), Gate.values(), Gate::word);
        Weight threshold = word("--at-least", order.word("--at-least", Weight.ADVISE.word()), Weight.values(), Weight::word);
        String form = order.word("--as", "text");
        if (!FORMS.contains(form)) {
            throw new WrongUse("--as takes text or json, not \"" + form + "\".", Nearest.suggestion(form, FORMS, ""));
        }
        String plan = order.subject();
        Evaluation evaluation = evaluate(plan, order.word("--limits", null));
        if (JobReader.isEmpty(evaluation.job())) {
            throw new WrongUse("There is nothing to judge: " + plan + " names no item and no run.",
                    "Write at least one, such as \"items: { amp: { kind: amplifier } }\".");
        }
        Standing standing = Standing.of(evaluation, gate, threshold);
        String page = form.equals("json") ? JsonReview.of(standing, plan)
                : TextReview.of(standing, plan, order.has("--all")).text();
        return new Reply(standing.counts() ? Reply.COUNTS : Reply.CLEAR, page, "");
    }

    /** Reads and judges a plan named on the command line. */
    static Evaluation evaluate(String plan, String limits) throws WrongUse, UnusableInput {
        loadRules();
        return Evaluation.of(JobFiles.read(file(plan), limits == null ? null : file(limits)));
    }

    /** Loads the rules while the files are read: each takes about as long as the other. */
    private static void loadRules() {
        Thread loader = new Thread(() -> {
            try {
                RuleBase.built();
            } catch (Throwable e) {
                // Whoever judges meets the same fault and reports it.
                return;
            }
        }, "rules");
        loader.setDaemon(true);
        loader.start();
    }

    /** A file named on the command line. */
    static Path file(String name) throws WrongUse {
        Path path;
        try {
            path = Path.of(name);
        } catch (InvalidPathException e) {
            throw new WrongUse("\"" + name + "\" cannot be the name of a file.", "");
        }
        if (name.isBlank()) {
            throw new WrongUse("The name of a file is empty.", "Name a file.");
        }
        if (Files.isDirectory(path)) {
            Path inside = path.resolve("plan.yaml");
            throw new WrongUse(name + " is a folder.", Files.isRegularFile(inside) ? "Did you mean " + inside + "?" : "Name a file in it.");
        }
        return path;
    }

    private static <T> T word(String option, String given, T[] values, Function<T, String> name) throws WrongUse {
        List<String> known = Arrays.stream(values).map(name).toList();
        int at = known.indexOf(given);
        if (at < 0) {
            throw new WrongUse(option + " takes " + String.join(", ", known) + ", not \"" + given + "\".",
                    Nearest.suggestion(given, known, ""));
        }
        return values[at];
    }
}
