package bayproof.report;

import bayproof.audit.Against;
import bayproof.audit.Audit;
import bayproof.audit.JobResult;
import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.judge.RuleBase;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** An audit of many jobs as one JSON object, the same bytes for the same input; kept, a later audit can be held against it. */
public final class JobsJson {
    private static final int FORMAT = 1;

    private JobsJson() {
    }

    /** Figures of the limits as they are written into an audit, by name. */
    public static Map<String, String> figures(Limits limits) {
        Map<String, String> figures = new TreeMap<>();
        for (Limit limit : limits.all()) {
            figures.put(limit.name(), Amounts.figure(limit));
        }
        return figures;
    }

    /**
     * The object as text.
     *
     * @param against what it says otherwise than a saved one; null where that was not asked for
     */
    public static String of(Audit audit, Against against, String gate, String threshold, String today, Limits limits) {
        return JsonText.of(" ", json -> {
            json.writeStartObject();
            JsonText.beginHead(json, FORMAT, "jobs");
            json.writeStringField("gate", gate);
            json.writeStringField("at-least", threshold);
            json.writeStringField("today", today);
            json.writeEndObject();
            json.writeNumberField("found", audit.found());
            json.writeBooleanField("stopped", audit.stopped());
            json.writeObjectFieldStart("counts");
            for (JobResult.State state : JobResult.State.values()) {
                json.writeNumberField(state.word(), audit.count(state));
            }
            json.writeEndObject();
            json.writeArrayFieldStart("jobs");
            for (JobResult job : audit.jobs()) {
                job(json, job);
            }
            json.writeEndArray();
            against(json, against);
            strings(json, "rules", List.copyOf(RuleBase.built().rules().keySet()));
            json.writeObjectFieldStart("limits");
            for (Map.Entry<String, String> figure : figures(limits).entrySet()) {
                json.writeStringField(figure.getKey(), figure.getValue());
            }
            json.writeEndObject();
            json.writeEndObject();
        });
    }

    private static void job(JsonGenerator json, JobResult job) throws IOException {
        json.writeStartObject();
        json.writeStringField("job", job.job());
        json.writeStringField("tag", job.tag());
        json.writeStringField("promised", job.promised());
        json.writeStringField("state", job.state().word());
        json.writeNumberField("age-days", job.ageDays());
        json.writeStringField("holds", Plain.text(job.holds()));
        json.writeNumberField("waived", job.waived().size());
        json.writeArrayFieldStart("accepted");
        for (JobResult.Accepted one : job.waived()) {
            json.writeStartObject();
            json.writeStringField("rule", one.rule());
            json.writeStringField("subject", one.subject());
            json.writeStringField("reason", Plain.text(one.reason()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringField("files", job.files());
        json.writeArrayFieldStart("open");
        for (var check : job.open()) {
            json.writeStartObject();
            for (Map.Entry<String, Object> entry : check.plain().entrySet()) {
                json.writeStringField(entry.getKey(), (String) entry.getValue());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("comebacks");
        for (JobResult.Comeback comeback : job.comebacks()) {
            json.writeStartObject();
            json.writeStringField("date", comeback.day());
            json.writeStringField("rule", comeback.rule());
            strings(json, "unshown", comeback.unshown());
            json.writeBooleanField("from-record", comeback.signed());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void against(JsonGenerator json, Against against) throws IOException {
        if (against == null) {
            return;
        }
        json.writeObjectFieldStart("against");
        json.writeStringField("rule-base", against.ruleBase());
        json.writeNumberField("compared", against.compared());
        json.writeArrayFieldStart("differences");
        for (Against.Difference one : against.differences()) {
            json.writeStartObject();
            json.writeStringField("job", one.job());
            json.writeStringField("rule", one.rule());
            json.writeStringField("subject", one.subject());
            json.writeStringField("before", one.before());
            json.writeStringField("after", one.after());
            json.writeStringField("why", Plain.text(one.why()));
            json.writeEndObject();
        }
        json.writeEndArray();
        strings(json, "only-then", against.onlyThen());
        strings(json, "only-now", against.onlyNow());
        json.writeEndObject();
    }

    private static void strings(JsonGenerator json, String name, List<String> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }
}
