package bayproof.report;

import bayproof.review.OpenFact;
import bayproof.review.Question;
import bayproof.review.Questions;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The questions at the end of a review: what to find out next, what most checks wait for first. */
final class QuestionList {
    private static final String MARGIN = "    ";

    private final Standing standing;
    private final Places places;
    private final Set<String> said = new HashSet<>();

    QuestionList(Standing standing, Places places) {
        this.standing = standing;
        this.places = places;
    }

    Paper paper() {
        Questions questions = standing.questions();
        Paper page = new Paper();
        List<Question> asked = questions.first();
        page.line("QUESTIONS  " + (asked.isEmpty() ? "none" : "what most checks wait for first"));
        if (asked.size() > 1) {
            page.line("A check that waits for several things is counted behind each. \"Clears\" counts those that wait for nothing else "
                    + "once a question and all before it are answered, as far as is known now.");
        }
        for (int i = 0; i < asked.size(); i++) {
            question(page, i + 1, asked.get(i));
        }
        page.blank();
        if (!asked.isEmpty()) {
            page.line("As a form to fill in: review --ask" + (asked.size() < questions.all().size() ? ", or --ask=all for every question." : "."));
        }
        String later = QuestionText.later(standing);
        if (!later.isEmpty()) {
            page.line(later);
        }
        if (!asked.isEmpty()) {
            page.line(QuestionText.total(questions, asked.size()));
        }
        return page;
    }

    private void question(Paper page, int number, Question question) {
        page.blank();
        page.hanging((number < 10 ? " " : "") + number + "  ", Plain.capital(Plain.text(question.thing().name())) + " - "
                + question.thing().body().heading() + ". " + Plain.capital(QuestionText.holdsUp(question)) + ".");
        for (OpenFact fact : question.facts()) {
            String how = fact.address() != null && fact.address().group() ? "" : QuestionText.how(fact);
            page.hanging(MARGIN + "- ", QuestionText.words(fact.need()) + (how.isEmpty() ? "" : " [" + how + "]") + "  ("
                    + places.line(fact.need().at()) + ")");
            String instead = fact.instead();
            if (instead != null && said.add(instead)) {
                page.hanging(MARGIN + "  If you cannot know it: ", MARGIN.length() + 2, Plain.sentence(instead));
            }
        }
        page.hanging(MARGIN, MARGIN.length() + 2, QuestionText.rules(question));
    }
}
