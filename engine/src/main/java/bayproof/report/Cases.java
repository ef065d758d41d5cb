package bayproof.report;

import bayproof.judge.RuleFault;
import bayproof.judge.RuleInfo;
import bayproof.read.Tree;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The cases that prove and teach a rule, as far as a page tells them. */
final class Cases {
    private static final Set<String> MOVED = Set.of("broken", "unshown");

    /**
     * One case.
     *
     * @param title   what was changed in the clean job
     * @param moved   rules that break or wait for a fact because of it, by id
     * @param mistake whether the rule whose case it is does so
     */
    record Told(String title, List<String> moved, boolean mistake) {
    }

    private Cases() {
    }

    /** The cases of a rule in the order of its file; empty where it has none. */
    static List<Told> of(RuleInfo rule) {
        List<Told> told = new ArrayList<>();
        try (InputStream in = Cases.class.getResourceAsStream("/bayproof/cases/" + rule.topic() + "/" + rule.id() + ".yaml")) {
            if (in != null && TreeReader.read(in.readAllBytes(), rule.id() + ".yaml").get("cases") instanceof ListTree cases) {
                for (Tree one : cases.items()) {
                    if (one instanceof MapTree map && map.get("case") instanceof ScalarTree title) {
                        TreeSet<String> moved = moved(map);
                        told.add(new Told(title.text(), List.copyOf(moved), moved.contains(rule.id())));
                    }
                }
            }
            return told;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (UnusableInput e) {
            throw new RuleFault("the cases of the rule " + rule.id() + " cannot be read: " + e.getMessage(), e);
        }
    }

    private static TreeSet<String> moved(MapTree one) {
        TreeSet<String> moved = new TreeSet<>();
        if (one.get("expect") instanceof ListTree expected) {
            for (Tree entry : expected.items()) {
                if (entry instanceof MapTree map && map.get("outcome") instanceof ScalarTree outcome && MOVED.contains(outcome.text())
                        && map.get("rule") instanceof ScalarTree rule) {
                    moved.add(rule.text());
                }
            }
        }
        return moved;
    }
}
