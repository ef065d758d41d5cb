package bayproof.report.worksheet;

import bayproof.demand.Limits;
import bayproof.report.Plain;
import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;
import bayproof.worksheet.WorkHours;
import java.util.ArrayList;
import java.util.List;

/** Page 5: hours low, likely and high. */
final class HoursPage {
    private final WorkHours hours;
    private final Limits limits;

    HoursPage(WorkHours hours, Limits limits) {
        this.hours = hours;
        this.limits = limits;
    }

    Page page() {
        List<Block> blocks = new ArrayList<>();
        if (hours.lines().isEmpty()) {
            blocks.add(new Block.Words("", "The plan names no step of the work: no hours."));
            return new Page("5 HOURS", blocks);
        }
        List<List<String>> rows = new ArrayList<>();
        for (WorkHours.Line line : hours.lines()) {
            rows.add(List.of(Block.BOX, line.id() + (line.waiting() ? " (waited)" : ""), Say.text(line.does()), Say.hours(line.lowSeconds()), Say.hours(line.likelySeconds()), Say.hours(line.highSeconds()),
                    line.after().map(names -> Say.list(names, 1)).orElse(Block.BLANK)));
        }
        blocks.add(new Block.Grid(List.of("", "step", "what", "low", "likely", "high", "after"), rows));
        blocks.add(new Block.Heading("IN ALL"));
        blocks.add(new Block.Grid(List.of("", "low", "likely", "high"), List.of(
                List.of("worked", Say.hours(hours.lowSeconds()), Say.hours(hours.likelySeconds()), Say.hours(hours.highSeconds())),
                List.of("waited", Say.hours(hours.waitingSeconds()), Say.hours(hours.waitingSeconds()), Say.hours(hours.waitingSeconds())),
                List.of("on the clock, one step after the other", whole(hours.lowSeconds()), whole(hours.likelySeconds()), whole(hours.highSeconds())))));
        if (hours.open() > 0) {
            blocks.add(new Block.Words("", Plain.count(hours.open(), "step") + " without hours: the sums are blanks."));
        }
        blocks.add(new Block.Words("", "Low is " + share("hours-low") + " and high is " + share("hours-high") + " of the planned hours: " + limits.named("hours-low").source()
                + ". What is waited for is as long as it is."));
        return new Page("5 HOURS", blocks);
    }

    private String whole(Shown<Double> worked) {
        return Say.hours(worked.with(hours.waitingSeconds(), Double::sum));
    }

    private String share(String limit) {
        return Say.amount(limits.named(limit).value(), Dimension.RATIO);
    }
}
