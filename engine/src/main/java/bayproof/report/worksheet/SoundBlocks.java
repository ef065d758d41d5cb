package bayproof.report.worksheet;

import bayproof.demand.Limit;
import bayproof.facts.BoxNeighbors;
import bayproof.units.Dimension;
import bayproof.worksheet.BandPower;
import bayproof.worksheet.Worksheet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** What a loud programme gives each speaker, and how each enclosure answers to its volume. */
final class SoundBlocks {
    private static final String NOTHING = "-";
    /** Less is printed as nothing. */
    private static final double LEAST_PEAK = 0.005;

    private SoundBlocks() {
    }

    static List<Block> of(Worksheet sheet) {
        List<Block> blocks = new ArrayList<>();
        if (!sheet.bands().isEmpty()) {
            Limit loud = sheet.job().limits().named("level-loud-programme");
            blocks.add(new Block.Heading("BANDS, and what a loud programme gives them"));
            blocks.add(new Block.Grid(List.of("output", "speaker", "band", "of the\nprogramme", "reaches\nit", "rated"), sheet.bands().stream().map(SoundBlocks::band).toList()));
            blocks.add(new Block.Words("", "A loud programme is " + Say.amount(loud.value(), Dimension.RATIO) + " of full sine, spread over third octaves as in IEC 60268-1 table II, behind the planned "
                    + "filters. A subwoofer counts as if all of it lay in its band: music of today has more bass than that table."));
        }
        if (!sheet.boxes().isEmpty()) {
            blocks.add(new Block.Heading("BOXES, and what a tenth of their air does"));
            blocks.add(new Block.Grid(List.of("box", "air", "volume", "3 dB down\nat", "peak", "Qtc", "tuning"), sheet.boxes().stream().map(SoundBlocks::box).toList()));
            blocks.add(new Block.Words("", "Volume is net of speakers, port and bracing; filling counts. A box that comes out within a tenth of its plan lies between these rows."));
        }
        return blocks;
    }

    private static List<String> band(BandPower band) {
        return List.of(band.output(), band.speaker(), band.programmeShare() == null ? Block.BLANK : limits(band), known(band.programmeShare(), Dimension.RATIO, Block.BLANK),
                known(band.watts(), Dimension.POWER, Block.BLANK), Say.amount(band.ratedWatts(), Dimension.POWER));
    }

    private static String limits(BandPower band) {
        String from = band.fromHertz() == null ? "" : "from " + Say.amount(band.fromHertz(), Dimension.FREQUENCY);
        String to = band.toHertz() == null ? "" : "to " + Say.amount(band.toHertz(), Dimension.FREQUENCY);
        return from.isEmpty() && to.isEmpty() ? "whole" : (from + (from.isEmpty() || to.isEmpty() ? "" : "\n") + to);
    }

    private static List<String> box(BoxNeighbors.Neighbor one) {
        String air = one.share() < 1 ? "10 % less" : one.share() > 1 ? "10 % more" : "as planned";
        return List.of(one.box(), air, Say.amount(one.cubicMetres(), Dimension.VOLUME), Say.amount(one.cornerHertz(), Dimension.FREQUENCY),
                one.peakDecibels() < LEAST_PEAK ? NOTHING : hundredths(one.peakDecibels()) + " dB", one.totalQ() == null ? NOTHING : hundredths(one.totalQ()),
                known(one.tuningHertz(), Dimension.FREQUENCY, NOTHING));
    }

    private static String known(Double value, Dimension dimension, String otherwise) {
        return value == null ? otherwise : Say.amount(value, dimension);
    }

    private static String hundredths(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }
}
