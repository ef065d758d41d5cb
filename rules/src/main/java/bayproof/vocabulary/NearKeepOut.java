package bayproof.vocabulary;

/**
 * A planned run and what it keeps away from, of one kind.
 *
 * @param passes          whether it passes a zone in which something of the kind lies, or gives a distance to one
 * @param movesWithEngine whether an end of the run sits on the engine
 * @param closestMetres   smallest distance that is given to anything of the kind
 * @param allDistances    true when a distance is given to everything of the kind in the zones it passes, never false
 */
public record NearKeepOut(String subject, At at, KeepOutKind kind, Shown<Boolean> passes, Shown<Boolean> movesWithEngine,
                          Shown<Double> closestMetres, Shown<Boolean> allDistances) implements Fact {
}
