package bayproof.report.refit;

import bayproof.judge.Verdict;
import bayproof.refit.LevelShift;
import bayproof.refit.Moved;
import bayproof.refit.Refit;
import bayproof.refit.RefitHours;
import bayproof.refit.Schedule;
import bayproof.refit.Tone;
import bayproof.refit.WorkStep;
import bayproof.report.Plain;
import bayproof.vocabulary.Shown;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** What the new vehicle changes, in the JSON object of a refit: verdicts, levels in dB and volts, hours in seconds. */
final class CostJson {
    private final JsonGenerator json;
    private final Refit refit;

    CostJson(JsonGenerator json, Refit refit) {
        this.json = json;
        this.refit = refit;
    }

    void write() throws IOException {
        Moved moved = refit.moved();
        json.writeObjectFieldStart("changed-verdicts");
        moves("worse", moved.worse());
        moves("better", moved.better());
        json.writeArrayFieldStart("not-applicable");
        for (Moved.Outside one : moved.outside()) {
            json.writeStartObject();
            json.writeStringField("rule", one.rule().id());
            texts("subjects", one.subjects());
            json.writeStringField("reason", Plain.text(one.reason()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("faults-of-the-old-job");
        for (Verdict fault : moved.faults()) {
            json.writeStartObject();
            json.writeStringField("rule", fault.rule().id());
            json.writeStringField("subject", fault.subject());
            json.writeStringField("because", Plain.text(fault.because()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
        levels();
        hours();
    }

    private void moves(String name, List<Moved.Move> moves) throws IOException {
        json.writeArrayFieldStart(name);
        for (Moved.Move move : moves) {
            json.writeStartObject();
            json.writeStringField("rule", move.after().rule().id());
            json.writeStringField("subject", move.after().subject());
            json.writeStringField("was", word(move.before()));
            json.writeStringField("is", word(move.after()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static String word(Verdict verdict) {
        return verdict.outcome().name().toLowerCase(Locale.ROOT);
    }

    private void texts(String name, List<String> texts) throws IOException {
        json.writeArrayFieldStart(name);
        for (String text : texts) {
            json.writeString(Plain.text(text));
        }
        json.writeEndArray();
    }

    /** A number, or null where it is not known or there is none. */
    private void number(String name, Shown<Double> value) throws IOException {
        double number = value.orElse(Double.NaN);
        if (Double.isNaN(number) || Double.isInfinite(number)) {
            json.writeNullField(name);
        } else {
            json.writeNumberField(name, number);
        }
    }

    // levels

    private void levels() throws IOException {
        json.writeObjectFieldStart("levels");
        json.writeArrayFieldStart("channels");
        for (LevelShift.Channel channel : refit.levels().channels()) {
            json.writeStartObject();
            json.writeStringField("channel", channel.input());
            texts("made-of", channel.after());
            for (Tone tone : Tone.values()) {
                number(tone.name().toLowerCase(Locale.ROOT) + "-tone-decibels", channel.decibels(tone));
            }
            json.writeStringField("void", channel.breaks() == null ? null : Plain.text(channel.breaks()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("outputs");
        for (LevelShift.Output output : refit.levels().outputs()) {
            json.writeStartObject();
            json.writeStringField("output", output.setting());
            texts("plays", output.inputs().orElse(List.of()));
            number("target-volts", output.breaks() == null ? output.target() : Shown.of(Double.NaN));
            number("source-decibels", output.decibels());
            number("untouched-volts", output.untouchedVolts());
            number("low-step-volts", output.breaks() == null ? output.lowStepVolts() : Shown.of(Double.NaN));
            json.writeStringField("void", output.breaks() == null ? null : Plain.text(output.breaks()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    // hours

    private void hours() throws IOException {
        RefitHours hours = refit.hours();
        json.writeObjectFieldStart("hours");
        json.writeNumberField("people", hours.people());
        number("booked-seconds", hours.booked());
        json.writeBooleanField("booked-for-the-old-job", hours.ofOld());
        clock("low", hours.low());
        clock("likely", hours.likely());
        clock("high", hours.high());
        json.writeArrayFieldStart("steps");
        for (WorkStep step : hours.steps()) {
            json.writeStartObject();
            json.writeStringField("step", step.id());
            json.writeStringField("kind", step.kind());
            json.writeNumberField("low-seconds", step.low());
            json.writeNumberField("likely-seconds", step.likely());
            json.writeNumberField("high-seconds", step.high());
            texts("after", step.after());
            json.writeStringField("from", Plain.text(step.from()));
            json.writeStringField("caused-by", step.causedBy());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void clock(String name, Schedule schedule) throws IOException {
        json.writeObjectFieldStart(name);
        number("seconds", Shown.of(schedule.seconds()));
        number("critical-path-seconds", Shown.of(schedule.chainSeconds()));
        texts("critical-path", schedule.chain());
        json.writeEndObject();
    }
}
