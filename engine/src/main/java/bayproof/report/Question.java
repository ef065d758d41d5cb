package bayproof.report;

import bayproof.judge.Verdict;
import bayproof.vocabulary.Need;
import java.util.List;

/**
 * A fact that nobody gave, with the verdicts that wait for it.
 *
 * @param need   what to find out
 * @param limit  name of the limit that stands in for the fact meanwhile; null where nothing does
 * @param checks the verdicts, heaviest first
 */
record Question(Need need, String limit, List<Verdict> checks) {
    Question {
        checks = List.copyOf(checks);
    }

    String words() {
        return words(need);
    }

    /** Where a fact would stand and what it is; a path that names no single value adds nothing to the question. */
    static String words(Need need) {
        String ask = Plain.text(need.ask());
        return need.path().contains(".") ? Plain.text(need.path()) + ": " + ask : Plain.capital(ask);
    }
}
