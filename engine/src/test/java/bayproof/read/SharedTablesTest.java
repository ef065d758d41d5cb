package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.Tree.MapTree;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SharedTablesTest {
    private static final String CONDUCTORS = """
            copper: { one-meter-of-one-mm2: 17.241 mohm, zero-resistance: -234.5 °C }
            awg: { lay-factor: 102 %, ladder: [ 4 AWG ] }
            metric: { meter-at-20: { 25 mm2: 0.780 mohm } }
            metals: { conductivity: { copper: 100 % } }
            ampacity: { ambient: 30 °C, insulation: [ 60 °C ], rows: { 4 AWG: [ 105 A ] } }
            engine-space: { ambient: 50 °C, factors: [ 58 % ] }
            """;

    private static MapTree tree(String text) throws UnusableInput {
        return TreeReader.read(text.getBytes(StandardCharsets.UTF_8), "table.yaml");
    }

    @Test
    void readsASmallTable() throws UnusableInput {
        assertEquals(105, SharedTables.conductors(tree(CONDUCTORS)).ampacityAmperes("25 mm2", "copper", 60, 30).orElseThrow(), 1e-9);
        assertEquals(List.of(10.0, 7.5), SharedTables.fuses(tree("families: { a: { ratings: [ 7.5 A, 10 A ] } }")).below(15));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "lay-factor: 102 %, | x: 1, | lay-factor is missing", "102 % | 1.02 | no unit", "17.241 mohm | 17.241 mm | resistance is needed",
        "[ 4 AWG ] | 4 AWG | list is needed", "[ 105 A ] | [ [ 105 A ] ] | single value is needed",
        "rows: { 4 AWG: [ 105 A ] } | rows: 105 A | group of keys is needed", "{ 25 mm2: | { 25 meters: | not a cable size"})
    void aMistakeIsNamedWithItsPlace(String right, String wrong, String says) throws UnusableInput {
        MapTree tree = tree(CONDUCTORS.replace(right, wrong));
        IllegalStateException fault = assertThrows(IllegalStateException.class, () -> SharedTables.conductors(tree));
        assertTrue(fault.getMessage().contains(says), fault.getMessage());
        assertTrue(fault.getMessage().startsWith("table.yaml:"), fault.getMessage());
    }
}
