package bayproof.review;

import bayproof.demand.Gate;
import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.judge.Card;
import bayproof.judge.FormerRules;
import bayproof.judge.Judgment;
import bayproof.judge.RuleBase;
import bayproof.judge.RuleInfo;
import bayproof.judge.Verdict;
import bayproof.read.Job;
import bayproof.read.Waiver;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.WaiverClaim;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The waivers of a job held against its verdicts. A waiver takes nothing from a verdict: it only decides whether the
 * verdict still counts, and whether the waiver itself is in force is for a rule to say.
 */
public final class Waivers {
    /** The rule that judges waivers. */
    private static final String RULE = "waiver-in-force";

    private final Map<String, Verdict> verdicts = new HashMap<>();
    private final Map<String, Judgment.NotApplicable> outside = new HashMap<>();
    private final Job job;
    private final LocalDate today;

    private Waivers(Job job, Judgment judgment, LocalDate today) {
        this.job = job;
        this.today = today;
        judgment.verdicts().forEach(verdict -> verdicts.put(verdict.key(), verdict));
        judgment.notApplicable().stream().filter(one -> one.subject() != null).forEach(one -> outside.put(Move.key(one), one));
    }

    /** What the rules are told about the waivers of a job that was judged. */
    static List<Fact> claims(Job job, Judgment judgment, LocalDate today) {
        Waivers waivers = new Waivers(job, judgment, today);
        return job.waivers().values().stream().<Fact>map(waivers::claim).toList();
    }

    /** Waivers in force, by the {@link Verdict#key()} they accept. */
    static Map<String, Waiver> inForce(Job job, Judgment judgment) {
        Map<String, Waiver> found = new TreeMap<>();
        for (Verdict verdict : judgment.of(Outcome.HOLDS)) {
            if (verdict.rule().id().equals(RULE)) {
                job.waivers().values().stream().filter(waiver -> waiver.path().equals(verdict.subject())).forEach(waiver -> found.put(key(waiver), waiver));
            }
        }
        return Collections.unmodifiableMap(found);
    }

    private static String key(Waiver waiver) {
        return FormerRules.built().current(waiver.rule().orElse("")) + " " + waiver.subject().orElse("");
    }

    /** The gate by which what is not shown will be measured: there the waiver ends. Null where it names none. */
    public static Gate lastsTo(Waiver waiver) {
        return Arrays.stream(Gate.values()).filter(gate -> gate.word().equals(waiver.measuredBy().orElse(""))).findFirst().orElse(null);
    }

    private WaiverClaim claim(Waiver waiver) {
        Verdict verdict = verdicts.get(key(waiver));
        RuleInfo rule = RuleBase.built().rules().get(FormerRules.built().current(waiver.rule().orElse("")));
        boolean there = verdict != null || outside.containsKey(key(waiver));
        String whyNot = rule == null ? null : Card.of(rule).noWaiver();
        return new WaiverClaim(waiver.path(), waiver.at(), waiver.rule().with(waiver.subject(), (id, subject) -> there), names(waiver, rule),
                Shown.of(!there || verdict != null && verdict.outcome() != Outcome.HOLDS), Shown.of(whyNot == null), Shown.of(whyNot == null ? "" : whyNot),
                waiver.reason(), waiver.by().initials(), waiver.by().role(), waiver.date(), waiver.date().map(day -> !LocalDate.parse(day).isAfter(today)),
                lasts(waiver, verdict), lastDay(waiver, verdict).isGiven() ? Shown.of("it was " + lastDay(waiver, verdict).orElse("")) : Shown.of(""), same(waiver, verdict), Shown.of(change(waiver, verdict)),
                vouched(waiver, verdict), Shown.of(signers(waiver, verdict)), promised(waiver, verdict), promise(waiver, verdict));
    }

    private static Shown<String> names(Waiver waiver, RuleInfo rule) {
        return waiver.rule().with(waiver.subject(), (id, subject) -> {
            FormerRules.Former former = FormerRules.built().last(id);
            return rule != null ? "nothing judges " + subject + " by " + id : former != null ? former.says() : "there is no rule " + id;
        });
    }

