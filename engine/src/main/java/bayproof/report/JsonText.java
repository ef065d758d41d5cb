package bayproof.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** JSON as text, the same bytes for the same input: one value a line, plain ASCII with escapes, a line feed at the end. */
public final class JsonText {
    /** Writes the value. */
    @FunctionalInterface
    public interface Body {
        void write(JsonGenerator json) throws IOException;
    }

    private JsonText() {
    }

    public static String of(Body body) {
        return of("  ", body);
    }

    /** @param indent blanks a level; an archive of thousands of jobs is kept narrow */
    static String of(String indent, Body body) {
        StringWriter text = new StringWriter();
        JsonFactory factory = JsonFactory.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();
        try (JsonGenerator json = factory.createGenerator(text)) {
            DefaultIndenter indenter = new DefaultIndenter(indent, "\n");
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
            body.write(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    /**
     * Begins the group that says what wrote the object; whoever asks for it ends it.
     *
     * @param format version of the object's form
     * @param of     what the object is of; null where that is not said
     */
    public static void beginHead(JsonGenerator json, int format, String of) throws IOException {
        json.writeObjectFieldStart("bayproof");
        json.writeNumberField("format", format);
        if (of != null) {
            json.writeStringField("of", of);
        }
        json.writeStringField("rule-base", RuleBaseDate.built().version());
        json.writeStringField("rule-base-date", RuleBaseDate.built().date());
    }
}
