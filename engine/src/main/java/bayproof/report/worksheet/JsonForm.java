package bayproof.report.worksheet;

import bayproof.report.JsonText;
import bayproof.report.Plain;
import bayproof.report.WaiverText;
import bayproof.worksheet.Clearance;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;

/** The tables as one JSON object. Numbers are SI, unrounded, with the unit beside them; text is plain ASCII with escapes. */
final class JsonForm {
    private static final int FORMAT = 1;

    private JsonForm() {
    }

    /**
     * The object as text.
     *
     * @param what what the tables are of, such as {@code sheet}
     * @param tag  tag of the job; null where none is given
     */
    static String of(String what, String tag, Clearance clearance, List<Table> tables) {
        return JsonText.of(json -> {
            json.writeStartObject();
            JsonText.beginHead(json, FORMAT, what);
            json.writeEndObject();
            json.writeObjectFieldStart("job");
            json.writeStringField("tag", tag);
            json.writeEndObject();
            clearance(json, clearance);
            for (Table table : tables) {
                table(json, table);
            }
            json.writeEndObject();
        });
    }

    private static void clearance(JsonGenerator json, Clearance clearance) throws IOException {
        json.writeArrayFieldStart("gates");
        for (Clearance.AtGate gate : clearance.gates()) {
            json.writeStartObject();
            json.writeStringField("gate", gate.gate().word());
            json.writeBooleanField("cleared", gate.cleared());
            json.writeNumberField("stop", gate.stop());
            json.writeNumberField("fix", gate.fix());
            json.writeNumberField("advise", gate.advise());
            json.writeNumberField("unshown", gate.unshown());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("stops");
        for (Clearance.Stop stop : clearance.stops()) {
            json.writeStartObject();
            json.writeStringField("rule", stop.rule());
            json.writeStringField("subject", stop.subject());
            json.writeStringField("say", stop.say());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("accepted");
        for (Clearance.Waived one : clearance.waived()) {
            json.writeStartObject();
            json.writeStringField("rule", one.verdict().rule().id());
            json.writeStringField("subject", one.verdict().subject());
            json.writeStringField("outcome", one.verdict().outcome().word());
            json.writeStringField("waived", WaiverText.whole(one.waiver()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void table(JsonGenerator json, Table table) throws IOException {
        json.writeArrayFieldStart(table.name());
        for (List<Object> row : table.rows()) {
            json.writeStartObject();
            for (int i = 0; i < row.size(); i++) {
                Table.Column column = table.columns().get(i);
                if (row.get(i) == null) {
                    json.writeNullField(column.name());
                } else if (row.get(i) instanceof Double number) {
                    json.writeObjectFieldStart(column.name());
                    json.writeNumberField("value", number);
                    json.writeStringField("unit", column.dimension().symbol());
                    json.writeEndObject();
                } else {
                    json.writeStringField(column.name(), Plain.text(row.get(i).toString()));
                }
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
