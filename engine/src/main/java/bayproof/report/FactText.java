package bayproof.report;

import bayproof.judge.Verdict;
import bayproof.read.Sizes;
import bayproof.units.Dimension;
import bayproof.units.Units;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Prints what the rules were told about a subject, from the fact's own names: a fact nobody thought of is printed too. */
final class FactText {
    /** A number's name ends with its unit; what has none is a share. */
    private static final Map<String, Dimension> ENDINGS = Map.of("Metres", Dimension.LENGTH, "Ohms", Dimension.RESISTANCE,
            "Amperes", Dimension.CURRENT, "Volts", Dimension.VOLTAGE, "Watts", Dimension.POWER, "Celsius", Dimension.TEMPERATURE,
            "Seconds", Dimension.TIME, "Hertz", Dimension.FREQUENCY, "Share", Dimension.RATIO, "Drop", Dimension.RATIO);

    private FactText() {
    }

    /**
     * One line for each component of a fact that says something about its subject.
     *
     * @param measured what a verdict was about, which tells the unit of the same number here; may be null
     */
    static List<String> lines(Fact fact, Verdict.Measured measured) {
        List<String> lines = new ArrayList<>();
        for (RecordComponent component : fact.getClass().getRecordComponents()) {
            if (component.getName().equals("subject") || component.getName().equals("at") || component.getType() == Knob.class) {
                continue;
            }
            try {
                Object value = component.getAccessor().invoke(fact);
                String text = text(value, dimension(component.getName(), value, measured));
                if (!text.isEmpty()) {
                    lines.add(words(component.getName()) + ": " + Sizes.bothWays(text));
                }
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("a fact cannot be read: " + fact.getClass().getName(), e);
            }
        }
        return lines;
    }

    private static Dimension dimension(String name, Object value, Verdict.Measured measured) {
        boolean same = measured != null && measured.word() == null && value instanceof Shown.Given<?> given
                && given.value().equals(measured.number());
        return ENDINGS.entrySet().stream().filter(entry -> name.endsWith(entry.getKey())).map(Map.Entry::getValue).findFirst()
                .orElse(same ? Dimension.ofSymbol(measured.unit()) : null);
    }

    private static String words(String name) {
        String bare = name;
        for (String ending : ENDINGS.keySet()) {
            if (bare.endsWith(ending) && ENDINGS.get(ending) != Dimension.RATIO) {
                bare = bare.substring(0, bare.length() - ending.length());
            }
        }
        return bare.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
    }

    private static String text(Object value, Dimension dimension) {
        if (value instanceof Shown.Given<?> given) {
            return text(given.value(), dimension) + (given.calculation() == null ? "" : "  (" + given.calculation().get() + ")");
        }
        if (value instanceof Shown.Assumed<?> assumed) {
            return "between " + (assumed.bad() == null ? "no working state" : text(assumed.bad(), dimension)) + " and "
                    + text(assumed.good(), dimension) + ", resting on "
                    + String.join(", ", assumed.windows().all().stream().map(Window::limit).distinct().toList())
                    + (assumed.calculation() == null ? "" : "  (" + assumed.calculation().get() + ")");
        }
        if (value instanceof Shown.Collapsed<?> collapsed) {
            return collapsed.reason();
        }
        if (value instanceof Shown.Hidden<?> hidden) {
            return "cannot be seen (" + hidden.need().path() + ")";
        }
        if (value instanceof Shown.Missing<?> missing) {
            return "not shown (" + String.join("; ", missing.needs().stream().map(FactText::need).toList()) + ")";
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof Double number) {
            return dimension == null ? String.format(Locale.ROOT, "%.4g", number) : Units.print(number, dimension);
        }
        if (value instanceof Attestation proof) {
            return proof.who() + ", " + proof.when() + ", " + proof.evidence();
        }
        return value instanceof Enum<?> word ? word.name().toLowerCase(Locale.ROOT).replace('_', '-') : String.valueOf(value);
    }

    private static String need(Need need) {
        return need.path().contains(".") ? need.path() : need.ask();
    }
}
