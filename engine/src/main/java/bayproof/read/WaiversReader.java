package bayproof.read;

import bayproof.demand.Gate;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.vocabulary.Shown;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the waivers of a job. Whether they hold is judged later; here is told what cannot be read. */
final class WaiversReader {
    static final String KIND = "waivers";
    private static final List<String> GATES = Arrays.stream(Gate.values()).map(Gate::word).toList();

    private WaiversReader() {
    }

    static Map<String, Waiver> read(MapTree file, Problems problems) {
        JobReader.checkKeys(file, List.of("bayproof", "kind", KIND), problems);
        Map<String, Waiver> waivers = new LinkedHashMap<>();
        Map<String, Waiver> verdicts = new HashMap<>();
        if (file.get(KIND) instanceof MapTree map) {
            Binder binder = new Binder(problems, new Readings());
            for (Entry entry : map.entries().values()) {
                if (!Binder.ID.matcher(entry.key()).matches()) {
                    problems.add(entry.keyAt(), "\"" + entry.key() + "\" is not a name.", "Use lower-case letters, digits and hyphens.");
                }
                Waiver waiver = binder.group(Waiver.class, entry.value(), KIND + "." + entry.key(), entry.keyAt());
                day("date", waiver.date(), problems);
                day("until", waiver.until(), problems);
                if (!GATES.contains(waiver.measuredBy().orElse(GATES.get(0)))) {
                    day("measured-by", waiver.measuredBy(), problems);
                }
                Waiver other = verdicts.putIfAbsent(waiver.rule().orElse(entry.key()) + " " + waiver.subject().orElse(""), waiver);
                if (other != null) {
                    problems.add(entry.keyAt(), "\"" + entry.key() + "\" accepts what \"" + other.id() + "\" accepts already.", "Keep the one that counts.");
                }
                waivers.put(entry.key(), waiver);
            }
        } else if (file.get(KIND) != null) {
            problems.add(file.get(KIND).at(), "\"" + KIND + "\" must be a group of names, not " + file.get(KIND).noun() + ".", "");
        }
        return waivers;
    }

    private static void day(String key, Shown<String> written, Problems problems) {
        if (written instanceof Shown.Given<String> given) {
            try {
                LocalDate.parse(given.value());
            } catch (DateTimeParseException e) {
                problems.add(given.at(), "\"" + Problems.shortened(given.value()) + "\" is no day for \"" + key + "\".",
                        "Write year-month-day, such as 2026-11-20" + (key.equals("measured-by") ? ", or a gate: " + String.join(", ", GATES) + "." : "."));
            }
        }
    }
}
