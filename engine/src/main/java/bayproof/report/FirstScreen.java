package bayproof.report;

import bayproof.demand.Limit;
import bayproof.demand.Outcome;
import bayproof.judge.Verdict;
import bayproof.read.Plan;
import bayproof.review.OpenFact;
import bayproof.review.Question;
import bayproof.review.Remedy;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** The first screen of a review: the answer, what to put right, what to ask next, what may be done today. */
final class FirstScreen {
    /** Lines of a screen. */
    static final int HEIGHT = 24;

    private static final int RESERVED_QUESTIONS = 3;
    private static final int CLOSEST = 5;
    private static final int MOST_WAIVED = 3;
    private static final String SOURCES = "supply.sources.";
    private static final String MARGIN = " ".repeat(6);

    private final Standing standing;
    private final Places places;
    private final RuleBaseDate ruleBase;
    private final Answer answer;

    FirstScreen(Standing standing, Places places, RuleBaseDate ruleBase) {
        this.standing = standing;
        this.places = places;
        this.ruleBase = ruleBase;
        this.answer = new Answer(standing);
    }

    Paper paper() {
        Paper screen = head();
        Paper close = new Paper().hanging("Today you may: ", answer.today()).hanging("Not yet: ", answer.notYet());
        int room = HEIGHT - screen.height() - close.height() - 1;
        List<Question> questions = standing.questions().first();
        List<List<Verdict>> broken = grouped(standing.due(Outcome.BROKEN).stream().filter(verdict -> standing.waiver(verdict) == null).toList());
        Paper waived = waived();
        room -= waived.height();
        Paper body = new Paper();
        if (!broken.isEmpty()) {
            int reserved = questions.isEmpty() ? 0 : Math.min(questions.size(), RESERVED_QUESTIONS) + 2;
            body.all(broken(broken, room - reserved));
        }
        if (!questions.isEmpty()) {
            body.all(ask(questions, room - body.height()));
        }
        if (broken.isEmpty() && questions.isEmpty()) {
            body.all(closest(room));
        }
        screen.all(body).all(waived);
        return screen.line("").all(close);
    }

    // head

    private Paper head() {
        Paper head = new Paper();
        head.row(title());
        head.line(answer.line());
        if (standing.focus() != null) {
            head.line(Plain.cut("Shown: " + standing.focus().words() + ", " + standing.due().size() + " of "
                    + Plain.count(standing.whole().due().size(), "check") + ".", Paper.WIDTH));
        }
        head.line("Not looked at here: " + ruleBase.notLookedAt() + ".");
        List<Limit> looser = standing.shopLimits().stream().filter(limit -> limit.changed().looser()).toList();
        for (Limit limit : looser.subList(0, Math.min(2, looser.size()))) {
            head.line(Plain.cut(Plain.text("Shop limit, looser than usual: " + limit.name() + ", " + limit.changed().reason()), Paper.WIDTH));
        }
        if (looser.size() > 2) {
            head.line("and " + Plain.count(looser.size() - 2, "looser shop limit") + " more, see below.");
        }
        return head;
    }

    private String title() {
        Plan.Head job = standing.evaluation().job().plan().job();
        String tag = "TAG " + given(job.tag(), "not given");
        String date = Days.day(given(job.date(), ""), ruleBase.date());
        String who = given(job.preparedBy(), "");
        String plan = date.isEmpty() && who.isEmpty() ? "" : "plan" + (date.isEmpty() ? "" : " " + date) + (who.isEmpty() ? "" : " by " + who);
        String rules = "rules " + Days.day(ruleBase.date(), "");
        String behind = (plan.isEmpty() ? "" : "  " + Plain.cut(plan, 40)) + "  " + rules;
        int room = Paper.WIDTH - Plain.length(behind);
        return Plain.cut(tag + "  " + given(job.title(), ""), room) + behind;
    }

    private static String given(Shown<String> text, String other) {
        return Plain.text(text.orElse(other));
    }

    // what to put right

    /** Verdicts of one rule and weight with one remedy stand together. */
    private List<List<Verdict>> grouped(List<Verdict> broken) {
        Map<String, List<Verdict>> groups = new LinkedHashMap<>();
        for (Verdict verdict : broken) {
            groups.computeIfAbsent(verdict.weight() + verdict.rule().id() + say(verdict), any -> new ArrayList<>()).add(verdict);
        }
        return new ArrayList<>(groups.values());
    }

    private String say(Verdict verdict) {
        Remedy remedy = standing.remedy(verdict);
        return remedy == null ? verdict.because() : remedy.say();
    }

    private Paper broken(List<List<Verdict>> groups, int room) {
        Paper page = new Paper();
        page.line("");
        for (int i = 0; i < groups.size(); i++) {
            Paper entry = entry(groups.get(i));
            int pointer = i + 1 < groups.size() ? 1 : 0;
            if (page.height() + entry.height() + pointer > room && i > 0) {
                page.line(MARGIN + "and " + (groups.size() - i) + " more to put right: see below.");
                break;
            }
            page.all(entry);
        }
        return page;
    }

