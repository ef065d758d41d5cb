package bayproof.report.worksheet;

import bayproof.demand.Limits;
import bayproof.facts.FuseStation;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Setting;
import bayproof.report.Amounts;
import bayproof.units.Dimension;
import bayproof.vocabulary.GainSetting;
import bayproof.vocabulary.Shown;
import bayproof.worksheet.SourceLevel;
import bayproof.worksheet.SpeakerLines;
import bayproof.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Page 4: the first power, step by step, and the levels to set. */
final class PowerPage {
    private static final String STOP_WORDS = "Anything warm, any smell, any lamp: fuse out, call the lead.";

    /** Less room than a meter shows, dB. */
    private static final double HAIR = 0.05;

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
                List.of());
        grid(List.of("", "dead side", "reads"), sheet.fuses().stream().map(fuse -> List.of(Block.BOX, fuse.deadSide(), Block.BLANK + " ohm")).toList());
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
        String apart = Say.amount(limits.named("first-power-difference").value(), Dimension.VOLTAGE);
        Map<String, List<FuseStation>> byPost = new LinkedHashMap<>();
        sheet.fuses().stream().filter(fuse -> fuse.post() != null && !fuse.joinsSources())
                .forEach(fuse -> byPost.computeIfAbsent(fuse.post(), any -> new ArrayList<>()).add(fuse));
        byPost.forEach((post, fuses) -> {
            step("From " + post + ", small fuses first, in this order, one at a time; each stays in. Fuse out: the live side reads as the post within " + apart
                    + ", the dead side 0 V. Fuse in: both sides read the same. " + STOP_WORDS, List.of());
            grid(List.of("", "fuse", "live side\nout", "dead side\nout", "put in", "dead side\nin"), fuses.stream().map(fuse -> List.of(Block.BOX, fuse.id(),
                    Block.BLANK + " V", Block.BLANK + " V", Say.amount(Math.min(small, fuse.ratingAmperes().orElse(small)), Dimension.CURRENT), Block.BLANK + " V")).toList());
        });
        List<String> joining = sheet.fuses().stream().filter(FuseStation::joinsSources).map(FuseStation::id).toList();
        if (!joining.isEmpty()) {
            step("These join two sources and stay OUT for now: " + String.join(", ", joining) + ".", List.of());
        }
        List<String> unfed = sheet.fuses().stream().filter(fuse -> fuse.post() == null).map(FuseStation::id).toList();
        if (!unfed.isEmpty()) {
            step("No way from a source leads to these. They stay OUT until the plan says what feeds them: " + String.join(", ", unfed) + ".", List.of());
        }
        step("A small fuse that blows at once has met a short or an empty capacitor. Do not put in a second one: call the lead.", List.of());
    }

    private void grid(List<String> head, List<List<String>> rows) {
        if (!rows.isEmpty()) {
            blocks.add(new Block.Grid(head, rows));
        }
    }

    private void ratedFuses() {
        double small = limits.named("first-power-fuse").value();
        List<List<String>> rows = new ArrayList<>();
        // What joins two sources comes when both have proved themselves.
        for (boolean joining : new boolean[] {false, true}) {
            sheet.fuses().stream().filter(fuse -> fuse.post() != null && fuse.joinsSources() == joining)
                    .filter(fuse -> joining || fuse.ratingAmperes().map(rating -> rating > small).orElse(true))
                    .forEach(fuse -> rows.add(List.of(Block.BOX, fuse.id(), Say.amount(fuse.ratingAmperes(), Dimension.CURRENT), Say.text(fuse.item().place()))));
        }
        if (!rows.isEmpty()) {
            step("Rated fuses in place of the small ones, in this order, one at a time. After each " + Say.amount(limits.named("first-power-look").value(), Dimension.TIME)
                    + " of looking, feeling and smelling. " + STOP_WORDS, List.of());
            grid(List.of("", "fuse", "rated", "where"), rows);
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
                    + Amounts.figure(limits.named("also-turn-on-asleep")) + ".", List.of());
            grid(List.of("", "turn-on", "radio on", "radio off"), woken.stream().map(end -> List.of(Block.BOX, end, Block.BLANK + " V", Block.BLANK + " V")).toList());
        }
        List<List<String>> volts = new ArrayList<>();
        for (Item item : job.items().values()) {
            if (item instanceof Item.Powered powered) {
                volts.add(List.of(Block.BOX, item.id(), Say.amount(powered.minimumVolts(), Dimension.VOLTAGE), Block.BLANK + " V"));
            }
        }
        if (!volts.isEmpty()) {
            step("Engine off, everything on, quiet. Volts from supply to ground at each item, tips on its own terminals: above what it shuts down at.", List.of());
            grid(List.of("", "item", "shuts down below", "reads"), volts);
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
        String volume = volume();
        if (volume.equals(Block.BLANK)) {
            blocks.add(new Block.Words("ASK", "The plan does not say one volume of the source at which these targets hold. Settle it before the first gain is touched, write it in here, "
                    + "and leave it there for all of them: " + Block.BLANK));
        }
        for (SpeakerLines.Line line : sheet.speakers()) {
            blocks.add(new Block.Words(Block.BOX, level(line, volume)));
        }
        otherLevel();
    }

    /** The volume at which the settings hold, where the plan names one for all channels; otherwise a blank. */
    private String volume() {
        Set<String> named = new LinkedHashSet<>();
        sheet.sources().forEach(source -> named.add(source.setAt().map(at -> at.equals("none") ? Block.BLANK : at).orElse(Block.BLANK)));
        return named.size() == 1 ? named.iterator().next() : Block.BLANK;
    }

    /** What the source gives at its other volume step, and what the same gains then read. */
    private void otherLevel() {
        List<SourceLevel> known = sheet.sources().stream().filter(source -> source.offset().isGiven() && !Double.isInfinite(source.offset().orElse(0.0))).toList();
        if (known.isEmpty()) {
            return;
        }
        blocks.add(new Block.Heading("ANOTHER SOURCE LEVEL"));
        blocks.add(new Block.Grid(List.of("channel", "1 kHz, high step", "1 kHz, low step", "offset"), known.stream().map(source -> List.of(source.channel(),
                Say.amount(source.loudVolts(), Dimension.VOLTAGE), Say.amount(source.quietVolts(), Dimension.VOLTAGE), Say.amount(source.offset(), Dimension.LEVEL))).toList()));
        double least = known.stream().mapToDouble(source -> source.offset().orElse(0.0)).min().orElse(0);
        double most = known.stream().mapToDouble(source -> source.offset().orElse(0.0)).max().orElse(0);
        if (most - least > limits.named("source-offsets-alike").value()) {
            blocks.add(new Block.Words("", "The channels do not fall alike from step to step: set every gain at the step that is meant, and at no other."));
            return;
        }
        double offset = (least + most) / 2;
        blocks.add(new Block.Words("", "The targets hold at one volume step of the source. Gains set at the high step read this at the low one, with the same tone; a gain turned up to the target there is "
                + Say.amount(-offset, Dimension.LEVEL) + " too high."));
        blocks.add(new Block.Grid(List.of("output", "high step", "low step"), sheet.speakers().stream().filter(line -> line.gain() != null && line.gain().targetVolts().isGiven())
                .map(line -> List.of(line.output(), Say.amount(line.gain().targetVolts(), Dimension.VOLTAGE) + " AC",
                        Say.amount(SourceLevel.moved(line.gain().targetVolts().orElse(0.0), offset), Dimension.VOLTAGE) + " AC")).toList()));
    }

    /** What is known of an output; volts that nobody set are a blank. */
    private String level(SpeakerLines.Line line, String volume) {
        GainSetting gain = line.gain();
        String volts = gain == null ? Block.BLANK + " V" : blank(gain.targetVolts(), Dimension.VOLTAGE, "V");
        String tone = gain == null ? Block.BLANK + " Hz" : blank(gain.toneHertz(), Dimension.FREQUENCY, "Hz");
        String level = gain == null ? Block.BLANK + " dBFS" : gain.level().map(value -> Say.amount(value, Dimension.LEVEL) + "FS").orElse(Block.BLANK + " dBFS");
        Setting setting = job.plan().settings().get(line.output());
        return line.output() + (setting == null ? "" : setting.name().map(name -> " (" + name + ")").orElse("")) + ", rated " + Say.amount(line.ratedWatts(), Dimension.POWER) + " into " + Say.amount(line.ratedOhms(), Dimension.RESISTANCE) + ", planned load "
                + Say.amount(line.loadOhms(), Dimension.RESISTANCE) + ": turn the gain up until the output reads " + volts + " AC, with a tone of " + tone + " at " + level
                + ", the source's volume step " + volume + ", and no further." + clips(gain) + limiter(line, setting);
    }

    /** The limiter that is planned, in watts and in the volts that a meter shows of it. */
    private static String limiter(SpeakerLines.Line line, Setting setting) {
        return setting == null ? "" : setting.limiterWatts().map(watts -> " Limiter off meanwhile, then at " + Say.amount(watts, Dimension.POWER)
                + line.voltsOf(watts).map(volts -> ", " + Say.amount(volts, Dimension.VOLTAGE) + " AC").orElse("") + ".").orElse("");
    }

    /** What clips first as the source rises above this. */
    private static String clips(GainSetting gain) {
        if (gain == null || !gain.clipsFirst().isGiven() || !gain.room().isGiven()) {
            return "";
        }
        double room = gain.room().orElse(0.0);
        return room < 0 ? " CLIPS ALREADY: " + gain.clipsFirst().orElse("") + ", by " + Say.amount(-room, Dimension.LEVEL) + "."
                : " Clips first: " + gain.clipsFirst().orElse("") + (room < HAIR ? ", at just this level." : ", " + Say.amount(room, Dimension.LEVEL) + " above this.");
    }

    private static String blank(Shown<Double> value, Dimension dimension, String unit) {
        return value.map(si -> Say.amount(si, dimension)).orElse(Block.BLANK + " " + unit);
    }
}
