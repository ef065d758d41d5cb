package bayproof.solve.acoustic;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * What a box is driven with: a full sine of so many volts anywhere in the band, behind the planned filters.
 *
 * @param lowHertz  lowest tone of the programme
 * @param highHertz highest tone that is looked at
 * @param volts     RMS volts of a full sine
 * @param filters   filters before the amplifier
 */
public record PlayedBand(double lowHertz, double highHertz, double volts, List<Filter> filters) {
    private static final int PER_OCTAVE = 48;

    /** The largest of a quantity over the band, and where it is. */
    public record Worst(double value, double hertz) {
    }

    public PlayedBand {
        filters = List.copyOf(filters);
    }

    private double voltsAt(double hertz) {
        return volts * new Band(filters, false, 0).at(hertz).magnitude();
    }

    /** The fastest air in the port, m/s peak. */
    public Worst portMetresPerSecond(VentedBox box) {
        return worst(hertz -> box.portMetresPerSecond(hertz, voltsAt(hertz)));
    }

    /** The farthest travel of the cone to one side, meters. */
    public Worst travelMetres(Enclosure box) {
        return worst(hertz -> box.travelMetres(hertz, voltsAt(hertz)));
    }

    private Worst worst(DoubleUnaryOperator of) {
        Worst worst = new Worst(0, lowHertz);
        int steps = (int) Math.ceil(PER_OCTAVE * Math.log(highHertz / lowHertz) / Math.log(2));
        for (int i = 0; i <= steps; i++) {
            double hertz = lowHertz * Math.pow(highHertz / lowHertz, (double) i / steps);
            double value = of.applyAsDouble(hertz);
            worst = value > worst.value() ? new Worst(value, hertz) : worst;
        }
        return worst;
    }
}
