package bayproof.vocabulary;

/**
 * Two outputs that play neighboring bands of one side.
 *
 * @param apart how far their corners lie apart, as a ratio of the higher to the lower
 * @param gap whether a gap lies between them, and no overlap
 * @param lowPassHertz corner of the band below, all filters on the way counted
 * @param highPassHertz corner of the band above
 * @param sumDecibels level of both together at the middle between the corners
 * @param what what is worked out, with its frequency
 * @param corner corner of the high-pass
 */
public record BandCrossing(String subject, At at, Shown<Double> apart, Shown<Boolean> gap, Shown<Double> lowPassHertz, Shown<Double> highPassHertz, Shown<Double> sumDecibels, String what, Knob corner) implements Fact {
}
