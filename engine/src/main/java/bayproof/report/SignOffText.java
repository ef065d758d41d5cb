package bayproof.report;

import bayproof.review.Evaluation;
import bayproof.signoff.Chain;
import bayproof.signoff.Digest;
import bayproof.signoff.Entry;
import bayproof.signoff.OneGo;
import bayproof.signoff.Proof;
import bayproof.signoff.SignOffRecord;
import java.util.List;

/** Sign-offs in words. */
public final class SignOffText {
    private static final String MARGIN = "  ";

    private SignOffText() {
    }

    /** What was signed last, for the sheet: its head is what paper keeps. */
    static String standing(Chain chain) {
        Entry last = chain.last();
        if (!chain.faults().isEmpty()) {
            return "THE RECORD DOES NOT FIT TOGETHER: see handover --prove.";
        }
        return last == null ? "not yet." : "entry " + last.number() + " by " + last.by() + ", " + when(last) + ". Head " + chain.head() + ".";
    }

    private static String when(Entry entry) {
        return Days.day(Plain.text(entry.when()), "") + (entry.when().length() < 16 ? "" : " " + Plain.text(entry.when().substring(11, 16)) + " UTC");
    }

    /** Whose attestations were ticked in one go; empty where nobody's were. */
    static String oneGo(Evaluation evaluation) {
        List<String> rows = OneGo.of(evaluation.files()).stream()
                .map(one -> one.count() + " by " + Plain.text(one.who()) + " from " + Plain.text(one.from().toString().replace('T', ' '))).toList();
        return rows.isEmpty() ? "" : "ticked in one go: " + String.join("; ", rows) + ". Nobody looks that fast.";
    }

    /** What is printed once somebody has signed. */
    public static String signed(Entry entry, String answer, Evaluation evaluation) {
        Paper page = new Paper();
        page.hanging("SIGNED  ", "entry " + entry.number() + " by " + entry.by() + ", " + when(entry) + ", " + Plain.count(entry.files().size(), "file") + ", "
                + Plain.count(entry.verdicts().size(), "check") + ".");
        page.hanging("HEAD    ", Digest.shortened(entry.hash()));
        page.hanging("", 8, answer);
        String oneGo = oneGo(evaluation);
        if (!oneGo.isEmpty()) {
            page.hanging("LOOK    ", 8, Plain.capital(oneGo));
        }
        return page.blank().hanging("", "Write the head on the paper that the customer and the shop keep: without it nobody can tell later whether the end of the record was cut off or the whole written anew.").text();
    }

    /** What a record and its files show, and what they cannot show. */
    public static String proof(Proof proof, String ruleBase) {
        Paper page = new Paper();
        Chain chain = proof.chain();
        if (chain.last() == null && chain.faults().isEmpty()) {
            return page.line("NOT SIGNED  There is no entry in " + SignOffRecord.FILE + " beside the plan.").text();
        }
        page.hanging("", (proof.matches() ? "MATCHES" : "DOES NOT MATCH") + "  " + entries(chain.entries().size()) + " in the record, the last "
                + (chain.last() == null ? "unreadable." : "by " + Plain.text(chain.last().by()) + ", " + when(chain.last()) + ", " + (chain.last().mayGo() ? "may go" : "may not go")
                + " (" + Plain.text(chain.last().gate()) + "). Head " + chain.head() + "."));
        page.blank().line("RECORD");
        if (chain.faults().isEmpty()) {
            page.hanging(MARGIN, "Whole: every entry has the hash it says and names the hash of the one before.");
        }
        chain.faults().forEach(fault -> page.hanging(MARGIN, Plain.sentence(Plain.text(fault))));
        paper(page, proof);
        files(page, proof);
        if (chain.last() != null && !chain.last().ruleBase().equals(ruleBase)) {
            page.blank().line("RULE BASE").hanging(MARGIN, "Signed by rule base " + Plain.text(chain.last().ruleBase()) + "; this is " + ruleBase + ", and may judge otherwise.");
        }
        if (proof.paper() == null) {
            page.blank().line("WHAT THIS CANNOT SHOW");
            page.hanging(MARGIN, "Whether entries were cut off the end, or the whole record was written anew: such a record fits together as well. "
                    + "The head on the signed paper shows it: --prove --head=HEAD.");
        }
        return page.text();
    }

    private static void paper(Paper page, Proof proof) {
        if (proof.paper() == null) {
            return;
        }
        page.blank().line("PAPER");
        Entry entry = proof.paper().entry();
        if (entry == null) {
            page.hanging(MARGIN, "The record holds no entry with the head " + Plain.text(proof.paper().head())
                    + ": the end of the record was cut off, or that entry was written anew after it was printed.");
            return;
        }
        long later = proof.chain().last().number() - entry.number();
        page.hanging(MARGIN, "The head is that of entry " + entry.number() + (later == 0 ? ", the last one: nothing was cut off and nothing written anew."
                : ": everything up to it is as it was printed, and " + entries(later) + " came later."));
    }

    private static void files(Paper page, Proof proof) {
        page.blank().line("FILES  as they were signed last");
        for (Proof.File file : proof.files()) {
            page.hanging(MARGIN, 4, Plain.text(file.signed().file()) + "  " + file.state().words());
        }
    }

    private static String entries(long number) {
        return number + (number == 1 ? " entry" : " entries");
    }
}
