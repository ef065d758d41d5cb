package bayproof.report.refit;

import bayproof.judge.Verdict;
import bayproof.refit.Fate;
import bayproof.refit.Reason;
import bayproof.refit.Refit;
import bayproof.refit.Row;
import bayproof.report.JsonText;
import bayproof.report.Plain;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;

/** A refit as one JSON object, the same bytes for the same input; numbers are SI, text is plain ASCII with escapes. */
public final class RefitJson {
    private static final int FORMAT = 1;

    private final JsonGenerator json;
    private final Refit refit;
    private final RefitPage page;

    private RefitJson(JsonGenerator json, Refit refit, RefitPage page) {
        this.json = json;
        this.refit = refit;
        this.page = page;
    }

    /** The object as text. */
    public static String of(Refit refit, RefitPage page) {
        return JsonText.of(json -> new RefitJson(json, refit, page).write());
    }

    private void write() throws IOException {
        json.writeStartObject();
        JsonText.beginHead(json, FORMAT, "refit");
        json.writeEndObject();
        json.writeObjectFieldStart("job");
        json.writeStringField("tag", refit.before().job().plan().job().tag().orElse(null));
        json.writeEndObject();
        json.writeStringField("into", Plain.text(refit.after().job().vehicle().title().orElse("")));
        json.writeBooleanField("may-open", !refit.counts());
        json.writeStringField("answer", page.answer());
        json.writeObjectFieldStart("counts");
        for (Fate fate : Fate.values()) {
            json.writeNumberField(fate.word(), refit.count(fate));
        }
        json.writeEndObject();
        json.writeArrayFieldStart("rows");
        for (Row row : refit.rows()) {
            row(row);
        }
        json.writeEndArray();
        asks();
        new BeforeJson(json, refit).write();
        new CostJson(json, refit).write();
        json.writeEndObject();
    }

    private void row(Row row) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", row.kind());
        json.writeStringField("id", row.id());
        json.writeStringField("fate", row.fate().word());
        json.writeStringField("serves", row.serves().isEmpty() ? null : row.serves());
        json.writeStringField("goes-to", row.where());
        json.writeArrayFieldStart("reasons");
        for (Reason reason : row.reasons()) {
            json.writeStartObject();
            json.writeStringField("fate", reason.fate().word());
            json.writeStringField("fact", reason.fact());
            json.writeStringField("say", Plain.text(reason.say()));
            json.writeStringField("instead", reason.instead() == null ? null : Plain.text(reason.instead()));
            json.writeStringField("find-out", reason.need() == null ? null : reason.need().path());
            json.writeBooleanField("fault-of-the-old-job", reason.ofOld());
            verdict(reason.verdict());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void verdict(Verdict verdict) throws IOException {
        if (verdict == null) {
            json.writeNullField("verdict");
            return;
        }
        json.writeObjectFieldStart("verdict");
        json.writeStringField("rule", verdict.rule().id());
        json.writeStringField("subject", verdict.subject());
        json.writeStringField("outcome", verdict.outcome().name().toLowerCase(Locale.ROOT));
        json.writeStringField("weight", verdict.weight().word());
        if (verdict.measured() != null && verdict.measured().word() == null && !Double.isInfinite(verdict.measured().number())) {
            json.writeObjectFieldStart("measured");
            json.writeNumberField("value", verdict.measured().number());
            json.writeStringField("unit", verdict.measured().unit());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void asks() throws IOException {
        json.writeArrayFieldStart("ask");
        for (AskList.Ask ask : page.asks()) {
            json.writeStartObject();
            json.writeStringField("where", ask.where());
            json.writeStringField("thing", ask.thing());
            json.writeArrayFieldStart("paths");
            for (String path : ask.paths()) {
                json.writeString(path);
            }
            json.writeEndArray();
            json.writeNumberField("rows", ask.rows().size());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
