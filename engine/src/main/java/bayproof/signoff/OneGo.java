package bayproof.signoff;

import bayproof.read.JobFiles;
import bayproof.read.SharedTables;
import bayproof.read.Tree;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.units.UnitException;
import bayproof.units.Units;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Attestations that one person gave in one go: nobody looks at ten things in two minutes. An attestation is any group of
 * a job's files that says who and when; one with a day and no time of day cannot be told apart and is left out.
 *
 * @param who   the person, as written
 * @param count how many
 * @param from  time of the first one
 */
public record OneGo(String who, int count, LocalDateTime from) {

    /** Every such row of attestations, one a person: the longest. */
    public static List<OneGo> of(JobFiles files) {
        Map<String, String> figures = SharedTables.texts("sign-off.yaml", "one-go");
        int least = Integer.parseInt(figures.get("attestations"));
        Duration within = duration(figures.get("within"));
        Map<String, List<LocalDateTime>> times = new TreeMap<>();
        JobFiles.KINDS.forEach(kind -> collect(files.tree(kind), times));
        List<OneGo> found = new ArrayList<>();
        times.forEach((who, all) -> {
            Collections.sort(all);
            int most = 0;
            int start = 0;
            for (int first = 0, end = 0; first < all.size(); first++) {
                while (end < all.size() && Duration.between(all.get(first), all.get(end)).compareTo(within) <= 0) {
                    end++;
                }
                if (end - first > most) {
                    most = end - first;
                    start = first;
                }
            }
            if (most >= least) {
                found.add(new OneGo(who, most, all.get(start)));
            }
        });
        return found;
    }

    private static Duration duration(String text) {
        try {
            return Duration.ofSeconds(Math.round(Units.parse(text).si()));
        } catch (UnitException e) {
            throw new IllegalStateException("sign-off.yaml: " + e.getMessage(), e);
        }
    }

    private static void collect(Tree tree, Map<String, List<LocalDateTime>> times) {
        if (tree instanceof MapTree map) {
            if (map.get("who") instanceof ScalarTree who && map.get("when") instanceof ScalarTree when) {
                LocalDateTime time = time(when.text());
                if (time != null) {
                    times.computeIfAbsent(who.text().strip().toLowerCase(Locale.ROOT), any -> new ArrayList<>()).add(time);
                }
            }
            map.entries().values().forEach(entry -> collect(entry.value(), times));
        } else if (tree instanceof ListTree list) {
            list.items().forEach(item -> collect(item, times));
        }
    }

    /** A day with its time; null where there is none. */
    private static LocalDateTime time(String text) {
        try {
            return LocalDateTime.parse(text);
        } catch (DateTimeParseException e) {
            return null;
        }
    }
}
