package bayproof.command;

import bayproof.demand.Gate;
import bayproof.demand.Weight;
import bayproof.review.Connected;
import bayproof.handover.Delivery;
import bayproof.read.JobReader;
import bayproof.read.Source;
import bayproof.read.UnusableInput;
import bayproof.report.AskForm;
import bayproof.report.CheckInForm;
import bayproof.report.CustomerPage;
import bayproof.report.HandoverJson;
import bayproof.report.HandoverPage;
import bayproof.report.JunitReview;
import bayproof.report.SarifReview;
import bayproof.report.Standing;
import bayproof.review.Evaluation;
import bayproof.review.Timing;
import bayproof.signoff.Chain;
import bayproof.signoff.Photos;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** Says whether a vehicle may go back: everything that is due up to a gate. */
final class HandoverJob {
    private static final List<String> FORMS = List.of("text", "markdown", "json", "sarif", "junit");
    private static final List<String> ASK_FORMS = List.of("text", "csv");

    private HandoverJob() {
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        String form = Review.oneOf("--as", order.word("--as", "text"), order.has("--ask") ? ASK_FORMS : FORMS);
        String plan = Answers.plan(order.subject()).toString();
        if (order.has("--check-in") || order.has("--customer")) {
            return sheet(order, plan, form);
        }
        Standing standing = standing(order, plan, Source.DISK);
        String page;
        if (order.has("--ask")) {
            page = form.equals("csv") ? AskForm.csv(standing, plan, true) : AskForm.markdown(standing, plan, true);
        } else {
            Delivery delivery = Delivery.of(standing.evaluation());
            page = switch (form) {
                case "sarif" -> SarifReview.of(standing, plan);
                case "junit" -> JunitReview.of(standing, plan);
                case "json" -> HandoverJson.of(standing, delivery);
                case "markdown" -> new HandoverPage(standing, delivery, plan, record(plan)).markdown();
                default -> new HandoverPage(standing, delivery, plan, record(plan)).text();
            };
        }
        return new Reply(standing.counts() ? Reply.COUNTS : Reply.CLEAR, page, "");
    }

    private static Chain record(String plan) {
        try {
            return Chain.read(HandoverSign.folder(plan));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A sheet that is printed whatever stands against the job. */
    private static Reply sheet(Order order, String plan, String form) throws WrongUse, UnusableInput {
        boolean checkIn = order.has("--check-in");
        if (checkIn == order.has("--customer") || order.has("--ask") || order.has("--gate") || order.has("--at-least")) {
            throw new WrongUse("--check-in and --customer are sheets of their own.", "Ask for one of them, without --ask, --gate and --at-least.");
        }
        if (form.equals("json") || checkIn && form.equals("markdown")) {
            throw new WrongUse(checkIn ? "The check-in sheet is text that reads well as it is." : "The customer's page is text or markdown.", "Leave --as " + form + " out.");
        }
        Evaluation evaluation = Review.evaluate(plan, order.word("--limits", null), Review.today(order), new Timing(), Source.DISK).withPossibleReadings();
        return Reply.answer(checkIn ? CheckInForm.of(evaluation, order.subject())
                : form.equals("markdown") ? CustomerPage.markdown(evaluation) : CustomerPage.text(evaluation));
    }

    /** How the job stands at the gate asked for; handover where none is named. */
    static Standing standing(Order order, String plan, Source source) throws WrongUse, UnusableInput {
        Gate gate = Review.word("--gate", order.word("--gate", Gate.HANDOVER.word()), Gate.values(), Gate::word);
        Weight threshold = Review.word("--at-least", order.word("--at-least", Weight.ADVISE.word()), Weight.values(), Weight::word);
        Evaluation evaluation = Review.evaluate(plan, order.word("--limits", null), Review.today(order), new Timing(), source).withPossibleReadings();
        new Photos(HandoverSign.folder(plan)).check(evaluation.job());
        if (JobReader.isEmpty(evaluation.job())) {
            throw new WrongUse("There is nothing to hand over: " + plan + " names no item and no run.", "Write at least one.");
        }
        return Standing.of(evaluation, gate, threshold, Connected.of(evaluation.job())::isDue);
    }
}
