package bayproof.report.worksheet;

import bayproof.facts.BoxNeighbors;
import bayproof.facts.FuseStation;
import bayproof.report.Amounts;
import bayproof.units.Dimension;
import bayproof.worksheet.BandPower;
import bayproof.worksheet.CutList;
import bayproof.worksheet.Grounds;
import bayproof.worksheet.PinForms;
import bayproof.worksheet.SpeakerLines;
import bayproof.worksheet.WorkHours;
import bayproof.worksheet.Worksheet;
import java.util.List;

/** The bench sheet as tables for other programs. */
final class SheetTables {
    private SheetTables() {
    }

    static List<Table> of(Worksheet sheet) {
        return List.of(cuts(sheet.cuts()), totals(sheet.cuts()), fuses(sheet.fuses()), grounds(sheet.grounds()), pins(sheet),
                speakers(sheet.speakers()), bands(sheet.bands()), boxes(sheet.boxes()), hours(sheet.hours()));
    }

    private static Table cuts(CutList cuts) {
        Table table = new Table("cut-list").text("id", "for", "size", "other-size", "color", "usual-color").number("way", Dimension.LENGTH).number("cut", Dimension.LENGTH)
                .text("from", "from-terminal", "from-method", "from-tool", "to", "to-terminal", "to-method", "to-tool");
        for (CutList.Group group : cuts.groups()) {
            for (CutList.Cut cut : group.cuts()) {
                table.row(cut.id(), cut.use(), group.size(), group.other(), cut.color(), cut.usualColor(), cut.wayMetres(), cut.cutMetres(),
                        cut.from().at(), cut.from().terminal(), cut.from().method(), cut.from().tool(), cut.to().at(), cut.to().terminal(), cut.to().method(), cut.to().tool());
            }
        }
        return table;
    }

    private static Table totals(CutList cuts) {
        Table table = new Table("cut-totals").text("size", "other-size", "cables", "not-measured").number("total", Dimension.LENGTH);
        cuts.groups().forEach(group -> table.row(group.size(), group.other(), String.valueOf(group.cuts().size()), String.valueOf(group.unmeasured()), group.totalMetres()));
        return table;
    }

    private static Table fuses(List<FuseStation> fuses) {
        Table table = new Table("fuses").text("id").number("rating", Dimension.CURRENT).text("place", "post").number("from-post", Dimension.LENGTH)
                .text("live-side", "dead-side", "cables-behind", "other-source");
        fuses.forEach(fuse -> table.row(fuse.id(), fuse.ratingAmperes(), fuse.item().place(), fuse.post(), fuse.metresFromPost(), fuse.liveSide(), fuse.deadSide(),
                fuse.behind(), fuse.otherPost()));
        return table;
    }

    private static Table grounds(List<Grounds.Ground> grounds) {
        Table table = new Table("grounds").text("id", "place", "kind", "surface", "structure", "fastener", "sealed", "cables");
        for (Grounds.Ground ground : grounds) {
            var point = ground.point();
            table.row(ground.id(), ground.place(), point == null ? "ground-bar" : "ground-point", point == null ? null : point.surface(), point == null ? null : point.structure(),
                    point == null ? null : point.fastener(), point == null ? null : point.sealed(), ground.arriving());
        }
        return table;
    }

    private static Table pins(Worksheet sheet) {
        Table table = new Table("pins").text("pin", "function", "color", "connected-to", "method", "state", "must-read", "limit", "must-not-read");
        for (PinForms.Connector connector : sheet.connectors()) {
            for (PinForms.Pin pin : connector.pins()) {
                if (pin.use() != null && pin.reads() != null) {
                    pin.reads().limits().forEach((state, limit) -> table.row(pin.id(), pin.use().function(), pin.use().color(), pin.use().connectedTo(), pin.use().method(),
                            state, Amounts.figure(sheet.job().limits().named(limit)), limit, pin.reads().mustNot()));
                }
            }
        }
        return table;
    }

    private static Table speakers(List<SpeakerLines.Line> speakers) {
        Table table = new Table("speakers").text("output", "net").number("nominal-load", Dimension.RESISTANCE).number("least-load", Dimension.RESISTANCE)
                .number("rated-output", Dimension.POWER).number("rated-load", Dimension.RESISTANCE).number("reads-least", Dimension.RESISTANCE)
                .number("reads-most", Dimension.RESISTANCE).number("target", Dimension.VOLTAGE).number("tone", Dimension.FREQUENCY).number("level", Dimension.LEVEL);
        speakers.forEach(line -> table.row(line.output(), line.net(), line.loadOhms(), line.minimumOhms(), line.ratedWatts(), line.ratedOhms(),
                line.meter() == null ? null : line.meter().lowOhms(), line.meter() == null ? null : line.meter().highOhms(),
                line.gain() == null ? null : line.gain().targetVolts(), line.gain() == null ? null : line.gain().toneHertz(), line.gain() == null ? null : line.gain().level()));
        return table;
    }

    private static Table bands(List<BandPower> bands) {
        Table table = new Table("bands").text("output", "speaker").number("from", Dimension.FREQUENCY).number("to", Dimension.FREQUENCY).number("of-the-programme", Dimension.RATIO)
                .number("loud-programme", Dimension.POWER).number("rated", Dimension.POWER);
        bands.forEach(band -> table.row(band.output(), band.speaker(), band.fromHertz(), band.toHertz(), band.programmeShare(), band.watts(), band.ratedWatts()));
        return table;
    }

    private static Table boxes(List<BoxNeighbors.Neighbor> boxes) {
        Table table = new Table("boxes").text("box").number("share", Dimension.RATIO).number("volume", Dimension.VOLUME).number("corner", Dimension.FREQUENCY)
                .number("peak", Dimension.LEVEL).number("total-q", Dimension.RATIO).number("tuning", Dimension.FREQUENCY);
        boxes.forEach(one -> table.row(one.box(), one.share(), one.cubicMetres(), one.cornerHertz(), one.peakDecibels(), one.totalQ(), one.tuningHertz()));
        return table;
    }

    private static Table hours(WorkHours hours) {
        Table table = new Table("hours").text("step", "does", "waited").number("low", Dimension.TIME).number("likely", Dimension.TIME).number("high", Dimension.TIME).text("after");
        hours.lines().forEach(line -> table.row(line.id(), line.does(), line.waiting() ? "yes" : "no", line.lowSeconds(), line.likelySeconds(), line.highSeconds(), line.after()));
        return table;
    }

    /** The steps of the first power with everything that is ticked or filled in under each. */
    static Table steps(Page power) {
        Table table = new Table("first-power").text("step", "say");
        String step = null;
        for (Block block : power.blocks()) {
            if (block instanceof Block.Step one) {
                step = String.valueOf(one.number());
                table.row(step, one.say());
                for (String line : one.lines()) {
                    table.row(step, plain(line));
                }
            } else if (block instanceof Block.Grid grid && step != null) {
                for (List<String> row : grid.rows()) {
                    table.row(step, plain(String.join(" ", row)));
                }
            }
        }
        return table;
    }

    private static String plain(String line) {
        return line.replace(Block.BOX, "").strip();
    }
}