    private Paper entry(List<Verdict> group) {
        Verdict verdict = group.get(0);
        Paper entry = new Paper();
        entry.hanging(Plain.padded(verdict.weight().name() + "  ", MARGIN.length()), MARGIN.length(), Plain.sentence(Plain.text(say(verdict))));
        boolean differ = verdict.limit() != null && !verdict.limit().limit().others().isEmpty();
        String rule = differ ? "(others: why " + verdict.rule().id() + ")" : verdict.rule().id();
        String number = number(verdict);
        return entry.parts(MARGIN.length(), List.of(name(verdict) + (group.size() == 1 ? "" : " and " + (group.size() - 1) + " more")
                + ", " + places.line(verdict.at()), number + (number.isEmpty() || !differ ? "" : " ") + (differ ? rule : ""), differ ? "" : rule));
    }

    /** The subject without the groups of keys it stands in. */
    private static String name(Verdict verdict) {
        String subject = verdict.subject();
        return subject.startsWith(SOURCES) ? subject.substring(SOURCES.length()) : subject.substring(subject.indexOf('.') + 1);
    }

    private String number(Verdict verdict) {
        if (verdict.measured() == null) {
            return standing.remedy(verdict) == null ? "" : Plain.cut(Plain.text(verdict.because()), Paper.WIDTH);
        }
        String measured = Plain.cut(Plain.text(Amounts.print(verdict.measured())), Paper.WIDTH);
        return verdict.limit() == null || verdict.limit().limit().unit() == null ? measured
                : measured + ", " + Amounts.bound(verdict.limit()).replace("at most", "limit");
    }

    // what was accepted

    private Paper waived() {
        Paper page = new Paper();
        List<Verdict> waived = standing.waived();
        if (waived.isEmpty()) {
            return page;
        }
        page.line("");
        for (Verdict verdict : waived.subList(0, Math.min(MOST_WAIVED, waived.size()))) {
            page.line(Plain.cut("WAIVED  " + verdict.weight().name() + " " + verdict.rule().id() + " " + name(verdict) + ", "
                    + WaiverText.brief(standing.waiver(verdict), ruleBase.date()), Paper.WIDTH));
        }
        return waived.size() > MOST_WAIVED ? page.line(MARGIN + "and " + (waived.size() - MOST_WAIVED) + " more waived: see below.") : page;
    }

    // what to ask next

    private Paper ask(List<Question> questions, int room) {
        Paper page = new Paper();
        int waiting = standing.due(Outcome.UNSHOWN).size();
        int shown = Math.max(1, Math.min(questions.size(), room - 2));
        if (shown < standing.questions().all().size()) {
            shown = Math.max(1, shown - 1);
        }
        List<Question> asked = questions.subList(0, shown);
        page.line("");
        page.line("Ask next (clears " + asked.get(asked.size() - 1).clears() + " of " + Plain.count(waiting, "waiting check") + ")");
        int spare = room - 2 - shown - (shown < standing.questions().all().size() ? 1 : 0);
        Set<String> said = new HashSet<>();
        for (int i = 0; i < shown; i++) {
            Question question = asked.get(i);
            page.row(row(i + 1, question));
            String instead = question.facts().stream().map(OpenFact::instead).filter(Objects::nonNull).findFirst().orElse(null);
            Paper second = instead == null || !said.add(instead) ? new Paper() : new Paper().hanging("    If you cannot know it: ", 4, instead);
            if (second.height() <= spare) {
                page.all(second);
                spare -= second.height();
            }
        }
        if (shown < standing.questions().all().size()) {
            page.line("    and " + Plain.count(standing.questions().all().size() - shown, "question") + " more: see below, or review --ask.");
        }
        return page;
    }

    private static String row(int number, Question question) {
        String checks = Plain.count(question.checks().size(), "check");
        String left = (number < 10 ? " " : "") + number + "  ";
        int room = Paper.WIDTH - left.length() - checks.length() - 2;
        return left + Plain.padded(Plain.clause(QuestionText.line(question), room), room) + "  " + checks;
    }

    // what a clean plan rests on

    private Paper closest(int room) {
        Paper page = new Paper();
        List<Verdict> near = standing.due(Outcome.HOLDS).stream().filter(verdict -> !Double.isNaN(verdict.marginFraction()))
                .sorted(Comparator.comparingDouble(Verdict::marginFraction)).limit(CLOSEST).toList();
        if (standing.due().isEmpty()) {
            page.line("").line("Nothing that is due concerns this.");
        }
        if (!near.isEmpty()) {
            page.line("").line("Closest to a limit (all: review --all)");
            for (Verdict verdict : near) {
                page.row("  " + verdict.subject() + ": " + Amounts.print(verdict.measured()) + ", " + Amounts.bound(verdict.limit())
                        + "  " + verdict.rule().id());
            }
        }
        List<Carried> assumed = standing.assumed();
        int rows = Math.min(assumed.size(), room - page.height() - 3);
        if (rows > 0) {
            page.line("").line("Taken as lying between two values, because nobody gave one");
            for (Carried carried : assumed.subList(0, rows)) {
                page.row("  " + Plain.cut(carried.limit().name() + ", "
                        + Amounts.window(carried.limit(), carried.window().low(), carried.window().high()) + ": "
                        + carried.limit().says(), Paper.WIDTH - 2));
            }
            if (rows < assumed.size()) {
                page.line("  and " + (assumed.size() - rows) + " more: see below.");
            }
        }
        return page;
    }
}
