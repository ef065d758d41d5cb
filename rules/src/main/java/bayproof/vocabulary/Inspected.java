package bayproof.vocabulary;

/**
 * One look that a job owes: at everything of a kind, for one thing.
 *
 * @param point    name of the inspection, that of the rule it answers
 * @param there    whether the job has anything to look at
 * @param word     who looked, when and what shows it
 * @param complete whether everything was looked at
 * @param sound    whether nothing was found wrong
 * @param faulty   what was found wrong; empty for nothing
 * @param timely   whether the look came when there was something to see
 * @param byOther  whether somebody else than who prepared the plan looked, where that is asked
 * @param measured the worst value that was measured, in the unit its dimension is kept in; zero for a look that measures nothing
 */
public record Inspected(String subject, At at, String point, Shown<Boolean> there, Shown<Attestation> word, Shown<Boolean> complete,
                        Shown<Boolean> sound, Shown<String> faulty, Shown<Boolean> timely, Shown<Boolean> byOther,
                        Shown<Double> measured) implements Fact {
}
