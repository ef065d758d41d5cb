package bayproof.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A deck for ngspice: one network, with one combination of conditions of its sources.
 *
 * @param title      network name and the conditions, batteries first
 * @param circuit    the lines of the circuit, the title first
 * @param quantities what is to be printed
 */
record SpiceDeck(String title, String circuit, List<String> quantities) {
    /** Written out here, not asked of the solver: what is under test must not say what is tried. */
    private static final List<Condition> BATTERY =
            List.of(Condition.TAKING_ACCEPTANCE, Condition.AT_REST_VOLTS, Condition.GIVING);
    private static final List<Condition> REGULATED =
            List.of(Condition.STANDING_BY, Condition.HOLDING_SET_POINT, Condition.AT_LIMIT);

    /** The decks of a network, one for each combination of conditions. */
    static List<SpiceDeck> of(NetworkText.Named named) {
        List<SpiceDeck> decks = new ArrayList<>();
        for (Map<String, Condition> conditions : combinations(named.network())) {
            decks.add(new SpiceWriter(named, conditions).write(title(named, conditions)));
        }
        return decks;
    }

    static String title(NetworkText.Named named, Map<String, Condition> conditions) {
        return named.name() + conditions.values().stream().map(condition -> " " + condition)
                .collect(Collectors.joining());
    }

    /** Every combination of conditions, each by the id of its source, batteries first. */
    static List<Map<String, Condition>> combinations(Network network) {
        List<Map<String, Condition>> combinations = List.of(Map.of());
        for (Source source : ordered(network)) {
            List<Map<String, Condition>> longer = new ArrayList<>();
            for (Map<String, Condition> shorter : combinations) {
                for (Condition condition : source instanceof Source.Battery ? BATTERY : REGULATED) {
                    Map<String, Condition> one = new LinkedHashMap<>(shorter);
                    one.put(source.id(), condition);
                    longer.add(one);
                }
            }
            combinations = longer;
        }
        return combinations;
    }

    static List<Source> ordered(Network network) {
        return Stream.concat(network.sources().stream().filter(Source.Battery.class::isInstance),
                network.sources().stream().filter(Source.Regulated.class::isInstance)).toList();
    }

    /** The decks as one text, which {@link #read} takes apart again. */
    static String write(List<SpiceDeck> decks) {
        StringBuilder text = new StringBuilder();
        for (SpiceDeck deck : decks) {
            text.append("deck ").append(deck.title()).append('\n').append(deck.circuit());
            text.append("print ").append(String.join(" ", deck.quantities())).append('\n');
        }
        return text.toString();
    }

    static List<SpiceDeck> read(String text) {
        List<SpiceDeck> decks = new ArrayList<>();
        for (String part : text.split("(?m)^deck ")) {
            if (!part.isEmpty()) {
                String title = part.substring(0, part.indexOf('\n'));
                int print = part.lastIndexOf("print ");
                decks.add(new SpiceDeck(title, part.substring(title.length() + 1, print),
                        Arrays.asList(part.substring(print + "print ".length()).trim().split(" "))));
            }
        }
        return decks;
    }
}
