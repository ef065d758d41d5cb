package bayproof.vocabulary;

/**
 * A function of the vehicle, as it came and as it goes back.
 *
 * @param fitted whether the vehicle has it
 * @param before how it was when the vehicle came
 * @param same whether it is no worse now
 * @param word who tried it at the end
 */
public record TriedFunction(String subject, At at, Shown<Boolean> fitted, Shown<String> before, Shown<Boolean> same, Shown<Attestation> word) implements Fact {
}
