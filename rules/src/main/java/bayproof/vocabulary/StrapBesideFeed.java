package bayproof.vocabulary;

/**
 * The strap from a battery of the vehicle to its body, beside what the job feeds from that battery.
 *
 * @param feeds            whether a feed of the job leaves the battery
 * @param shareOfFeed      area of the strap as a share of that of the largest feed
 * @param areaSquareMetres area of the strap
 */
public record StrapBesideFeed(String subject, At at, Shown<Boolean> feeds, Shown<Double> shareOfFeed, Shown<Double> areaSquareMetres) implements Fact {
}
