package bayproof.read;

import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.units.Quantity;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Values measured on the vehicle. A reading that says with what, in which state, by whom and when it was taken
 * replaces what plan, vehicle sheet or parts book say; one that leaves any of that out replaces nothing.
 */
final class Readings {
    /** One reading as written. */
    record Reading(@Field(key = "of", says = "path of the value that was measured") Shown<String> of,
                   @Field(key = "value", says = "the reading with its unit") Shown<Quantity> value,
                   @Field(key = "place", says = "where the tips or the sensor were") Shown<String> place,
                   @Field(key = "instrument", says = "the instrument used") Shown<String> instrument,
                   @Field(key = "state", says = "the state the vehicle was in", words = {"asleep", "ignition-on",
                       "cranking", "charging-idle", "charging-full", "supply-off"}) Shown<String> state,
                   @Field(key = "conditions", says = "what else held while it was taken") Shown<String> conditions,
                   @Field(key = "who", says = "who took the reading") Shown<String> who,
                   @Field(key = "when", says = "date and time of the reading") Shown<String> when,
                   @Field(key = "photo", says = "number or file of the photo that shows the reading") Shown<String> photo,
                   @Field(key = "photo-hash", says = "SHA-256 of that photo's file, 64 hexadecimal digits") Shown<String> photoHash,
                   @Field(key = "explained", says = "why it lies far from what was planned") Shown<String> explained,
                   String id, At at) {
        boolean counts() {
            return lacks().isEmpty();
        }

        /** What it leaves out, and without which it replaces nothing. */
        List<String> lacks() {
            Map<String, Shown<?>> needed = new LinkedHashMap<>();
            needed.put("value", value);
            needed.put("instrument", instrument);
            needed.put("state", state);
            needed.put("who", who);
            needed.put("when", when);
            return needed.entrySet().stream().filter(one -> !one.getValue().isGiven()).map(Map.Entry::getKey).toList();
        }
    }

    private final Map<String, Reading> byPath = new LinkedHashMap<>();
    private static final String DAY = "[0-9]{4}-[0-9]{2}-[0-9]{2}";
    /** Sorts behind every time of a day. */
    private static final String AFTER_ANY_TIME = "U";

    private static final String HASH = "[0-9a-fA-F]{64}";

    private final Map<String, String> replaced = new LinkedHashMap<>();
    private final Set<String> lapsed = new HashSet<>();
    private final Set<String> readable = new HashSet<>();

    /** A reading with a tool whose calibration had run out on that day replaces nothing. */
    void add(Reading reading, MapTree calibrations, Problems problems) {
        String of = reading.of().orElse("");
        if (calibrations.get(reading.instrument().orElse("").replace(' ', '-')) instanceof ScalarTree until
                && until.text().matches(DAY) && reading.when().orElse("").compareTo(until.text() + AFTER_ANY_TIME) > 0) {
            lapsed.add(of);
        }
        if (!reading.photoHash().orElse("").isEmpty() && !reading.photoHash().orElse("").matches(HASH)) {
            problems.add(reading.photoHash().atOr(reading.at()), "this is no SHA-256 hash.", "It has 64 hexadecimal digits; sha256sum prints it.");
        }
        if (!of.isEmpty() && byPath.putIfAbsent(of, reading) != null) {
            problems.add(reading.at(), "\"" + of + "\" has a second reading here.", "Keep the one that counts.");
        }
    }

    /** The reading that replaces the value at a path, or null; remembers that a value stands there. */
    Reading replacing(String path) {
        readable.add(path);
        return lapsed.contains(path) ? null : byPath.get(path);
    }

    /** Remembers what a reading took the place of. */
    void replaced(String path, String written) {
        replaced.put(path, written);
    }

    /** Every reading with what it replaced, by path of the value it measured, in the order of their file. */
    Map<String, Taken> taken() {
        Map<String, Taken> taken = new LinkedHashMap<>();
        byPath.forEach((path, one) -> taken.put(path, new Taken(one.id(), path, one.value(), one.place(), one.instrument(), one.state(), one.conditions(),
                one.who(), one.when(), one.photo(), one.photoHash(), one.explained(), replaced.getOrDefault(path, ""), why(path, one), one.at())));
        return Collections.unmodifiableMap(taken);
    }

    private String why(String path, Reading reading) {
        return lapsed.contains(path) ? "the calibration of its tool had run out" : reading.counts() ? "" : "it does not say " + String.join(", ", reading.lacks());
    }

    /**
     * Names readings of values that stand nowhere.
     *
     * @param unread items that are written but could not be read; a reading of one of them is no further mistake
     */
    void checkAllUsed(Set<String> unread, Problems problems) {
        Collection<String> known = Collections.unmodifiableCollection(readable);
        byPath.forEach((path, reading) -> {
            boolean ofUnread = unread.stream().anyMatch(id -> path.startsWith("items." + id + ".") || path.startsWith("supply.sources." + id + "."));
            if (!readable.contains(path) && !ofUnread) {
                problems.unknown(reading.at(), "the path of a value that can be measured", path, known);
            }
        });
    }
}
