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

/** Titles of the cases that prove and teach a rule. */
final class CaseTitles {
    private CaseTitles() {
    }

    /** The titles in the order of the file; empty where the rule has no cases. */
    static List<String> of(RuleInfo rule) {
        List<String> titles = new ArrayList<>();
        try (InputStream in = CaseTitles.class.getResourceAsStream("/bayproof/cases/" + rule.topic() + "/" + rule.id() + ".yaml")) {
            if (in != null && TreeReader.read(in.readAllBytes(), rule.id() + ".yaml").get("cases") instanceof ListTree cases) {
                for (Tree one : cases.items()) {
                    if (one instanceof MapTree map && map.get("case") instanceof ScalarTree title) {
                        titles.add(title.text());
                    }
                }
            }
            return titles;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (UnusableInput e) {
            throw new RuleFault("the cases of the rule " + rule.id() + " cannot be read: " + e.getMessage(), e);
        }
    }
}
