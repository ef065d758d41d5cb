package bayproof.report;

import bayproof.review.OpenFact;
import bayproof.review.Question;
import bayproof.review.Questions;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** All questions of a review, not only those asked at once. */
final class JsonQuestions {
    private JsonQuestions() {
    }

    static void write(JsonGenerator json, Questions questions) throws IOException {
        json.writeArrayFieldStart("questions");
        for (Question question : questions.all()) {
            json.writeStartObject();
            json.writeStringField("thing", Plain.text(question.thing().name()));
            json.writeStringField("where", question.thing().body().heading());
            json.writeNumberField("holds-up", question.checks().size());
            json.writeNumberField("clears", question.clears());
            json.writeArrayFieldStart("facts");
            for (OpenFact fact : question.facts()) {
                fact(json, fact);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void fact(JsonGenerator json, OpenFact fact) throws IOException {
        json.writeStartObject();
        json.writeStringField("path", Plain.text(fact.need().path()));
        json.writeStringField("ask", Plain.text(fact.need().ask()));
        if (fact.address() != null && !fact.address().unit().isEmpty()) {
            json.writeStringField("unit", fact.address().unit());
        }
        if (fact.tool() != null) {
            json.writeStringField("tool", fact.tool());
        }
        if (fact.instead() != null) {
            json.writeStringField("if-you-cannot-know-it", fact.instead());
        }
        json.writeNumberField("holds-up", fact.checks().size());
        json.writeEndObject();
    }
}
