package bayproof.report.worksheet;

import bayproof.demand.Limits;
import bayproof.facts.FuseStation;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.report.Amounts;
import bayproof.units.Dimension;
import bayproof.worksheet.SpeakerLines;
import bayproof.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Page 4: the first power, step by step, and the levels to set. */
final class PowerPage {
    private static final String STOP_WORDS = "Anything warm, any smell, any lamp: fuse out, call the lead.";

    private final Worksheet sheet;
    private final Job job;
    private final Limits limits;
    private final List<Block> blocks = new ArrayList<>();
    private int number;

    PowerPage(Worksheet sheet) {
        this.sheet = sheet;
        this.job = sheet.job();
        this.limits = job.limits();
    }

    Page page() {
        blocks.addAll(SheetHead.cautions("Battery acid, gas and short circuit: glasses on, rings and watch off, insulated wrench, no flame.",
                "Restraint plugs are joined again before the battery is; nobody sits before them when it is.",
                "A converter, an amplifier's capacitor or a second battery keeps a circuit live with the first battery off."));
        blocks.add(new Block.Words("STOP WORDS", STOP_WORDS));
        before();
        battery();
        smallFuses();
        ratedFuses();
        running();
        levels();
        return new Page("4 FIRST POWER", blocks);
    }

    private void step(String say, List<String> lines) {
        blocks.add(new Block.Step(++number, say, lines));
    }

    private void before() {
        step("Two people. One at the battery with the wrench in hand, one at the meter. Read the stop words aloud.", List.of());
        step("Every fuse of page 2 is OUT and lies beside its holder" + (sheet.fuses().isEmpty() ? "." : ": " + sheet.fuses().size() + " fuses."),
                List.of(Block.BOX + " counted: " + Block.BLANK));
        step("Radio off, turn-on wires off, gains at their lowest, every switch off.", List.of());
        step("Battery still off. Ohms from the dead side of each fuse to ground, once the meter has settled: must read "
                + Amounts.figure(limits.named("dead-side-resistance")) + ". A reading that climbs is a capacitor that fills.",
                sheet.fuses().stream().map(fuse -> Block.BOX + " " + fuse.deadSide() + "  " + Block.BLANK + " ohm").toList());
    }

    private void battery() {
        List<String> posts = new ArrayList<>();
        for (Item.Battery battery : job.itemsOf(Item.Battery.class)) {
            posts.add(Block.BOX + " " + battery.id() + ": must read " + rest(battery) + "  reads " + Block.BLANK + " V");
        }
        step("Join each battery, negative last. Volts at the posts, nothing switched on:", posts);
    }

    /** Lead-acid rest volts; another chemistry has its own data sheet. */
    private String rest(Item.Battery battery) {
        String chemistry = battery.chemistry().orElse("");
        return chemistry.equals("lithium") || chemistry.isEmpty() ? "what its data sheet says: " + Block.BLANK
                : Amounts.figure(limits.named("pin-constant-supply-asleep"));
    }

    private void smallFuses() {
        double small = limits.named("first-power-fuse").value();
        String fuse = Say.amount(small, Dimension.CURRENT);
        step("Small fuses first, from each post outward, one at a time: " + fuse + ", or the rated one where that is smaller. Before the fuse: the live side reads as the post within "
                + Say.amount(limits.named("first-power-difference").value(), Dimension.VOLTAGE) + ", the dead side 0 V. With the fuse: both sides read the same.", List.of());
        for (FuseStation station : sheet.fuses()) {
            step(station.id() + ", " + Say.text(station.item().place()) + (station.post() == null ? "" : ", fed by " + station.post()), checks(station, small));
        }
        step("A small fuse that blows at once has met a short or an empty capacitor. Do not put in a second one: call the lead.", List.of());
    }

