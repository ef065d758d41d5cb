package bayproof.signoff;

import bayproof.demand.Gate;
import bayproof.judge.Verdict;
import bayproof.read.Waiver;
import bayproof.review.AcceptedValue;
import bayproof.review.Evaluation;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What somebody signs: who, when, the files, the rule base, and every verdict over all gates. */
public final class SignOff {
    private SignOff() {
    }

    /**
     * The content of an entry.
     *
     * @param by       initials
     * @param ruleBase version and date of the rule base
     * @param gate     the last gate that was judged
     * @param mayGo    whether nothing counted against the job there
     * @param waiver   the waiver that accepts a verdict at that gate, or null
     * @param files    the files that were judged
     * @param now      the moment of signing
     */
    public static Map<String, Object> content(Evaluation evaluation, String by, Map<String, String> ruleBase, Gate gate, boolean mayGo,
                                              Function<Verdict, Waiver> waiver, List<SignedFile> files, Instant now) {
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("tag", evaluation.job().plan().job().tag().orElse(null));
        content.put("by", by);
        content.put("when", now.truncatedTo(ChronoUnit.SECONDS).toString());
        content.put("today", evaluation.today().toString());
        content.put("rule-base", ruleBase);
        content.put("gate", gate.word());
        content.put("may-go", mayGo);
        content.put("files", files.stream().map(SignedFile::plain).toList());
        content.put("one-go", oneGo(evaluation));
        content.put("verdicts", verdicts(evaluation, waiver).stream().map(SignedVerdict::plain).toList());
        return content;
    }

    private static List<Object> oneGo(Evaluation evaluation) {
        List<Object> rows = new ArrayList<>();
        for (OneGo one : OneGo.of(evaluation.files())) {
            rows.add(Map.of("who", one.who(), "count", (long) one.count(), "from", one.from().toString()));
        }
        return rows;
    }

    /** Every verdict as an entry keeps it. */
    public static List<SignedVerdict> verdicts(Evaluation evaluation, Function<Verdict, Waiver> waiver) {
        List<SignedVerdict> verdicts = new ArrayList<>();
        for (Verdict verdict : evaluation.judgment().verdicts()) {
            Waiver accepted = waiver.apply(verdict);
            String number = AcceptedValue.of(verdict);
            String word = verdict.measured() == null ? null : verdict.measured().word();
            verdicts.add(new SignedVerdict(verdict.rule().id(), verdict.subject(), verdict.outcome().word(), verdict.weight().word(),
                    verdict.rule().gate().word(), number == null ? word : number, AcceptedValue.limit(verdict), accepted == null ? null : accepted.id()));
        }
        return verdicts;
    }
}
