package bayproof.vocabulary;

/**
 * Something found in the vehicle.
 *
 * @param what     what it is
 * @param state    live or dead
 * @param decision what becomes of it
 * @param harmless whether it is dead, guarded by a fuse, or about to be made so
 */
public record FoundThing(String subject, At at, Shown<String> what, Shown<String> state, Shown<String> decision, Shown<Boolean> harmless) implements Fact {
}
