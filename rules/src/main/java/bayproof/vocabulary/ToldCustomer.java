package bayproof.vocabulary;

/**
 * What the customer was told at handover.
 *
 * @param told whether everything that is to be told was
 * @param untold what was not
 * @param warranty the shop's own term
 * @param paper what the papers say of the vehicle's own warranty
 */
public record ToldCustomer(String subject, At at, Shown<Boolean> told, Shown<String> untold, Shown<String> warranty, Shown<String> paper) implements Fact {
}
