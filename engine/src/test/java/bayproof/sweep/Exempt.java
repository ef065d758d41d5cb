package bayproof.sweep;

import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Values that a sweep may leave without an effect, on one of three lists: descriptive (with the reason), spare (what the
 * job does not use of its vehicle) and waiting (with the practice that will read it).
 *
 * <p>An entry stands below the job it belongs to, or below {@code any-job}. A {@code *} stands for one key or a part of it.
 */
final class Exempt {
    private static final String ANY = "any-job";

    /** One entry of a list. */
    private static final class Pardon {
        private final String job;
        private final String text;
        private final Pattern pattern;
        private boolean needed;

        Pardon(String job, String text) {
            this.job = job;
            this.text = text;
            StringBuilder regex = new StringBuilder();
            for (String step : text.split("\\*", -1)) {
                regex.append(regex.isEmpty() ? "" : "[^.]+").append(Pattern.quote(step));
            }
            this.pattern = Pattern.compile(regex.toString());
        }

        boolean covers(String ofJob, Spot spot) {
            return (job.equals(ANY) || job.equals(ofJob)) && pattern.matcher(spot.toString()).matches();
        }
    }

    private final String name;
    private final List<Pardon> pardons = new ArrayList<>();
    private final TreeSet<String> wrong = new TreeSet<>();

    private Exempt(String name) {
        this.name = name;
    }

    static Exempt list(String name) {
        Exempt list = new Exempt(name);
        String file = "/sweep/" + name + ".yaml";
        try (InputStream in = Exempt.class.getResourceAsStream(file)) {
            MapTree tree = TreeReader.read(in.readAllBytes(), name + ".yaml");
            for (Entry job : tree.entries().values()) {
                if (job.value() instanceof MapTree entries) {
                    for (Entry entry : entries.entries().values()) {
                        if (!(entry.value() instanceof ScalarTree reason) || reason.isEmpty()) {
                            list.wrong.add("the " + name + " entry " + entry.key() + " gives no reason");
                        }
                        list.pardons.add(new Pardon(job.key(), entry.key()));
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (UnusableInput e) {
            throw new AssertionError(e.getMessage(), e);
        }
        return list;
    }

    /** The entries as they are written, each with its job. */
    List<String> entries() {
        return pardons.stream().map(pardon -> name() + ": " + pardon.text + " (" + pardon.job + ")").toList();
    }

    int length() {
        return pardons.size();
    }

    String name() {
        return name;
    }

    /** Whether a value without effect is on this list; the entry then proves needed. */
    boolean pardons(String job, Spot spot) {
        boolean found = false;
        for (Pardon pardon : pardons) {
            if (pardon.covers(job, spot)) {
                pardon.needed = true;
                found = true;
            }
        }
        return found;
    }

    /** Notes that every sweep saw an effect of a value: no entry may cover it. */
    void hasEffect(String job, Spot spot) {
        pardons.stream().filter(pardon -> pardon.covers(job, spot))
                .forEach(pardon -> wrong.add("the " + name + " entry " + pardon.text + " covers " + spot + ", which has an effect"));
    }

    /** Entries that cover nothing, or too much. */
    List<String> mistakes() {
        pardons.stream().filter(pardon -> !pardon.needed)
                .forEach(pardon -> wrong.add("the " + name + " entry " + pardon.text + " is not needed"));
        return List.copyOf(wrong);
    }
}
