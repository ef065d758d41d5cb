package bayproof.report;

/** A review as a page of text: the first screen, then everything. */
public final class TextReview {
    private TextReview() {
    }

    /**
     * The page.
     *
     * @param plan the plan's file as the user gave it
     * @param all  whether what holds and what does not apply is listed too
     */
    public static Paper of(Standing standing, String plan, boolean all) {
        Places places = new Places(plan);
        return new FirstScreen(standing, places, RuleBaseDate.built()).paper().across().all(new Rest(standing, places).paper(all));
    }
}
