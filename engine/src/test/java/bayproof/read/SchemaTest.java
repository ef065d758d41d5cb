package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.support.Jobs;
import bayproof.support.Tally;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The schemas for editors, held against a validator that is not ours and against what the reader takes. */
class SchemaTest {
    private static final Path FOLDER = Path.of("..", "shared", "schema");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Map<String, JsonSchema> SCHEMAS = new TreeMap<>();

    static {
        JsonSchemaFactory factory = JsonSchemaFactory.getInstance(VersionFlag.V202012);
        try {
            for (String kind : JobFiles.KINDS) {
                SCHEMAS.put(kind, factory.getSchema(Files.readString(FOLDER.resolve(kind + ".schema.json"))));
            }
        } catch (IOException e) {
            throw new ExceptionInInitializerError(e);
        }
    }

    private static Set<String> refusals(String kind, String yaml) {
        Set<String> messages = new TreeSet<>();
        for (ValidationMessage message : SCHEMAS.get(kind).validate(asAnEditorSees(yaml))) {
            messages.add(message.toString());
        }
        return messages;
    }

    /** By YAML 1.2, where yes and no are words; editors read so unless told otherwise. */
    private static JsonNode asAnEditorSees(String yaml) {
        return JSON.valueToTree(new Load(LoadSettings.builder().build()).loadFromString(yaml));
    }

    @Test
    void theFilesAreThoseTheRecordsGive() throws IOException {
        Map<String, String> texts = WriteSchemas.texts();
        try (Stream<Path> files = Files.list(FOLDER)) {
            assertEquals(new TreeSet<>(texts.keySet()), new TreeSet<>(files.map(file -> file.getFileName().toString()).toList()));
        }
        for (Map.Entry<String, String> text : texts.entrySet()) {
            assertTrue(text.getValue().equals(Files.readString(FOLDER.resolve(text.getKey()))),
                    text.getKey() + " is not what the records give; write it anew with " + WriteSchemas.class.getName());
        }
    }

    @Test
    void theSchemasAreSchemas() throws IOException {
        JsonSchema meta = JsonSchemaFactory.getInstance(VersionFlag.V202012)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        for (String text : WriteSchemas.texts().values()) {
            assertEquals(Set.of(), meta.validate(JSON.readTree(text)));
        }
    }

    @Test
    void everyFileOfTheJobsAndTheBooksIsValid() throws IOException {
        int files = 0;
        try (Stream<Path> all = Stream.concat(Files.walk(Jobs.CASES), Files.walk(Path.of("..", "seeds")))) {
            for (Path file : all.filter(path -> path.getFileName().toString().matches("(plan|vehicle|parts|readings|limits)\\.yaml")).toList()) {
                String kind = file.getFileName().toString().replace(".yaml", "");
                assertEquals(Set.of(), refusals(kind, Files.readString(file)), file.toString());
                files++;
            }
        }
        assertTrue(files >= 8, "only " + files + " files were seen");
        Tally.count("files valid against their schema", files);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "plan | runns: {} | runns", "plan | runs: { a: { lenght: 1 m } } | lenght", "plan | runs: { A: {} } | A",
        "plan | runs: { a: { length: 3 } } | length", "plan | runs: { a: { length: 3,5 m } } | length", "plan | runs: { a: { cover: tub } } | cover",
        "plan | runs: { a: { size: 4 } } | size", "plan | runs: { a: { along: one } } | along", "plan | runs: runs.txt | runs",
        "plan | items: { a: { place: b } } | items", "plan | items: { a: { kind: fuze } } | kind", "plan | items: { a: { kind: fuse, class: D } } | class",
        "plan | items: { a: { part: b, ratng: 80 A } } | ratng", "plan | items: { a: { kind: amplifier, channels: four } } | channels",
        "plan | pins: { radio-a.4: { identified: { by: nose } } } | by", "plan | kind: parts | kind",
        "vehicle | supply: { sources: { a: { kind: battery, rest: full } } } | rest", "vehicle | zones: { a: { knd: dash } } | knd",
        "parts | parts: { a: { kind: fuse, part: b } } | part", "parts | parts: { a: { ratng: 3 A } } | ratng",
        "readings | readings: { a: { off: b } } | off", "limits | limits: { fuse-distance-bare: { at-most: 1 m } } | reason",
        "limits | limits: { fuse-distance: { at-most: 1 m, reason: x } } | fuse-distance"})
    void whatTheReaderRefusesIsRefused(String kind, String yaml, String says) {
        Set<String> refusals = refusals(kind, head(kind) + yaml.replace("~n", "\n") + "\n");
        assertTrue(refusals.stream().anyMatch(refusal -> refusal.contains(says)), refusals.toString());
    }

    private static String head(String kind) {
        return "bayproof: 1\n" + (kind.equals("plan") ? "" : "kind: " + kind + "\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "plan | runs: { a: { length: unknown, size: cannot-be-seen, cover: , along: none, through: [], ends: unknown } }",
        "plan | runs: r.csv", "plan | items: items.CSV", "plan | runs: ", "plan | runs: { a: { size: 1/0, length: 18in } }",
        "plan | items: { a: { part: b, kind: fuse, rating: 80 A }, b: { part: b, class: D } }", "plan | job: { tag: 12, title: }",
        "parts | parts: p.csv", "parts | parts: { a: { rating: 3 A } }", "limits | limits: { fuse-distance-bare: { at-most: { fix: 150 mm, stop: 400 mm }, reason: habit } }"})
    void whatTheReaderTakesIsTaken(String kind, String yaml) {
        assertEquals(Set.of(), refusals(kind, head(kind) + yaml + "\n"));
    }

    @Test
    void everyValueSaysWhatItIs() {
        List<String> silent = Schema.all().values().stream().flatMap(schema -> silent(schema, "").stream()).toList();
        assertEquals(List.of(), silent);
    }

    /** Properties without hover text; empty ones only allow a key whose text stands elsewhere. */
    private static List<String> silent(Object schema, String path) {
        if (schema instanceof List<?> list) {
            return list.stream().flatMap(item -> silent(item, path).stream()).toList();
        }
        if (!(schema instanceof Map<?, ?> map)) {
            return List.of();
        }
        List<String> found = new java.util.ArrayList<>();
        map.forEach((key, value) -> {
            String below = path + "/" + key;
            if (key.equals("properties") && !map.containsKey("const")) {
                ((Map<?, ?>) value).forEach((name, property) -> {
                    Map<?, ?> one = (Map<?, ?>) property;
                    if (!one.isEmpty() && !one.containsKey("const") && !(one.get("description") instanceof String says && !says.isBlank())) {
                        found.add(below + "/" + name);
                    }
                });
            }
            found.addAll(silent(value, below));
        });
        return found;
    }

    @Test
    void hoverTextSaysHowAQuantityIsWritten() throws IOException {
        JsonNode length = JSON.readTree(WriteSchemas.texts().get("plan.schema.json")).at("/$defs/run/properties/length");
        assertEquals("length of the run, as cut or by a string along its way, such as 18 in or 0.45 m", length.get("description").asText());
        assertFalse(length.get("examples").isEmpty());
    }
}
