package bayproof.judge;

import bayproof.demand.Demand;
import bayproof.demand.Limits;
import bayproof.facts.FactBook;
import bayproof.vocabulary.Fact;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Judges the facts of a job by the rule base. */
public final class Court {
    private Court() {
    }

    /**
     * All verdicts, over all gates.
     *
     * @throws RuleFault when a rule breaks one of the fixed points: a second verdict on one subject, an unfinished
     *                   demand, no number where one was promised
     */
    public static Judgment judge(FactBook facts, Limits limits) {
        return judge(facts, limits, new RuleTimes());
    }

    /** The same, noting the time each rule takes. */
    public static Judgment judge(FactBook facts, Limits limits, RuleTimes times) {
        return judge(facts.facts(), limits, times);
    }

    /** A judgment with the verdicts on facts that became known through it. */
    public static Judgment further(Judgment judgment, Collection<Fact> facts, Limits limits, RuleTimes times) {
        return judgment.with(judge(facts, limits, times));
    }

    private static Judgment judge(Collection<Fact> facts, Limits limits, RuleTimes times) {
        RuleBase base = RuleBase.built();
        List<Verdict> verdicts = new ArrayList<>();
        List<Judgment.NotApplicable> outside = new ArrayList<>();
        Map<String, Set<String>> spoke = new HashMap<>();
        for (Demand demand : base.demands(facts, times)) {
            RuleInfo rule = base.rules().get(demand.rule());
            if (!spoke.computeIfAbsent(rule.id(), any -> new HashSet<>()).add(demand.fact().subject())) {
                throw new RuleFault("the rule in " + rule.file() + " speaks twice about " + demand.fact().subject());
            }
            times.begin(rule.id());
            Object result = assess(rule, demand, limits);
            times.end();
            if (result instanceof Verdict verdict) {
                verdicts.add(verdict);
            } else {
                outside.add((Judgment.NotApplicable) result);
            }
        }
        base.rules().values().stream().filter(rule -> !spoke.containsKey(rule.id()))
                .forEach(rule -> outside.add(new Judgment.NotApplicable(rule, null, "no " + rule.about() + " in this job")));
        Collections.sort(verdicts);
        Collections.sort(outside);
        return new Judgment(verdicts, outside);
    }

    /**
     * What one rule says of one fact: a {@link Verdict}, or a {@link Judgment.NotApplicable} where the fact lies outside of what it asks for.
     *
     * @param rule a known rule that speaks about facts of this kind
     * @throws RuleFault when the rule breaks one of the fixed points, or does not speak about the fact
     */
    public static Object judge(String rule, Fact fact, Limits limits) {
        RuleBase base = RuleBase.built();
        List<Demand> demands = base.demands(rule, fact);
        if (demands.size() != 1) {
            throw new RuleFault("the rule " + rule + " speaks " + demands.size() + " times about a " + fact.getClass().getSimpleName());
        }
        return assess(base.rules().get(rule), demands.get(0), limits);
    }

    private static Object assess(RuleInfo rule, Demand demand, Limits limits) {
        try {
            return new Assessor(rule, demand, limits).assess();
        } catch (IllegalArgumentException | IllegalStateException e) {
            throw new RuleFault("the rule in " + rule.file() + " failed: " + e.getMessage(), e);
        }
    }
}
