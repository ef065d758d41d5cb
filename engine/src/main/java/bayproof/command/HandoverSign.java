package bayproof.command;

import bayproof.handover.Delivery;
import bayproof.read.UnusableInput;
import bayproof.report.HandoverPage;
import bayproof.report.RuleBaseDate;
import bayproof.report.SignOffText;
import bayproof.report.Standing;
import bayproof.signoff.Chain;
import bayproof.signoff.Entry;
import bayproof.signoff.Proof;
import bayproof.signoff.SignOff;
import bayproof.signoff.SignOffRecord;
import bayproof.signoff.SignedSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Signs a job, and says whether what was signed is still there. */
final class HandoverSign {
    private static final Pattern INITIALS = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}.-]{0,7}");
    private static final Pattern HEAD = Pattern.compile("[0-9a-f]{8,64}");

    private HandoverSign() {
    }

    /** Judges the job as it stands and puts the answer, with all it rests on, into the record. A job that may not go can be signed as well. */
    static Reply sign(Order order) throws WrongUse, UnusableInput {
        String by = order.word("--by", "");
        if (!INITIALS.matcher(by).matches()) {
            throw new WrongUse(by.isEmpty() ? "Nobody signs without initials." : "\"" + by + "\" are no initials.", "Write --by=AB, at most eight letters.");
        }
        String plan = Answers.plan(order.subject()).toString();
        Standing[] judged = new Standing[1];
        try {
            Entry entry = SignOffRecord.<SigningFailed>append(folder(plan), () -> content(order, plan, by, judged));
            Delivery delivery = Delivery.of(judged[0].evaluation());
            String answer = new HandoverPage(judged[0], delivery, plan, new Chain(List.of(entry), List.of())).answer();
            return new Reply(judged[0].counts() ? Reply.COUNTS : Reply.CLEAR, SignOffText.signed(entry, answer, judged[0].evaluation()), "");
        } catch (SigningFailed e) {
            if (e.getCause() instanceof WrongUse use) {
                throw use;
            }
            throw (UnusableInput) e.getCause();
        } catch (SignOffRecord.Busy e) {
            throw new WrongUse("Somebody else is signing this job at this moment. Nothing was signed.", "Look at what they signed (--prove), then sign again.");
        } catch (SignOffRecord.Damaged e) {
            throw new WrongUse("The record does not fit together: " + e.getMessage() + ". Nothing was signed on top of it.",
                    "See bayproof handover " + order.subject() + " --prove; keep the file as it is, and begin a new one beside it once you know why.");
        } catch (IOException e) {
            throw new WrongUse("The record cannot be written: " + e.getMessage() + ". Nothing was signed.", "");
        }
    }

    /** Carries what a job cannot be judged for out of the locked part. */
    private static final class SigningFailed extends Exception {
        private static final long serialVersionUID = 1L;

        SigningFailed(Exception cause) {
            super(cause);
        }
    }

    private static Map<String, Object> content(Order order, String plan, String by, Standing[] judged) throws SigningFailed {
        try {
            SignedSource source = new SignedSource();
            Standing standing = HandoverJob.standing(order, plan, source);
            judged[0] = standing;
            RuleBaseDate base = RuleBaseDate.built();
            return SignOff.content(standing.evaluation(), by, Map.of("version", base.version(), "date", base.date()), standing.gate(), !standing.counts(),
                    standing::waiver, source.files(folder(plan), standing.evaluation().job()), Instant.now());
        } catch (WrongUse | UnusableInput e) {
            throw new SigningFailed(e);
        }
    }

    static Reply prove(Order order) throws WrongUse {
        String head = order.word("--head", null);
        if (head != null && !HEAD.matcher(Chain.plainHead(head)).matches()) {
            throw new WrongUse("\"" + head + "\" is no head of a record.", "Copy it from the signed paper, such as 3fa9-01c2-77de-10ab.");
        }
        RuleBaseDate base = RuleBaseDate.built();
        try {
            Proof proof = Proof.of(folder(Answers.plan(order.subject()).toString()), head);
            return new Reply(proof.matches() ? Reply.CLEAR : Reply.COUNTS, SignOffText.proof(proof, base.version() + " of " + base.date()), "");
        } catch (IOException e) {
            throw new UncheckedIOException("the record cannot be read: " + e.getMessage(), e);
        }
    }

    /** The folder of a job. */
    static Path folder(String plan) {
        Path folder = Path.of(plan).getParent();
        return folder == null ? Path.of("") : folder;
    }
}
