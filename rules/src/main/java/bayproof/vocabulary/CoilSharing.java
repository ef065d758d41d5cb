package bayproof.vocabulary;

/**
 * Voice coils on one output and how evenly they share its power.
 *
 * @param alike whether they are of one kind and none is fed through a capacitor
 * @param ratioShare what the coil with the most takes, against the one with the least
 */
public record CoilSharing(String subject, At at, Shown<Boolean> alike, Shown<Double> ratioShare) implements Fact {
}
