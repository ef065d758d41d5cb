package bayproof.read;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes the JSON Schemas of the files anew: {@code java -cp engine/target/bayproof.jar bayproof.read.WriteSchemas shared/schema}. */
public final class WriteSchemas {
    private WriteSchemas() {
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        for (Map.Entry<String, String> schema : texts().entrySet()) {
            Files.writeString(folder.resolve(schema.getKey()), schema.getValue());
        }
    }

    /** The text of each schema by the name of its file. */
    static Map<String, String> texts() throws IOException {
        Map<String, String> texts = new LinkedHashMap<>();
        for (Map.Entry<String, Map<String, Object>> schema : Schema.all().entrySet()) {
            texts.put(schema.getKey() + ".schema.json", text(schema.getValue()));
        }
        return texts;
    }

    private static String text(Map<String, Object> schema) throws IOException {
        StringWriter out = new StringWriter();
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)).withObjectIndenter(new DefaultIndenter("  ", "\n"));
        try (JsonGenerator json = new JsonFactory().createGenerator(out).setPrettyPrinter(printer)) {
            write(schema, json);
        }
        return out + "\n";
    }

    private static void write(Object value, JsonGenerator json) throws IOException {
        if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                json.writeFieldName((String) entry.getKey());
                write(entry.getValue(), json);
            }
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object item : list) {
                write(item, json);
            }
            json.writeEndArray();
        } else if (value instanceof Integer number) {
            json.writeNumber(number);
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value == null) {
            json.writeNull();
        } else {
            json.writeString((String) value);
        }
    }
}
