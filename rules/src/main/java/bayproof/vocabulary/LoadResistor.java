package bayproof.vocabulary;

/**
 * A resistor that stands in for a speaker.
 *
 * @param strength what it is rated for over the heat it makes
 * @param onRadio  whether it hangs on an output of the factory system
 * @param off      how far the load on its output lies from what the radio looks for, as a share of that
 * @param sitsOn   what it is fastened to
 */
public record LoadResistor(String subject, At at, Shown<Double> strength, Shown<Boolean> onRadio, Shown<Double> off, Shown<String> sitsOn) implements Fact {
}
