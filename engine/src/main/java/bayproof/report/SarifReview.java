package bayproof.report;

import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.judge.Card;
import bayproof.judge.RuleInfo;
import bayproof.judge.Verdict;
import bayproof.read.Waiver;
import bayproof.review.Remedy;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * What stands against a job, in the form of SARIF 2.1.0 (OASIS) for programs that show the results of checks. Broken is
 * {@code fail} with a level by weight, not shown is {@code open}, a waiver a suppression. What holds is left out.
 */
public final class SarifReview {
    private static final String SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
    private static final String FINGERPRINT = "ruleAndSubject/v1";

    private final Standing standing;
    private final Places places;
    private final JsonGenerator json;
    private final List<Verdict> results;
    private final List<RuleInfo> rules;

    private SarifReview(Standing standing, Places places, JsonGenerator json) {
        this.standing = standing;
        this.places = places;
        this.json = json;
        this.results = standing.due().stream().filter(verdict -> verdict.outcome() != Outcome.HOLDS).toList();
        this.rules = results.stream().map(Verdict::rule).distinct().sorted().toList();
    }

    /**
     * The log as text, the same bytes for the same input.
     *
     * @param plan the plan's file as the user gave it
     */
    public static String of(Standing standing, String plan) {
        return JsonText.of(json -> new SarifReview(standing, new Places(plan), json).write());
    }

    private void write() throws IOException {
        json.writeStartObject();
        json.writeStringField("$schema", SCHEMA);
        json.writeStringField("version", "2.1.0");
        json.writeArrayFieldStart("runs");
        json.writeStartObject();
        tool();
        json.writeStringField("columnKind", "unicodeCodePoints");
        json.writeArrayFieldStart("results");
        for (Verdict verdict : results) {
            result(verdict);
        }
        json.writeEndArray();
        json.writeObjectFieldStart("properties");
        json.writeStringField("gate", standing.gate().word());
        json.writeStringField("answer", new Answer(standing).line());
        json.writeEndObject();
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
    }

    private void tool() throws IOException {
        RuleBaseDate base = RuleBaseDate.built();
        json.writeObjectFieldStart("tool");
        json.writeObjectFieldStart("driver");
        json.writeStringField("name", "Bayproof");
        json.writeStringField("version", "rule base " + base.version() + " of " + base.date());
        json.writeArrayFieldStart("rules");
        for (RuleInfo rule : rules) {
            Card card = Card.of(rule);
            json.writeStartObject();
            json.writeStringField("id", rule.id());
            text("shortDescription", card.title());
            text("fullDescription", Plain.text(card.sections().getOrDefault("Must hold", card.title())));
            text("help", Plain.text(card.sections().getOrDefault("Put right", card.title())));
            json.writeObjectFieldStart("defaultConfiguration");
            json.writeStringField("level", level(rule.weight()));
            json.writeEndObject();
            json.writeObjectFieldStart("properties");
            json.writeStringField("weight", rule.weight().word());
            json.writeStringField("gate", rule.gate().word());
            json.writeStringField("topic", rule.topic());
            json.writeEndObject();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndObject();
    }

    private static String level(Weight weight) {
        return switch (weight) {
            case STOP -> "error";
            case FIX -> "warning";
            case ADVISE -> "note";
        };
    }

    private void text(String name, String text) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeStringField("text", text);
        json.writeEndObject();
    }

    private void result(Verdict verdict) throws IOException {
        boolean broken = verdict.outcome() == Outcome.BROKEN;
        json.writeStartObject();
        json.writeStringField("ruleId", verdict.rule().id());
        json.writeNumberField("ruleIndex", rules.indexOf(verdict.rule()));
        json.writeStringField("kind", broken ? "fail" : "open");
        // The standard wants no level where nothing failed.
        json.writeStringField("level", broken ? level(verdict.weight()) : "none");
        text("message", message(verdict));
        location(verdict);
        json.writeObjectFieldStart("fingerprints");
        json.writeStringField(FINGERPRINT, fingerprint(verdict));
        json.writeEndObject();
        waiver(standing.waiver(verdict));
        json.writeObjectFieldStart("properties");
        json.writeStringField("weight", verdict.weight().word());
        json.writeStringField("gate", verdict.rule().gate().word());
        json.writeEndObject();
        json.writeEndObject();
    }

    private String message(Verdict verdict) {
        Remedy remedy = standing.remedy(verdict);
        return Plain.text(Plain.sentence(verdict.because()) + (remedy == null ? "" : " " + Plain.sentence(remedy.say())));
    }

    private void location(Verdict verdict) throws IOException {
        json.writeArrayFieldStart("locations");
        json.writeStartObject();
        json.writeObjectFieldStart("physicalLocation");
        json.writeObjectFieldStart("artifactLocation");
        json.writeStringField("uri", uri(places.fileAsGiven(verdict.at())));
        json.writeEndObject();
        json.writeObjectFieldStart("region");
        json.writeNumberField("startLine", verdict.at().line());
        json.writeNumberField("startColumn", verdict.at().column());
        json.writeEndObject();
        json.writeEndObject();
        json.writeArrayFieldStart("logicalLocations");
        json.writeStartObject();
        json.writeStringField("fullyQualifiedName", verdict.subject());
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndArray();
    }

    private static String uri(String file) {
        try {
            return new URI(null, null, file, null).toASCIIString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException("a file that was read has a name", e);
        }
    }

    private static String fingerprint(Verdict verdict) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(verdict.key().getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private void waiver(Waiver waiver) throws IOException {
        if (waiver == null) {
            return;
        }
        json.writeArrayFieldStart("suppressions");
        json.writeStartObject();
        json.writeStringField("kind", "external");
        json.writeStringField("status", "accepted");
        json.writeStringField("justification", WaiverText.brief(waiver, ""));
        json.writeEndObject();
        json.writeEndArray();
    }
}
