package bayproof.report;

import bayproof.audit.Against;
import bayproof.audit.Audit;
import bayproof.audit.JobResult;
import bayproof.audit.JobResult.State;
import bayproof.audit.OpenCheck;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** An audit of many jobs as a page: which may go, what holds the others, by rule, weight and age, what came back. */
public final class JobsPage {
    private static final int MOST_ROWS = 30;
    private static final int MOST_RULES = 15;
    private static final int[] AGES = {7, 30, 90, 365};
    private static final int TAG = 10;
    private static final int PROMISED = 11;

    private final Audit audit;
    private final Paper page = new Paper();

    private JobsPage(Audit audit) {
        this.audit = audit;
    }

    /**
     * The page.
     *
     * @param folder  the archive as the user gave it
     * @param against what it says otherwise than a saved one; null where that was not asked for
     * @param all     whether every job is listed, also those that may go
     */
    public static String of(Audit audit, Against against, String folder, boolean all) {
        JobsPage page = new JobsPage(audit);
        page.head(folder);
        page.jobs(all);
        page.byRule();
        page.byWeight();
        page.byAge();
        page.comebacks();
        if (against != null) {
            page.against(against, all);
        }
        return page.page.text();
    }

    private void head(String folder) {
        page.hanging("JOBS  ", Plain.count(audit.jobs().size(), "job") + " below " + Places.slashed(folder) + ": " + audit.count(State.MAY_GO) + " may go, "
                + audit.count(State.MAY_NOT_GO) + " may not, " + audit.count(State.UNREADABLE) + " cannot be read"
                + (audit.count(State.FAULT) == 0 ? "." : ", " + audit.count(State.FAULT) + " met a fault of ours."));
        if (audit.stopped()) {
            page.hanging("STOPPED  ", "before all were done: " + (audit.found() - audit.jobs().size()) + " of " + Plain.count(audit.found(), "job") + " were not looked at.");
        }
    }

    private void jobs(boolean all) {
        List<JobResult> rows = audit.jobs().stream().filter(job -> all || job.state() != State.MAY_GO)
                .sorted(Comparator.comparing(JobResult::state).reversed().thenComparing(job -> job.promised().isEmpty() ? "~" : job.promised())
                        .thenComparing(JobResult::job)).toList();
        if (rows.isEmpty()) {
            return;
        }
        page.blank().row(Plain.padded("TAG", TAG) + Plain.padded("PROMISED", PROMISED) + "MAY GO?  WHAT HOLDS IT, AND WHICH JOB");
        for (JobResult job : all ? rows : rows.subList(0, Math.min(MOST_ROWS, rows.size()))) {
            String may = switch (job.state()) {
                case MAY_GO -> "yes      ";
                case MAY_NOT_GO -> "NO       ";
                case UNREADABLE -> "UNREAD   ";
                case FAULT -> "FAULT    ";
            };
            String left = Plain.padded(Plain.cut(job.tag().isEmpty() ? "-" : Plain.text(job.tag()), TAG - 1), TAG)
                    + Plain.padded(Plain.cut(job.promised().isEmpty() ? "-" : Plain.text(job.promised()), PROMISED - 1), PROMISED) + may;
            page.hanging(left, left.length(), (job.holds().isEmpty() ? "" : Plain.cut(Plain.capital(Plain.text(job.holds())), 120) + "; ") + Plain.text(job.job())
                    + (job.waived().isEmpty() ? "" : ", " + job.waived().size() + " waived: " + Plain.cut(String.join("; ", job.waived().stream()
                    .map(one -> one.rule() + ", " + Plain.text(one.reason())).toList()), 120)));
        }
        if (!all && rows.size() > MOST_ROWS) {
            page.line("and " + (rows.size() - MOST_ROWS) + " more: --all lists every job, --as json as well.");
        }
    }

    private void byRule() {
        Map<String, int[]> rules = new TreeMap<>();
        for (JobResult job : audit.jobs()) {
            for (OpenCheck check : job.open()) {
                rules.computeIfAbsent(check.rule(), any -> new int[2])[check.outcome().equals("broken") ? 0 : 1]++;
            }
        }
        if (rules.isEmpty()) {
            return;
        }
        Map<String, Long> jobs = audit.jobs().stream().flatMap(job -> job.open().stream().map(OpenCheck::rule).distinct())
                .collect(Collectors.groupingBy(rule -> rule, Collectors.counting()));
        List<String> order = rules.keySet().stream().sorted(Comparator.<String, Long>comparing(jobs::get).reversed().thenComparing(rule -> rule)).toList();
        page.blank().line("BY RULE       jobs    broken  not shown");
        for (String rule : order.subList(0, Math.min(MOST_RULES, order.size()))) {
            page.row(String.format(Locale.ROOT, "  %10d %9d %10d  %s", jobs.get(rule), rules.get(rule)[0], rules.get(rule)[1], rule));
        }
        if (order.size() > MOST_RULES) {
            page.line("  and " + (order.size() - MOST_RULES) + " rules more.");
        }
    }

