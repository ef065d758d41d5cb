package bayproof.report;

import bayproof.judge.RuleInfo;
import bayproof.report.Cases.Told;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The mistakes that the cases make, each under the rule that finds it. */
public final class MistakePage {
    private MistakePage() {
    }

    /** The mistakes of some rules; where {@code text} is not empty, those whose title or rule has all of its words. */
    public static Paper of(Collection<RuleInfo> rules, String text) {
        Paper list = new Paper();
        int mistakes = 0;
        int finders = 0;
        for (RuleInfo rule : rules.stream().sorted().toList()) {
            List<Told> told = Cases.of(rule).stream().filter(Told::mistake).filter(one -> Found.hasWords(one.title() + " " + rule.id(), text)).toList();
            if (!told.isEmpty()) {
                list.blank().line(rule.id() + "  " + rule.weight() + ", " + rule.topic());
                told.forEach(one -> list.hanging("  - ", one.title() + also(one, rule)));
                mistakes += told.size();
                finders++;
            }
        }
        if (mistakes == 0) {
            return list.line("No case makes a mistake " + (text.isEmpty() ? "here." : "with the words \"" + text + "\". bayproof why --mistake lists all of them."));
        }
        return new Paper().line(Plain.count(mistakes, "mistake") + ", found by " + Plain.count(finders, "rule") + ". One rule in full: why RULE.").blank().all(list);
    }

    private static String also(Told told, RuleInfo rule) {
        List<String> others = new ArrayList<>(told.moved());
        others.remove(rule.id());
        return others.isEmpty() ? "" : " (also " + String.join(", ", others) + ")";
    }
}
