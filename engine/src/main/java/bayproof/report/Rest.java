package bayproof.report;

import bayproof.demand.Gate;
import bayproof.demand.Limit;
import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.facts.Numbers;
import bayproof.judge.Card;
import bayproof.judge.Judgment;
import bayproof.judge.RuleInfo;
import bayproof.judge.Verdict;
import bayproof.read.Sizes;
import bayproof.read.Waiver;
import bayproof.review.Evaluation;
import bayproof.review.Remedy;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What follows the first screen of a review: everything, with reasons and calculations. */
final class Rest {
    private static final String MARGIN = "      ";

    private final Standing standing;
    private final Places places;
    private final Paper page = new Paper();

    Rest(Standing standing, Places places) {
        this.standing = standing;
        this.places = places;
    }

    /** @param all whether what holds and what does not apply is wanted as well */
    Paper paper(boolean all) {
        cautions();
        broken();
        unshown();
        assumed();
        shopLimits();
        later();
        waived();
        if (all) {
            holds();
            notApplicable();
        } else {
            page.blank().line("HOLDS  " + Plain.count(standing.due(Outcome.HOLDS).size(), "check") + "; does not apply: "
                    + standing.notApplicable().size() + ". With --all both are listed, with margins and reasons.");
        }
        return page.blank().all(new QuestionList(standing, places).paper());
    }

    private void heading(String word, int number, String noun) {
        page.blank().line(word + "  " + (number == 0 ? "none" : Plain.count(number, noun)));
    }

    private void cautions() {
        Set<String> cautions = new LinkedHashSet<>();
        List<Verdict> due = standing.due().stream().filter(verdict -> verdict.outcome() != Outcome.HOLDS).toList();
        for (Verdict verdict : due) {
            if (verdict.weight() == Weight.STOP) {
                String caution = Card.of(verdict.rule()).caution();
                if (caution != null) {
                    cautions.add(caution);
                }
            }
        }
        if (due.stream().anyMatch(verdict -> verdict.weight() == Weight.STOP)) {
            Cautions.print(page, cautions);
        }
    }

    // broken

    private void broken() {
        List<Verdict> broken = standing.due(Outcome.BROKEN);
        heading("BROKEN", broken.size(), "check");
        for (Verdict verdict : broken) {
            page.line("");
            head(verdict);
            Remedy remedy = standing.remedy(verdict);
            page.hanging(MARGIN + "Put right: ", MARGIN.length(), remedy == null ? "see why " + verdict.rule().id() + "." : Plain.sentence(remedy.say()));
            if (remedy != null && remedy.knob() != null) {
                page.hanging(MARGIN + "In the " + (remedy.knob().file().equals("plan") ? "plan" : remedy.knob().file() + " file") + ": ",
                        MARGIN.length(), remedy.knob().dotted() + ": " + remedy.value());
            }
            page.hanging(MARGIN + "Because: ", MARGIN.length(), Plain.sentence(verdict.because()));
            worked(verdict);
            margin(verdict);
            sources(verdict);
            rests(verdict);
            Waiver waiver = standing.waiver(verdict);
            if (waiver != null) {
                page.hanging(MARGIN + "Waived: ", MARGIN.length(), WaiverText.whole(waiver));
            }
        }
    }

    private void head(Verdict verdict) {
        page.parts(0, List.of(Plain.padded(verdict.weight().name(), 4) + "  " + verdict.subject(), places.line(verdict.at()), verdict.rule().id()));
    }

    /** The calculation behind the number that was held against the limit. */
    private void worked(Verdict verdict) {
        Numbers.Figure figure = figure(standing.evaluation(), verdict);
        if (figure != null && figure.calculation() != null) {
            page.hanging(MARGIN + "Worked out: ", MARGIN.length(), Plain.sentence(figure.calculation()));
        }
    }

