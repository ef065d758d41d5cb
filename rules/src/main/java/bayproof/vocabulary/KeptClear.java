package bayproof.vocabulary;

/**
 * A thing that is fastened to the vehicle, and what it keeps away from.
 *
 * @param what         what it is: a mounted item or a ground screw
 * @param kind         what it keeps away from
 * @param here         whether something of the kind lies in its zone, or a distance to one is given
 * @param metres       smallest distance that is given to anything of the kind
 * @param allDistances true when a distance is given to everything of the kind in its zone, never false
 */
public record KeptClear(String subject, At at, String what, KeepOutKind kind, Shown<Boolean> here, Shown<Double> metres,
                        Shown<Boolean> allDistances) implements Fact {
    public static final String ITEM = "item";
    public static final String GROUND = "ground";
}
