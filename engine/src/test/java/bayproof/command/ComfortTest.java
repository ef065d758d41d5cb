package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Units to print in, completion, messages for slips of the pen, limits. */
class ComfortTest {
    private static final Path CASES = Path.of("..", "cases");
    private static final String SHOW = CASES.resolve("street-show").resolve("plan.yaml").toString();

    @TempDir
    private Path folder;

    private Reply edited(String file, String from, String to, String... more) throws IOException {
        Path job = Files.createDirectories(folder.resolve("cases").resolve("street-show"));
        Files.createDirectories(folder.resolve("seeds"));
        Files.copy(Path.of("..", "seeds", "parts.yaml"), folder.resolve("seeds").resolve("parts.yaml"));
        for (String name : new String[] {"plan.yaml", "vehicle.yaml", "readings.yaml"}) {
            String text = Files.readString(CASES.resolve("street-show").resolve(name));
            assertTrue(!name.equals(file) || text.contains(from), from);
            Files.writeString(job.resolve(name), name.equals(file) ? text.replace(from, to) : text);
        }
        String[] arguments = new String[2 + more.length];
        arguments[0] = "review";
        arguments[1] = job.resolve("plan.yaml").toString();
        System.arraycopy(more, 0, arguments, 2, more.length);
        return Main.run(arguments);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "plan.yaml | from: main-fuse.out | from: mainfuse.out | Did you mean main-fuse? | 1 mistake.",
        "plan.yaml | from: main-fuse.out | from: main-fuse.output | Did you mean out? | 1 mistake.",
        "plan.yaml | part: mono-class-d-300 | part: mono-clas-d-300 | Did you mean mono-class-d-300 | 1 mistake.",
        "plan.yaml | part: sealed-bolt-holder, | kind: fues, | Did you mean fuse? | 1 mistake.",
        "plan.yaml | part: weld-nut-ground, place: cargo-floor-nut | part: weldnut-ground, place: cargo-floor-nut | Did you mean weld-nut-ground? | 1 mistake.",
        "plan.yaml | place: battery-tray | place: batery-tray | Did you mean battery-tray? | 1 mistake.",
        "plan.yaml | length: 0.30 m | lenght: 0.30 m | Did you mean length? | 1 mistake.",
        "plan.yaml | length: 0.30 m | length: 0.30 metr | did you mean meter? | 1 mistake.",
        "plan.yaml | length: 0.30 m | length: 0,30 m | Write a decimal point: \"0.30 m\". | 1 mistake.",
        "plan.yaml | length: 0.30 m | length: 0.30 | has no unit | 1 mistake.",
        "plan.yaml | size: 4 AWG, length: 0.30 m | size: 4, length: 0.30 m | gauge or square millimeters | 1 mistake.",
        "plan.yaml | metal: copper | metal: coper | Did you mean copper? | 1 mistake in",
        "plan.yaml | 'block:          { part' | 'fuse-board:          { part' | Also in lines | 1 mistake in 4 places.",
        "plan.yaml | 'items:' | 'item:' | Did you mean items? | 1 mistake.",
        "plan.yaml | vehicle: vehicle.yaml | vehicle: vehcle.yaml | is not there | 1 mistake.",
        "vehicle.yaml | '  door-right:' | '  door-righ:' | Did you mean door-righ or door-left? | 1 mistake"})
    void oneSlipGivesOneMessage(String file, String from, String to, String says, String count) throws IOException {
        Reply reply = edited(file, from, to);

        assertEquals(Reply.UNUSABLE, reply.status(), reply.err());
        String message = reply.err().replaceAll("\\s+", " ");
        assertTrue(message.contains(says), reply.err());
        assertTrue(message.contains(count), reply.err());
        reply.err().lines().forEach(line -> assertTrue(line.length() <= 80, line));
    }

    @Test
    void unitsChangeTheTextAndNothingElse() throws IOException {
        Reply us = edited("plan.yaml", "length: 0.30 m", "length: 1.30 m", "--units=us");
        Path plan = folder.resolve("cases").resolve("street-show").resolve("plan.yaml");

        // 33 CFR 183.455(b)(2): 40 in.
        assertTrue(us.out().contains("at most 40 in"), us.out());
        assertTrue(us.out().contains("(1.01 m)"), us.out());
        assertTrue(us.out().contains("runs.feed-1.length: 1.01 m"), us.out());
        assertTrue(us.out().contains("conductor-warming  0 °F to 45 °F"), us.out());
        us.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
        assertEquals(Main.run("review", plan.toString()), Main.run("review", plan.toString(), "--units", "metric"));
        assertEquals(Main.run("review", plan.toString(), "--as=json"), Main.run("review", plan.toString(), "--as=json", "--units=us"));
        assertEquals(us.status(), Main.run("review", plan.toString()).status());
        assertEquals(Reply.UNUSABLE, Main.run("review", plan.toString(), "--units=furlong").status());
    }

    @Test
    void everyCommandAndOptionIsCompleted() {
        String script = Main.run("completion").out();
        for (Command command : Command.values()) {
            assertTrue(script.contains("commands=") && script.contains(command.word()), command.word());
            command.options().forEach(option -> assertTrue(script.contains("'" + option.name() + "'"), option.name()));
        }
        assertEquals(script, Main.run("completion", "zsh").out());
        assertEquals(Reply.UNUSABLE, Main.run("completion", "dish").status());
        assertTrue(Main.run("--help").out().contains("completion"));
    }

    @Test
    void aLooserLimitIsSaidWithItsReasonEverywhere() throws IOException {
        Path own = folder.resolve("own.yaml");
        Files.writeString(own, "bayproof: 1\nkind: limits\nlimits:\n  fuse-distance-bare: { at-most: 300 mm, reason: our vans }\n");
        String limits = "--limits=" + own;
        for (String[] line : new String[][] {{"review", SHOW}, {"review", SHOW, "--topic=grounds"}, {"review", SHOW, "--item=block"},
            {"review", SHOW, "--since=" + SHOW}, {"review", SHOW, "--as=json"}, {"why", "fuse-near-battery"}, {"why"},
            {"why", "fuse-near-battery", "--in=" + SHOW}, {"why", "--limit=fuse-distance-bare"}}) {
            String[] whole = java.util.Arrays.copyOf(line, line.length + 1);
            whole[line.length] = limits;
            String out = Main.run(whole).out();
            assertTrue(out.contains("our vans") && out.toLowerCase(java.util.Locale.ROOT).contains("looser"), String.join(" ", whole) + "\n" + out);
            assertFalse(Main.run(line).out().contains("our vans"));
        }
        String page = Main.run("why", "--limit=fuse-distance-bare", limits).out();
        for (String part : new String[] {"at most 300 mm", "Usual: ", "33 CFR 183.455", "source seen", "Others say", "Safer: a smaller figure"}) {
            assertTrue(page.contains(part), page);
        }
    }
}
