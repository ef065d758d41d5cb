package bayproof.solve.sound;

/** What a speaker's wire takes. Resistance is that of both conductors, the round trip. */
public final class SpeakerWire {
    private SpeakerWire() {
    }

    /** Resistance of both conductors of a cable. */
    public static double loopOhms(double ohmsPerMetre, double metres) {
        return 2 * ohmsPerMetre * metres;
    }

    /** Resistance of the wire as a share of the load. */
    public static double shareOfLoad(double wireOhms, double loadOhms) {
        return wireOhms / loadOhms;
    }

    /** Level at the speaker against no wire: 20 log10(R/(R + Rw)), at most 0. */
    public static double levelDecibels(double wireOhms, double loadOhms) {
        return Levels.decibels(loadOhms, loadOhms + wireOhms);
    }

    /** Power that an amplifier of fixed volts gives into load and wire together. */
    public static double givenWatts(double volts, double wireOhms, double loadOhms) {
        return Levels.watts(volts, wireOhms + loadOhms);
    }

    /** Power lost in the wire where an amplifier holds its volts: the current is that of load and wire in series. */
    public static double lostWatts(double volts, double wireOhms, double loadOhms) {
        return givenWatts(volts, wireOhms, loadOhms) * wireOhms / (wireOhms + loadOhms);
    }

    /** Damping factor at the speaker: load over everything in series with it (textbook). */
    public static double dampingFactor(double loadOhms, double outputOhms, double wireOhms) {
        return loadOhms / (outputOhms + wireOhms);
    }

    /** Longest wire, one way, whose round trip stays within a share of the load. */
    public static double longestMetres(double loadOhms, double share, double ohmsPerMetre) {
        return loadOhms * share / (2 * ohmsPerMetre);
    }
}
