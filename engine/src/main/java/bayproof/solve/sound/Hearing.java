package bayproof.solve.sound;

import java.util.List;

/** Exposure to sound at work. Occupational limits, used as a caution. */
public final class Hearing {
    private static final double SECONDS_PER_HOUR = 3600;

    /**
     * A rule of exposure, such as 85 dB(A) and 3 dB (NIOSH criteria document 98-126) or 90 dB(A) and 5 dB (29 CFR 1910.95 Appendix A): a level allowed for eight hours, and the decibels that halve the time.
     *
     * @param eightHours       level allowed for eight hours, dB(A)
     * @param exchangeDecibels rise that halves the time, dB
     */
    public record Criterion(double eightHours, double exchangeDecibels) {
        /** Time allowed at a level: T = 8 h / 2^((L - Lc)/exchange). */
        public double allowedSeconds(double level) {
            return 8 * SECONDS_PER_HOUR / Math.pow(2, (level - eightHours) / exchangeDecibels);
        }

        /** Dose of several exposures as a ratio: sum of C/T; 1 is all that is allowed. */
        public double dose(List<Exposure> exposures) {
            return exposures.stream().mapToDouble(one -> one.seconds() / allowedSeconds(one.level())).sum();
        }

        /** Level that, held for eight hours, gives the same dose: for OSHA 16.61 log10(D) + 90. */
        public double eightHourLevel(double dose) {
            return eightHours + exchangeDecibels * Math.log(dose) / Math.log(2);
        }
    }

    /** Time spent at a level, dB(A). */
    public record Exposure(double level, double seconds) {
    }

    private Hearing() {
    }
}
