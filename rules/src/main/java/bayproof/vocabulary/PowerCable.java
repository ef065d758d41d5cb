package bayproof.vocabulary;

/**
 * A conductor of the job that carries supply current.
 *
 * @param insulationCelsius temperature class of its insulation
 * @param hottestCelsius    highest temperature of the zones it passes
 * @param counts            whether it carries more than the little that a thin wire may
 * @param sheathed          whether it lies in a sheath all the way
 * @param areaSquareMetres  area of its conductor
 * @param main              whether it leads from a battery to the first fuse or block
 * @param whole             whether it has no splice
 * @param thicker           larger sizes
 */
public record PowerCable(String subject, At at, Shown<Double> insulationCelsius, Shown<Double> hottestCelsius, Shown<Boolean> counts, Shown<Boolean> sheathed,
                         Shown<Double> areaSquareMetres, Shown<Boolean> main, Shown<Boolean> whole, Knob thicker) implements Fact {
}
