package bayproof.vocabulary;

/**
 * The contacts of a relay in their circuit.
 *
 * @param fused          whether a fuse bounds the current through them
 * @param fuseAmperes    rating of that fuse, several added up
 * @param contactAmperes most current that the contacts are made for
 * @param smallerFuse    ratings below that of the one fuse
 */
public record RelayContacts(String subject, At at, Shown<Boolean> fused, Shown<Double> fuseAmperes, Shown<Double> contactAmperes, Knob smallerFuse)
        implements Fact {
}
