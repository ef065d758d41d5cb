package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The survey form of a vehicle, printed, filled in and read back. */
class NewVehicleTest {
    @TempDir
    private Path folder;

    private String filled(String... changes) throws Exception {
        String form = Main.run("new", "--vehicle", "blue-van").out();
        for (int i = 0; i < changes.length; i += 2) {
            String before = form;
            form = form.replaceFirst(changes[i], changes[i + 1]);
            assertNotEquals(before, form, changes[i]);
        }
        return Files.writeString(folder.resolve("form.md"), form).toString();
    }

    private Reply read(String form) {
        return Main.run("new", "--vehicle=blue-van", "--survey", form);
    }

    @Test
    void whatWasNotMeasuredStaysUnknown() throws Exception {
        Reply reply = read(filled());
        assertEquals(0, reply.status(), reply.err());
        String sheet = Files.readString(folder.resolve("blue-van.yaml"));
        assertTrue(sheet.contains("  bay-left: { between: [ battery-tray, firewall-left ], length: unknown"), sheet);
        assertTrue(sheet.contains("      seats-back: { height: unknown, width: unknown, depth: unknown, top-depth: unknown }"), sheet);
        assertEquals(1, Main.run("review", folder.resolve("blue-van.yaml").toString()).status(), "much is missing");
        assertEquals(2, read(folder.resolve("form.md").toString()).status(), "a sheet that is there is not written over");
        assertEquals(List.of("blue-van.yaml", "form.md"), List.of(folder.toFile().list()).stream().sorted().toList());
    }

    @Test
    void whatWasMeasuredStandsInTheSheet() throws Exception {
        Reply reply = read(filled("(\\| supply.own-load +\\|) {14}", "$1 31 A ", "(\\| firewall-left +\\| engine-bay cabin \\|) {7}", "$1 steel ",
                "(\\| bay-left +\\| battery-tray firewall-left \\|) {8}", "$1 1.05 m ", "(\\| fuel-line +\\| fuel +\\|) {7}", "$1 engine-bay, cargo ",
                "(?s)(\\| behind-seats \\| cargo-side \\| seats-back +\\|) {8}\\| {7}\\| {7}\\|", "$1 28 in | 1.1 m | 40 cm |", "(\\| title +\\|) {14}", "$1 van: blue, \"old\" "));
        assertEquals(0, reply.status(), reply.err());
        String sheet = Files.readString(folder.resolve("blue-van.yaml"));
        for (String line : List.of("  own-load: 31 A", "panel: steel", "length: 1.05 m", "zones: [ engine-bay, cargo ]", "seats-back: { height: 28 in, width: 1.1 m, depth: 40 cm, top-depth: unknown }",
                "title: \"van: blue, \\\"old\\\"\"")) {
            assertTrue(sheet.contains(line), line + " in\n" + sheet);
        }
        Reply job = Main.run("new", folder.resolve("job").toString(), "--vehicle-from", folder.resolve("blue-van.yaml").toString());
        assertEquals(0, job.status(), job.err());
        Reply review = Main.run("review", folder.resolve("job/plan.yaml").toString());
        assertEquals(1, review.status(), review.err());
        assertTrue(review.out().contains("DO NOT ORDER YET - 0 stop, 0 fix."), review.out());
    }

