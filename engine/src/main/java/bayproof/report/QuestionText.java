package bayproof.report;

import bayproof.demand.Gate;
import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.judge.Verdict;
import bayproof.review.OpenFact;
import bayproof.review.Question;
import bayproof.review.Questions;
import bayproof.vocabulary.Need;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;

/** Questions in words. */
final class QuestionText {
    /** How an entry of a group is written. */
    private static final Map<String, String> KEYS = Map.of("runs", "{ its-id: { from: item.terminal, to: item.terminal } }",
            "items", "{ its-id: { part: its-part } }", "speaker-wiring", "{ amp.ch-1: { net: sub.coil-1 } }",
            "pins", "{ radio-a.4: { connected-to: item.terminal } }", "steps", "{ its-id: { do: teardown, after: [] } }",
            "found", "{ its-id: { what: words, state: dead } }", "supply.sources", "{ its-id: { part: its-part } }");

    private QuestionText() {
    }

    /** Where a fact would stand and what it is; a path that names no single value adds nothing to the question. */
    static String words(Need need) {
        String ask = Plain.text(need.ask());
        return need.path().contains(".") ? Plain.text(need.path()) + ": " + ask : Plain.capital(ask);
    }

    /** What to find out; where another fact of the question has the same words, with the name that tells them apart. */
    static String ask(Question question, OpenFact fact) {
        String ask = fact.need().ask();
        String[] keys = fact.need().path().split("\\.");
        boolean alone = question.facts().stream().filter(other -> other.need().ask().equals(ask)).count() == 1;
        return alone || keys.length < 2 ? ask : keys[keys.length - 2] + ": " + ask;
    }

    /** A question in one line: the thing, and what to find out there. */
    static String line(Question question) {
        String thing = Plain.capital(Plain.text(question.thing().name()));
        if (question.facts().size() == 1) {
            return thing + ": " + Plain.text(question.facts().get(0).need().ask());
        }
        return thing + ": " + String.join(", ", question.facts().stream().map(QuestionText::shortly).distinct().toList());
    }

    private static String shortly(OpenFact fact) {
        String path = Plain.text(fact.need().path());
        return path.contains(".") ? path.substring(path.lastIndexOf('.') + 1) : Plain.text(fact.need().ask());
    }

    /** How many checks it holds up. */
    static String holdsUp(Question question) {
        return "holds up " + question.checks().size() + ", clears " + question.clears();
    }

    /** In which unit and with what a fact is found out; empty where there is nothing to say. */
    static String how(OpenFact fact) {
        String unit = unit(fact);
        String tool = fact.tool() == null ? "" : "tool: " + Plain.text(fact.tool());
        return unit + (unit.isEmpty() || tool.isEmpty() ? "" : "; ") + tool;
    }

    /** The units a fact may be given in, or the words it may be; empty where any words will do. */
    static String unit(OpenFact fact) {
        if (fact.address() == null) {
            return "";
        }
        if (fact.address().group()) {
            return KEYS.getOrDefault(fact.need().path(), "{ its-id: { key: value } }");
        }
        return fact.address().unit().isEmpty() ? String.join(", ", fact.address().words()) : fact.address().unit();
    }

    /** The rules that wait for a question, heaviest first, with how many checks of each. */
    static String rules(Question question) {
        Map<Weight, Map<String, Integer>> rules = new TreeMap<>(Comparator.reverseOrder());
        for (Verdict verdict : question.checks()) {
            rules.computeIfAbsent(verdict.weight(), any -> new TreeMap<>()).merge(verdict.rule().id(), 1, Integer::sum);
        }
        return String.join("; ", rules.entrySet().stream().map(entry -> entry.getKey() + " " + String.join(", ",
                entry.getValue().entrySet().stream().map(rule -> rule.getKey() + " " + rule.getValue()).toList())).toList());
    }

    /** How many questions and checks there are, and how many of the questions are asked. */
    static String total(Questions questions, int asked) {
        int all = questions.all().size();
        if (all == 0) {
            return "No questions.";
        }
        return (asked < all ? asked + " of " + Plain.count(all, "question") : Plain.count(all, "question")) + "; behind "
                + (all == 1 ? "it" : "all of them") + " stand " + Plain.count(questions.waiting().size(), "check") + ".";
    }

    /** What waits for a later gate, only counted; empty where nothing does. */
    static String later(Standing standing) {
        long open = standing.later().stream().filter(verdict -> verdict.outcome() == Outcome.UNSHOWN).count();
        if (open == 0) {
            return "";
        }
        Gate next = standing.later().stream().filter(verdict -> verdict.outcome() == Outcome.UNSHOWN).findFirst().orElseThrow().rule().gate();
        return "Later gates, from " + next.word() + " on, wait for " + Plain.count((int) open, "check") + " more; they are asked when they are due.";
    }
}
