package bayproof.units;

import java.util.Objects;

/**
 * A value with its dimension.
 *
 * @param si        finite value in the unit {@link Dimension#symbol()} names; a negative zero becomes zero
 * @param dimension what it measures
 */
public record Quantity(double si, Dimension dimension) {
    public Quantity {
        Objects.requireNonNull(dimension);
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("a quantity is a finite number, not " + si);
        }
        si += 0.0;
    }
}
