package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.Address;
import bayproof.read.JobFiles;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.start.WishList;
import bayproof.support.Tally;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Somebody who knows a whole job fills in the form of a job with holes, at most 25 questions a round, and reads it back,
 * until nothing is asked any more. Nothing but the forms passes between the two.
 */
class AskRoundsTest {
    private static final Pattern PATH = Pattern.compile("<sub>(.+)</sub>");
    private static final Pattern OF_KIND = Pattern.compile("item of kind ([a-z-]+)");
    private static final Pattern LINE_VALUE = Pattern.compile("(?<=[{,] )(?!from:|to:|part:|kind:|of:|between:|connected-to:|who:|by:|state:|when:)"
            + "[a-z][a-z-]*: (?:\"[^\"]*\"|[^{}\\[\\],]+|\\[[^]]*\\])(?:, | (?=}))");

    /** Far more than a person would bear. */
    private static final int MOST_ROUNDS = 15;

    @TempDir
    private Path folder;

    @ParameterizedTest(name = "{0}, {1} of 100 values taken out")
    @CsvSource({"street-show, 20, 1", "street-show, 70, 2", "tour-van, 8, 3"})
    void answeringEndsWithNothingLeftToAsk(String name, int share, long seed) throws Exception {
        Path whole = copy(folder.resolve("whole"), name);
        JobFiles known = JobFiles.read(whole, null);
        Path plan = copy(folder.resolve("holes"), name);
        takeOut(plan, share, new Random(seed));
        List<Integer> rounds = rounds(plan, known);
        Tally.say("questions left after each round of 25, " + name + " with " + share + " % taken out: " + rounds);
        assertTrue(rounds.get(0) > 10, rounds.toString());
        // A value that is gone can leave a rule with its usual limit, and broken by it; nothing may be left not shown.
        JsonNode end = new ObjectMapper().readTree(Main.run("review", plan.toString(), "--gate=handover", "--as=json").out());
        assertEquals(0, end.at("/counts/unshown").asInt(-1));
    }

    @Test
    void aPlanOfTenLinesIsAskedUntilItIsWhole() throws Exception {
        Path whole = copy(folder.resolve("whole"), "street-show");
        JobFiles known = JobFiles.read(whole, null);
        Path plan = Files.writeString(copy(folder.resolve("ten"), "street-show").resolveSibling("ten.yaml"), """
                bayproof: 1
                vehicle: vehicle.yaml
                parts: [ ../../seeds/parts.yaml ]
                items:
                  main-fuse:   { kind: fuse, rating: 80 A }
                  block:       { part: three-way-fuse-block, fuses: { out-1: 40 A, out-2: 40 A, out-3: 5 A } }
                  amp-sub:     { part: mono-class-d-300 }
                  sub:         { part: sub-10in-dual-2 }
                  interface:   { part: radio-interface-h }
                  ground-rear: { kind: ground-point }
                  ground-front: { kind: ground-point }
                runs:
                  feed-1:   { from: start-battery.positive, to: main-fuse.in, size: 4 AWG, length: 0.30 m }
                  feed-2:   { from: main-fuse.out, to: block.in, size: 4 AWG, length: 3.85 m }
                  feed-sub: { from: block.out-2, to: amp-sub.supply, size: 8 AWG, length: 0.45 m }
                  ground-2: { from: amp-sub.ground, to: ground-rear.stud, size: 4 AWG, length: 0.50 m }
                settings:
                  amp-sub.ch-1: { high-pass: { corner: 25 Hz, shape: butterworth, order: 2 }, band-above: [] }
                """);
        List<Integer> rounds = rounds(plan, known);
        Tally.say("questions left after each round of 25, a plan of ten lines: " + rounds);
    }