    /** What the vehicle sounds like, what it gives, and where each thing was seen: on the form, read back, and carried to the next vehicle. */
    @Test
    void soundsOutputsAndWhereThingsWereSeenAreReadBack() throws Exception {
        Reply reply = read(filled("(\\| seen-on +\\|) {14}", "$1 this-car ", "(\\| cabin-sound.cancels-noise +\\|) {14}", "$1 false ",
                "(\\| cabin-sound.microphones +\\|) {14}", "$1 none ", "(\\| cabin-sound.played-by +\\|) {14}", "$1 radio ",
                "(\\| cargo-floor-nut \\| cargo +\\| +\\|) {9}", "$1 this-car ", "(?s)(\\| behind-seats \\| cargo-side \\| seats-back .*?)\\|  +\\|\n", "$1| this-car |\n",
                "(?s)(## outputs.*?\n\\|-.*?\n)", "$1| front-left | audio | radio | | no | full | normal | 0 ms | false | false |\n",
                "(?s)(## tones.*?\n\\|-.*?\n)", "$1| front-left | quiet | 0.52 V | 0.50 V | 0.48 V |\n| front-left | loud | 4.1 V | 4 V | |\n",
                "(?s)(## connectors.*?\n\\|-.*?\n)", "$1| radio-b | iso-10487-b | own | 5 | speaker | white | front-left | this-car |\n"));
        assertEquals(0, reply.status(), reply.err());
        Path file = folder.resolve("blue-van.yaml");
        String sheet = Files.readString(file);
        for (String line : List.of("seen-on: this-car\n", "cancels-noise: false", "microphones: none", "played-by: radio", "cargo-floor-nut: { zone: cargo, depth: unknown, seen-on: this-car",
                "      seen-on: this-car", "quiet: { low-tone: 0.52 V, mid-tone: 0.50 V, high-tone: 0.48 V }", "loud: { low-tone: 4.1 V, mid-tone: 4 V, high-tone: unknown }",
                "5: { function: speaker, color: white, output: front-left, seen-on: this-car }")) {
            assertTrue(sheet.contains(line.strip()), line + " in\n" + sheet);
        }
        int seen = sheet.split("seen-on: this-car", -1).length;
        assertEquals(5, seen, "four things were seen on this car");
        assertEquals(0, Main.run("new", folder.resolve("job").toString(), "--vehicle-from", file.toString()).status());
        String copy = Files.readString(folder.resolve("job/vehicle.yaml"));
        assertEquals(seen, copy.split("seen-on: same-variant", -1).length);
        assertTrue(!copy.contains("this-car"), copy);
    }

    @Test
    void everyMistakeIsNamedWithItsPlaceInTheForm() throws Exception {
        String form = filled("(\\| supply.own-load +\\|) {14}", "$1 31 V ", "\\| supply.start-dip ", "| supply.start-dop ", "(\\| firewall-left +\\| engine-bay) cabin \\|", "$1 cabbin |",
                "\\| hinge \\|", "| hinges |", "## outputs", "## output", "\\| sill-left \\|", "| bay-left |");
        Reply reply = read(form);
        assertEquals(2, reply.status());
        List<String> lines = Files.readAllLines(Path.of(form));
        assertAll(List.of("31 V", "supply.start-dop", "hinges", "## output", "| bay-left ").stream().map(slip -> () -> {
            int last = 0;
            for (int i = 0; i < lines.size(); i++) {
                last = lines.get(i).contains(slip) ? i + 1 : last;
            }
            int column = slip.startsWith("##") ? 4 : lines.get(last - 1).indexOf(slip.replace("| ", "").strip()) + 1;
            if (!slip.equals("31 V")) {
                assertTrue(reply.err().replaceAll("\\s+", "").contains("form.md:" + last + ":" + column + ":"), slip + " at " + last + ":" + column + " in\n" + reply.err());
            }
        }));
        assertTrue(reply.err().contains("Did you mean supply.start-dip") && reply.err().contains("Did you mean outputs") && reply.err().contains("Did you mean hinge?"), reply.err());
        // What the sheet itself refuses is told once the form's own mistakes are gone.
        Reply deeper = read(filled("(\\| supply.own-load +\\|) {14}", "$1 31 V ", "(\\| firewall-left +\\| engine-bay) cabin \\|", "$1 cabbin |"));
        assertEquals(2, deeper.status());
        assertTrue(deeper.err().contains("\"31 V\"") && deeper.err().contains("Did you mean cabin"), deeper.err());
        assertTrue(deeper.err().contains("form.md:"), deeper.err());
        assertEquals(List.of("form.md"), List.of(folder.toFile().list()));
    }

    @Test
    void aNameThatIsNoneIsRefused() {
        assertEquals(2, Main.run("new", "--vehicle=../van").status());
        assertTrue(Main.run("new", "--survey=form.md").err().contains("--survey needs the name of the vehicle."));
        assertTrue(Main.run("new", "--from=one-amplifier").err().contains("Name a folder for the job."));
    }
}
