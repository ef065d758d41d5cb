package bayproof.vocabulary;

/**
 * A factory part that is taken off for good, or a step or item that may take one off.
 *
 * @param taken  whether it is known what is taken off, and by which step
 * @param listed whether the list of kept parts has it
 * @param lies   where it lies
 * @param kept   whether it can be put back: it is not scrapped, or nobody will ask for it
 */
public record TakenPart(String subject, At at, Shown<Boolean> taken, Shown<Boolean> listed, Shown<String> lies, Shown<Boolean> kept)
        implements Fact {
}
