package bayproof.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.cases.Changed;
import bayproof.facts.Numbers;
import bayproof.judge.Judgment;
import bayproof.judge.Verdict;
import bayproof.read.JobFiles;
import bayproof.read.Tree.MapTree;
import bayproof.read.UnusableInput;
import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Window;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The order of a file, the names in it and the units a figure is written in decide nothing. */
class SamenessTest {
    private static final MathContext TEN_DIGITS = new MathContext(10);

    /** A verdict as it must stay, its figures rounded to ten digits. */
    private record Kept(String rule, String subject, String outcome, String weight, String measured, String limit, List<String> needs,
                        List<String> windows) {
        static List<Kept> all(Judgment judgment, UnaryOperator<String> names) {
            List<Kept> all = new ArrayList<>();
            for (Verdict verdict : judgment.verdicts()) {
                all.add(new Kept(verdict.rule().id(), names.apply(verdict.subject()), verdict.outcome().word(), verdict.weight().word(),
                        verdict.measured() == null || verdict.measured().word() != null ? "" : rounded(verdict.measured().number()),
                        verdict.limit() == null ? "" : verdict.limit().limit().name() + rounded(verdict.limit().value()),
                        verdict.needs().stream().map(Need::path).map(names).distinct().sorted().toList(),
                        verdict.windows().stream().map(Window::path).map(names).distinct().sorted().toList()));
            }
            for (Judgment.NotApplicable outside : judgment.notApplicable()) {
                all.add(new Kept(outside.rule().id(), outside.subject() == null ? "" : names.apply(outside.subject()), "not-applicable",
                        "", "", "", List.of(), List.of()));
            }
            all.sort(Comparator.comparing(Kept::rule).thenComparing(Kept::subject));
            return all;
        }
    }

    private static String rounded(double number) {
        return Math.abs(number) < 1e-12 ? "0" : !Double.isFinite(number) ? Double.toString(number) : new BigDecimal(number).round(TEN_DIGITS).stripTrailingZeros().toString();
    }

    private static Map<String, String> figures(Evaluation evaluation, UnaryOperator<String> names) {
        Map<String, String> figures = new TreeMap<>();
        for (Map.Entry<String, Numbers.Figure> figure : evaluation.facts().numbers().all().entrySet()) {
            figures.put(names.apply(figure.getKey()), rounded(figure.getValue().value()));
        }
        return figures;
    }

    private static void assertSame(Changed job, JobFiles files, UnaryOperator<String> names) {
        try {
            Evaluation after = Evaluation.of(files);
            List<Kept> wanted = Kept.all(job.evaluation().judgment(), names);
            List<Kept> kept = Kept.all(after.judgment(), UnaryOperator.identity());
            if (!wanted.equals(kept)) {
                assertEquals(lines(wanted), lines(kept), job.title());
            }
            assertEquals(figures(job.evaluation(), names), figures(after, UnaryOperator.identity()), job.title());
        } catch (UnusableInput e) {
            throw new AssertionError(job.title() + ":\n" + e.getMessage(), e);
        }
    }

    private static String lines(List<Kept> all) {
        return String.join("\n", all.stream().map(Kept::toString).toList());
    }

    @Test
    void theOrderOfAFileDecidesNothing() {
        Changed.withClean().parallel().forEach(job -> {
            // A clean job three times; the job of a case once, each in an order of its own.
            for (int order = 1; order <= (Jobs.CLEAN.contains(job.title()) ? 3 : 1); order++) {
                JobFiles files = job.evaluation().files();
                for (String kind : JobFiles.KINDS) {
                    files = files.with(kind, Rewriting.shuffled(files.tree(kind), new Random(job.title().hashCode() + order)));
                }
                assertSame(job, files, UnaryOperator.identity());
                Tally.count("sweep mutations", 1);
            }
        });
    }

    @Test
    void theNamesInAFileDecideNothing() {
        // A waiver is given on one thing by its name: what goes by another name was not accepted.
        Changed.withClean().parallel().filter(job -> job.evaluation().job().waivers().isEmpty()).forEach(job -> {
            Rewriting.Names names = new Rewriting.Names(job.evaluation().files());
            JobFiles renamed = names.renamed(job.evaluation().files());
            if (renamed.tree("plan").get("items") instanceof MapTree items) {
                assertTrue(Collections.disjoint(job.evaluation().job().items().keySet(), items.entries().keySet()));
            }
            assertSame(job, renamed, names::path);
            Tally.count("sweep mutations", 1);
        });
    }

    @Test
    void theUnitOfAFigureDecidesNothing() {
        Changed.withClean().parallel().forEach(job -> {
            for (int choice = 0; choice < Rewriting.MOST_UNITS; choice++) {
                JobFiles files = job.evaluation().files();
                AtomicInteger rewritten = new AtomicInteger();
                for (String kind : JobFiles.KINDS) {
                    files = files.with(kind, (MapTree) Rewriting.inOtherUnits(files.tree(kind), choice, rewritten));
                }
                assertNotEquals(0, rewritten.get(), job.title());
                assertSame(job, files, UnaryOperator.identity());
                Tally.count("sweep mutations", 1);
            }
        });
    }
}
