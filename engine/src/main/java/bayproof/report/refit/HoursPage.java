package bayproof.report.refit;

import bayproof.refit.Refit;
import bayproof.refit.RefitHours;
import bayproof.refit.WorkStep;
import bayproof.report.worksheet.Block;
import bayproof.report.worksheet.Page;
import bayproof.report.worksheet.Say;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/** Hours of both vehicles, the longest chain of steps against the booking, and what each change costs. */
final class HoursPage {
    private static final int MOST_CHANGES = 12;

    private final RefitHours hours;

    HoursPage(Refit refit) {
        this.hours = refit.hours();
    }

    Page page() {
        List<Block> blocks = new ArrayList<>();
        if (hours.steps().isEmpty()) {
            blocks.add(new Block.Words("", "The old plan names no step of the work: no hours."));
            return new Page("5 HOURS", blocks);
        }
        List<List<String>> rows = new ArrayList<>();
        for (String kind : WorkStep.KINDS) {
            List<WorkStep> some = hours.steps().stream().filter(step -> step.kind().equals(kind)).toList();
            rows.add(List.of(kind.replace('-', ' '), String.valueOf(some.size()), sum(some, WorkStep::low), sum(some, WorkStep::likely), sum(some, WorkStep::high)));
        }
        rows.add(List.of("in all", String.valueOf(hours.steps().size()), sum(hours.steps(), WorkStep::low), sum(hours.steps(), WorkStep::likely), sum(hours.steps(), WorkStep::high)));
        blocks.add(new Block.Grid(List.of("kind of work", "steps", "low", "likely", "high"), rows));
        clock(blocks);
        changes(blocks);
        TreeSet<String> sources = new TreeSet<>();
        hours.steps().stream().map(WorkStep::from).forEach(sources::add);
        blocks.add(new Block.Words("", "Hours come from: " + String.join("; ", sources) + ". A shop puts its own history in place of the defaults: limits named refit-hours-..., hours-low and hours-high."));
        return new Page("5 HOURS", blocks);
    }

    private static String sum(List<WorkStep> steps, ToDoubleFunction<WorkStep> of) {
        return Say.hours(steps.stream().mapToDouble(of).sum());
    }

    private void clock(List<Block> blocks) {
        blocks.add(new Block.Heading("ON THE CLOCK, " + hours.people() + (hours.people() == 1 ? " person" : " people")));
        if (Double.isNaN(hours.likely().seconds())) {
            blocks.add(new Block.Words("", "The steps wait for each other in a loop: no order, no clock. See steps-have-an-order."));
            return;
        }
        blocks.add(new Block.Grid(List.of("", "low", "likely", "high"), List.of(
                List.of("until both vehicles are done", Say.hours(hours.low().seconds()), Say.hours(hours.likely().seconds()), Say.hours(hours.high().seconds())),
                List.of("longest chain, however many people", Say.hours(hours.low().chainSeconds()), Say.hours(hours.likely().chainSeconds()), Say.hours(hours.high().chainSeconds())))));
        blocks.add(new Block.Words("", "Longest chain: " + String.join(", ", hours.likely().chain()) + "."));
        if (hours.booked().isGiven()) {
            double booked = hours.booked().orElse(0.0);
            String which = hours.ofOld() ? "Booked for the old job, nobody booked this one: " : "Booked: ";
            blocks.add(new Block.Words("", which + Say.hours(booked) + ". " + (hours.high().seconds() <= booked ? "Enough even when things go wrong."
                    : hours.likely().seconds() <= booked ? "Enough as planned; " + Say.hours(hours.high().seconds() - booked) + " short when things go wrong."
                    : Say.hours(hours.likely().seconds() - booked) + " short as planned.")));
        } else {
            blocks.add(new Block.Words("", "Nobody booked any hours."));
        }
    }

    private void changes(List<Block> blocks) {
        List<WorkStep> caused = hours.steps().stream().filter(step -> step.causedBy() != null).sorted(Comparator.comparingDouble(step -> -step.likely())).toList();
        blocks.add(new Block.Heading("WHAT EACH CHANGE COSTS (" + caused.size() + ", " + sum(caused, WorkStep::likely) + " likely)"));
        if (caused.isEmpty()) {
            blocks.add(new Block.Words("", "No row causes any work."));
            return;
        }
        blocks.add(new Block.Grid(List.of("row", "work", "low", "likely", "high"), caused.subList(0, Math.min(MOST_CHANGES, caused.size())).stream()
                .map(step -> List.of(step.causedBy(), step.kind(), Say.hours(step.low()), Say.hours(step.likely()), Say.hours(step.high()))).toList()));
        if (caused.size() > MOST_CHANGES) {
            blocks.add(new Block.Words("", "and " + (caused.size() - MOST_CHANGES) + " more, " + sum(caused.subList(MOST_CHANGES, caused.size()), WorkStep::likely) + " likely."));
        }
    }
}
