package bayproof.vocabulary;

/**
 * The leads of an interface.
 *
 * @param joined whether each lead is joined to a pin of its function, or is known to stay unused
 * @param wrong  the leads that are not
 */
public record InterfaceLeads(String subject, At at, Shown<Boolean> joined, Shown<String> wrong) implements Fact {
}
