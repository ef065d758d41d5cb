package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.PinForm;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The connector form: printed empty, filled in, read back. */
class PinFormTest {
    /** Columns of the form behind id, function and color. */
    private static final List<String> COLUMNS = List.of("asleep", "ignition-on", "lamps-on", "radio-on", "supply-off", "tone");

    /** Readings of a sound vehicle, by function: rest and key volts of a lead-acid battery; a bus at 2.5 V with traffic and two terminators of 120 ohm. */
    private static final Map<String, Map<String, String>> SOUND = Map.of("constant-supply", Map.of("asleep", "12.6", "ignition-on", "12.3"),
            "switched-supply", Map.of("asleep", "0", "ignition-on", "12.2"), "ground", Map.of("supply-off", "0.2"),
            "illumination", Map.of("asleep", "0", "lamps-on", "12.1"), "turn-on", Map.of("asleep", "0.1", "radio-on", "12.2"),
            "speaker", Map.of("supply-off", "3.4"), "can-high", Map.of("ignition-on", "2.7", "supply-off", "60"),
            "can-low", Map.of("ignition-on", "2.3", "supply-off", "60"), "lin", Map.of("ignition-on", "11.1"));

    @TempDir
    private Path folder;
    private List<String> lines;

    /** The printed form, filled in as a sound vehicle reads. */
    @BeforeEach
    void fill() throws IOException {
        Reply printed = Main.run("sheet", Jobs.TOUR.toString(), "--pins", "--as", "csv", "--to", folder.toString());
        assertEquals(0, printed.status(), printed.err());
        lines = new ArrayList<>();
        for (String line : Files.readString(folder.resolve("pin-form.csv")).split("\r\n")) {
            String[] head = line.split(",", 4);
            if (head[0].equals("id")) {
                lines.add(line);
                continue;
            }
            assertTrue(head[3].startsWith(",,,,,,"), "the printed form is empty: " + line);
            StringBuilder filled = new StringBuilder(head[0] + "," + head[1] + "," + head[2]);
            for (String column : COLUMNS) {
                int cavity = Integer.parseInt(head[0].substring(head[0].indexOf('.') + 1));
                filled.append(',').append(column.equals("tone") && head[1].equals("speaker") ? head[0].split("\\.")[0] + "-pair-" + (cavity + 1) / 2
                        : SOUND.get(head[1]).getOrDefault(column, ""));
            }
            lines.add(filled + "," + head[3].substring(COLUMNS.size()));
        }
    }

    private void change(String from, String to) {
        List<String> before = List.copyOf(lines);
        lines.replaceAll(line -> line.replace(from, to));
        assertNotEquals(before, lines, from);
    }

    private Reply read(String... more) throws IOException {
        Path form = Files.writeString(folder.resolve("filled.csv"), String.join("\r\n", lines) + "\r\n");
        List<String> line = new ArrayList<>(List.of("sheet", Jobs.TOUR.toString(), "--pins", "--filled", form.toString()));
        line.addAll(List.of(more));
        return Main.run(line.toArray(String[]::new));
    }

    /** Outcomes of the pins that do not fit, each with its place. */
    private Map<String, List<String>> outcomes() throws IOException {
        Map<String, List<String>> outcomes = new TreeMap<>();
        for (JsonNode row : new ObjectMapper().readTree(read("--as", "json").out()).get("pins")) {
            if (!row.get("outcome").asText().equals("fits")) {
                outcomes.computeIfAbsent(row.get("pin").asText(), any -> new ArrayList<>()).add(row.get("outcome").asText());
            }
        }
        return outcomes;
    }

    @Test
    void aSoundVehicleFits() throws Exception {
        Reply reply = read();
        assertEquals(0, reply.status(), reply.out() + reply.err());
        assertTrue(reply.out().contains("EVERY PIN THAT THE PLAN JOINS FITS - 0 pins do not fit, 0 not shown, 33 fit."), reply.out());
        assertEquals(Map.of(), outcomes());
    }

