package bayproof.vocabulary;

/**
 * An enclosure and the air in it.
 *
 * @param share net volume over what its speakers are to have
 * @param what what is worked out, with the volumes
 * @param size other sizes that change the volume
 */
public record BoxVolume(String subject, At at, Shown<Double> share, String what, Knob size) implements Fact {
}
