package bayproof.facts;

import java.util.Map;

/**
 * What a value is asked for. Each question says which end of each kind of window is bad for it; a value is worked out
 * once with all windows at their bad ends and once with all at their good ends.
 */
enum Question {
    /** Volts lost on the way to an item: bad is high resistance, a low source and a hungry load. */
    DROP(Map.ofEntries(
            Map.entry("ambient-anywhere", End.HIGH),
            Map.entry("amplifier-idle-draw", End.HIGH),
            Map.entry("cut-off-volts", End.HIGH),
            Map.entry("factory-strap", End.HIGH),
            Map.entry("conductor-metal", End.HIGH),
            Map.entry("conductor-warming", End.HIGH),
            Map.entry("joint-resistance", End.HIGH),
            Map.entry("fuse-resistance", End.HIGH),
            Map.entry("contact-resistance", End.HIGH),
            Map.entry("body-return", End.HIGH),
            Map.entry("battery-rest", End.LOW),
            Map.entry("battery-resistance", End.HIGH),
            Map.entry("battery-acceptance", End.HIGH),
            Map.entry("alternator-set-point", End.LOW),
            Map.entry("traction-converter-set-point", End.LOW),
            Map.entry("efficiency-class-d", End.LOW),
            Map.entry("efficiency-class-ab", End.LOW))),
    /**
     * What is left at idle: bad is a weak source and a hungry load. A second battery that takes much is one; and a converter at its
     * limit draws the more the higher that battery holds its output.
     */
    BALANCE(Map.ofEntries(
            Map.entry("ambient-anywhere", End.HIGH),
            Map.entry("amplifier-idle-draw", End.HIGH),
            Map.entry("cut-off-volts", End.HIGH),
            Map.entry("factory-strap", End.HIGH),
            Map.entry("conductor-metal", End.HIGH),
            Map.entry("conductor-warming", End.HIGH),
            Map.entry("joint-resistance", End.HIGH),
            Map.entry("fuse-resistance", End.HIGH),
            Map.entry("contact-resistance", End.HIGH),
            Map.entry("body-return", End.HIGH),
            Map.entry("battery-rest", End.HIGH),
            Map.entry("battery-resistance", End.LOW),
            Map.entry("battery-acceptance", End.HIGH),
            Map.entry("alternator-idle-share", End.LOW),
            Map.entry("alternator-set-point", End.LOW),
            Map.entry("traction-converter-set-point", End.LOW),
            Map.entry("efficiency-class-d", End.LOW),
            Map.entry("efficiency-class-ab", End.LOW),
            Map.entry("amplifier-regulation", End.HIGH))),
    /** What charges a battery at the most: bad is a high set point. */
    MOST_CHARGE(Map.of("alternator-set-point", End.HIGH, "traction-converter-set-point", End.HIGH)),
    /** What charges a battery at the least: bad is a low set point. */
    LEAST_CHARGE(Map.of("alternator-set-point", End.LOW, "traction-converter-set-point", End.LOW)),
    /** The most volts that a source gives: bad is high. */
    HIGHEST_VOLTS(Map.of("alternator-set-point", End.HIGH, "traction-converter-set-point", End.HIGH, "battery-rest", End.HIGH)),
    /** What a dead short draws: bad is a strong battery. */
    FAULT(Map.of("battery-rest", End.HIGH, "battery-resistance", End.LOW)),
    /** What a conductor may carry: bad is poor metal, poor insulation and heat. */
    AMPACITY(Map.of("clad-ampacity", End.LOW, "insulation-class", End.LOW, "ambient-anywhere", End.HIGH));

    /** One end of a window. */
    enum End {
        LOW, HIGH;

        End other() {
            return this == LOW ? HIGH : LOW;
        }
    }

    private final Map<String, End> badEnds;

    Question(Map<String, End> badEnds) {
        this.badEnds = badEnds;
    }

    /** The bad end of a window for this question. */
    End badEnd(String window) {
        End end = badEnds.get(window);
        if (end == null) {
            throw new IllegalStateException("nobody said which end of " + window + " is bad for " + this);
        }
        return end;
    }
}
