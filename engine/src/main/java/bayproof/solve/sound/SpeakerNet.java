package bayproof.solve.sound;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A series-parallel net of voice coils as a load. A coil is taken as a resistance; one that is fed through a capacitor has it in
 * series. Series: Z = sum Zi; parallel: 1/Z = sum 1/Zi (textbook). Immutable.
 */
public sealed interface SpeakerNet {

    /**
     * One voice coil, or a complete passive network with all that hangs on it.
     *
     * @param id     its name; unique in a net
     * @param ohms   nominal impedance or DC resistance; 0 for a short, infinite for an open coil
     * @param farads capacitor in series; infinite where there is none
     */
    record Coil(String id, double ohms, double farads) implements SpeakerNet {
        /** A coil without a capacitor. */
        public Coil(String id, double ohms) {
            this(id, ohms, Double.POSITIVE_INFINITY);
        }

        /** @throws IllegalArgumentException if it is a resistance or a capacitor that cannot be */
        public Coil {
            if (!(ohms >= 0) || !(farads > 0)) {
                throw new IllegalArgumentException("a coil of " + ohms + " ohm behind " + farads + " F cannot be");
            }
        }
    }

    /** Members one after the other. */
    record Series(List<SpeakerNet> members) implements SpeakerNet {
        public Series {
            members = List.copyOf(members);
        }
    }

    /** Members side by side. */
    record Parallel(List<SpeakerNet> members) implements SpeakerNet {
        public Parallel {
            members = List.copyOf(members);
        }
    }

    /**
     * What an ohmmeter reads across the net, without its leads: a capacitor lets no direct current through.
     *
     * @return ohms; infinite for an open net, 0 for a shorted one
     */
    default double directOhms() {
        if (this instanceof Coil coil) {
            return Double.isInfinite(coil.farads()) ? coil.ohms() : Double.POSITIVE_INFINITY;
        }
        if (this instanceof Series series) {
            return series.members().stream().mapToDouble(SpeakerNet::directOhms).sum();
        }
        return 1 / ((Parallel) this).members().stream().mapToDouble(member -> 1 / member.directOhms()).sum();
    }

    /** Whether some coil is fed through a capacitor: then the load depends on the frequency. */
    default boolean hasCapacitor() {
        if (this instanceof Coil coil) {
            return !Double.isInfinite(coil.farads());
        }
        List<SpeakerNet> members = this instanceof Series series ? series.members() : ((Parallel) this).members();
        return members.stream().anyMatch(SpeakerNet::hasCapacitor);
    }

    /**
     * Magnitude of the load at a frequency.
     *
     * @param hertz above 0
     * @return ohms; every coil of the net must be finite and above 0
     */
    default double ohmsAt(double hertz) {
        return impedanceAt(hertz).magnitude();
    }

    /** The load at a frequency; see {@link #ohmsAt}. */
    private Impedance impedanceAt(double hertz) {
        if (this instanceof Coil coil) {
            return new Impedance(coil.ohms(), -1 / (2 * Math.PI * hertz * coil.farads()));
        }
        if (this instanceof Series series) {
            return series.members().stream().map(member -> member.impedanceAt(hertz)).reduce(new Impedance(0, 0), Impedance::plus);
        }
        return ((Parallel) this).members().stream().map(member -> member.impedanceAt(hertz).inverse())
                .reduce(new Impedance(0, 0), Impedance::plus).inverse();
    }

    /**
     * Power that each coil takes where the net has so many volts across it; capacitors take none.
     *
     * @param hertz above 0
     * @param volts RMS volts across the net
     * @return watts by coil in the order written
     */
    default Map<String, Double> wattsAt(double hertz, double volts) {
        Map<String, Double> watts = new LinkedHashMap<>();
        collectWatts(hertz, Math.pow(volts / ohmsAt(hertz), 2), watts);
        return watts;
    }

    /**
     * Share of the power of the whole net that each coil takes at a frequency.
     *
     * @param hertz above 0
     * @return shares by coil in the order written; they sum to 1
     */
    default Map<String, Double> sharesAt(double hertz) {
        Map<String, Double> watts = wattsAt(hertz, 1);
        double sum = watts.values().stream().mapToDouble(Double::doubleValue).sum();
        watts.replaceAll((coil, one) -> one / sum);
        return watts;
    }

    /** Power of the coil that takes the most, against the one that takes the least. */
    default double shareRatio(double hertz) {
        Map<String, Double> shares = sharesAt(hertz);
        return Collections.max(shares.values()) / Collections.min(shares.values());
    }

    /** Adds the power of every coil where the net carries a current of this square. */
    private void collectWatts(double hertz, double amperesSquared, Map<String, Double> watts) {
        if (this instanceof Coil coil) {
            watts.put(coil.id(), amperesSquared * coil.ohms());
        } else if (this instanceof Series series) {
            series.members().forEach(member -> member.collectWatts(hertz, amperesSquared, watts));
        } else {
            double voltsSquared = amperesSquared * Math.pow(ohmsAt(hertz), 2);
            ((Parallel) this).members().forEach(member -> member.collectWatts(hertz, voltsSquared / Math.pow(member.ohmsAt(hertz), 2), watts));
        }
    }
}
