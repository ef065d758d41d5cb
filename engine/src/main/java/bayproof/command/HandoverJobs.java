package bayproof.command;

import bayproof.audit.Against;
import bayproof.audit.Audit;
import bayproof.audit.JobAudit;
import bayproof.audit.JobResult;
import bayproof.demand.Gate;
import bayproof.demand.Limits;
import bayproof.demand.Weight;
import bayproof.judge.RuleBase;
import bayproof.read.LimitsInForce;
import bayproof.read.UnusableInput;
import bayproof.report.JobsJson;
import bayproof.report.JobsPage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** Audits every job below a folder. */
final class HandoverJobs {
    private static final List<String> FORMS = List.of("text", "json");

    private HandoverJobs() {
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        String folder = order.word("--jobs", "");
        String form = Review.oneOf("--as", order.word("--as", "text"), FORMS);
        Path root = Review.path(folder);
        if (!Files.isDirectory(root)) {
            throw new WrongUse("There is no folder " + folder + ".", "Name the folder below which the jobs lie.");
        }
        Gate gate = Review.word("--gate", order.word("--gate", Gate.HANDOVER.word()), Gate.values(), Gate::word);
        Weight threshold = Review.word("--at-least", order.word("--at-least", Weight.ADVISE.word()), Weight.values(), Weight::word);
        LocalDate today = Review.today(order);
        Path shop = order.has("--limits") ? Review.file(order.word("--limits", "")) : null;
        Limits limits = LimitsInForce.read(shop);
        Audit audit = audit(new JobAudit(root, shop, gate, threshold, today), root, folder);
        Against against = against(order, audit, limits);
        String page = form.equals("json") ? JobsJson.of(audit, against, gate.word(), threshold.word(), today.toString(), limits)
                : JobsPage.of(audit, against, folder, order.has("--all"));
        return new Reply(status(audit.worst()), page, "");
    }

    private static Audit audit(JobAudit audit, Path root, String folder) throws WrongUse {
        ProgressBar bar = new ProgressBar(Paint.isTerminal());
        try {
            return Interruption.guarding(stop -> {
                List<Path> plans = Audit.plans(root);
                if (plans.isEmpty()) {
                    throw new WrongUse("There is no job below " + folder + ".", "A job is a folder with a plan.yaml.");
                }
                RuleBase.built();
                return Audit.of(audit, plans, stop, bar::show);
            });
        } catch (WrongUse | RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException("the audit could not be done: " + e.getMessage(), e);
        } finally {
            bar.end();
        }
    }

    private static Against against(Order order, Audit audit, Limits limits) throws WrongUse {
        String saved = order.word("--against", null);
        if (saved == null) {
            return null;
        }
        Path file = Review.file(saved);
        try {
            return Against.of(file, audit, RuleBase.built().rules().keySet(), JobsJson.figures(limits));
        } catch (IOException e) {
            throw new WrongUse(Files.isRegularFile(file) ? saved + " cannot be used: " + e.getMessage() + "." : "There is no file " + saved + ".",
                    "Save an audit first: bayproof handover --jobs FOLDER --as json > saved.json");
        }
    }

    private static int status(JobResult.State worst) {
        return switch (worst) {
            case MAY_GO -> Reply.CLEAR;
            case MAY_NOT_GO -> Reply.COUNTS;
            case UNREADABLE -> Reply.UNUSABLE;
            case FAULT -> Reply.FAULT;
        };
    }
}
