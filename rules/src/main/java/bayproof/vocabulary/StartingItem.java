package bayproof.vocabulary;

/**
 * A powered item while the engine starts.
 *
 * @param onStarter    whether its feed comes from the battery that the engine starts from
 * @param atStart      what it does while the supply dips
 * @param ridesThrough whether it is said to go on working
 * @param volts        volts at its terminals at the dip
 * @param minimumVolts volts below which it shuts down
 * @param startStop    whether the engine stops and starts by itself, in a word
 * @param oftenStarted whether the engine stops and starts by itself
 * @param startsEngine whether this supply starts an engine at all
 */
public record StartingItem(String subject, At at, Shown<Boolean> onStarter, Shown<String> atStart, Shown<Boolean> ridesThrough,
                           Shown<Double> volts, Shown<Double> minimumVolts, Shown<String> startStop, Shown<Boolean> oftenStarted,
                           Shown<Boolean> startsEngine)
        implements Fact {
}
