package bayproof.cases;

import bayproof.cases.CaseFile.Case;
import bayproof.demand.Outcome;
import bayproof.judge.Verdict;
import bayproof.read.JobFiles;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.UnusableInput;
import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import bayproof.units.UnitException;
import bayproof.units.Units;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A case carried out: its change made to its clean job, and what then moved held against what the case says. */
final class Trial {
    /** A case at the edge holds with less than this share of its limit to spare. */
    private static final double EDGE = 0.05;

    private final Case one;
    private final Set<Said> before;
    private final Evaluation after;
    private final List<String> wrong = new ArrayList<>();

    private Trial(Case one, Evaluation base, Evaluation after) {
        this.one = one;
        this.before = Said.all(base.judgment());
        this.after = after;
    }

    /** Carries a case out; an unsound one is an assertion error. */
    static Trial of(Case one) {
        return of(one, Jobs.asWritten(one.base()));
    }

    static Trial of(Case one, Evaluation base) {
        List<String> idle = new ArrayList<>();
        one.change().entries().values().forEach(patch -> idle(base.files().tree(patch.key()), patch.value(), patch.key(), idle));
        if (!idle.isEmpty() || one.change().entries().isEmpty()) {
            throw new AssertionError("the change does nothing here: " + (idle.isEmpty() ? "it is empty" : String.join("; ", idle)));
        }
        try {
            return new Trial(one, base, Evaluation.of(base.files().patched(one.change())));
        } catch (UnusableInput e) {
            throw new AssertionError("the changed job cannot be read:\n" + e.getMessage(), e);
        }
    }

    /** Notes every value of a patch that takes away what is not there or says what was said already. */
    private static void idle(Tree target, Tree patch, String path, List<String> idle) {
        if (patch instanceof MapTree map) {
            if (map.entries().isEmpty()) {
                idle.add(path + " is an empty group");
            }
            for (Entry entry : map.entries().values()) {
                idle(target instanceof MapTree inner ? inner.get(entry.key()) : null, entry.value(), path + "." + entry.key(), idle);
            }
        } else if (patch instanceof ScalarTree scalar && scalar.isEmpty()) {
            if (target == null) {
                idle.add(path + " is not there to be taken out");
            }
        } else if (target != null && plain(target).equals(plain(patch))) {
            idle.add(path + " says that already");
        }
    }

    private static Object plain(Tree tree) {
        if (tree instanceof ListTree list) {
            return list.items().stream().map(Trial::plain).toList();
        }
        return tree instanceof ScalarTree scalar ? scalar.text() : ((MapTree) tree).entries().keySet();
    }

    Evaluation after() {
        return after;
    }

    /** What counts: each verdict that was or became broken or unshown and is not what it was. */
    Set<Said> moved() {
        Set<Said> now = Said.all(after.judgment());
        Set<Said> moved = new LinkedHashSet<>();
        now.stream().filter(said -> !before.contains(said) && (said.isTrouble() || wasTrouble(said))).forEach(moved::add);
        // What vanished with its subject counts when it was broken or unshown.
        before.stream().filter(said -> said.isTrouble() && now.stream().noneMatch(other -> sameSubject(said, other))).forEach(moved::add);
        return moved;
    }

    private boolean wasTrouble(Said said) {
        return before.stream().anyMatch(old -> sameSubject(old, said) && old.isTrouble());
    }

    private static boolean sameSubject(Said one, Said other) {
        return one.rule().equals(other.rule()) && java.util.Objects.equals(one.subject(), other.subject());
    }

    /** Everything in which the job does not do what the case says; empty when all is as said. */
    List<String> differences() {
        soundness();
        Set<Said> moved = moved();
        Set<Said> now = Said.all(after.judgment());
        List<Said> unlisted = new ArrayList<>();
        for (Said said : moved) {
            if (said.isTrouble() && now.contains(said) && one.claims().stream().noneMatch(claim -> claim.agreesWith(said))) {
                unlisted.add(said);
            } else if (!said.isTrouble() && one.claims().stream().noneMatch(claim -> claim.agreesWith(said))) {
                wrong.add("moved and was not expected: " + said);
            }
        }
        waiting(unlisted);
        for (Claim claim : one.claims()) {
            if (claim.isOfTrouble() ? moved.stream().noneMatch(claim::agreesWith) : now.stream().noneMatch(claim::agreesWith)) {
                String found = now.stream().filter(claim::speaksOf).map(said -> "it says " + said.outcome().word()
                        + (said.weight() == null ? "" : ", " + said.weight().word()) + reason(said)).findFirst().orElse("there is no such verdict");
                wrong.add("expected and did not happen: " + claim + "; " + found);
            }
        }
        if (one.edge()) {
            edge();
        }
        return wrong;
    }

