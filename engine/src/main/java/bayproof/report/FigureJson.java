package bayproof.report;

import bayproof.figure.Figure;
import bayproof.figure.Figures;
import bayproof.figure.Given;
import bayproof.figure.Input;
import bayproof.figure.NumberFigure;
import bayproof.figure.RuleFigure;
import bayproof.judge.Verdict;
import bayproof.units.Dimension;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;

/** Figures by hand for other programs: numbers are SI and unrounded, with the unit's symbol beside them. */
public final class FigureJson {
    private static final int FORMAT = 1;

    private FigureJson() {
    }

    /** What can be asked. */
    public static String list() {
        return object(json -> {
            figures(json, "numbers", Figures.numbers());
            figures(json, "rules", Figures.rules());
            json.writeObjectFieldStart("not-by-hand");
            for (var one : Figures.notByHand().entrySet()) {
                json.writeStringField(one.getKey(), one.getValue());
            }
            json.writeEndObject();
        });
    }

    private static void figures(JsonGenerator json, String name, List<? extends Figure> figures) throws IOException {
        json.writeArrayFieldStart(name);
        for (Figure figure : figures) {
            json.writeStartObject();
            json.writeStringField("name", figure.name());
            json.writeStringField("example", figure.example());
            json.writeArrayFieldStart("takes");
            for (Input input : figure.inputs()) {
                json.writeStartObject();
                json.writeStringField("name", input.name());
                json.writeStringField("says", input.says());
                json.writeBooleanField("needed", input.needed());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    public static String of(NumberFigure figure, NumberFigure.Answer answer) {
        return object(json -> {
            json.writeStringField("number", figure.name());
            given(json, figure, answer.given());
            json.writeArrayFieldStart("values");
            for (NumberFigure.Value value : answer.worked().values()) {
                json.writeStartObject();
                json.writeStringField("name", value.name().isEmpty() ? figure.name() : value.name());
                quantity(json, value.si(), value.dimension() == null ? Dimension.RATIO.symbol() : value.dimension().symbol());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeStringField("remark", answer.worked().remark());
            json.writeStringField("calculation", answer.worked().calculation());
            json.writeStringField("source", figure.source());
        });
    }

    public static String of(RuleFigure figure, RuleFigure.Answer answer) {
        return object(json -> {
            json.writeStringField("rule", figure.name());
            given(json, figure, answer.given());
            Verdict verdict = answer.verdict();
            json.writeStringField("outcome", verdict == null ? "not-applicable" : verdict.outcome().word());
            json.writeStringField("because", verdict == null ? answer.outside() : verdict.because());
            json.writeStringField("calculation", answer.calculation());
            if (verdict != null) {
                json.writeStringField("weight", verdict.weight().word());
                verdict(json, verdict);
            }
        });
    }

    private static void verdict(JsonGenerator json, Verdict verdict) throws IOException {
        if (verdict.measured() != null && verdict.measured().word() == null) {
            json.writeObjectFieldStart("measured");
            quantity(json, verdict.measured().number(), verdict.measured().unit());
            json.writeEndObject();
        }
        if (verdict.limit() != null) {
            json.writeObjectFieldStart("limit");
            json.writeStringField("name", verdict.limit().limit().name());
            json.writeStringField("sense", verdict.limit().sense());
            quantity(json, verdict.limit().value(), verdict.limit().limit().unit());
            if (!Double.isNaN(verdict.limit().upper())) {
                json.writeNumberField("upper", verdict.limit().upper());
            }
            json.writeStringField("source", verdict.limit().limit().source());
            json.writeEndObject();
        }
        if (!Double.isNaN(verdict.margin())) {
            json.writeObjectFieldStart("margin");
            quantity(json, verdict.margin(), verdict.limit().limit().unit());
            json.writeEndObject();
        }
    }

    private static void given(JsonGenerator json, Figure figure, Given given) throws IOException {
        json.writeObjectFieldStart("given");
        for (Input input : figure.inputs()) {
            if (!given.si(input).isEmpty()) {
                json.writeArrayFieldStart(input.name());
                for (double si : given.si(input)) {
                    json.writeStartObject();
                    quantity(json, si, input.dimension().symbol());
                    json.writeEndObject();
                }
                json.writeEndArray();
            } else if (given.texts().containsKey(input.name())) {
                json.writeStringField(input.name(), given.texts().get(input.name()));
            }
        }
        json.writeEndObject();
    }

    private static void quantity(JsonGenerator json, double si, String unit) throws IOException {
        json.writeNumberField("value", si);
        json.writeStringField("unit", unit);
    }

    private static String object(JsonText.Body body) {
        return JsonText.of(json -> {
            json.writeStartObject();
            JsonText.beginHead(json, FORMAT, null);
            json.writeEndObject();
            body.write(json);
            json.writeEndObject();
        });
    }
}