    private List<String> checks(FuseStation station, double small) {
        List<String> lines = new ArrayList<>();
        if (station.post() == null) {
            lines.add("No way from a post leads here. Do not put a fuse in.");
            return lines;
        }
        lines.add(Block.BOX + " out: live side " + station.liveSide() + " " + Block.BLANK + " V, dead side " + station.deadSide() + " " + Block.BLANK + " V");
        if (station.otherPost() != null) {
            lines.add("Its dead side is joined to " + station.otherPost() + ", another source: 0 V only while that one is off.");
        }
        boolean rated = station.ratingAmperes().map(rating -> rating <= small).orElse(false);
        lines.add(Block.BOX + " " + (rated ? Say.amount(station.ratingAmperes(), Dimension.CURRENT) : Say.amount(small, Dimension.CURRENT)) + " in: "
                + station.deadSide() + " " + Block.BLANK + " V.  " + STOP_WORDS);
        return lines;
    }

    private void ratedFuses() {
        List<String> lines = new ArrayList<>();
        double small = limits.named("first-power-fuse").value();
        for (FuseStation station : sheet.fuses()) {
            if (station.post() != null && station.ratingAmperes().map(rating -> rating > small).orElse(true)) {
                lines.add(Block.BOX + " " + station.id() + "  " + Say.amount(station.ratingAmperes(), Dimension.CURRENT));
            }
        }
        if (!lines.isEmpty()) {
            step("Rated fuses, in the same order, one at a time. After each " + Say.amount(limits.named("first-power-look").value(), Dimension.TIME)
                    + " of looking, feeling and smelling. " + STOP_WORDS, lines);
        }
    }

    private void running() {
        Set<String> woken = new LinkedHashSet<>();
        job.runs().values().forEach(run -> List.of(run.from().orElse(""), run.to().orElse("")).forEach(end -> {
            if (end.endsWith(".turn-on")) {
                woken.add(end);
            }
        }));
        if (!woken.isEmpty()) {
            step("Radio on, volume at its lowest. Each turn-on must read " + Amounts.figure(limits.named("pin-turn-on-radio-on")) + "; radio off again: "
                    + Amounts.figure(limits.named("also-turn-on-asleep")) + ".", woken.stream().map(end -> Block.BOX + " " + end + "  on " + Block.BLANK
                    + " V  off " + Block.BLANK + " V").toList());
        }
        List<String> volts = new ArrayList<>();
        for (Item item : job.items().values()) {
            if (item instanceof Item.Powered powered) {
                volts.add(Block.BOX + " " + item.id() + "  shuts down below " + Say.amount(powered.minimumVolts(), Dimension.VOLTAGE) + "  reads " + Block.BLANK + " V");
            }
        }
        if (!volts.isEmpty()) {
            step("Engine off, everything on, quiet. Volts from supply to ground at each item, tips on its own terminals: above what it shuts down at.", volts);
        }
        step("Everything off, doors latched, key away: the current asleep is read after the vehicle sleeps (bayproof why standby-within-figure).", List.of(Block.BOX + " " + Block.BLANK + " mA"));
    }

    // levels

    private void levels() {
        if (sheet.speakers().isEmpty()) {
            return;
        }
        blocks.add(new Block.Heading("LEVELS"));
        blocks.addAll(SheetHead.cautions("Speakers off the amplifier while a tone plays: a full tone ruins a tweeter, and hearing, in seconds."));
        for (SpeakerLines.Line line : sheet.speakers()) {
            blocks.add(new Block.Words(Block.BOX, level(line)));
        }
    }

    /** What is known of an output; volts that nobody worked out are a blank. */
    private static String level(SpeakerLines.Line line) {
        return line.output() + ": turn the gain up until the output reads " + Block.BLANK + " V AC with the tone " + Block.BLANK + " at the source's volume "
                + Block.BLANK + ". It is rated " + Say.amount(line.ratedWatts(), Dimension.POWER) + " into " + Say.amount(line.ratedOhms(), Dimension.RESISTANCE)
                + "; its planned load is " + Say.amount(line.loadOhms(), Dimension.RESISTANCE) + ".";
    }
}
