package bayproof.report;

import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.handover.Built;
import bayproof.handover.Delivery;
import bayproof.judge.Verdict;
import bayproof.read.Plan;
import bayproof.review.OpenFact;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;

/** A handover as one JSON object, the same bytes for the same input; text is plain ASCII with escapes. Names of people are left out. */
public final class HandoverJson {
    private static final int FORMAT = 1;

    private final JsonGenerator json;
    private final Standing standing;
    private final Delivery delivery;

    private HandoverJson(JsonGenerator json, Standing standing, Delivery delivery) {
        this.json = json;
        this.standing = standing;
        this.delivery = delivery;
    }

    /** The object as text. */
    public static String of(Standing standing, Delivery delivery) {
        return JsonText.of(json -> new HandoverJson(json, standing, delivery).write());
    }

    private void write() throws IOException {
        json.writeStartObject();
        JsonText.beginHead(json, FORMAT, "handover");
        json.writeEndObject();
        json.writeObjectFieldStart("job");
        json.writeStringField("tag", standing.evaluation().job().plan().job().tag().orElse(null));
        json.writeEndObject();
        json.writeStringField("gate", standing.gate().word());
        json.writeBooleanField("may-go", !standing.counts());
        json.writeObjectFieldStart("counts");
        for (Weight weight : Weight.values()) {
            json.writeNumberField(weight.word(), standing.broken(weight));
        }
        json.writeNumberField("waived", standing.waived().size());
        json.writeNumberField("unshown", standing.due(Outcome.UNSHOWN).size());
        json.writeNumberField("holds", standing.due(Outcome.HOLDS).size());
        json.writeEndObject();
        against();
        open();
        wishes();
        found();
        built();
        unfinished();
        json.writeEndObject();
    }

    private void built() throws IOException {
        json.writeArrayFieldStart("planned-and-built");
        for (Built row : delivery.built()) {
            json.writeStartObject();
            json.writeStringField("what", Plain.text(row.what()));
            json.writeStringField("planned", row.planned().isEmpty() ? null : Plain.text(row.planned()));
            json.writeStringField("built", Plain.text(row.built()));
            json.writeStringField("difference", row.difference().isEmpty() ? null : Plain.text(row.difference()));
            json.writeStringField("limit", row.limit().isEmpty() ? null : Plain.text(row.limit()));
            json.writeStringField("how", row.how().isEmpty() ? null : Plain.text(row.how()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void unfinished() throws IOException {
        if (!delivery.unfinished().isGiven()) {
            json.writeNullField("unfinished");
            return;
        }
        json.writeArrayFieldStart("unfinished");
        for (String run : delivery.unfinished().orElse(List.of())) {
            json.writeString(run);
        }
        json.writeEndArray();
    }

    private void against() throws IOException {
        json.writeArrayFieldStart("against");
        for (Verdict verdict : standing.due()) {
            if (verdict.outcome() != Outcome.HOLDS) {
                json.writeStartObject();
                json.writeStringField("rule", verdict.rule().id());
                json.writeStringField("subject", verdict.subject());
                json.writeStringField("outcome", verdict.outcome() == Outcome.BROKEN ? "broken" : "unshown");
                json.writeStringField("weight", verdict.weight().word());
                json.writeStringField("because", Plain.text(verdict.because()));
                JsonReview.waived(json, standing.waiver(verdict));
                json.writeEndObject();
            }
        }
        json.writeEndArray();
    }

    private void open() throws IOException {
        json.writeArrayFieldStart("still-to-be-shown");
        for (OpenFact fact : standing.questions().facts()) {
            json.writeStartObject();
            json.writeStringField("path", fact.need().path());
            json.writeStringField("ask", Plain.text(fact.need().ask()));
            json.writeNumberField("checks", fact.checks().size());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void wishes() throws IOException {
        json.writeArrayFieldStart("wishes");
        for (Delivery.Wish wish : delivery.wishes()) {
            json.writeStartObject();
            json.writeStringField("wish", wish.id());
            json.writeStringField("kept", wish.kept().orElse(null));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void found() throws IOException {
        if (!delivery.found().isGiven()) {
            json.writeNullField("found");
            return;
        }
        json.writeArrayFieldStart("found");
        for (Plan.Found thing : delivery.found().orElse(List.of())) {
            json.writeStartObject();
            json.writeStringField("thing", thing.id());
            json.writeStringField("decision", thing.decision().orElse(null));
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
