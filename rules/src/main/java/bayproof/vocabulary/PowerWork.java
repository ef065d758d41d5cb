package bayproof.vocabulary;

/**
 * A step that may touch power cables or restraints.
 *
 * @param touches         whether it does
 * @param afterBatteryOff whether the battery is disconnected before it
 */
public record PowerWork(String subject, At at, Shown<Boolean> touches, Shown<Boolean> afterBatteryOff) implements Fact {
}
