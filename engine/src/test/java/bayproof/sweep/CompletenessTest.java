package bayproof.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.JobFiles;
import bayproof.read.SharedTables;
import bayproof.read.Tree.MapTree;
import bayproof.read.UnusableInput;
import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import bayproof.units.Dimension;
import bayproof.units.Quantity;
import bayproof.units.UnitException;
import bayproof.units.Units;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.atomic.LongAdder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nothing in a clean job is without effect: whatever is taken out is missed, and whatever figure is changed changes a
 * figure or a verdict, or it stands on one of three lists.
 */
class CompletenessTest {
    private final List<Exempt> lists = List.of(Exempt.list("descriptive"), Exempt.list("spare"), Exempt.list("waiting"));
    private final LongAdder mutations = new LongAdder();

    /** What became of one value: whether it was missed when taken out, and felt when changed into one of the others. */
    private record Tried(Spot spot, boolean missed, List<String> others, boolean felt) {
    }

    @Test
    void whateverIsTakenOutOrChangedIsNoticed(@TempDir Path folder) {
        List<String> unnoticed = new ArrayList<>();
        for (String job : Jobs.CLEAN) {
            Evaluation base = Jobs.asWritten(job);
            Remark before = new Remark(base);
            OnDisk disk = new OnDisk(folder.resolve(job), job, base.files());
            for (Tried tried : spots(base.files(), before).parallelStream().map(spot -> tried(base.files(), spot, before, disk)).toList()) {
                Spot spot = tried.spot();
                if (tried.missed() && tried.felt()) {
                    lists.forEach(list -> list.hasEffect(job, spot));
                } else if (lists.stream().filter(list -> list.pardons(job, spot)).count() != 1) {
                    unnoticed.add(spot + (tried.missed() ? "" : ", taken out")
                            + (tried.felt() ? "" : ", changed to " + String.join(" or ", tried.others())));
                }
            }
        }
        Tally.count("sweep mutations", mutations.sum());
        Tally.say(String.join(", ", lists.stream().map(list -> list.name() + " list: " + list.length()).toList()));
        lists.forEach(list -> list.entries().forEach(Tally::say));
        assertEquals(List.of(), unnoticed, "without effect, or on more than one list");
        assertEquals(List.of(), lists.stream().flatMap(list -> list.mistakes().stream()).toList());
    }

    private Tried tried(JobFiles files, Spot spot, Remark before, OnDisk disk) {
        List<String> others = others(files, spot);
        return new Tried(spot, isMissed(files, spot, before, disk), others,
                others.isEmpty() || others.stream().anyMatch(other -> isFelt(files, spot, other, before)));
    }

    /** Every entry and value of plan, vehicle sheet and readings, and of the parts that the job uses. */
    private static List<Spot> spots(JobFiles files, Remark before) {
        List<Spot> spots = new ArrayList<>();
        for (String kind : List.of("plan", "vehicle", "readings")) {
            spots.addAll(Spot.all(files, kind));
        }
        TreeSet<String> named = new TreeSet<>();
        spots.stream().filter(spot -> spot.steps().get(spot.steps().size() - 1).equals("part")).forEach(spot -> named.add(spot.text(files)));
        for (String part : ((MapTree) files.tree("parts").get("parts")).entries().keySet()) {
            Spot whole = new Spot("parts", List.of("parts", part));
            if (named.contains(part) || isMissed(whole.takenFrom(files), before)) {
                Spot.all(files, "parts").stream().filter(spot -> spot.equals(whole) || spot.isUnder("parts", part)).forEach(spots::add);
            }
        }
        return spots;
    }

    // taking out

    private boolean isMissed(JobFiles files, Spot spot, Remark before, OnDisk disk) {
        mutations.increment();
        JobFiles changed = spot.takenFrom(files);
        if (spot.kind().equals("parts") || spot.steps().size() > 1 && !spot.isUnder("parts")) {
            return isMissed(changed, before);
        }
        try {
            return isMissed(disk.reread(spot.kind(), changed.tree(spot.kind())), before);
        } catch (UnusableInput e) {
            return true;
        }
    }

    private static boolean isMissed(JobFiles changed, Remark before) {
        try {
            Remark after = new Remark(Evaluation.of(changed));
            return after.isWorseThan(before) || after.assumesMoreThan(before);
        } catch (UnusableInput e) {
            return true;
        }
    }

    // changing figures

    private boolean isFelt(JobFiles files, Spot spot, String other, Remark before) {
        mutations.increment();
        try {
            return new Remark(Evaluation.of(spot.saying(files, other))).differsFrom(before);
        } catch (UnusableInput e) {
            return false;
        }
    }

    /** Other figures to try where a figure stands; none where the value is no figure. */
    private static List<String> others(JobFiles files, Spot spot) {
        String text = spot.text(files);
        // The version of the format is a name written in digits.
        if (text == null || spot.steps().equals(List.of("bayproof"))) {
            return List.of();
        }
        List<String> others = new ArrayList<>();
        if (text.matches("[0-9]{1,4}")) {
            others.add(String.valueOf(Integer.parseInt(text) + 1));
            others.add(String.valueOf(Integer.parseInt(text) - 1));
        }
        others.addAll(sizes(text));
        try {
            Quantity quantity = Units.parse(text);
            String number = text.replaceFirst("[^0-9.+-].*", "");
            String unit = text.substring(number.length());
            if (quantity.si() == 0) {
                // Ten times nothing is nothing.
                others.add("1" + unit);
            }
            others.add(new BigDecimal(number).movePointRight(1).toPlainString() + unit);
            others.add(new BigDecimal(number).movePointLeft(1).toPlainString() + unit);
            // A level of nought is a level like any other, and ten times nought is nought.
            if (quantity.dimension() == Dimension.LEVEL) {
                others.add(new BigDecimal(number).subtract(BigDecimal.ONE).toPlainString() + unit);
            }
            if (quantity.dimension() == Dimension.CURRENT) {
                SharedTables.fuses().below(quantity.si()).stream().findFirst()
                        .ifPresent(rating -> others.add(Units.print(rating, Dimension.CURRENT)));
            }
        } catch (UnitException e) {
            // A word: nothing but its size or whole number can be stepped.
        }
        return others;
    }

    /** The cable size next above. */
    private static List<String> sizes(String text) {
        try {
            return SharedTables.conductors().larger(Units.parseSize(text)).stream().limit(1).toList();
        } catch (UnitException | IllegalArgumentException e) {
            return List.of();
        }
    }

    @Test
    void whatNothingReadsIsNotTakenForMissed() {
        JobFiles files = Jobs.asWritten(Jobs.CLEAN.get(0)).files();
        Remark before = new Remark(Jobs.asWritten(Jobs.CLEAN.get(0)));
        assertFalse(isMissed(new Spot("plan", List.of("job", "title")).takenFrom(files), before));
        assertFalse(isFelt(files, new Spot("plan", List.of("job", "title")), "Another title", before));
        assertTrue(isMissed(new Spot("plan", List.of("runs", "feed-1", "length")).takenFrom(files), before));
        assertTrue(isMissed(new Spot("plan", List.of("runs", "feed-1", "metal")).takenFrom(files), before), "copper is then assumed");
        assertTrue(isFelt(files, new Spot("plan", List.of("runs", "feed-1", "length")), "0.31 m", before));
    }
}
