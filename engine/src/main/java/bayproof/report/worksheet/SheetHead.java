package bayproof.report.worksheet;

import bayproof.demand.Gate;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.report.Cautions;
import bayproof.report.Days;
import bayproof.report.Plain;
import bayproof.report.RuleBaseDate;
import bayproof.report.WaiverText;
import bayproof.vocabulary.Shown;
import bayproof.worksheet.Clearance;
import java.util.ArrayList;
import java.util.List;

/** What stands above everything: whose sheet it is, and how far the rules let the work go. */
final class SheetHead {
    /** Broken stops that are named; the rest are counted. */
    private static final int MOST_STOPS = 6;

    private final Job job;
    private final Clearance clearance;

    SheetHead(Job job, Clearance clearance) {
        this.job = job;
        this.clearance = clearance;
    }

    String tag() {
        return job.plan().job().tag().orElse(Block.BLANK);
    }

    /** The first line: what it is, and of which job. */
    String title(String what) {
        return what + "  TAG " + tag() + job.plan().job().title().map(title -> "  " + title).orElse("");
    }

    /** The lines below it; an open STOP comes first. */
    List<Block> blocks(String act) {
        List<Block> head = new ArrayList<>();
        Plan.Head plan = job.plan().job();
        if (!clearance.stops().isEmpty()) {
            head.add(new Block.Words("", "DO NOT " + act + " - " + Plain.count(clearance.stops().size(), "STOP") + (clearance.stops().size() == 1 ? " stands" : " stand") + " open."));
            for (Clearance.Stop stop : clearance.stops().subList(0, Math.min(MOST_STOPS, clearance.stops().size()))) {
                head.add(new Block.Words("STOP", Plain.sentence(stop.say()) + " (" + stop.subject() + ", " + stop.rule() + ")"));
            }
            if (clearance.stops().size() > MOST_STOPS) {
                head.add(new Block.Words("", "and " + (clearance.stops().size() - MOST_STOPS) + " more: bayproof review."));
            }
        }
        List<Clearance.Waived> waived = clearance.waived();
        for (Clearance.Waived one : waived.subList(0, Math.min(MOST_STOPS, waived.size()))) {
            head.add(new Block.Words("ACCEPTED", one.verdict().weight().name() + " " + one.verdict().rule().id() + " on " + one.verdict().subject() + ": "
                    + WaiverText.whole(one.waiver())));
        }
        if (waived.size() > MOST_STOPS) {
            head.add(new Block.Words("", "and " + (waived.size() - MOST_STOPS) + " more accepted: bayproof review."));
        }
        head.add(new Block.Words("", gates()));
        head.add(new Block.Words("", vehicle(plan)));
        return head;
    }

    private String vehicle(Plan.Head plan) {
        String date = plan.date().map(day -> Days.day(day, "")).orElse("");
        return job.vehicle().title().map(title -> "Vehicle: " + title + ". ").orElse("Vehicle: " + Block.BLANK + ". ") + "Plan"
                + (date.isEmpty() ? "" : " of " + date) + by(plan.preparedBy()) + ", rules of " + Days.day(RuleBaseDate.built().date(), "") + ".";
    }

    private static String by(Shown<String> who) {
        return who.map(name -> " by " + name).orElse("");
    }

    private String gates() {
        Gate last = clearance.last();
        List<String> open = new ArrayList<>();
        for (Clearance.AtGate gate : clearance.gates()) {
            String against = against(gate);
            if (!against.isEmpty()) {
                open.add(gate.gate().act() + " (" + against + ")");
            }
        }
        return "GATE CLEARED: " + (last == null ? "none" : last.word()) + "." + (open.isEmpty() ? " Nothing that the rules look at stands against the work"
                + (clearance.waived().isEmpty() ? "." : ", but for " + Plain.count(clearance.waived().size(), "check") + " accepted.")
                : " In the way: " + String.join("; ", open) + ".");
    }

    private static String against(Clearance.AtGate gate) {
        List<String> parts = new ArrayList<>();
        add(parts, gate.stop(), "stop");
        add(parts, gate.fix(), "fix");
        add(parts, gate.advise(), "advise");
        add(parts, gate.unshown(), "not shown");
        return String.join(", ", parts);
    }

    private static void add(List<String> parts, int count, String what) {
        if (count > 0) {
            parts.add(count + " " + what);
        }
    }

    /** Beside the title of each page: pages hang apart on a wall. */
    String running(String act) {
        return "TAG " + tag() + (clearance.stops().isEmpty() ? "" : "   STOP OPEN: do not " + act);
    }

    static List<Block> cautions(String... cautions) {
        List<Block> blocks = new ArrayList<>();
        for (String caution : cautions) {
            blocks.add(new Block.Words("CAUTION", caution));
        }
        blocks.add(new Block.Words("CAUTION", Cautions.FIRST_COMES));
        return blocks;
    }
}
