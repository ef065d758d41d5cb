package bayproof.report.refit;

import bayproof.read.Setting;
import bayproof.refit.LevelShift;
import bayproof.refit.Refit;
import bayproof.report.worksheet.Block;
import bayproof.report.worksheet.Page;
import bayproof.report.worksheet.Say;
import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The new source of sound against the old one, and what each output is set to. */
final class LevelPage {
    private final Refit refit;
    private final LevelShift levels;

    LevelPage(Refit refit) {
        this.refit = refit;
        this.levels = refit.levels();
    }

    Page page() {
        List<Block> blocks = new ArrayList<>();
        if (levels.channels().isEmpty()) {
            blocks.add(new Block.Words("", "The old plan takes no sound from the vehicle: nothing to compare."));
            return new Page("4 LEVELS", blocks);
        }
        blocks.add(new Block.Heading("NEW SOURCE AGAINST OLD, at the high volume step"));
        blocks.add(new Block.Grid(List.of("channel", "made of", "40 Hz", "1 kHz", "10 kHz", "settings"), levels.channels().stream().map(channel -> List.of(channel.input(),
                channel.after().isEmpty() ? Block.BLANK : String.join(" + ", channel.after()), decibels(channel.lowDecibels()), decibels(channel.midDecibels()),
                decibels(channel.highDecibels()), channel.breaks() == null ? "may stay" : "void: " + channel.breaks())).toList()));
        targets(blocks);
        return new Page("4 LEVELS", blocks);
    }

    private void targets(List<Block> blocks) {
        List<List<String>> rows = new ArrayList<>();
        Shown<Double> shift = levels.largestDecibels();
        for (Setting setting : refit.before().job().plan().settings().values()) {
            Shown<Double> target = setting.gain().targetVolts();
            if (target.isGiven()) {
                boolean broken = levels.breaks() != null;
                rows.add(List.of(setting.id(), Say.amount(target, Dimension.VOLTAGE), broken ? Block.BLANK : Say.amount(levels.untouchedVolts(target), Dimension.VOLTAGE),
                        broken ? "tune anew" : shift.map(value -> decibels(Shown.of(-value))).orElse(Block.BLANK),
                        Say.amount(target, Dimension.VOLTAGE), Say.amount(setting.gain().toneHertz(), Dimension.FREQUENCY)));
            }
        }
        blocks.add(new Block.Heading("GAIN OF EACH OUTPUT"));
        if (rows.isEmpty()) {
            blocks.add(new Block.Words("", "The old plan writes no gain target: nothing to set by."));
            return;
        }
        blocks.add(new Block.Grid(List.of("output", "was set to", "left as it is, reads", "turn gain by", "new target", "tone"), rows));
        blocks.add(new Block.Words("", "The target follows from the speaker and stays; the gain that reaches it moves against the source, here by the channel at 1 kHz that moves most. "
                + "Void with every move: delays, equalization and levels by ear, which belong to the old cabin; and every reading taken there."));
        blocks.add(new Block.Words("CAUTION", "Targets are read with the speakers off the output: a test tone at such volts burns a tweeter and hurts ears."));
    }

    private static String decibels(Shown<Double> value) {
        return value.map(decibels -> String.format(Locale.ROOT, "%+.1f dB", decibels + 0.0)).orElse(Block.BLANK);
    }
}