    /** The figure that a verdict was about, one named after the rule first; null where the number was given as it is. */
    static Numbers.Figure figure(Evaluation evaluation, Verdict verdict) {
        if (verdict.measured() == null || verdict.measured().word() != null) {
            return null;
        }
        Map<String, Numbers.Figure> all = evaluation.facts().numbers().all();
        Numbers.Figure named = all.get(verdict.subject() + "." + verdict.rule().id());
        if (named != null && isMeasured(named, verdict)) {
            return named;
        }
        return all.entrySet().stream().filter(entry -> entry.getKey().startsWith(verdict.subject() + ".") && isMeasured(entry.getValue(), verdict))
                .map(Map.Entry::getValue).findFirst().orElse(null);
    }

    private static boolean isMeasured(Numbers.Figure figure, Verdict verdict) {
        return figure.value() == verdict.measured().number() && figure.dimension().symbol().equals(verdict.measured().unit());
    }

    private void margin(Verdict verdict) {
        String margin = Amounts.margin(verdict);
        if (margin != null) {
            String next = Double.isNaN(verdict.limit().next()) ? "" : "; the next step stands at "
                    + Amounts.print(verdict.limit().next(), verdict.limit().limit().unit());
            page.hanging(MARGIN + "Margin: ", MARGIN.length(), margin + next + ".");
        }
    }

    private void sources(Verdict verdict) {
        if (verdict.limit() == null) {
            return;
        }
        Limit limit = verdict.limit().limit();
        page.hanging(MARGIN + "Limit: ", MARGIN.length(), limit.name() + ", " + Amounts.figure(limit) + "; " + limit.source()
                + (limit.state().isEmpty() ? "" : " (" + limit.state() + ")") + ".");
        if (!limit.others().isEmpty()) {
            List<String> others = limit.others().stream().map(other -> other.value() + " (" + other.source() + ")").toList();
            page.hanging(MARGIN + "Others: ", MARGIN.length(), String.join("; ", others) + ".");
        }
    }

    private void rests(Verdict verdict) {
        if (!verdict.windows().isEmpty()) {
            page.hanging(MARGIN + "Rests on: ", MARGIN.length(), String.join(", ",
                    verdict.windows().stream().map(window -> window.limit()).distinct().toList()) + ".");
        }
    }

    // unshown

    private void unshown() {
        int facts = standing.questions().facts().size();
        int waiting = standing.due(Outcome.UNSHOWN).size();
        page.blank().line("NOT SHOWN  " + (waiting == 0 ? "none" : Plain.count(facts, "fact") + ", and " + Plain.count(waiting, "check")
                + " that " + (waiting == 1 ? "waits" : "wait") + ". The questions stand at the end."));
        undecided();
    }

    /** Verdicts that a window leaves open, each with the two ends it lies between. */
    private void undecided() {
        List<Verdict> between = standing.due(Outcome.UNSHOWN).stream().filter(verdict -> !verdict.windows().isEmpty()).toList();
        if (!between.isEmpty()) {
            page.blank().line("Decided only once a value is known:");
            for (Verdict verdict : between) {
                page.hanging("    " + verdict.subject() + ": ", 8, Sizes.bothWays(verdict.because()) + ". Weightiest first: "
                        + String.join(", ", verdict.windows().stream().map(window -> window.limit()).distinct().toList())
                        + "  (" + verdict.rule().id() + ")");
            }
        }
    }

    // what it rests on

    private void assumed() {
        List<Carried> assumed = standing.assumed();
        heading("ASSUMED", assumed.size(), "value");
        for (Carried carried : assumed) {
            page.line("");
            page.hanging("  ", 6, carried.limit().name() + "  "
                    + Amounts.window(carried.limit(), carried.window().low(), carried.window().high())
                    + standsFor(carried.window().path()));
            page.hanging(MARGIN, Plain.sentence(carried.limit().says()));
            Map<String, Integer> rules = new TreeMap<>();
            carried.carries().forEach(verdict -> rules.merge(verdict.rule().id(), 1, Integer::sum));
            page.hanging(MARGIN + "Carries: ", MARGIN.length(), String.join(", ",
                    rules.entrySet().stream().map(entry -> entry.getKey() + " " + entry.getValue()).toList()) + ".");
        }
    }

