package bayproof.report;

import bayproof.demand.Gate;
import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.handover.Delivery;
import bayproof.judge.Verdict;
import bayproof.read.FactoryFunction;
import bayproof.read.Plan;
import bayproof.read.Waiver;
import bayproof.report.worksheet.Block;
import bayproof.report.worksheet.MarkdownForm;
import bayproof.report.worksheet.Page;
import bayproof.report.worksheet.Say;
import bayproof.report.worksheet.TextForm;
import bayproof.review.OpenFact;
import bayproof.review.Remedy;
import bayproof.signoff.Chain;
import java.util.ArrayList;
import java.util.List;

/** May the vehicle go? The answer first, then what it rests on, then everything that stands against it. */
public final class HandoverPage {
    private final Standing standing;
    private final Delivery delivery;
    private final Places places;
    private final String plan;
    private final Chain record;

    /**
     * @param plan   the plan's file as the user gave it
     * @param record what was signed so far
     */
    public HandoverPage(Standing standing, Delivery delivery, String plan, Chain record) {
        this.record = record;
        this.standing = standing;
        this.delivery = delivery;
        this.places = new Places(plan);
        this.plan = plan;
    }

    /** As a terminal shows it, 80 columns wide. */
    public String text() {
        return TextForm.of(title(), head(), running(), pages());
    }

    public String markdown() {
        return MarkdownForm.of(title(), head(), running(), pages(), null);
    }

    private String tag() {
        return "TAG " + standing.evaluation().job().plan().job().tag().orElse("not given");
    }

    private String title() {
        return tag() + "  " + answer();
    }

    private String running() {
        return tag();
    }

    /** The answer with what holds it. */
    public String answer() {
        List<Verdict> against = standing.due().stream().filter(standing::counts).toList();
        String act = standing.gate() == Gate.HANDOVER ? "GO" : GateWords.loud(standing.gate());
        if (against.isEmpty()) {
            int waived = standing.waived().size();
            int open = standing.due().size() - standing.due(Outcome.HOLDS).size() - waived;
            List<String> on = new ArrayList<>();
            if (open > 0) {
                on.add("with " + Plain.count(open, "lighter check") + " open");
            }
            if (waived > 0) {
                on.add(waivedShort());
            }
            return "MAY " + act + (on.isEmpty() ? "." : " - " + String.join(", ", on) + ".");
        }
        String more = against.size() == 1 ? "" : " And " + Plain.count(against.size() - 1, "check") + " more.";
        return "MAY NOT " + act + " - " + why(against.get(0)) + more + (standing.waived().isEmpty() ? "" : " " + Plain.capital(waivedShort()) + ".");
    }

    /** How much was accepted, by whom and how long. */
    private String waivedShort() {
        List<String> by = standing.waived().stream().map(verdict -> WaiverText.who(standing.waiver(verdict), RuleBaseDate.built().date())).distinct().toList();
        return standing.waived().size() + " accepted " + by.get(0) + (by.size() == 1 ? "" : " and others");
    }

    private String why(Verdict verdict) {
        if (verdict.outcome() == Outcome.UNSHOWN) {
            List<String> asks = standing.needs(verdict).stream().map(need -> need.ask()).distinct().toList();
            return "not shown: " + (asks.isEmpty() ? verdict.because() : asks.get(0)) + " (" + verdict.subject() + ").";
        }
        Remedy remedy = standing.remedy(verdict);
        return Plain.sentence(remedy == null ? verdict.because() : remedy.say());
    }

