package bayproof.facts;

import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Values that a sum takes together: each is asked for in turn, and what is missing is gathered, so that all of it is named at once. A
 * missing number reads as NaN until then.
 */
final class Gathered {
    private final List<Need> missing = new ArrayList<>();

    double number(Shown<Double> value) {
        note(value);
        return value.orElse(Double.NaN);
    }

    double plain(Shown<BigDecimal> value) {
        note(value);
        return value.map(BigDecimal::doubleValue).orElse(Double.NaN);
    }

    <T> T one(Shown<T> value, T otherwise) {
        note(value);
        return value.orElse(otherwise);
    }

    void need(Need need) {
        if (!missing.contains(need)) {
            missing.add(need);
        }
    }

    private void note(Shown<?> value) {
        value.needs().forEach(this::need);
    }

    boolean complete() {
        return missing.isEmpty();
    }

    /** The result where nothing was missing. */
    <T> Shown<T> then(Supplier<T> result) {
        return complete() ? Shown.of(result.get()) : Shown.missing(missing);
    }

    /** The same with the formula that its numbers stand in. */
    Shown<Double> then(Supplier<Double> result, Supplier<String> calculation) {
        return complete() ? Shown.of(result.get(), calculation) : Shown.missing(missing);
    }
}
