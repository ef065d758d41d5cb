package bayproof.refit;

import bayproof.demand.Gate;
import bayproof.demand.Limits;
import bayproof.demand.Outcome;
import bayproof.judge.Verdict;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.review.Evaluation;
import bayproof.review.Questions;
import bayproof.vocabulary.Need;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Puts every thing of the old job into one row, with the facts and verdicts that decide what becomes of it. */
final class Rows {
    /** What the new sheet may say of a place, by the key of an item that it answers. */
    private static final Map<String, String> AT_PLACE = Map.of("clearance", "clearance", "mount.free-depth", "free-depth", "mount.behind", "behind",
            "mount.seen-by", "seen-by", "structure", "ground.structure", "fastener", "ground.fastener", "shares", "ground.shares", "body-return", "ground.body-return");

    private final Evaluation before;
    private final Evaluation after;
    private final Facts facts;
    private final Owners owners;
    private final Limits limits;
    private final Map<String, List<Reason>> reasons = new LinkedHashMap<>();
    private final Set<String> said = new TreeSet<>();

    Rows(Evaluation before, Evaluation after, Counterparts counterparts, Facts facts) {
        this.before = before;
        this.after = after;
        this.facts = facts;
        this.limits = after.job().limits();
        this.owners = new Owners(before.job(), after.job(), counterparts, limits.named("refit-mount-rules").words());
    }

    /** What kind of row an item has. */
    static String kind(Item item) {
        return item instanceof Item.Enclosure ? "enclosure" : item instanceof Item.Interface ? "interface" : item instanceof Item.Harness ? "harness" : "item";
    }

    List<Row> all() {
        Job old = before.job();
        old.items().values().stream().filter(item -> item.path().startsWith("items.")).forEach(item -> {
            begin(kind(item), item.id());
            if (facts.isMounted(item.id())) {
                begin("mount", item.id());
            }
        });
        old.plan().runs().keySet().forEach(id -> begin("run", id));
        facts.holes().forEach(id -> begin("hole", id));
        old.plan().audioInputs().keySet().forEach(id -> begin("channel", id));
        old.plan().settings().keySet().forEach(id -> begin("setting", id));
        old.plan().buses().orElse(Map.of()).keySet().forEach(id -> begin("bus", id));
        Set<String> things = new TreeSet<>(reasons.keySet());
        things.forEach(key -> facts.of(key).forEach(reason -> reasons.get(key).add(reason)));
        after.judgment().of(Outcome.BROKEN).forEach(this::broken);
        after.judgment().of(Outcome.UNSHOWN).stream().filter(Rows::isDue).forEach(this::unshown);
        before.judgment().verdicts().stream().filter(Rows::isDue).forEach(verdict -> owners.of(verdict.subject(), verdict.rule().id()).stream().filter(key -> key.startsWith(Owners.JOB))
                .forEach(key -> reasons.computeIfAbsent(key, any -> new ArrayList<>())));
        List<Row> rows = new ArrayList<>();
        reasons.forEach((key, some) -> {
            int space = key.indexOf(' ');
            String kind = key.substring(0, space);
            String id = key.substring(space + 1);
            rows.add(new Row(kind, id, facts.serves(kind, id), facts.where(kind, id), some));
        });
        rows.sort(Comparator.comparingInt(row -> Row.KINDS.indexOf(row.kind())));
        return List.copyOf(rows);
    }

    /** Whether a verdict is due before a vehicle is opened. What is due later is found out on the open vehicle. */
    static boolean isDue(Verdict verdict) {
        return verdict.rule().gate().compareTo(Gate.BEFORE_TEARDOWN) <= 0;
    }

    /** Whether a verdict counts here: what is broken always does, what is not shown only while it is due. */
    static boolean counts(Verdict verdict) {
        return verdict.outcome() == Outcome.BROKEN || verdict.outcome() == Outcome.UNSHOWN && isDue(verdict);
    }

    private void begin(String kind, String id) {
        reasons.put(kind + " " + id, new ArrayList<>());
    }

    private void add(String key, Reason reason) {
        // A setting or hole of the new job that the old one has not is a matter of the job.
        String row = reasons.containsKey(key) || key.startsWith(Owners.JOB) ? key
                : key.startsWith("mount ") ? instead(key.substring(6)) : Owners.JOB + " " + key.substring(0, key.indexOf(' ')) + "s";
        if (said.add(row + "\n" + reason.fact() + "\n" + reason.say())) {
            reasons.computeIfAbsent(row, any -> new ArrayList<>()).add(reason);
        }
    }