    private void byWeight() {
        Map<String, Integer> heaviest = new TreeMap<>();
        audit.jobs().stream().filter(job -> !job.open().isEmpty()).forEach(job -> heaviest.merge(job.open().get(0).weight(), 1, Integer::sum));
        if (!heaviest.isEmpty()) {
            page.blank().line("BY WEIGHT  the heaviest that holds a job: stop " + heaviest.getOrDefault("stop", 0) + ", fix " + heaviest.getOrDefault("fix", 0) + ", advise "
                    + heaviest.getOrDefault("advise", 0));
        }
    }

    private void byAge() {
        int[] ages = new int[AGES.length + 2];
        for (JobResult job : audit.jobs()) {
            if (job.state() == State.MAY_NOT_GO) {
                int slot = 0;
                while (slot < AGES.length && job.ageDays() > AGES[slot]) {
                    slot++;
                }
                ages[job.ageDays() < 0 ? AGES.length + 1 : slot]++;
            }
        }
        if (audit.count(State.MAY_NOT_GO) == 0) {
            return;
        }
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < AGES.length; i++) {
            parts.add("up to " + AGES[i] + " days " + ages[i]);
        }
        parts.add("older " + ages[AGES.length]);
        parts.add("without a date " + ages[AGES.length + 1]);
        page.blank().hanging("BY AGE  ", "of the plans that may not go: " + String.join(", ", parts));
    }

    private void comebacks() {
        List<JobResult> back = audit.jobs().stream().filter(job -> !job.comebacks().isEmpty()).toList();
        if (back.isEmpty()) {
            return;
        }
        page.blank().line("COMEBACKS  " + back.stream().mapToInt(job -> job.comebacks().size()).sum() + " of " + Plain.count(back.size(), "job"));
        for (JobResult job : back) {
            for (JobResult.Comeback comeback : job.comebacks()) {
                page.hanging("  ", 4, (job.tag().isEmpty() ? "-" : Plain.text(job.tag())) + "  " + (comeback.day().isEmpty() ? "no day" : Plain.text(comeback.day())) + "  belongs to "
                        + (comeback.rule().isEmpty() ? "nobody wrote what" : Plain.text(comeback.rule())) + "; not shown "
                        + (comeback.signed() ? "when it left: " : "now (it was not signed when it left): ")
                        + (comeback.unshown().isEmpty() ? "nothing" : String.join(", ", comeback.unshown())) + (comeback.unshown().contains(comeback.rule())
                        ? ". THE RULE IT CAME BACK FOR WAS NOT SHOWN" : "") + ".");
            }
        }
    }

    private void against(Against against, boolean all) {
        List<Against.Difference> differences = against.differences();
        page.blank().hanging("JUDGED DIFFERENTLY  ", 4, differences.isEmpty() ? "none of " + Plain.count(against.compared(), "job") + ", against rule base " + against.ruleBase() + "."
                : Plain.count(new TreeSet<>(differences.stream().map(Against.Difference::job).toList()).size(), "job") + " of " + against.compared() + ", against rule base "
                + against.ruleBase() + ":");
        for (Against.Difference one : all ? differences : differences.subList(0, Math.min(MOST_ROWS, differences.size()))) {
            page.hanging("  ", 6, (one.tag().isEmpty() ? "" : Plain.text(one.tag()) + "  ") + Plain.text(one.job()) + (one.rule().isEmpty() ? "" : "  " + one.rule() + " on " + Plain.text(one.subject()))
                    + ": was " + Plain.text(one.before()) + "; is " + Plain.text(one.after()) + ". Because " + Plain.text(one.why()) + ".");
        }
        if (!all && differences.size() > MOST_ROWS) {
            page.line("  and " + (differences.size() - MOST_ROWS) + " more: --all lists all.");
        }
        if (!against.onlyThen().isEmpty() || !against.onlyNow().isEmpty()) {
            page.line("  Not compared: " + against.onlyThen().size() + " gone, " + against.onlyNow().size() + " new.");
        }
    }
}
