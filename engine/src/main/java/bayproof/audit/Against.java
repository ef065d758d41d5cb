package bayproof.audit;

import bayproof.judge.FormerRules;
import bayproof.signoff.CanonicalJson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What an audit says otherwise than one that was saved, and why.
 *
 * @param ruleBase    version and date of the rule base then
 * @param differences one for each check that counts now and did not then, or the other way round, by job
 * @param compared    jobs that stand in both
 * @param onlyThen    jobs that are not there any more
 * @param onlyNow     jobs that were not there then
 */
public record Against(String ruleBase, List<Difference> differences, int compared, List<String> onlyThen, List<String> onlyNow) {
    private static final long MOST_BYTES = 512L * 1024 * 1024;

    /**
     * One check that came to count or ceased to.
     *
     * @param before outcome and value then; what does not count is "nothing against it"
     * @param after  the same now
     * @param why    the reason, as a clause
     */
    public record Difference(String job, String tag, String rule, String subject, String before, String after, String why) {
    }

    public Against {
        differences = List.copyOf(differences);
        onlyThen = List.copyOf(onlyThen);
        onlyNow = List.copyOf(onlyNow);
    }

    /**
     * Compares.
     *
     * @param saved   what an audit printed as JSON
     * @param rules   ids of the rules there are now
     * @param figures figures of the limits now, by name, printed as in the saved one
     * @throws IOException when the file cannot be read or is no such audit; the message says which
     */
    public static Against of(Path saved, Audit now, Set<String> rules, Map<String, String> figures) throws IOException {
        if (Files.size(saved) > MOST_BYTES) {
            throw new IOException("it is larger than any audit");
        }
        Map<String, Object> file = CanonicalJson.read(Files.readString(saved, StandardCharsets.UTF_8));
        try {
            return of(file, now, rules, figures);
        } catch (ClassCastException | NullPointerException | IllegalArgumentException e) {
            throw new IOException("it is not what handover --jobs FOLDER --as json printed", e);
        }
    }

    private static Against of(Map<String, Object> file, Audit now, Set<String> rules, Map<String, String> figures) throws IOException {
        Map<?, ?> head = (Map<?, ?>) file.get("bayproof");
        if (head == null || !"jobs".equals(head.get("of"))) {
            throw new IOException("it is not what handover --jobs FOLDER --as json printed");
        }
        Set<Object> rulesThen = ((List<?>) file.get("rules")).stream().map(rule -> FormerRules.built().current((String) rule)).collect(Collectors.toSet());
        Map<?, ?> figuresThen = (Map<?, ?>) file.get("limits");
        Map<String, Map<?, ?>> then = new TreeMap<>();
        for (Object one : (List<?>) file.get("jobs")) {
            Map<?, ?> job = (Map<?, ?>) one;
            then.put((String) job.get("job"), job);
        }
        List<Difference> differences = new ArrayList<>();
        List<String> onlyNow = new ArrayList<>();
        for (JobResult job : now.jobs()) {
            Map<?, ?> before = then.remove(job.job());
            if (before == null) {
                onlyNow.add(job.job());
                continue;
            }
            new Comparison(job, before, rulesThen, rules, figuresThen, figures).into(differences);
        }
        return new Against(head.get("rule-base") + " of " + head.get("rule-base-date"), differences, now.jobs().size() - onlyNow.size(),
                new ArrayList<>(then.keySet()), onlyNow);
    }

    /** One job, then and now. */
    private record Comparison(JobResult now, Map<?, ?> then, Set<Object> rulesThen, Set<String> rules, Map<?, ?> figuresThen, Map<String, String> figures) {
        private static final String NOTHING = "nothing against it";

        void into(List<Difference> differences) {
            JobResult.State before = JobResult.State.of((String) then.get("state"));
            if (before.compareTo(JobResult.State.MAY_NOT_GO) > 0 || now.state().compareTo(JobResult.State.MAY_NOT_GO) > 0) {
                if (before != now.state()) {
                    differences.add(new Difference(now.job(), now.tag(), "", "", before.word(), now.state().word(), now.holds().isEmpty() ? "it can be read now" : now.holds()));
                }
                return;
            }
            Map<String, OpenCheck> was = new TreeMap<>();
            for (Object one : (List<?>) then.get("open")) {
                OpenCheck check = OpenCheck.of((Map<?, ?>) one);
                was.put(check.key(), check);
            }
            Map<String, OpenCheck> is = new TreeMap<>();
            now.open().forEach(check -> is.put(check.key(), check));
            Set<String> keys = new TreeSet<>(was.keySet());
            keys.addAll(is.keySet());
            for (String key : keys) {
                String one = words(was.get(key));
                String other = words(is.get(key));
                if (!one.equals(other)) {
                    OpenCheck check = is.containsKey(key) ? is.get(key) : was.get(key);
                    differences.add(new Difference(now.job(), now.tag(), check.rule(), check.subject(), one, other, why(check)));
                }
            }
        }

        private boolean waivedThen(String key) {
            return then.get("accepted") instanceof List<?> accepted && accepted.stream().map(one -> (Map<?, ?>) one)
                    .anyMatch(one -> key.equals(FormerRules.built().current((String) one.get("rule")) + " " + one.get("subject")));
        }

        private static String words(OpenCheck check) {
            return check == null ? NOTHING : check.outcome() + ", " + check.weight() + (check.measured() == null ? "" : ", " + check.measured());
        }

        private String why(OpenCheck check) {
            List<String> reasons = new ArrayList<>();
            if (!rulesThen.contains(check.rule())) {
                reasons.add("the rule is new");
            } else if (!rules.contains(check.rule())) {
                FormerRules.Former former = FormerRules.built().of(check.rule());
                reasons.add(former == null ? "the rule is gone" : former.says());
            }
            if (check.limit() != null && figures.containsKey(check.limit()) && figuresThen.get(check.limit()) instanceof String figure
                    && !figure.equals(figures.get(check.limit()))) {
                reasons.add("the limit " + check.limit() + " was " + figure + " and is " + figures.get(check.limit()));
            }
            if (waivedThen(check.key()) != now.waived().stream().anyMatch(one -> one.key().equals(check.key()))) {
                reasons.add(waivedThen(check.key()) ? "it was waived then" : "it is waived now");
            }
            if (!now.files().equals(then.get("files"))) {
                reasons.add("the job's files have changed");
            }
            return reasons.isEmpty() ? "the same files are judged otherwise" : String.join("; ", reasons);
        }
    }
}
