package bayproof.command;

import bayproof.demand.Gate;
import bayproof.demand.Weight;
import bayproof.judge.RuleBase;
import bayproof.judge.RuleInfo;
import bayproof.read.Job;
import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.read.Sheet;
import bayproof.read.Source;
import bayproof.read.UnusableInput;
import bayproof.report.AskForm;
import bayproof.report.JsonReview;
import bayproof.report.JunitReview;
import bayproof.report.Paper;
import bayproof.report.SarifReview;
import bayproof.report.SincePage;
import bayproof.report.SheetPage;
import bayproof.report.Standing;
import bayproof.report.TextReview;
import bayproof.report.TimingPage;
import bayproof.review.Evaluation;
import bayproof.review.Focus;
import bayproof.review.SheetReview;
import bayproof.review.Since;
import bayproof.review.Timing;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The command that judges a plan. */
final class Review {
    private static final List<String> FORMS = List.of("text", "json", "csv", "sarif", "junit");
    private static final List<String> PLAN_ONLY = List.of("--gate", "--at-least", "--limits", "--all", "--topic", "--item", "--zone", "--since", "--ask", "--today");
    private static final List<String> COLORS = List.of("auto", "never", "always");

    private Review() {
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        Gate gate = word("--gate", order.word("--gate", Gate.BEFORE_ORDER.word()), Gate.values(), Gate::word);
        Weight threshold = word("--at-least", order.word("--at-least", Weight.ADVISE.word()), Weight.values(), Weight::word);
        String form = oneOf("--as", order.word("--as", "text"), FORMS);
        String color = oneOf("--color", order.word("--color", "auto"), COLORS);
        if (form.equals("csv") && !order.has("--ask")) {
            throw new WrongUse("Only a form of questions is printed as a table.", "Add --ask, or leave --as=csv out.");
        }
        if (List.of("sarif", "junit").contains(form) && (order.has("--ask") || order.has("--since"))) {
            throw new WrongUse("--as " + form + " holds what stands against a plan, neither questions nor what moved.", "Leave --ask and --since out, or take --as json.");
        }
        if (order.has("--ask") && !List.of("", "all").contains(order.word("--ask", ""))) {
            throw new WrongUse("--ask takes all or no word, not \"" + order.word("--ask", "") + "\".", "");
        }
        String plan = order.subject();
        String limits = order.word("--limits", null);
        Timing timing = new Timing();
        Evaluation evaluation;
        try {
            evaluation = evaluate(plan, limits, today(order), timing);
        } catch (UnusableInput e) {
            String kind = kind(plan);
            if (!Sheet.KINDS.contains(kind)) {
                throw e;
            }
            return alone(order, kind, form, timing);
        }
        if (JobReader.isEmpty(evaluation.job())) {
            throw new WrongUse("There is nothing to judge: " + plan + " names no item and no run.",
                    "Write at least one, such as \"items: { amp: { kind: amplifier } }\".");
        }
        if (gate == Gate.HANDOVER) {
            evaluation.withPossibleReadings();
        }
        Focus focus = focus(order, evaluation.job());
        String other = order.word("--since", null);
        Standing standing = Standing.of(evaluation, gate, threshold);
        timing.ended("remedies");
        Since since = other == null ? null : Since.of(before(other, limits, evaluation.today()), evaluation);
        if (focus != null) {
            standing = standing.narrowed(focus);
            since = since == null ? null : since.narrowed(focus);
        }
        if (other != null) {
            timing.ended("since");
        }
        String page = form.equals("sarif") ? SarifReview.of(standing, plan) : form.equals("junit") ? JunitReview.of(standing, plan) : form.equals("json") ? JsonReview.of(standing, since, plan) : order.has("--ask") ? form(standing, order, form)
                : text(standing, since, order, gate);
        if (form.equals("text") && !order.has("--ask") && Paint.wanted(color, System.getenv(), Paint.isTerminal())) {
            page = Paint.over(page);
        }
        timing.ended("report");
        return new Reply(standing.counts() ? Reply.COUNTS : Reply.CLEAR, page, order.has("--timing") ? TimingPage.of(timing).text() : "");
    }

    private static String form(Standing standing, Order order, String form) {
        boolean all = order.word("--ask", "").equals("all");
        return form.equals("csv") ? AskForm.csv(standing, order.subject(), all) : AskForm.markdown(standing, order.subject(), all);
    }

    /** The kind of file that cannot be used as a plan; a plan where nobody can tell. */
    private static String kind(String file) throws WrongUse {
        try {
            return Sheet.kindOf(file(file));
        } catch (UnusableInput e) {
            return "plan";
        }
    }

