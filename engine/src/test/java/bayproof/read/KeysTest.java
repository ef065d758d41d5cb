package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The words of our files, chosen so that every reader of YAML reads them alike. */
class KeysTest {
    /** What YAML 1.1 takes for booleans or nothing. */
    private static final Set<String> OTHERS = Set.of("y", "n", "yes", "no", "on", "off", "true", "false", "null", "~");
    private static final Pattern WORD = Pattern.compile("[a-z]+(-[a-z]+)*");

    @Test
    void noKeyIsABooleanToAnotherReader() {
        List<Class<?>> groups = new ArrayList<>(List.of(Plan.class, Vehicle.class, Run.class, Readings.Reading.class, Item.MadeFor.class));
        groups.addAll(Item.KINDS.values());
        for (Class<?> type : List.of(Plan.class, Vehicle.class)) {
            groups.addAll(List.of(type.getDeclaredClasses()));
        }
        List<String> keys = new ArrayList<>(Item.KINDS.keySet());
        groups.forEach(group -> keys.addAll(Binder.keysOf(group)));
        assertTrue(keys.size() > 50);
        keys.forEach(key -> assertTrue(WORD.matcher(key).matches() && !OTHERS.contains(key), key));
    }
}