    private void soundness() {
        if (one.own().findAny().isEmpty()) {
            wrong.add("the case says nothing of its own rule " + one.rule());
        }
        for (Claim claim : one.claims()) {
            if (!claim.rule().equals(one.rule()) && claim.because() == null) {
                wrong.add("an entry beyond the case's own rule says because: " + claim);
            }
            if (one.claims().stream().filter(other -> other.rule().equals(claim.rule())
                    && java.util.Objects.equals(other.subject(), claim.subject())).count() > 1) {
                wrong.add("said twice: " + claim);
            }
        }
    }

    private void waiting(List<Said> unlisted) {
        boolean any = false;
        for (Said said : unlisted) {
            boolean waits = one.waitsFor() != null && said.outcome() == Outcome.UNSHOWN
                    && verdict(said).needs().stream().anyMatch(need -> need.path().equals(one.waitsFor()));
            any |= waits;
            if (!waits) {
                wrong.add("moved and was not expected: " + said + reason(said));
            }
        }
        if (one.waitsFor() != null && !any) {
            wrong.add("no further unshown verdict waits for " + one.waitsFor());
        }
    }

    private Verdict verdict(Said said) {
        return after.judgment().verdicts().stream().filter(verdict -> verdict.rule().id().equals(said.rule())
                && verdict.subject().equals(said.subject())).findFirst().orElseThrow();
    }

    private String reason(Said said) {
        if (said.outcome() == Outcome.NOT_APPLICABLE) {
            return "";
        }
        Verdict verdict = verdict(said);
        return " (" + verdict.because() + (verdict.needs().isEmpty() ? "" : "; waits for "
                + String.join(", ", verdict.needs().stream().map(need -> need.path()).toList())) + ")";
    }

    // the edge of a limit

    private void edge() {
        List<Claim> holding = one.own().filter(claim -> claim.outcome() == Outcome.HOLDS).toList();
        if (holding.isEmpty()) {
            wrong.add("a case at the edge says that its own rule holds");
        }
        for (Claim claim : holding) {
            after.judgment().verdicts().stream().filter(verdict -> verdict.rule().id().equals(claim.rule())
                    && verdict.subject().equals(claim.subject())).forEach(this::edge);
        }
    }

    private void edge(Verdict verdict) {
        double share = verdict.marginFraction();
        if (!Double.isNaN(share) && (share < 0 || share >= EDGE)) {
            wrong.add("not at the edge: " + verdict.key() + " holds with " + share * 100 + " % of the limit to spare");
        }
        if (Double.isNaN(share) && (Double.isNaN(verdict.margin()) || !breaksALittleFurther(verdict))) {
            wrong.add("not at the edge: " + verdict.key() + " still holds when the changed figures are 5 % worse");
        }
    }

    /** Where the limit is nought no share of it can be taken: the figures that the case changed are moved by that share instead. */
    private boolean breaksALittleFurther(Verdict verdict) {
        for (double factor : new double[] {1 - EDGE, 1 + EDGE}) {
            for (Entry file : one.change().entries().values()) {
                MapTree further = new MapTree(Map.of(file.key(), new Entry(file.key(), file.keyAt(), scaled(file.value(), factor))), file.keyAt());
                if (breaks(after.files().patched(further), verdict)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean breaks(JobFiles files, Verdict verdict) {
        try {
            return Evaluation.of(files).judgment().verdicts().stream()
                    .anyMatch(other -> other.key().equals(verdict.key()) && other.outcome() == Outcome.BROKEN);
        } catch (UnusableInput e) {
            return false;
        }
    }

    private static Tree scaled(Tree tree, double factor) {
        if (tree instanceof MapTree map) {
            MapTree result = map;
            for (Entry entry : map.entries().values()) {
                result = result.with(entry.key(), scaled(entry.value(), factor));
            }
            return result;
        }
        if (tree instanceof ScalarTree scalar) {
            try {
                Units.parse(scalar.text());
            } catch (UnitException e) {
                return tree;
            }
            String number = scalar.text().replaceFirst("[^0-9.].*", "");
            return new ScalarTree(new BigDecimal(number).multiply(BigDecimal.valueOf(factor)).stripTrailingZeros().toPlainString()
                    + scalar.text().substring(number.length()), scalar.quoted(), scalar.at());
        }
        return tree;
    }
}
