package bayproof.report.refit;

import bayproof.refit.Lasting;
import bayproof.refit.Provision;
import bayproof.refit.Refit;
import bayproof.report.Plain;
import bayproof.worksheet.PutBack;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** What comes before the old vehicle is opened, in the JSON object of a refit: parts, what goes back, what lasts, where to stop. */
final class BeforeJson {
    private final JsonGenerator json;
    private final Refit refit;

    BeforeJson(JsonGenerator json, Refit refit) {
        this.json = json;
        this.refit = refit;
    }

    void write() throws IOException {
        json.writeArrayFieldStart("have");
        for (Provision one : refit.provisions()) {
            json.writeStartObject();
            json.writeStringField("how", one.how());
            json.writeStringField("row", one.row());
            json.writeStringField("what", Plain.text(one.what()));
            json.writeNumberField("days", one.days());
            json.writeBooleanField("default-days", !one.asked());
            json.writeStringField("latest", one.latest() == null ? null : one.latest().toString());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("put-back");
        for (PutBack.Part part : PutBack.of(refit.before().job()).parts()) {
            json.writeStartObject();
            json.writeStringField("group", part.group());
            json.writeStringField("id", part.id());
            json.writeStringField("back", Plain.text(part.back()));
            json.writeEndObject();
        }
        json.writeEndArray();
        Lasting lasting = refit.lasting();
        json.writeObjectFieldStart("cannot-be-undone");
        json.writeArrayFieldStart("works");
        for (String work : lasting.works()) {
            json.writeString(Plain.text(work));
        }
        json.writeEndArray();
        json.writeStringField("whose-word", lasting.owner());
        json.writeStringField("agreed", lasting.word() == null ? null : Plain.text(lasting.word()));
        json.writeEndObject();
        json.writeStringField("stop-before-step", lasting.stop());
    }
}
