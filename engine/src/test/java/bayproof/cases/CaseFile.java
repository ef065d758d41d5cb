package bayproof.cases;

import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import bayproof.support.Jobs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The cases of one rule as its file says them.
 *
 * @param path  where it lies
 * @param rule  the rule it proves
 * @param lacks kinds of case that the rule cannot have, with the reason
 */
record CaseFile(Path path, String rule, Map<String, String> lacks, List<Case> cases) {
    private static final List<String> KEYS = List.of("bayproof", "kind", "rule", "lacks", "cases");
    private static final List<String> CASE_KEYS = List.of("case", "base", "change", "expect", "waits-for", "edge");
    private static final List<String> CLAIM_KEYS = List.of("rule", "subject", "outcome", "weight", "because");

    /**
     * One change to a clean job.
     *
     * @param waitsFor path that every further unshown verdict waits for; null where the case lists them all
     * @param edge     whether the case stands just inside the limit
     */
    record Case(String title, String rule, String base, MapTree change, List<Claim> claims, String waitsFor, boolean edge) {
        Stream<Claim> own() {
            return claims.stream().filter(claim -> claim.rule().equals(rule));
        }
    }

    /** Every case file, in the order of the rules' names. */
    static List<CaseFile> all() {
        try (Stream<Path> topics = Files.list(Jobs.CASES)) {
            List<CaseFile> files = new ArrayList<>();
            for (Path topic : topics.filter(CaseFile::isTopic).sorted().toList()) {
                try (Stream<Path> inside = Files.list(topic)) {
                    for (Path file : inside.filter(one -> one.toString().endsWith(".yaml")).sorted().toList()) {
                        files.add(read(file));
                    }
                }
            }
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether a folder holds cases, and not a whole job or a vehicle that one moves into. */
    static boolean isTopic(Path folder) {
        return Files.isDirectory(folder) && !Files.exists(folder.resolve("plan.yaml")) && !Files.exists(folder.resolve("vehicle.yaml"));
    }

    static CaseFile read(Path path) {
        try {
            return of(path, TreeReader.read(path, path.toString()));
        } catch (UnusableInput e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    static CaseFile of(Path path, MapTree file) {
        onlyKeys(file, KEYS);
        if (!word(file, "bayproof").equals("1") || !word(file, "kind").equals("cases")) {
            throw wrong(file, "a case file begins with \"bayproof: 1\" and \"kind: cases\"");
        }
        String rule = word(file, "rule");
        Map<String, String> lacks = new LinkedHashMap<>();
        if (file.get("lacks") != null) {
            map(file, "lacks").entries().values().forEach(entry -> lacks.put(entry.key(), text(entry.value())));
        }
        List<Case> cases = new ArrayList<>();
        for (Tree one : list(file, "cases").items()) {
            cases.add(readCase(rule, one));
        }
        return new CaseFile(path, rule, lacks, cases);
    }

    private static Case readCase(String rule, Tree tree) {
        if (!(tree instanceof MapTree map)) {
            throw wrong(tree, "a case is a group of keys");
        }
        onlyKeys(map, CASE_KEYS);
        List<Claim> claims = new ArrayList<>();
        for (Tree one : list(map, "expect").items()) {
            if (!(one instanceof MapTree claim)) {
                throw wrong(one, "an entry of \"expect\" is a group of keys");
            }
            claims.add(claim(claim));
        }
        String edge = map.get("edge") == null ? "false" : word(map, "edge");
        if (!edge.equals("true") && !edge.equals("false")) {
            throw wrong(map.get("edge"), "\"edge\" is true or left out");
        }
        return new Case(word(map, "case"), rule, word(map, "base"), map(map, "change"), claims,
                map.get("waits-for") == null ? null : word(map, "waits-for"), edge.equals("true"));
    }

    private static Claim claim(MapTree map) {
        onlyKeys(map, CLAIM_KEYS);
        Tree subject = map.get("subject");
        if (subject == null) {
            throw wrong(map, "an entry names its subject; null is one too");
        }
        return new Claim(word(map, "rule"), ((ScalarTree) subject).isEmpty() ? null : text(subject),
                Outcome.valueOf(word(map, "outcome").toUpperCase(Locale.ROOT).replace('-', '_')),
                map.get("weight") == null ? null : Weight.of(word(map, "weight")),
                map.get("because") == null ? null : word(map, "because"));
    }

    private static void onlyKeys(MapTree map, List<String> known) {
        for (Entry entry : map.entries().values()) {
            if (!known.contains(entry.key())) {
                throw new AssertionError(entry.keyAt() + ": the key \"" + entry.key() + "\" is none of " + known);
            }
        }
    }

    private static AssertionError wrong(Tree where, String what) {
        return new AssertionError(where.at() + ": " + what);
    }

    private static Tree value(MapTree map, String key) {
        Tree value = map.get(key);
        if (value == null) {
            throw wrong(map, "the key \"" + key + "\" is missing");
        }
        return value;
    }

    private static MapTree map(MapTree map, String key) {
        if (value(map, key) instanceof MapTree inner) {
            return inner;
        }
        throw wrong(map.get(key), "\"" + key + "\" is a group of keys");
    }

    private static ListTree list(MapTree map, String key) {
        if (value(map, key) instanceof ListTree list) {
            return list;
        }
        throw wrong(map.get(key), "\"" + key + "\" is a list");
    }

    private static String word(MapTree map, String key) {
        return text(value(map, key));
    }

    private static String text(Tree tree) {
        if (tree instanceof ScalarTree scalar && !scalar.isEmpty()) {
            return scalar.text();
        }
        throw wrong(tree, "one word or sentence is needed here");
    }
}
