package bayproof.signoff;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * JSON in the one form that RFC 8785 gives it: members sorted by the UTF-16 code units of their names, no blanks, the
 * shortest escapes. Of its numbers only whole ones are used here, so that no two programs can print one differently;
 * quantities are texts.
 */
public final class CanonicalJson {
    /** Whole numbers beyond this are not the same to every reader of JSON. */
    private static final long LARGEST = (1L << 53) - 1;
    private static final int FIRST_PRINTABLE = 0x20;

    private CanonicalJson() {
    }

    /**
     * Writes a value.
     *
     * @param value maps with texts as keys, lists, texts, whole numbers, booleans and null
     * @throws IllegalArgumentException for anything else
     */
    public static String write(Object value) {
        StringBuilder out = new StringBuilder();
        write(value, out);
        return out.toString();
    }

    private static void write(Object value, StringBuilder out) {
        if (value instanceof Map<?, ?> map) {
            // A string's own order is that of its UTF-16 code units.
            Map<String, Object> sorted = new TreeMap<>();
            map.forEach((key, one) -> sorted.put((String) key, one));
            String between = "{";
            for (Map.Entry<String, Object> entry : sorted.entrySet()) {
                out.append(between);
                text(entry.getKey(), out);
                write(entry.getValue(), out.append(':'));
                between = ",";
            }
            out.append(sorted.isEmpty() ? "{}" : "}");
        } else if (value instanceof List<?> list) {
            String between = "[";
            for (Object one : list) {
                write(one, out.append(between));
                between = ",";
            }
            out.append(list.isEmpty() ? "[]" : "]");
        } else if (value instanceof String text) {
            text(text, out);
        } else if (value == null || value instanceof Boolean || value instanceof Long number && Math.abs(number) <= LARGEST) {
            out.append(value);
        } else {
            throw new IllegalArgumentException("no canonical form for " + value);
        }
    }

    private static void text(String text, StringBuilder out) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"', '\\' -> out.append('\\').append(c);
                case '\b' -> out.append("\\b");
                case '\t' -> out.append("\\t");
                case '\n' -> out.append("\\n");
                case '\f' -> out.append("\\f");
                case '\r' -> out.append("\\r");
                default -> {
                    if (c < FIRST_PRINTABLE) {
                        out.append("\\u00").append(Character.forDigit(c >> 4, 16)).append(Character.forDigit(c & 15, 16));
                    } else {
                        out.append(c);
                    }
                }
            }
        }
        out.append('"');
    }

    /**
     * Reads one object.
     *
     * @throws IOException when the text is anything else, or holds a number that is not whole
     */
    public static Map<String, Object> read(String text) throws IOException {
        JsonFactory factory = JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
        try (JsonParser json = factory.createParser(text)) {
            if (json.nextToken() != JsonToken.START_OBJECT) {
                throw new IOException("no object");
            }
            Map<String, Object> object = object(json);
            if (json.nextToken() != null) {
                throw new IOException("more than one object");
            }
            return object;
        }
    }

    private static Map<String, Object> object(JsonParser json) throws IOException {
        Map<String, Object> object = new LinkedHashMap<>();
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String name = json.currentName();
            json.nextToken();
            object.put(name, value(json));
        }
        return object;
    }

    private static Object value(JsonParser json) throws IOException {
        switch (json.currentToken()) {
            case START_OBJECT -> {
                return object(json);
            }
            case START_ARRAY -> {
                List<Object> list = new ArrayList<>();
                while (json.nextToken() != JsonToken.END_ARRAY) {
                    list.add(value(json));
                }
                return list;
            }
            case VALUE_STRING -> {
                return json.getText();
            }
            case VALUE_NUMBER_INT -> {
                return json.getLongValue();
            }
            case VALUE_TRUE, VALUE_FALSE -> {
                return json.getBooleanValue();
            }
            case VALUE_NULL -> {
                return null;
            }
            default -> throw new IOException("a value that no record holds");
        }
    }
}
