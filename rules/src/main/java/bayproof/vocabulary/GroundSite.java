package bayproof.vocabulary;

/**
 * A place where returns meet the body: a ground point, a run that ends at the body without one, or a thing whose return
 * nobody wrote down.
 *
 * @param surface   what the eyelet sits on
 * @param structure what part of the body it is
 * @param fastener  what holds the eyelet
 * @param shares    what else the fastener holds
 * @param sealed    whether the joint is sealed
 * @param scrape    the surface to make
 * @param moveTo    the part of the body to move to
 * @param refasten  the fastener to use
 * @param part      the fastener to have for itself
 * @param seal      the seal to make
 */
public record GroundSite(String subject, At at, Shown<String> surface, Shown<String> structure, Shown<String> fastener,
                         Shown<String> shares, Shown<String> sealed, Knob scrape, Knob moveTo, Knob refasten, Knob part, Knob seal) implements Fact {
}