    @Test
    void threePlantedErrorsAreFoundAndNothingElse() throws Exception {
        change("radio-a.6,illumination,orange,0,,12.1", "radio-a.6,illumination,orange,12.4,,12.1");
        change("radio-b.3,speaker,gray,,,,,3.4,radio-b-pair-2", "radio-b.3,speaker,gray,,,,,3.4,radio-b-pair-1");
        change("cargo-lamp.2,ground,brown,", "cargo-lamp.2,ground,blue,");
        assertEquals(Map.of("radio-a.6", List.of("does not fit"), "radio-b.1", List.of("two pins claim one function"), "radio-b.2", List.of("two pins claim one function"),
                "radio-b.3", List.of("two pins claim one function"), "cargo-lamp.2", List.of("color differs")), outcomes());
        Reply reply = read();
        assertEquals(1, reply.status());
        String out = reply.out().replaceAll("\\s+", " ");
        assertAll(() -> assertTrue(out.contains("DO NOT JOIN THESE PINS YET - 5 pins do not fit, 0 not shown, 28 fit."), out),
                () -> assertTrue(out.contains("asleep: reads 12.4 V, must"), out),
                // The reading is the fourth cell of the fifth line of the form, behind "radio-a.6,illumination,orange,".
                () -> assertTrue(reply.out().matches("(?s).*radio-a\\.6 .* 5:31\n.*"), reply.out()));
    }

    /** A4 and A7 of the radio connector are exchanged in some vehicles (a table of ISO 10487 connectors). */
    @Test
    void exchangedSuppliesAreNamedForWhatTheyRead() throws Exception {
        change("radio-a.4,constant-supply,yellow,12.6,12.3", "radio-a.4,constant-supply,yellow,0,12.3");
        change("radio-a.7,switched-supply,red,0,12.2", "radio-a.7,switched-supply,red,12.6,12.2");
        String out = read().out().replaceAll("\\s+", " ");
        assertTrue(out.contains("like switched-supply") && out.contains("like constant-supply"), out);
        change("radio-a.7,switched-supply", "radio-a.7,constant-supply");
        assertEquals(List.of("function differs", "two pins claim one function"), outcomes().get("radio-a.7"));
    }

    /** 120 ohm is one terminator of two (ISO 11898-2: 120 ohm at each end, 60 ohm together). */
    @Test
    void aBusWithOneTerminatorAndAnOpenPairDoNotFit() throws Exception {
        change("radio-data.1,can-high,orange-black,,2.7,,,60", "radio-data.1,can-high,orange-black,,2.7,,,120");
        change("radio-b.7,speaker,green,,,,,3.4", "radio-b.7,speaker,green,,,,,open");
        assertEquals(Map.of("radio-data.1", List.of("does not fit"), "radio-b.7", List.of("does not fit")), outcomes());
        assertTrue(read().out().contains("reads open"), read().out());
    }

    @Test
    void whatIsNotFilledInIsNotShownAndCountsWhereThePlanJoinsThePin() throws Exception {
        change("radio-data.3,lin,green-white,,11.1", "radio-data.3,lin,green-white,,");
        assertEquals(0, read().status(), "the plan does not join it");
        lines.removeIf(line -> line.startsWith("radio-a.4,"));
        Reply reply = read();
        assertEquals(1, reply.status());
        assertEquals(Map.of("radio-a.4", List.of("not shown"), "radio-data.3", List.of("not shown")), outcomes());
        assertTrue(reply.out().contains("NOT EVERY PIN IS SHOWN YET - 0 pins do not fit, 2 not shown, 31 fit."), reply.out());
    }

    @Test
    void everyMistakeOfAFormIsNamedWithItsPlace() throws Exception {
        change("radio-a.4,constant-supply,yellow,12.6", "radio-a.4,constant-suply,yellow,12.6 ohm");
        change("radio-b.3,", "radio-d.3,");
        Reply reply = read();
        assertEquals(2, reply.status());
        String err = reply.err().replaceAll("\\s+", " ");
        assertAll(() -> assertTrue(err.contains("filled.csv:3:11:") && err.contains("Did you mean constant-supply"), err),
                () -> assertTrue(err.contains("filled.csv:3:33:"), err),
                () -> assertTrue(err.contains("filled.csv:10:1:") && err.contains("Did you mean radio-a or radio-b"), err),
                () -> assertTrue(err.endsWith("3 mistakes. Nothing was judged. "), err));
    }

    @Test
    void aFilledFormIsNeverOverwritten() throws Exception {
        Path form = folder.resolve("pin-form.csv");
        Files.writeString(form, "filled by hand");
        Reply reply = Main.run("sheet", Jobs.TOUR.toString(), "--pins", "--as", "csv", "--to", folder.toString());
        assertEquals(2, reply.status());
        assertEquals("filled by hand", Files.readString(form));
    }

    @Test
    void theFormAsksForEachFunctionInEachStateThatProvesIt() throws Exception {
        String out = Main.run("sheet", Jobs.TOUR.toString(), "--pins").out();
        for (String function : SOUND.keySet()) {
            assertTrue(out.contains("\n" + function + ": "), function);
        }
        assertTrue(out.contains("54 ohm to 66 ohm") && out.contains("ISO 11898-2"), out);
        assertEquals(5, PinForm.STATES.size());
    }
}
