package bayproof.report;

import bayproof.read.Problem;
import bayproof.vocabulary.At;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Why files cannot be used: every mistake with its place, what is wrong and what to write. */
public final class MistakesPage {
    private MistakesPage() {
    }

    /** One entry for each mistake; one that was made in several places, such as a name nobody knows, is told once. */
    public static Paper of(List<Problem> problems) {
        Map<String, List<Problem>> alike = new LinkedHashMap<>();
        problems.forEach(problem -> alike.computeIfAbsent(problem.at().file() + "\n" + problem.what() + "\n" + problem.fix(),
                any -> new ArrayList<>()).add(problem));
        Paper page = new Paper();
        alike.values().forEach(places -> mistake(page, places));
        return page.line(Plain.count(alike.size(), "mistake") + (alike.size() == problems.size() ? "" : " in " + problems.size() + " places")
                + ". Nothing was judged.");
    }

    private static void mistake(Paper page, List<Problem> places) {
        Problem first = places.get(0);
        page.hanging("", 4, first.at() + ": " + first.what());
        List<String> others = places.stream().map(Problem::at).map(At::line).filter(line -> line != first.at().line()).distinct()
                .map(String::valueOf).toList();
        if (!others.isEmpty()) {
            page.hanging("    ", "Also in line" + (others.size() == 1 ? " " : "s ") + String.join(", ", others) + ".");
        }
        if (!first.fix().isEmpty()) {
            page.hanging("    ", first.fix());
        }
    }
}
