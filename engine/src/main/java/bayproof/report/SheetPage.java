package bayproof.report;

import bayproof.judge.RuleInfo;
import bayproof.read.Sheet;
import bayproof.review.SheetReview;
import bayproof.review.SheetReview.Lack;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;

/** What a parts book or vehicle sheet lacks, as text or as one JSON object. */
public final class SheetPage {
    private static final int FORMAT = 1;

    private SheetPage() {
    }

    /** @param file the file as the user gave it */
    public static Paper text(SheetReview review, String file) {
        Places places = new Places(file);
        boolean book = review.sheet().kind().equals("parts");
        Paper page = new Paper().line((book ? "PARTS BOOK " : "VEHICLE SHEET ") + Places.slashed(file) + "  rules "
                + Days.day(RuleBaseDate.built().date(), ""));
        int entries = (int) review.lacks().stream().map(Lack::entry).distinct().count();
        page.line(review.counts() ? "DATA MISSING - " + Plain.count(review.lacks().size(), "value") + " in " + entries + " of "
                + Plain.count(review.sheet().entries().size(), book ? "part" : "section") + "; " + Plain.count(review.rules().size(), "rule")
                + " would wait or assume." : "NOTHING IS MISSING THAT THE RULES ASK FOR. "
                + Plain.count(review.sheet().entries().size(), book ? "part" : "section") + " read.");
        page.line("No plan was judged: this says nothing about any installation.");
        lacks(page, review.lacks(), places);
        if (!review.elsewhere().isEmpty()) {
            page.blank().line("NOT COUNTED  " + Plain.count(review.elsewhere().size(), "value") + " that the plan or another entry may say");
            lacks(page, review.elsewhere(), places);
        }
        spare(page, review.spare());

        page.blank().line("How the rules were found: each value was taken out of the demo job that comes with the rules, for everything of its kind, "
                + "and the job was judged again. A value is missing where the demo job writes it in every entry of its kind. A rule that the demo job gives no cause to ask is not found. "
                + "What only a plan says is not asked for here.");
        return page;
    }

    private static void lacks(Paper page, List<Lack> lacks, Places places) {
        Sheet.Entry last = null;
        for (Lack lack : lacks) {
            if (lack.entry() != last) {
                last = lack.entry();
                page.blank().parts(0, List.of(last.name(), last.kind(), places.line(last.at())));
            }
            page.hanging("  ", 6, lack.gap().key() + ": " + lack.gap().ask() + at(places, lack));
            if (lack.rules().refused()) {
                page.line("    without it no plan can name what stands there");
            }
            rules(page, "    waits: ", lack.rules().open());
            rules(page, "    takes a value between two ends meanwhile: ", lack.rules().assumed());
        }
    }

    private static void spare(Paper page, List<Lack> spare) {
        if (!spare.isEmpty()) {
            page.blank().line("NOT GIVEN, AND NOT ASKED FOR  " + Plain.count(spare.size(), "value"));
            for (Lack lack : spare) {
                page.hanging("  ", 6, lack.entry().name() + "  " + lack.gap().key() + ": " + lack.gap().ask());
            }
        }
    }

    private static String at(Places places, Lack lack) {
        return lack.gap().at().line() == lack.entry().at().line() ? "" : "  (" + places.line(lack.gap().at()) + ")";
    }

    private static void rules(Paper page, String label, List<RuleInfo> rules) {
        if (!rules.isEmpty()) {
            page.hanging(label, 8, rules.stream().map(rule -> rule.weight().name() + " " + rule.id()).collect(Collectors.joining(", ")));
        }
    }

    /** @param file the file as the user gave it */
    public static String json(SheetReview review, String file) {
        return JsonText.of(json -> write(json, review, new Places(file)));
    }

    private static void write(JsonGenerator json, SheetReview review, Places places) throws IOException {
        json.writeStartObject();
        JsonText.beginHead(json, FORMAT, null);
        json.writeBooleanField("counts-against", review.counts());
        json.writeEndObject();
        json.writeStringField("kind", review.sheet().kind());
        json.writeNumberField("entries", review.sheet().entries().size());
        lacks(json, "missing", review.lacks(), places);
        lacks(json, "may-be-said-elsewhere", review.elsewhere(), places);
        lacks(json, "not-asked-for", review.spare(), places);
        json.writeEndObject();
    }

    private static void lacks(JsonGenerator json, String name, List<Lack> lacks, Places places) throws IOException {
        json.writeArrayFieldStart(name);
        for (Lack lack : lacks) {
            json.writeStartObject();
            json.writeStringField("entry", lack.entry().name());
            json.writeStringField("entry-kind", lack.entry().kind());
            json.writeStringField("key", lack.gap().key());
            json.writeStringField("ask", lack.gap().ask());
            json.writeObjectFieldStart("at");
            json.writeStringField("file", places.fileAsGiven(lack.gap().at()));
            json.writeNumberField("line", lack.gap().at().line());
            json.writeNumberField("column", lack.gap().at().column());
            json.writeEndObject();
            json.writeBooleanField("refused", lack.rules().refused());
            rules(json, "waits", lack.rules().open());
            rules(json, "assumes", lack.rules().assumed());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void rules(JsonGenerator json, String name, List<RuleInfo> rules) throws IOException {
        json.writeArrayFieldStart(name);
        for (RuleInfo rule : rules) {
            json.writeString(rule.id());
        }
        json.writeEndArray();
    }
}
