package bayproof.report.refit;

import bayproof.refit.LevelShift;
import bayproof.refit.Refit;
import bayproof.refit.Tone;
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
    private final LevelShift levels;

    LevelPage(Refit refit) {
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
                channel.after().isEmpty() ? Block.BLANK : String.join(" + ", channel.after()), decibels(channel.decibels(Tone.LOW)), decibels(channel.decibels(Tone.MID)),
                decibels(channel.decibels(Tone.HIGH)), channel.breaks() == null ? "may stay" : "void: " + channel.breaks())).toList()));
        targets(blocks);
        return new Page("4 LEVELS", blocks);
    }

    private void targets(List<Block> blocks) {
        blocks.add(new Block.Heading("GAIN OF EACH OUTPUT"));
        if (levels.outputs().isEmpty()) {
            blocks.add(new Block.Words("", "The old plan writes no gain target: nothing to set by."));
            return;
        }
        int all = levels.channels().size();
        blocks.add(new Block.Grid(List.of("output", "plays", "was set to", "untouched", "turn by", "target, high step", "at low step"), levels.outputs().stream().map(one -> {
            boolean broken = one.breaks() != null;
            String plays = one.inputs().map(inputs -> inputs.size() == all && all > 2 ? "any of them" : inputs.isEmpty() ? "none of them" : String.join(" + ", inputs)).orElse(Block.BLANK);
            return List.of(one.setting(), plays, Say.amount(one.target(), Dimension.VOLTAGE), broken ? Block.BLANK : Say.amount(one.untouchedVolts(), Dimension.VOLTAGE),
                    broken ? "tune anew" : one.decibels().map(value -> decibels(Shown.of(-value))).orElse(Block.BLANK),
                    broken ? Block.BLANK : Say.amount(one.target(), Dimension.VOLTAGE), broken ? Block.BLANK : Say.amount(one.lowStepVolts(), Dimension.VOLTAGE));
        }).toList()));
        blocks.add(new Block.Words("", "The target follows from amplifier and speaker and stays, read with the source at its high step; the gain that reaches it moves against the source, by what the "
                + "channels of the output give at the tone it is set with. At the low step of the new source the same gain reads what stands last. "
                + "Void with every move: delays, equalization and levels by ear, which belong to the old cabin; and every reading taken there."));
        blocks.add(new Block.Words("CAUTION", "Targets are read with the speakers off the output: a test tone at such volts burns a tweeter and hurts ears."));
    }

    private static String decibels(Shown<Double> value) {
        return value.map(decibels -> String.format(Locale.ROOT, "%+.1f dB", decibels + 0.0)).orElse(Block.BLANK);
    }
}
