package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.support.Tally;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every value that a file may hold is asked for by somebody, or stands on a list with the reason why not. */
class UnusedFieldsTest {
    private static final JavaClasses MAIN = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("bayproof");
    private static final TreeSet<String> UNUSED = new TreeSet<>();
    private static final Map<String, String> EXCUSED = new TreeMap<>();
    private static int fields;

    @BeforeAll
    static void look() throws IOException, UnusableInput {
        for (JavaClass type : MAIN) {
            if (type.isRecord() && type.getPackageName().equals("bayproof.read")) {
                for (RecordComponent component : type.reflect().getRecordComponents()) {
                    if (component.isAnnotationPresent(Field.class)) {
                        fields++;
                        if (!isAskedFor(type, component.getName())) {
                            UNUSED.add(name(type) + "." + component.getAnnotation(Field.class).key());
                        }
                    }
                }
            }
        }
        try (InputStream in = UnusedFieldsTest.class.getResourceAsStream("/unused-fields.yaml")) {
            MapTree list = TreeReader.read(in.readAllBytes(), "unused-fields.yaml");
            for (Entry record : list.entries().values()) {
                if (record.value() instanceof MapTree keys) {
                    keys.entries().values().forEach(entry -> EXCUSED.put(record.key() + "." + entry.key(),
                            entry.value() instanceof ScalarTree reason ? reason.text() : ""));
                }
            }
        }
    }

    private static String name(JavaClass type) {
        return type.getName().substring("bayproof.read.".length()).replace('$', '.');
    }

    /** Whether code outside the reader calls an accessor or names it, on the record or on an interface of it. */
    private static boolean isAskedFor(JavaClass type, String accessor) {
        return Stream.concat(Stream.of(type), type.getAllRawInterfaces().stream()).flatMap(declaring -> declaring.tryGetMethod(accessor).stream())
                .flatMap(method -> Stream.concat(method.getAccessesToSelf().stream(), method.getReferencesToSelf().stream()))
                .anyMatch(access -> !access.getOriginOwner().getPackageName().equals("bayproof.read"));
    }

    @Test
    void whatNobodyAsksForIsOnTheListWithAReason() {
        List<String> missing = new ArrayList<>(UNUSED);
        missing.removeAll(EXCUSED.keySet());
        assertEquals(List.of(), missing);
        assertFalse(EXCUSED.values().stream().anyMatch(String::isBlank), "an entry gives no reason");
        Tally.say("fields of the files that nothing reads: " + UNUSED.size() + " of " + fields + " (" + String.join(", ", UNUSED) + ")");
    }

    @Test
    void theListHoldsNothingElse() {
        List<String> extra = new ArrayList<>(EXCUSED.keySet());
        extra.removeAll(UNUSED);
        assertEquals(List.of(), extra, "these are asked for, or are no fields");
    }

    @Test
    void aFieldThatIsAskedForIsSeen() {
        JavaClass run = MAIN.get(Run.class);
        assertFalse(UNUSED.contains("Run.length") || UNUSED.contains("Run.from"));
        assertTrue(isAskedFor(run, "lengthMetres"));
        assertTrue(isAskedFor(MAIN.get(Item.Amplifier.class), "minimumVolts"));
    }
}
