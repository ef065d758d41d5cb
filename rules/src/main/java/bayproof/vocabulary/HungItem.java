package bayproof.vocabulary;

/**
 * A mounted item and how it hangs.
 *
 * @param selfTapping whether screws that cut their own thread hold it
 * @param sits        what it is fastened to
 */
public record HungItem(String subject, At at, Shown<Boolean> selfTapping, Shown<String> sits) implements Fact {
}