    /** The item whose mount has no row of its own. */
    private String instead(String item) {
        return reasons.keySet().stream().filter(key -> key.endsWith(" " + item) && !key.startsWith("mount")).findFirst().orElse(Owners.JOB + " mounts");
    }

    private void broken(Verdict verdict) {
        boolean ends = limits.named("refit-ending-rules").words().contains(verdict.rule().id());
        List<String> rows = owners.of(verdict.subject(), verdict.rule().id());
        (rows.isEmpty() ? List.of(Owners.JOB + " vehicle") : rows).forEach(row -> add(row,
                Reason.broken(ends ? Fate.NOT : Fate.CHANGED, verdict, ends ? replacement(row) : null, facts.brokenBefore(verdict))));
    }

    /** What to have in place of a thing that a rule ends; null where the remedy of the rule says it. */
    private static String replacement(String row) {
        return switch (row.substring(0, row.indexOf(' '))) {
            case "enclosure" -> "an enclosure for the space that is there";
            case "interface" -> "an interface made for this radio and its connectors";
            case "mount" -> "a mount at another place";
            case "run" -> "a cable that carries its current on this way";
            default -> null;
        };
    }

    /** What is missing makes its own row open; a sum over the whole job, such as its supply, waits with it. */
    private void unshown(Verdict verdict) {
        List<String> sums = owners.of(verdict.subject(), verdict.rule().id()).stream().filter(row -> row.startsWith(Owners.JOB + " ")).toList();
        for (Need need : needs(verdict)) {
            List<String> rows = owners.of(need.path(), "");
            if (rows.isEmpty()) {
                rows = owners.of(verdict.subject(), verdict.rule().id());
            }
            Need choice = choice(rows);
            if (choice != null) {
                // Whatever else is missing there follows from the choice.
                sums.forEach(row -> add(row, Reason.missing(verdict.rule().id(), choice)));
                continue;
            }
            Need asked = isNowhere(rows) ? new Need(need.path(), "where the " + rows.get(0) + " goes, or that it is left out", need.at()) : atItsPlace(need);
            sums.forEach(row -> add(row, Reason.missing(verdict.rule().id(), asked)));
            (rows.isEmpty() ? List.of(Owners.JOB + " vehicle") : rows).forEach(row -> add(row, Reason.missing(verdict.rule().id(), asked)));
        }
    }

    /** The choice that one of these rows waits for; null where none does. */
    private Need choice(List<String> rows) {
        return rows.stream().flatMap(row -> reasons.getOrDefault(row, List.of()).stream()).map(Reason::need).filter(need -> need != null && need.path().startsWith(Facts.CHOICES))
                .findFirst().orElse(null);
    }

    /** Whether every one of these rows is lost for want of a place or the like, so that nothing of it can be measured. */
    private boolean isNowhere(List<String> rows) {
        return !rows.isEmpty() && rows.stream().allMatch(row -> reasons.getOrDefault(row, List.of()).stream().anyMatch(reason -> reason.fate() == Fate.NOT && reason.verdict() == null
                && Facts.NOWHERE.contains(reason.fact())));
    }

    /** What a verdict waits for. What it took from a window in the old vehicle as well, where it held, decides nothing here. */
    private List<Need> needs(Verdict verdict) {
        List<Need> all = Questions.needs(verdict, limits);
        if (!verdict.needs().isEmpty()) {
            return all;
        }
        Set<String> assumed = new TreeSet<>();
        before.judgment().verdicts().stream().filter(one -> one.rule().id().equals(verdict.rule().id()) && facts.renamed(one.subject()).equals(verdict.subject()))
                .forEach(one -> one.windows().forEach(window -> assumed.add(window.limit())));
        List<Need> some = verdict.windows().stream().filter(window -> !assumed.contains(window.limit())).flatMap(window -> window.paths().stream()
                .map(path -> new Need(path, limits.named(window.limit()).says(), verdict.at()))).toList();
        return some.isEmpty() ? all : some;
    }

    /** The same where the new sheet would say it: one look at a place answers for everything that is mounted there. */
    private Need atItsPlace(Need need) {
        String[] keys = need.path().split("\\.");
        Item item = keys.length > 2 && keys[0].equals("items") ? after.job().items().get(keys[1]) : null;
        String place = item == null ? null : item.place().orElse(null);
        String key = String.join(".", List.of(keys).subList(Math.min(2, keys.length), keys.length));
        String there = AT_PLACE.get(key);
        return place == null || there == null ? need : new Need("places." + place + "." + there, need.ask(), need.at());
    }
}