    /** The examples are asked for what is due before ordering: what is due later needs readings of a vehicle. */
    @ParameterizedTest
    @MethodSource("bayproof.command.NewJobTest#wholeExamples")
    void anExampleIsAskedUntilNothingStandsAgainstOrdering(String example) throws Exception {
        Path whole = folder.resolve("whole");
        assertEquals(0, Main.run(Stream.concat(Stream.of("new", whole.toString(), "--from", example),
                WishList.questions().keySet().stream().map(wish -> "--wish=" + wish + "=none")).toArray(String[]::new)).status());
        FilledExample.fill(whole);
        Path job = folder.resolve("job");
        assertEquals(0, Main.run("new", job.toString(), "--from", example, "--no-questions").status());
        List<Integer> rounds = rounds(job.resolve("plan.yaml"), JobFiles.read(whole.resolve("plan.yaml"), null), "before-order");
        Tally.say("questions left after each round of 25, example " + example + " before ordering: " + rounds);
        assertEquals(0, Main.run("review", job.resolve("plan.yaml").toString()).status());
    }

    private static List<Integer> rounds(Path plan, JobFiles known) throws Exception {
        return rounds(plan, known, "handover");
    }

    /** How many questions there are before the first round and after each. */
    private static List<Integer> rounds(Path plan, JobFiles known, String gate) throws Exception {
        List<Integer> left = new ArrayList<>(List.of(questions(plan, gate)));
        while (left.get(left.size() - 1) > 0) {
            Reply form = Main.run("review", plan.toString(), "--gate=" + gate, "--ask");
            Path filled = Files.writeString(plan.resolveSibling("form.md"), filled(form.out(), known, JobFiles.read(plan, null)));
            Reply read = Main.run("new", plan.toString(), "--answers", filled.toString(), "--write");
            left.add(questions(plan, gate));
            // An answer may bring a rule into play that asks for more, such as the zone of a place; each round must tell something new.
            boolean told = Pattern.compile("(?m)^[1-9][0-9]* answers? written").matcher(read.out()).find();
            assertTrue(told && left.size() <= MOST_ROUNDS, () -> left + "\n" + read.out() + read.err() + Main.run("review", plan.toString(), "--gate=" + gate).out());
        }
        return left;
    }

    private static int questions(Path plan, String gate) throws IOException {
        Reply reply = Main.run("review", plan.toString(), "--gate=" + gate, "--as=json");
        assertTrue(reply.status() < 2, reply.err());
        JsonNode json = new ObjectMapper().readTree(reply.out());
        return json.get("questions").size();
    }

    /** A form filled in by somebody who knows the whole job; what its files do not hold is left blank. */
    private static String filled(String form, JobFiles known, JobFiles now) {
        List<String> lines = new ArrayList<>();
        String path = null;
        String ask = "";
        Set<String> given = new HashSet<>();
        now.tree("plan").entries().values().stream().filter(group -> group.value() instanceof MapTree)
                .forEach(group -> ((MapTree) group.value()).entries().keySet().forEach(id -> given.add(group.key() + "." + id)));
        for (String line : form.lines().toList()) {
            Matcher marked = PATH.matcher(line);
            if (line.startsWith("- ")) {
                ask = line;
            } else if (marked.find()) {
                path = marked.group(1);
            }
            String answer = path == null || !line.contains("Answer") ? null : path.equals("form.by") ? "apprentice"
                    : path.equals("form.when") ? "2026-11-20T10:20" : answer(path, ask, known, given);
            lines.add(answer == null ? line : line.replaceAll("_{5,}", Matcher.quoteReplacement(answer)));
        }
        return String.join("\n", lines);
    }

    private static String answer(String path, String ask, JobFiles known, Set<String> given) {
        Address address = Address.of(known, path);
        if (address == null) {
            return null;
        }
        Tree measured = reading(path, known);
        if (measured != null) {
            return text(measured);
        }
        Tree value = Address.at(known.tree(address.kind()), address.keys());
        int depth = path.startsWith("items.") ? 2 : path.startsWith("supply.sources.") ? 3 : 0;
        if (value == null && depth > 0 && address.keys().size() > depth
                && Address.at(known.tree(address.kind()), address.keys().subList(0, depth)) instanceof MapTree item && item.get("part") instanceof ScalarTree part) {
            value = Address.at(known.tree("parts"), Stream.concat(Stream.of("parts", part.text()), address.keys().subList(depth, address.keys().size()).stream()).toList());
        }
        if (value == null && path.startsWith("pass-throughs.")) {
            value = Address.at(known.tree("plan"), address.keys());
        }
        if (value instanceof MapTree group && address.group()) {
            return group.entries().values().stream().filter(entry -> path.startsWith("inspections.") || isMeant(entry, ask, known)).filter(entry -> given.add(path + "." + entry.key()))
                    .map(entry -> entry.key() + ": " + inside(entry.value())).collect(Collectors.collectingAndThen(Collectors.joining(", ", "{ ", " }"),
                            all -> all.equals("{  }") ? null : all));
        }
        return value == null ? null : text(value);
    }

