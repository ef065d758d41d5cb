package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A filled form read back: where each answer goes, what is refused and with which words, and what stays untouched. */
class AnswersTest {
    private static final int WIDTH = 80;

    @TempDir
    private Path folder;

    /** A form with one answer a path, each four lines long: the answer of the n-th path stands in line 4 n. */
    private static String form(String... pathsAndAnswers) {
        StringBuilder form = new StringBuilder();
        for (int i = 0; i < pathsAndAnswers.length; i += 2) {
            form.append("\n- Something\n  <sub>").append(pathsAndAnswers[i]).append("</sub>\n  - Answer: ").append(pathsAndAnswers[i + 1]).append("\n");
        }
        return form.toString();
    }

    private Reply answer(String plan, boolean write, String... pathsAndAnswers) throws Exception {
        Path form = Files.writeString(folder.resolve("form.md"), form(pathsAndAnswers));
        return write ? Main.run("new", plan, "--answers", form.toString(), "--write") : Main.run("new", plan, "--answers=" + form);
    }

    private static Map<String, String> files(Path folder) throws Exception {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).collect(Collectors.toMap(Path::toString, file -> {
                try {
                    return Files.readString(file);
                } catch (java.io.IOException e) {
                    throw new java.io.UncheckedIOException(e);
                }
            }, (one, other) -> one, TreeMap::new));
        }
    }

    @Test
    void withoutWriteNothingChangesAndTheChangeIsShown() throws Exception {
        String plan = Jobs.changed(folder.resolve("job"), "metal: copper, insulation: 105 °C, cover: closed-tube", "insulation: 105 °C, cover: closed-tube");
        Map<String, String> before = files(folder.resolve("job"));
        Reply reply = answer(plan, false, "runs.feed-1.metal", "copper");
        assertEquals(0, reply.status(), reply.out() + reply.err());
        assertTrue(reply.out().contains("plan.yaml") && reply.out().contains("+  ") && reply.out().contains("metal: copper"), reply.out());
        assertTrue(reply.out().endsWith("1 answer would be written. Nothing is changed yet: add --write.\n"), reply.out());
        assertEquals(before, files(folder.resolve("job")));
        assertAll(reply.out().lines().map(line -> () -> assertTrue(line.length() <= WIDTH, line)));
    }

    @Test
    void eachAnswerGoesToTheFileThatOwnsIt() throws Exception {
        String plan = Jobs.changed(folder.resolve("job"), "metal: copper, insulation: 105 °C, cover: closed-tube", "insulation: 105 °C, cover: closed-tube",
                "edge: grommet, origin: factory }", "origin: factory }");
        Path sheet = Path.of(plan).resolveSibling("vehicle.yaml");
        Path readings = Path.of(plan).resolveSibling("readings.yaml");
        Path book = folder.resolve("job/seeds/parts.yaml");
        Files.writeString(sheet, Files.readString(sheet).replace(", length: 0.80 m", "").replace("panel: steel, ", ""));
        Files.writeString(readings, Files.readString(readings).replaceAll("(?s)  idle-output:.*?(?=  body-rear)", ""));
        Files.writeString(book, Files.readString(book).replace("    idle-draw: 0.9 A\n", ""));
        Map<String, String> before = files(folder.resolve("job"));
        Reply reply = answer(plan, true, "form.by", "apprentice", "form.when", "2026-11-21T09:00", "runs.feed-1.metal", "copper", "routes.cargo-left.length", "0.80 m",
                "pass-throughs.firewall-left.edge", "grommet", "pass-throughs.partition-left.panel", "steel", "items.amp-front.idle-draw", "0.9 A",
                "supply.sources.alternator.idle-output", "66 A");
        assertEquals(0, reply.status(), reply.out() + reply.err());
        String parts = Files.readString(Path.of(plan).resolveSibling("parts.yaml"));
        assertEquals("bayproof: 1\nkind: parts\nparts:\n  four-channel-class-d: { idle-draw: 0.9 A }\n", parts);
        assertAll(
                () -> assertTrue(Files.readString(Path.of(plan)).contains("parts: [ parts.yaml, ../../seeds/parts.yaml ]")),
                () -> assertEquals(before.get(book.toString()), Files.readString(book), "a shared book is never changed"),
                () -> assertTrue(Files.readString(Path.of(plan)).contains("firewall-left:   { origin: factory, edge: grommet }")),
                () -> assertTrue(Files.readString(sheet).contains("[ partition-left, rack-wall ], length: 0.80 m }")),
                () -> assertTrue(Files.readString(sheet).contains("partition-left:  { between: [ cabin, cargo ], hinge: no, panel: steel }")),
                () -> assertTrue(Files.readString(readings).contains("of: supply.sources.alternator.idle-output, value: 66 A, instrument: clamp meter, "
                        + "state: charging-idle, who: apprentice, when: ")));
        Reply review = Main.run("review", plan, "--gate=handover", "--ask");
        assertFalse(review.out().contains("cargo-left") || review.out().contains("idle-draw") || review.out().contains("feed-1.metal"), review.out());
    }

    @Test
    void aWrongAnswerIsNamedWithItsLineAndTheRestIsWritten() throws Exception {
        String plan = Jobs.changed(folder.resolve("job"), "size: 4 AWG, length: 0.30 m, metal: copper", "length: unknown", "place: battery-tray }", "place: unknown }");
        Reply reply = answer(plan, true, "runs.feed-1.size", "4 AWH", "runs.feed-1.length", "0.30 m", "items.main-fuse.place", "batery-tray",
                "runs.feed-1.metal", "unknown", "runs.no-such.metal", "copper", "items.block.no-such", "1", "runs.feed-2.size", "2 AWG");
        assertEquals(1, reply.status());
        String said = reply.out().replaceAll("\\s+", " ");
        assertAll(
                () -> assertTrue(said.contains("form.md:4: runs.feed-1.size: 4 AWH \"4 AWH\" is not a cable size."), said),
                () -> assertTrue(said.contains("form.md:12: items.main-fuse.place: batery-tray") && said.contains("Did you mean battery-tray"), said),
                () -> assertTrue(said.contains("form.md:20: runs.no-such.metal: copper \"runs.no-such\" stands nowhere in this job."), said),
                () -> assertTrue(said.contains("form.md:24: items.block.no-such: 1 No file of this job holds such a value."), said),
                () -> assertTrue(said.contains("form.md:28: runs.feed-2.size: 2 AWG Another value stands there already."), said),
                () -> assertTrue(said.contains("1 answer written, 5 not, 1 unknown."), said),
                () -> assertTrue(Files.readString(Path.of(plan)).contains("length: 0.30 m,")),
                () -> assertAll(reply.out().lines().map(line -> () -> assertTrue(line.length() <= WIDTH, line))));
    }

    @Test
    void whatCannotBeSeenIsWrittenAndJudged() throws Exception {
        String plan = Jobs.changed(folder.resolve("job"), "sealed: yes }\n  ground-front", "sealed: unknown }\n  ground-front");
        assertEquals(0, answer(plan, true, "items.ground-rear.sealed", "cannot-be-seen").status());
        assertTrue(Files.readString(Path.of(plan)).contains("sealed: cannot-be-seen }"));
        assertTrue(Main.run("review", plan, "--gate=before-power").out().contains("DO NOT PUT THE FUSE IN YET"));
    }

    @Test
    void aReadingNeedsWhoAndWhen() throws Exception {
        String plan = Jobs.changed(folder.resolve("job"));
        Path sheet = Path.of(plan).resolveSibling("vehicle.yaml");
        Files.writeString(sheet, Files.readString(sheet).replace("  start-dip: 8.8 V\n", ""));
        Reply reply = answer(plan, true, "supply.start-dip", "8.8 V");
        assertEquals(1, reply.status());
        assertTrue(reply.out().replaceAll("\\s+", " ").contains("TO ENTER BY HAND") && reply.out().contains("who took it"), reply.out());
    }

    @Test
    void aVehicleSheetIsBegunWhereThereIsNone() throws Exception {
        Path plan = Files.writeString(folder.resolve("plan.yaml"), """
                bayproof: 1
                items:
                  battery:   { kind: battery, place: tray }
                  main-fuse: { kind: fuse, rating: 80 A, place: wall }
                runs:
                  feed-1: { from: battery.positive, to: main-fuse.in, size: 4 AWG, length: 0.15 m, through: [ firewall ] }
                """);
        Reply reply = answer(folder.toString(), true, "places.tray.zone", "bay", "zones.bay.kind", "engine-bay", "pass-throughs.firewall.panel", "steel");
        assertEquals(0, reply.status(), reply.out() + reply.err());
        assertTrue(Files.readString(plan).endsWith("vehicle: vehicle.yaml\n") || Files.readString(plan).contains("\nvehicle: vehicle.yaml"), Files.readString(plan));
        String sheet = Files.readString(folder.resolve("vehicle.yaml"));
        assertTrue(sheet.contains("  tray: { zone: bay }") && sheet.contains("  wall: { zone: unknown }") && sheet.contains("panel: steel"), sheet);
        assertTrue(Main.run("review", plan.toString()).status() < 2);
    }

    @Test
    void aTableIsFilledInItsCells() throws Exception {
        Path job = Files.createDirectories(folder.resolve("cases/tour-van"));
        Files.createDirectories(folder.resolve("seeds"));
        Files.copy(Path.of("../seeds/parts.yaml"), folder.resolve("seeds/parts.yaml"));
        try (Stream<Path> all = Files.list(Path.of("../cases/tour-van"))) {
            for (Path file : all.toList()) {
                Files.copy(file, job.resolve(file.getFileName()));
            }
        }
        Path pins = job.resolve("pins.csv");
        String whole = Files.readString(pins);
        String cell = whole.lines().skip(1).findFirst().orElseThrow();
        String id = cell.substring(0, cell.indexOf(','));
        Files.writeString(pins, whole.replaceFirst("plug-in-harness", ""));
        Reply reply = answer(job.toString(), true, "pins." + id + ".method", "plug-in-harness");
        assertEquals(0, reply.status(), reply.out() + reply.err());
        assertEquals(whole, Files.readString(pins));
    }

    @Test
    void wrongUseIsSaid() throws Exception {
        String plan = Jobs.changed(folder.resolve("job"));
        Path none = Files.writeString(folder.resolve("none.md"), "hello\n");
        assertAll(
                () -> assertEquals(2, Main.run("new", plan).status()),
                () -> assertEquals(2, Main.run("new", plan, "--answers", folder.resolve("no.md").toString()).status()),
                () -> assertEquals(2, Main.run("new", plan, "--answers", none.toString()).status()),
                () -> assertEquals(2, Main.run("new", folder.resolve("nowhere").toString(), "--answers", none.toString()).status()));
    }
}