    /** A parts book or vehicle sheet without a plan: what data it lacks. */
    private static Reply alone(Order order, String kind, String form, Timing timing) throws WrongUse, UnusableInput {
        if (List.of("sarif", "junit").contains(form)) {
            throw new WrongUse("--as " + form + " belongs to a plan.", "Take --as json.");
        }
        for (String option : PLAN_ONLY) {
            if (order.has(option)) {
                throw new WrongUse(option + " belongs to a plan, and " + order.subject() + " says it is of kind \"" + kind + "\".",
                        "Leave it out, or name a plan that uses this file.");
            }
        }
        Sheet sheet = Sheet.read(file(order.subject()), kind);
        timing.ended("reading");
        SheetReview review = SheetReview.of(sheet);
        timing.ended("trying");
        String page = form.equals("json") ? SheetPage.json(review, order.subject()) : SheetPage.text(review, order.subject()).text();
        timing.ended("report");
        return new Reply(review.counts() ? Reply.COUNTS : Reply.CLEAR, page, order.has("--timing") ? TimingPage.of(timing).text() : "");
    }

    private static String text(Standing standing, Since since, Order order, Gate gate) {
        Paper page = TextReview.of(standing, order.subject(), order.has("--all"));
        return since == null ? page.text()
                : page.blank().all(SincePage.of(since, order.subject(), order.word("--since", ""), gate)).text();
    }

    /** The plan that this one is compared with. It may be of another vehicle, but it must be a plan with something in it. */
    private static Evaluation before(String other, String limits, LocalDate today) throws WrongUse, UnusableInput {
        Evaluation before = evaluate(other, limits, today, new Timing());
        if (JobReader.isEmpty(before.job())) {
            throw new WrongUse("There is nothing to compare with: " + other + " names no item and no run.", "Name the plan before the change.");
        }
        return before;
    }

    /** What is to be shown; null where nothing narrows it. */
    private static Focus focus(Order order, Job job) throws WrongUse {
        List<String> topics = order.words("--topic");
        List<String> items = order.words("--item");
        List<String> zones = order.words("--zone");
        if (topics.isEmpty() && items.isEmpty() && zones.isEmpty()) {
            return null;
        }
        Set<String> known = RuleBase.built().rules().values().stream().map(RuleInfo::topic).collect(Collectors.toCollection(TreeSet::new));
        check("topic", topics, known, "The rules have the topics " + String.join(", ", known) + ".");
        check("item", items, job.items().keySet(), "Items are named in the plan and, as sources, in the vehicle sheet.");
        Set<String> places = job.vehicle().zones().keySet();
        check("zone", zones, places, places.isEmpty() ? "This job's vehicle sheet names no zones." : "The vehicle sheet has the zones "
                + String.join(", ", places) + ".");
        return Focus.of(job, topics, items, zones);
    }

    private static void check(String noun, List<String> given, Set<String> known, String otherwise) throws WrongUse {
        for (String word : given) {
            if (!known.contains(word)) {
                throw new WrongUse("There is no " + noun + " \"" + word + "\" here.", Nearest.suggestion(word, known, otherwise));
            }
        }
    }

    /** Reads and judges a plan named on the command line. */
    static Evaluation evaluate(String plan, String limits) throws WrongUse, UnusableInput {
        return evaluate(plan, limits, LocalDate.now(), new Timing());
    }

    private static Evaluation evaluate(String plan, String limits, LocalDate today, Timing timing) throws WrongUse, UnusableInput {
        return evaluate(plan, limits, today, timing, Source.DISK);
    }

    /** The same from a source of files, noting the time. */
    static Evaluation evaluate(String plan, String limits, LocalDate today, Timing timing, Source source) throws WrongUse, UnusableInput {
        loadRules();
        JobFiles files = JobFiles.read(file(plan), limits == null ? null : file(limits), source);
        timing.ended("reading");
        return Evaluation.of(files, today, timing);
    }

    /** The day on which waivers are held against their last day: the one asked for, or today. */
    static LocalDate today(Order order) throws WrongUse {
        String day = order.word("--today", null);
        try {
            return day == null ? LocalDate.now() : LocalDate.parse(day);
        } catch (DateTimeParseException e) {
            throw new WrongUse("\"" + day + "\" is no day.", "Write year-month-day, such as --today 2026-11-20.");
        }
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
        Path path = path(name);
        if (Files.isDirectory(path)) {
            Path inside = path.resolve("plan.yaml");
            throw new WrongUse(name + " is a folder.", Files.isRegularFile(inside) ? "Did you mean " + inside + "?" : "Name a file in it.");
        }
        return path;
    }

    /** A file or folder named on the command line. */
    static Path path(String name) throws WrongUse {
        if (name.isBlank()) {
            throw new WrongUse("The name of a file is empty.", "Name a file.");
        }
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new WrongUse("\"" + name + "\" cannot be the name of a file.", "");
        }
    }

    /** One of the values an option takes, by its word. */
    static <T> T word(String option, String given, T[] values, Function<T, String> name) throws WrongUse {
        List<String> known = Arrays.stream(values).map(name).toList();
        return values[known.indexOf(oneOf(option, given, known))];
    }

    /** A word that must be one of those an option takes. */
    static String oneOf(String option, String given, List<String> known) throws WrongUse {
        if (!known.contains(given)) {
            throw new WrongUse(option + " takes " + String.join(", ", known) + ", not \"" + given + "\".",
                    Nearest.suggestion(given, known, ""));
        }
        return given;
    }
}