    /** Of what is asked for by its kind, or by the items and terminals it joins, the entries that name them all; of anything else all. */
    private static boolean isMeant(Entry entry, String ask, JobFiles known) {
        Matcher ofKind = OF_KIND.matcher(ask);
        if (ofKind.find() && entry.value() instanceof MapTree item && item.get("part") instanceof ScalarTree part
                && !text(Address.at(known.tree("parts"), List.of("parts", part.text(), "kind"))).equals(ofKind.group(1))) {
            return false;
        }
        String said = " " + entry.key() + " " + text(entry.value()).replaceAll("[^a-z0-9.-]+", " ") + " ";
        Set<String> items = ((MapTree) known.tree("plan").get("items")).entries().keySet();
        return Arrays.stream(ask.replaceAll("^- ", "").split("[^a-zA-Z0-9.-]+")).filter(word -> items.contains(word.replaceAll("\\..*", "")))
                .allMatch(word -> said.contains(" " + word + " ") || !word.contains(".") && said.contains(" " + word + "."));
    }

    private static Tree reading(String path, JobFiles known) {
        return known.tree("readings").get("readings") instanceof MapTree all ? all.entries().values().stream().map(entry -> (MapTree) entry.value())
                .filter(one -> text(one.get("of")).equals(path)).map(one -> one.get("value")).findFirst().orElse(null) : null;
    }

    private static String text(Tree tree) {
        if (tree instanceof ScalarTree scalar) {
            return scalar.text();
        }
        return tree instanceof ListTree list ? list.items().stream().map(AskRoundsTest::text).collect(Collectors.joining(", ", "[", "]"))
                : ((MapTree) tree).entries().values().stream().map(entry -> entry.key() + ": " + inside(entry.value())).collect(Collectors.joining(", ", "{ ", " }"));
    }

    /** The same inside of a group, where a comma ends a value that stands in no quotes. */
    private static String inside(Tree tree) {
        return tree instanceof ScalarTree scalar && scalar.text().contains(",") ? "\"" + scalar.text() + "\"" : text(tree);
    }

    private static Path copy(Path to, String name) throws IOException {
        Path job = Files.createDirectories(to.resolve("cases").resolve(name));
        Files.createDirectories(to.resolve("seeds"));
        Files.copy(Path.of("../seeds/parts.yaml"), to.resolve("seeds/parts.yaml"));
        try (Stream<Path> files = Files.list(Path.of("../cases").resolve(name))) {
            for (Path file : files.toList()) {
                Files.copy(file, job.resolve(file.getFileName()));
            }
        }
        return job.resolve("plan.yaml");
    }

    /** Takes a share of the values out of the plan's and the sheet's lines, and the readings' entries, where no name hangs on them. */
    private static void takeOut(Path plan, int share, Random random) throws IOException {
        for (String name : List.of("plan.yaml", "vehicle.yaml")) {
            Path file = plan.resolveSibling(name);
            StringBuilder out = new StringBuilder();
            for (String line : Files.readString(file).split("(?<=\n)")) {
                Matcher value = LINE_VALUE.matcher(line);
                out.append(value.replaceAll(found -> random.nextInt(100) < share && !line.contains("steps") ? "" : Matcher.quoteReplacement(found.group())));
            }
            Files.writeString(file, out.toString().replaceAll(",(\\s*})", "$1"));
        }
    }
}
