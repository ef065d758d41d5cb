package bayproof.report;

import bayproof.demand.Limit;
import bayproof.demand.Outcome;
import bayproof.facts.Numbers;
import bayproof.judge.Card;
import bayproof.judge.Judgment;
import bayproof.judge.Verdict;
import bayproof.read.Plan;
import bayproof.read.Waiver;
import bayproof.review.Change;
import bayproof.review.Focus;
import bayproof.review.Move;
import bayproof.review.Remedy;
import bayproof.review.Since;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;

/**
 * A review as one JSON object, the same bytes for the same input. Numbers are SI, with the unit's symbol beside them;
 * text is plain ASCII with escapes, so that nothing in it can act on a terminal. Who prepared the plan is left out.
 */
public final class JsonReview {
    private static final int FORMAT = 1;

    private final Standing standing;
    private final Places places;
    private final JsonGenerator json;
    private final Since since;

    private JsonReview(Standing standing, Since since, Places places, JsonGenerator json) {
        this.since = since;
        this.standing = standing;
        this.places = places;
        this.json = json;
    }

    /**
     * The object as text.
     *
     * @param since what moved since another plan; null where that was not asked for
     * @param plan  the plan's file as the user gave it
     */
    public static String of(Standing standing, Since since, String plan) {
        return JsonText.of(json -> new JsonReview(standing, since, new Places(plan), json).write(plan));
    }

    private void write(String plan) throws IOException {
        json.writeStartObject();
        tool();
        job(plan);
        counts();
        shown();
        json.writeArrayFieldStart("verdicts");
        for (Verdict verdict : standing.due()) {
            verdict(verdict);
        }
        json.writeEndArray();
        JsonQuestions.write(json, standing.questions());
        notApplicable();
        assumed();
        later();
        shopLimits();
        numbers();
        since();
        json.writeEndObject();
    }

    private void tool() throws IOException {
        JsonText.beginHead(json, FORMAT, null);
        json.writeStringField("gate", standing.gate().word());
        json.writeStringField("at-least", standing.threshold().word());
        json.writeBooleanField("counts-against", standing.counts());
        json.writeStringField("answer", new Answer(standing).line());
        json.writeStringField("not-looked-at", RuleBaseDate.built().notLookedAt());
        json.writeEndObject();
    }

    private void job(String plan) throws IOException {
        Plan.Head head = standing.evaluation().job().plan().job();
        json.writeObjectFieldStart("job");
        optional(json, "tag", head.tag());
        optional(json, "title", head.title());
        optional(json, "date", head.date());
        json.writeStringField("plan", places.fileAsGiven(new At(plan, 1, 1)));
        json.writeEndObject();
    }

    private static void optional(JsonGenerator json, String name, Shown<String> value) throws IOException {
        if (value.isGiven()) {
            json.writeStringField(name, value.orElse(""));
        }
    }

    private void counts() throws IOException {
        json.writeObjectFieldStart("counts");
        for (Outcome outcome : List.of(Outcome.HOLDS, Outcome.BROKEN, Outcome.UNSHOWN)) {
            json.writeNumberField(outcome.word(), standing.whole().due(outcome).size());
        }
        json.writeNumberField("not-applicable", standing.whole().notApplicable().size());
        json.writeNumberField("due-later", standing.whole().later().size());
        json.writeNumberField("waived", standing.whole().waived().size());
        json.writeEndObject();
    }

    /** What the lists are narrowed to; absent where they are whole. */
    private void shown() throws IOException {
        Focus focus = standing.focus();
        if (focus == null) {
            return;
        }
        json.writeObjectFieldStart("shown");
        strings("topics", focus.topics());
        strings("items", focus.items());
        strings("zones", focus.zones());
        json.writeNumberField("checks", standing.due().size());
        json.writeNumberField("of", standing.whole().due().size());
        json.writeEndObject();
    }

    // verdicts

