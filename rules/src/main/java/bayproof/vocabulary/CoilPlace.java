package bayproof.vocabulary;

/**
 * A voice coil and the outputs it hangs on.
 *
 * @param onOne whether it hangs on exactly one output
 * @param outputs those outputs
 */
public record CoilPlace(String subject, At at, Shown<Boolean> onOne, Shown<String> outputs) implements Fact {
}