    private List<Block> head() {
        List<Block> head = new ArrayList<>();
        String promised = standing.evaluation().job().plan().job().promised().orElse("");
        if (!promised.isEmpty()) {
            add(head, "Promised", Plain.text(promised) + ".");
        }
        add(head, "Judged", "everything due up to " + standing.gate().word() + ". Not looked at here: " + RuleBaseDate.built().notLookedAt() + ".");
        add(head, "Broken", standing.broken(Weight.STOP) + " stop, " + standing.broken(Weight.FIX) + " fix, " + standing.broken(Weight.ADVISE) + " advise.");
        add(head, "Not shown", Plain.count(standing.questions().facts().size(), "fact") + ", and " + Plain.count(standing.due(Outcome.UNSHOWN).size(), "check")
                + " waiting. " + Plain.count(standing.assumed().size(), "value") + " assumed.");
        for (Verdict verdict : standing.waived()) {
            add(head, "Accepted", verdict.rule().id() + " on " + verdict.subject() + ": " + WaiverText.whole(standing.waiver(verdict)));
        }
        add(head, "Wishes", wishes());
        add(head, "Found things", found());
        add(head, "Functions", functions());
        add(head, "Fault codes", faults());
        add(head, "Unfinished", unfinished());
        add(head, "Readings", readings());
        String oneGo = SignOffText.oneGo(standing.evaluation());
        if (!oneGo.isEmpty()) {
            add(head, "Attested", oneGo);
        }
        add(head, "Signed", SignOffText.standing(record));
        add(head, "On paper", "shop " + Block.BLANK + "  customer " + Block.BLANK);
        return head;
    }

    private static void add(List<Block> blocks, String label, String text) {
        blocks.add(new Block.Words(Plain.padded(label, 12), text));
    }

    private String wishes() {
        if (delivery.wishes().isEmpty()) {
            return "none written.";
        }
        List<String> others = delivery.wishes().stream().filter(wish -> !wish.met())
                .map(wish -> wish.id() + " " + wish.kept().orElse("open").replace('-', ' ')).toList();
        return delivery.met() + " of " + delivery.wishes().size() + " met" + (others.isEmpty() ? "." : "; " + String.join(", ", others) + ".");
    }

    private String found() {
        if (!delivery.found().isGiven()) {
            return "nobody wrote whether anything was found.";
        }
        List<Plan.Found> things = delivery.found().orElse(List.of());
        long decided = things.stream().filter(thing -> thing.decision().isGiven()).count();
        return things.isEmpty() ? "none." : things.size() + ", decided " + decided + ".";
    }

    private String functions() {
        if (delivery.functions().isEmpty()) {
            return "nobody wrote what works.";
        }
        List<FactoryFunction> fitted = delivery.functions().stream().filter(one -> !one.before().orElse("").equals("not-fitted")).toList();
        List<String> worse = fitted.stream().filter(one -> !same(one)).map(FactoryFunction::id).toList();
        return (fitted.size() - worse.size()) + " of " + fitted.size() + " as before" + (worse.isEmpty() ? "." : "; not so or not tried: " + String.join(", ", worse) + ".");
    }

    private static boolean same(FactoryFunction function) {
        String after = function.after().orElse("");
        return function.before().isGiven() && (after.equals("works") || after.equals(function.before().orElse("")));
    }

    private String faults() {
        Plan plan = standing.evaluation().job().plan();
        return plan.checkIn().faultCodes().with(plan.delivered().faultCodes(), (before, after) -> after.stream().filter(one -> !before.contains(one)).toList())
                .map(fresh -> fresh.size() + " new" + (fresh.isEmpty() ? "." : ": " + String.join(", ", fresh) + ".")).orElse("nobody wrote both before and after.");
    }

    private String unfinished() {
        if (!delivery.unfinished().isGiven()) {
            return "nobody wrote whether a run was left unfinished.";
        }
        List<String> runs = delivery.unfinished().orElse(List.of());
        return runs.isEmpty() ? "no run." : Plain.count(runs.size(), "run") + ": " + String.join(", ", runs) + ".";
    }

    private String readings() {
        List<String> worst = delivery.worst().stream().map(one -> one.what() + " " + one.built() + ", planned " + one.planned()
                + (one.limit().isEmpty() ? "" : ", limit " + one.limit())).toList();
        return worst.isEmpty() ? Plain.count(delivery.built().size(), "value") + " compared." : "farthest from the plan: " + String.join("; ", worst) + ".";
    }