    private void verdict(Verdict verdict) throws IOException {
        json.writeStartObject();
        json.writeStringField("rule", verdict.rule().id());
        json.writeStringField("subject", verdict.subject());
        json.writeStringField("outcome", verdict.outcome().word());
        json.writeStringField("weight", verdict.weight().word());
        json.writeStringField("gate", verdict.rule().gate().word());
        measured(verdict);
        limit(verdict);
        margin(verdict);
        json.writeStringField("because", verdict.because());
        remedy(verdict);
        missing(verdict);
        if (!verdict.windows().isEmpty()) {
            json.writeArrayFieldStart("assumed");
            for (Window window : verdict.windows()) {
                json.writeStartObject();
                json.writeStringField("path", window.path());
                json.writeStringField("limit", window.limit());
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        at(verdict.at());
        strings("sources", Card.of(verdict.rule()).sources());
        waived(json, standing.waiver(verdict));
        json.writeEndObject();
    }

    /** Who accepted it stands there by role: initials are a person's. */
    static void waived(JsonGenerator json, Waiver waiver) throws IOException {
        if (waiver == null) {
            return;
        }
        json.writeObjectFieldStart("waived");
        json.writeStringField("waiver", waiver.id());
        optional(json, "by", waiver.by().role());
        optional(json, "second", waiver.second().role());
        optional(json, "reason", waiver.reason());
        optional(json, "date", waiver.date());
        optional(json, "until", waiver.until());
        optional(json, "measured-by", waiver.measuredBy());
        json.writeEndObject();
    }

    private void measured(Verdict verdict) throws IOException {
        if (verdict.measured() == null) {
            return;
        }
        json.writeObjectFieldStart("measured");
        if (verdict.measured().word() != null) {
            json.writeStringField("value", verdict.measured().word());
        } else {
            json.writeNumberField("value", verdict.measured().number());
            json.writeStringField("unit", verdict.measured().unit());
        }
        json.writeEndObject();
    }

    private void limit(Verdict verdict) throws IOException {
        Verdict.Bounded bounded = verdict.limit();
        if (bounded == null) {
            return;
        }
        json.writeObjectFieldStart("limit");
        if (bounded.limit().unit() == null) {
            strings("value", bounded.limit().words());
        } else if (!Double.isNaN(bounded.upper())) {
            json.writeFieldName("value");
            json.writeArray(new double[] {bounded.value(), bounded.upper()}, 0, 2);
        } else {
            json.writeNumberField("value", bounded.value());
        }
        if (bounded.limit().unit() != null) {
            json.writeStringField("unit", bounded.limit().unit());
        }
        json.writeStringField("sense", bounded.sense());
        json.writeStringField("name", bounded.limit().name());
        number("next", bounded.next());
        json.writeEndObject();
    }

    private void margin(Verdict verdict) throws IOException {
        if (Double.isNaN(verdict.margin())) {
            return;
        }
        json.writeObjectFieldStart("margin");
        json.writeNumberField("value", verdict.margin());
        json.writeStringField("unit", verdict.limit().limit().unit());
        number("fraction", verdict.marginFraction());
        json.writeEndObject();
    }

    private void remedy(Verdict verdict) throws IOException {
        Remedy remedy = standing.remedy(verdict);
        if (remedy == null) {
            return;
        }
        json.writeObjectFieldStart("remedy");
        json.writeStringField("say", remedy.say());
        if (remedy.knob() != null) {
            json.writeObjectFieldStart("patch");
            json.writeFieldName(remedy.knob().file());
            List<String> path = remedy.knob().path();
            for (String key : path) {
                json.writeStartObject();
                json.writeFieldName(key);
            }
            json.writeString(remedy.value());
            for (int i = 0; i < path.size(); i++) {
                json.writeEndObject();
            }
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void missing(Verdict verdict) throws IOException {
        List<Need> needs = standing.needs(verdict);
        if (needs.isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("missing");
        for (Need need : needs) {
            json.writeStartObject();
            json.writeStringField("path", need.path());
            json.writeStringField("ask", need.ask());
            at(need.at());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void at(At at) throws IOException {
        json.writeObjectFieldStart("at");
        json.writeStringField("file", places.fileAsGiven(at));
        json.writeNumberField("line", at.line());
        json.writeNumberField("column", at.column());
        json.writeEndObject();
    }

    // lists beside the verdicts

    private void notApplicable() throws IOException {
        json.writeArrayFieldStart("not-applicable");
        for (Judgment.NotApplicable one : standing.notApplicable()) {
            json.writeStartObject();
            json.writeStringField("rule", one.rule().id());
            json.writeStringField("subject", one.subject());
            json.writeStringField("reason", one.reason());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void assumed() throws IOException {
        json.writeArrayFieldStart("assumed");
        for (Carried carried : standing.assumed()) {
            json.writeStartObject();
            json.writeStringField("path", carried.window().path());
            json.writeStringField("limit", carried.limit().name());
            json.writeNumberField("low", carried.window().low());
            json.writeNumberField("high", carried.window().high());
            json.writeStringField("unit", carried.limit().unit());
            json.writeArrayFieldStart("carries");
            for (Verdict verdict : carried.carries()) {
                json.writeStartObject();
                json.writeStringField("rule", verdict.rule().id());
                json.writeStringField("subject", verdict.subject());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void later() throws IOException {
        json.writeArrayFieldStart("due-later");
        for (Verdict verdict : standing.later()) {
            json.writeStartObject();
            json.writeStringField("rule", verdict.rule().id());
            json.writeStringField("subject", verdict.subject());
            json.writeStringField("outcome", verdict.outcome().word());
            json.writeStringField("weight", verdict.weight().word());
            json.writeStringField("gate", verdict.rule().gate().word());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void shopLimits() throws IOException {
        json.writeArrayFieldStart("shop-limits");
        for (Limit limit : standing.shopLimits()) {
            json.writeStartObject();
            json.writeStringField("name", limit.name());
            json.writeStringField("figure", Amounts.figure(limit));
            json.writeStringField("default", limit.changed().was());
            json.writeStringField("reason", limit.changed().reason());
            json.writeBooleanField("looser", limit.changed().looser());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void numbers() throws IOException {
        json.writeObjectFieldStart("numbers");
        for (Map.Entry<String, Numbers.Figure> entry : standing.evaluation().facts().numbers().all().entrySet()) {
            Numbers.Figure figure = entry.getValue();
            json.writeObjectFieldStart(entry.getKey());
            json.writeNumberField("value", figure.value());
            json.writeStringField("unit", figure.dimension().symbol());
            json.writeStringField("calculation", figure.calculation());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    // what moved

    private void since() throws IOException {
        if (since == null) {
            return;
        }
        json.writeObjectFieldStart("since");
        json.writeArrayFieldStart("moved");
        for (Move move : since.moves()) {
            json.writeStartObject();
            json.writeStringField("rule", move.rule().id());
            json.writeStringField("subject", move.subject());
            json.writeStringField("gate", move.rule().gate().word());
            json.writeStringField("sort", move.sort().words());
            side("before", move.outcomeBefore(), move.before(), move.outsideBefore());
            side("after", move.outcomeAfter(), move.after(), move.outsideAfter());
            json.writeArrayFieldStart("moved-by");
            for (Change change : move.reasons()) {
                change(change);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("changed");
        for (Change change : since.changes()) {
            change(change);
        }
        json.writeEndArray();
        json.writeNumberField("tried", since.tried());
        json.writeEndObject();
    }

    /** One side of a move; null where the subject is not there. */
    private void side(String name, Outcome outcome, Verdict verdict, String outside) throws IOException {
        if (outcome == null) {
            json.writeNullField(name);
            return;
        }
        json.writeObjectFieldStart(name);
        json.writeStringField("outcome", outcome.word());
        if (verdict != null) {
            json.writeStringField("weight", verdict.weight().word());
            measured(verdict);
        }
        json.writeStringField("because", verdict == null ? outside : verdict.because());
        json.writeEndObject();
    }

    private void change(Change change) throws IOException {
        json.writeStartObject();
        json.writeStringField("file", change.kind());
        strings("path", change.path());
        json.writeStringField("before", change.was());
        json.writeStringField("after", change.is());
        json.writeEndObject();
    }

    private void strings(String name, List<String> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }

    private void number(String name, double value) throws IOException {
        if (!Double.isNaN(value)) {
            json.writeNumberField(name, value);
        }
    }
}