    /** What a window stands for; several values of one kind share a window and have only their kind as its path. */
    private static String standsFor(String path) {
        return path.isEmpty() ? "" : path.contains(".") ? "  in place of " + path : "  for several " + path;
    }

    private void shopLimits() {
        List<Limit> changed = standing.shopLimits();
        if (changed.isEmpty()) {
            return;
        }
        heading("SHOP LIMITS", changed.size(), "figure");
        changed.forEach(limit -> shopLimit(page, limit));
    }

    /** A figure of the shop's own, with what it replaces and why. */
    static void shopLimit(Paper page, Limit limit) {
        page.hanging("  " + (limit.changed().looser() ? "LOOSER  " : "safer   "), limit.name() + ": " + Amounts.figure(limit)
                + ", in place of " + limit.changed().was() + ". Reason: " + limit.changed().reason() + ".");
    }

    // later

    private void later() {
        heading("DUE LATER", standing.later().size(), "check");
        Map<Gate, Map<RuleInfo, int[]>> gates = new TreeMap<>();
        for (Verdict verdict : standing.later()) {
            gates.computeIfAbsent(verdict.rule().gate(), any -> new TreeMap<>())
                    .computeIfAbsent(verdict.rule(), any -> new int[Outcome.values().length])[verdict.outcome().ordinal()]++;
        }
        gates.forEach((gate, rules) -> {
            page.line("  " + gate.word() + " (before you " + gate.act() + ")");
            rules.forEach((rule, counts) -> {
                List<String> parts = new ArrayList<>();
                for (Outcome outcome : List.of(Outcome.BROKEN, Outcome.UNSHOWN, Outcome.HOLDS)) {
                    if (counts[outcome.ordinal()] > 0) {
                        parts.add(counts[outcome.ordinal()] + " " + word(outcome));
                    }
                }
                page.hanging("    " + rule.id() + ": ", 8, String.join(", ", parts));
            });
        });
    }

    static String word(Outcome outcome) {
        return switch (outcome) {
            case HOLDS -> "holds as planned";
            case BROKEN -> "broken as planned";
            case UNSHOWN -> "not shown yet";
            case NOT_APPLICABLE -> "not applicable";
        };
    }

    // waived

    private void waived() {
        List<Verdict> waived = standing.waived();
        heading("WAIVED", waived.size(), "check");
        for (Verdict verdict : waived) {
            page.line("");
            head(verdict);
            page.hanging(MARGIN, Plain.capital(word(verdict.outcome()).replace(" as planned", "").replace(" yet", "")) + ": " + Plain.sentence(verdict.because()));
            page.hanging(MARGIN + "Waived: ", MARGIN.length(), WaiverText.whole(standing.waiver(verdict)));
        }
    }

    // all

    private void holds() {
        List<Verdict> holds = standing.due(Outcome.HOLDS);
        heading("HOLDS", holds.size(), "check");
        String rule = "";
        for (Verdict verdict : holds) {
            if (!verdict.rule().id().equals(rule)) {
                rule = verdict.rule().id();
                page.line("").line("  " + rule);
            }
            String margin = Amounts.margin(verdict);
            page.hanging("    " + verdict.subject() + ": ", 8, Plain.sentence(verdict.because())
                    + (margin == null ? "" : " Margin: " + margin + ".")
                    + (verdict.windows().isEmpty() ? "" : " Rests on " + Plain.count((int) verdict.windows().stream()
                    .map(window -> window.limit()).distinct().count(), "assumed value") + "."));
        }
    }

    private void notApplicable() {
        List<Judgment.NotApplicable> outside = standing.notApplicable();
        heading("DOES NOT APPLY", outside.size(), "check");
        outside.forEach(one -> page.hanging("  " + one.rule().id() + ": ", 6,
                (one.subject() == null ? "" : one.subject() + ": ") + one.reason()));
    }
}
