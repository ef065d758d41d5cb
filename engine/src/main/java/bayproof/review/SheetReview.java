package bayproof.review;

import bayproof.judge.RuleInfo;
import bayproof.read.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a parts book or vehicle sheet lacks, read alone.
 *
 * @param sheet     the file
 * @param lacks     what rules ask for and it does not say, in the order of the file
 * @param elsewhere the same where the plan or another entry may say it: the demo job itself writes it in some entries only
 * @param spare     what it does not say and no rule was found to ask for, though the demo job writes it in such a file
 */
public record SheetReview(Sheet sheet, List<Lack> lacks, List<Lack> elsewhere, List<Lack> spare) {
    /**
     * One value that is missing.
     *
     * @param entry the part or section it belongs to
     * @param gap   the value
     * @param rules what becomes of the rules meanwhile
     */
    public record Lack(Sheet.Entry entry, Sheet.Gap gap, Waiting.Rules rules) {
    }

    public SheetReview {
        lacks = List.copyOf(lacks);
        elsewhere = List.copyOf(elsewhere);
        spare = List.copyOf(spare);
    }

    public static SheetReview of(Sheet sheet) {
        Waiting waiting = new Waiting();
        List<Lack> lacks = new ArrayList<>();
        List<Lack> elsewhere = new ArrayList<>();
        List<Lack> spare = new ArrayList<>();
        for (Sheet.Entry entry : sheet.entries()) {
            for (Sheet.Gap gap : entry.gaps()) {
                Waiting.Rules rules = waiting.of(gap);
                if (rules != null) {
                    (!rules.any() ? spare : rules.always() ? lacks : elsewhere).add(new Lack(entry, gap, rules));
                }
            }
        }
        return new SheetReview(sheet, lacks, elsewhere, spare);
    }

    /** Whether anything is missing that a rule asks for. */
    public boolean counts() {
        return !lacks.isEmpty();
    }

    /** The rules that wait or go on with a window, each once. */
    public Set<RuleInfo> rules() {
        Set<RuleInfo> rules = new TreeSet<>();
        lacks.forEach(lack -> {
            rules.addAll(lack.rules().open());
            rules.addAll(lack.rules().assumed());
        });
        return rules;
    }
}