    /** What will be measured by a gate lasts until that gate, and needs no day. */
    private Shown<Boolean> lasts(Waiver waiver, Verdict verdict) {
        boolean toGate = isUnshown(verdict) && lastsTo(waiver) != null && !waiver.until().isGiven();
        return toGate ? Shown.of(true) : lastDay(waiver, verdict).map(day -> !LocalDate.parse(day).isBefore(today));
    }

    /** The earlier of the day until which it holds and the day by which will be measured. */
    private static Shown<String> lastDay(Waiver waiver, Verdict verdict) {
        if (!isUnshown(verdict) || lastsTo(waiver) != null || !waiver.measuredBy().isGiven()) {
            return waiver.until();
        }
        return waiver.until().isGiven() ? waiver.until().with(waiver.measuredBy(), (one, other) -> one.compareTo(other) < 0 ? one : other) : waiver.measuredBy();
    }

    private static boolean isUnshown(Verdict verdict) {
        return verdict != null && verdict.outcome() == Outcome.UNSHOWN;
    }

    // what it was given on

    private static Shown<Boolean> same(Waiver waiver, Verdict verdict) {
        if (verdict == null) {
            return Shown.of(true);
        }
        if (!waiver.facts().isGiven()) {
            return waiver.facts().map(mark -> false);
        }
        if (AcceptedValue.of(verdict) != null && !waiver.measured().isGiven()) {
            return waiver.measured().map(value -> false);
        }
        if (AcceptedValue.limit(verdict) != null && !waiver.limit().isGiven()) {
            return waiver.limit().map(value -> false);
        }
        return Shown.of(change(waiver, verdict).isEmpty());
    }

    private static String change(Waiver waiver, Verdict verdict) {
        if (verdict == null) {
            return "";
        }
        String value = AcceptedValue.of(verdict);
        String limit = AcceptedValue.limit(verdict);
        if (value != null && waiver.measured().isGiven() && AcceptedValue.isWorse(verdict, waiver.measured().orElse(""))) {
            return "the value is " + value + ", accepted was " + waiver.measured().orElse("");
        }
        if (limit != null && waiver.limit().isGiven() && !AcceptedValue.sameText(limit, waiver.limit().orElse(""))) {
            return "the limit is " + limit + ", it was " + waiver.limit().orElse("");
        }
        String mark = verdict.mark().get();
        return waiver.facts().isGiven() && !mark.equals(waiver.facts().orElse("")) ? "a fact that the rule read has changed; its facts are now " + mark : "";
    }

    // by whom

    private static Shown<Boolean> vouched(Waiver waiver, Verdict verdict) {
        if (verdict == null || verdict.weight() != Weight.STOP) {
            return Shown.of(true);
        }
        return waiver.second().initials().with(waiver.second().role(), (second, role) -> second)
                .with(waiver.by().initials(), (second, first) -> !second.strip().equalsIgnoreCase(first.strip()));
    }

    private static String signers(Waiver waiver, Verdict verdict) {
        return vouched(waiver, verdict).orElse(true) ? "" : "both are " + waiver.by().initials().orElse("") + "; a shop with one signer disconnects the branch";
    }

    // by when

    private static Shown<Boolean> promised(Waiver waiver, Verdict verdict) {
        if (verdict == null || verdict.outcome() != Outcome.UNSHOWN) {
            return Shown.of(verdict == null || !waiver.measuredBy().isGiven());
        }
        Gate to = lastsTo(waiver);
        return waiver.measuredBy().map(by -> to == null || to.compareTo(verdict.rule().gate()) > 0);
    }

    private static Shown<String> promise(Waiver waiver, Verdict verdict) {
        boolean unshown = verdict == null || verdict.outcome() == Outcome.UNSHOWN;
        return Shown.of(unshown ? waiver.measuredBy().orElse("") + " is not after the rule's own gate" : "it is broken now, and was accepted as not shown");
    }
}
