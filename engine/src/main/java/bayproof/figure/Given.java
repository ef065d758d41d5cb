package bayproof.figure;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.figure.Input.Kind;
import bayproof.read.SharedTables;
import bayproof.solve.sound.SpeakerNet;
import bayproof.units.Dimension;
import bayproof.units.UnitException;
import bayproof.units.Units;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The values a figure is asked with, in SI, and the limits in force. */
public final class Given {
    private final Map<String, Object> values;
    private final Map<String, String> texts;
    private final Limits limits;

    private Given(Map<String, Object> values, Map<String, String> texts, Limits limits) {
        this.values = values;
        this.texts = texts;
        this.limits = limits;
    }

    /**
     * Reads the values.
     *
     * @param words {@code name=value}; a word without an equals sign belongs to the value before it, so that
     *              {@code length=1.2 m} may be written without quotes
     * @throws FigureMistake when one is not known, not given, given twice or cannot be read
     */
    static Given read(Figure figure, List<String> words, Limits limits) throws FigureMistake {
        Map<String, String> written = new LinkedHashMap<>();
        String last = null;
        for (String word : words) {
            int equals = word.indexOf('=');
            if (equals < 0 && last == null) {
                throw FigureMistake.of("\"" + word + "\" is no value.", "Write name=value: " + figure.command());
            }
            if (equals < 0) {
                written.merge(last, word, (before, more) -> before + " " + more);
                continue;
            }
            last = word.substring(0, equals);
            name(figure, last);
            if (written.put(last, word.substring(equals + 1)) != null) {
                throw FigureMistake.of("\"" + last + "\" is given twice.", "Leave one of them out.");
            }
        }
        List<String> missing = figure.inputs().stream().filter(input -> input.needed() && !written.containsKey(input.name()))
                .map(input -> input.name() + " (" + input.says() + ")").toList();
        if (!missing.isEmpty()) {
            throw FigureMistake.of("Not given: " + String.join(", ", missing) + ".", "Such as: " + figure.command());
        }
        Map<String, Object> values = new LinkedHashMap<>();
        Map<String, String> texts = new LinkedHashMap<>();
        for (Input input : figure.inputs()) {
            String text = written.getOrDefault(input.name(), input.otherwise());
            if (!text.isEmpty() || written.containsKey(input.name())) {
                values.put(input.name(), value(input, text));
                texts.put(input.name(), text);
            }
        }
        return new Given(values, texts, limits);
    }

    private static void name(Figure figure, String name) throws FigureMistake {
        List<String> known = figure.inputs().stream().map(Input::name).toList();
        if (!known.contains(name)) {
            throw FigureMistake.unknown("\"" + name + "\" is no value of " + figure.name() + ".", name, known, "It takes " + String.join(", ", known) + ".");
        }
    }

    private static Object value(Input input, String text) throws FigureMistake {
        try {
            return switch (input.kind()) {
                case QUANTITY -> Units.parse(text, input.dimension()).si();
                case QUANTITIES -> quantities(text, input.dimension());
                case SIZE -> size(text);
                case COUNT -> count(text);
                case NUMBER -> plain(text);
                case WORD -> word(input, text);
                case NET -> NetText.parse(text);
            };
        } catch (UnitException e) {
            throw FigureMistake.of(input.name() + ": " + e.getMessage(), "");
        } catch (IllegalArgumentException e) {
            throw FigureMistake.of(input.name() + ": " + e.getMessage() + ".", "Write " + input.written() + ".");
        }
    }

    private static List<Double> quantities(String text, Dimension dimension) throws UnitException {
        List<Double> all = new ArrayList<>();
        for (String one : text.split(",", -1)) {
            all.add(Units.parse(one, dimension).si());
        }
        return all;
    }

    private static String size(String text) throws UnitException {
        String size = Units.parseSize(text);
        if (!SharedTables.conductors().knows(size)) {
            throw new IllegalArgumentException("there is no data for the size " + size);
        }
        return size;
    }

    private static Integer count(String text) {
        if (!text.strip().matches("[0-9]{1,4}")) {
            throw new IllegalArgumentException("\"" + text + "\" is no whole number");
        }
        return Integer.parseInt(text.strip());
    }

    private static Double plain(String text) {
        if (!text.strip().matches("[0-9]{1,6}(\\.[0-9]{1,9})?") || Double.parseDouble(text.strip()) <= 0) {
            throw new IllegalArgumentException("\"" + text + "\" is no number above zero");
        }
        return Double.parseDouble(text.strip());
    }

    private static String word(Input input, String text) {
        if (!input.words().contains(text.strip())) {
            throw new IllegalArgumentException("\"" + text + "\" is none of its words");
        }
        return text.strip();
    }

    // values

    boolean has(String name) {
        return values.containsKey(name);
    }

    double number(String name) {
        return (Double) values.get(name);
    }

    int count(String name, int otherwise) {
        return has(name) ? (Integer) values.get(name) : otherwise;
    }

    @SuppressWarnings("unchecked")
    List<Double> numbers(String name) {
        return (List<Double>) values.get(name);
    }

    double sum(String name) {
        return numbers(name).stream().mapToDouble(Double::doubleValue).sum();
    }

    String word(String name) {
        return (String) values.get(name);
    }

    boolean yes(String name) {
        return "yes".equals(values.get(name));
    }

    SpeakerNet net() {
        return (SpeakerNet) values.get("net");
    }

    /** A number that was given, for a fact. */
    Shown<Double> shown(String name) {
        return Shown.of(number(name));
    }

    Shown<Boolean> shownYes(String name) {
        return Shown.of(yes(name));
    }

    // limits

    double limit(String name) {
        return limits.named(name).value();
    }

    Limit named(String name) {
        return limits.named(name);
    }

    Limits limits() {
        return limits;
    }

    /** The values as they were written, by name; those that stand for what was left out too. */
    public Map<String, String> texts() {
        return java.util.Collections.unmodifiableMap(texts);
    }

    /** The quantities that were given under a name, unrounded; empty where its value is none. */
    public List<Double> si(Input input) {
        return !has(input.name()) ? List.of() : input.kind() == Kind.QUANTITY ? List.of(number(input.name()))
                : input.kind() == Kind.QUANTITIES ? numbers(input.name()) : List.of();
    }
}
