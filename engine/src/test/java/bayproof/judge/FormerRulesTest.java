package bayproof.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The list of ids that rules had. */
class FormerRulesTest {
    @Test
    void aRuleIsFoundThroughAllItsNames() {
        FormerRules list = FormerRules.of(Map.of("a", "renamed to b in 4", "b", "renamed to c in 5", "d", "withdrawn in 5: nobody does that any more."));
        assertEquals("c", list.current("a"));
        assertEquals("d", list.current("d"));
        assertEquals("e", list.current("e"));
        assertNull(list.of("e"));
        assertEquals("g", FormerRules.of(Map.of("f", "renamed to g in 4", "g", "withdrawn in 5: no trade does it.")).last("f").id());
        assertEquals("b", list.last("a").now());
        assertEquals("d was withdrawn in rule base 5: nobody does that any more.", list.of("d").says());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "renamed", "renamed to b", "withdrawn in 4", "withdrawn in 4:", "renamed to a in 4"})
    void aWrongEntryIsRefused(String text) {
        assertThrows(RuleFault.class, () -> FormerRules.of(Map.of("a", text)));
    }

    /** The list of the rule base itself; the one on the class path of the tests is another. */
    @Test
    void everyFormerIdLeadsToARuleAndNoneIsGivenAgain() throws IOException {
        Properties said = new Properties();
        try (Reader in = Files.newBufferedReader(Path.of("../rules/src/main/resources/bayproof/former.properties"))) {
            said.load(in);
        }
        Map<String, String> entries = new TreeMap<>();
        said.stringPropertyNames().forEach(id -> entries.put(id, said.getProperty(id)));
        FormerRules list = FormerRules.of(entries);
        list.all().values().forEach(former -> {
            assertFalse(RuleBase.ids().contains(former.id()), former.id() + " is a rule");
            assertTrue(former.now() == null || RuleBase.ids().contains(list.current(former.id())) || list.of(list.current(former.id())).now() == null, former.says());
        });
    }
}