    private List<Page> pages() {
        List<Page> pages = new ArrayList<>();
        List<Block> against = against();
        if (!against.isEmpty()) {
            pages.add(new Page("WHAT STANDS AGAINST IT", against));
        }
        List<Block> decided = decided();
        if (!decided.isEmpty()) {
            pages.add(new Page("WISHES AND FOUND THINGS", decided));
        }
        if (!delivery.built().isEmpty()) {
            pages.add(new Page("PLANNED AND BUILT", List.of(new Block.Grid(List.of("what", "planned", "built", "difference", "how"), delivery.built().stream()
                    .map(row -> List.of(row.what(), row.planned().isEmpty() ? "not known" : row.planned(), row.built(), row.difference(), row.how())).toList()))));
        }
        if (!delivery.visits().isEmpty()) {
            pages.add(new Page("VISITS", visits()));
        }
        return pages;
    }

    private List<Block> visits() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Grid(List.of("visit", "day", "reason", "steps done", "left unfinished"), delivery.visits().stream()
                .map(visit -> List.of(visit.id(), visit.date().orElse(Block.BLANK), visit.reason().orElse(Block.BLANK), String.join(", ", visit.done().orElse(List.of())),
                        visit.unfinished().map(runs -> runs.isEmpty() ? "none" : String.join(", ", runs)).orElse(Block.BLANK))).toList()));
        delivery.visits().stream().filter(visit -> visit.reason().orElse("").equals("comeback")).forEach(visit -> blocks.add(new Block.Words("Comeback " + visit.id(),
                "\"" + visit.words().orElse(Block.BLANK) + "\" Found: " + visit.cause().orElse(Block.BLANK) + ". Hours: " + Say.hours(visit.seconds()) + ". Rule: "
                        + visit.rule().orElse(Block.BLANK) + ".")));
        return blocks;
    }

    private List<Block> against() {
        List<Block> blocks = new ArrayList<>();
        for (Verdict verdict : standing.due(Outcome.BROKEN)) {
            Waiver waiver = standing.waiver(verdict);
            String waived = waiver == null ? "" : "Accepted " + Plain.sentence(WaiverText.brief(waiver, RuleBaseDate.built().date())) + " ";
            blocks.add(new Block.Words(verdict.weight().name(), waived + why(verdict) + " (" + verdict.subject() + ", " + places.line(verdict.at()) + ", "
                    + verdict.rule().id() + ")"));
        }
        List<OpenFact> facts = standing.questions().facts();
        if (!facts.isEmpty()) {
            blocks.add(new Block.Heading("STILL TO BE SHOWN"));
            blocks.add(new Block.Grid(List.of("what", "where it is written", "holds up"), facts.stream()
                    .map(fact -> List.of(Plain.capital(fact.need().ask()), fact.need().path(), Plain.count(fact.checks().size(), "check"))).toList()));
            blocks.add(new Block.Words("", "As a form to fill in: bayproof handover " + Places.slashed(plan) + " --ask"));
        }
        return blocks;
    }

    private List<Block> decided() {
        List<Block> blocks = new ArrayList<>();
        if (!delivery.wishes().isEmpty()) {
            blocks.add(new Block.Heading("WISHES"));
            blocks.add(new Block.Grid(List.of("wish", "the customer's words", "checked by", "became"), delivery.wishes().stream()
                    .map(wish -> List.of(wish.id(), wish.want().orElse(Block.BLANK), wish.by().orElse("nobody will check this"),
                            wish.kept().orElse(Block.BLANK))).toList()));
        }
        List<Plan.Found> things = delivery.found().orElse(List.of());
        if (!things.isEmpty()) {
            blocks.add(new Block.Heading("FOUND THINGS"));
            blocks.add(new Block.Grid(List.of("found", "what", "state", "decision"), things.stream()
                    .map(thing -> List.of(thing.id(), thing.what().orElse(Block.BLANK), thing.state().orElse(Block.BLANK),
                            thing.decision().orElse(Block.BLANK))).toList()));
        }
        return blocks;
    }
}
