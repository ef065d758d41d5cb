package bayproof.solve.sound;

/** What an amplifier takes from its supply. */
public final class Draw {
    private Draw() {
    }

    /**
     * Efficiency of an output stage at a share of its full-sine output, idle draw apart. A class D stage keeps its efficiency; that of a
     * class AB stage goes with the square root of the share (ideal stages, textbook; 78.5 % at full sine gives 27.8 % at one eighth).
     *
     * @param classD          whether it is a class D stage; class AB otherwise
     * @param atFullSine      efficiency at full sine, 0 to 1
     * @param shareOfFullSine output as a share of full sine, above 0 to 1
     */
    public static double efficiency(boolean classD, double atFullSine, double shareOfFullSine) {
        return classD ? atFullSine : atFullSine * Math.sqrt(shareOfFullSine);
    }

    /** Power taken for an output at an efficiency. */
    public static double supplyWatts(double outputWatts, double efficiency) {
        return outputWatts / efficiency;
    }

    /** Current of a power at so many volts: I = P/V (textbook). */
    public static double amperes(double watts, double volts) {
        return watts / volts;
    }

    /**
     * Current of an amplifier: its idle draw, and its output over its efficiency at that level.
     *
     * @param outputWatts    output at full sine into the planned loads
     * @param atFullSine     efficiency at full sine, 0 to 1
     * @param shareOfFullSine 0 to 1; 0 is idle
     */
    public static double amplifierAmperes(double idleAmperes, double outputWatts, boolean classD, double atFullSine, double shareOfFullSine, double volts) {
        return shareOfFullSine == 0 ? idleAmperes : idleAmperes
                + amperes(supplyWatts(outputWatts * shareOfFullSine, efficiency(classD, atFullSine, shareOfFullSine)), volts);
    }

    /**
     * The resistance that stands for an amplifier without a regulated supply: its rails follow its supply, so its power goes with the
     * square of the volts (derived).
     *
     * @param watts power taken at the rating volts
     */
    public static double unregulatedOhms(double watts, double ratingVolts) {
        return ratingVolts * ratingVolts / watts;
    }

    /**
     * The most output that the amplifier's own fuses let through for long: P = I V eta (open-encyclopedia text "Audio power"). A rating far
     * above it is no continuous rating.
     */
    public static double plausibleWatts(double fuseAmperes, double volts, double efficiency) {
        return fuseAmperes * volts * efficiency;
    }

    /** Heat left in the amplifier: what it takes less what it gives. */
    public static double heatWatts(double supplyWatts, double outputWatts) {
        return supplyWatts - outputWatts;
    }
}
