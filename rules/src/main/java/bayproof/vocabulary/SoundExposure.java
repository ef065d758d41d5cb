package bayproof.vocabulary;

/**
 * Sound that people are exposed to while they test and tune.
 *
 * @param lawDose dose against what the law allows at work
 * @param healthDose dose against health advice
 */
public record SoundExposure(String subject, At at, Shown<Double> lawDose, Shown<Double> healthDose) implements Fact {
}
