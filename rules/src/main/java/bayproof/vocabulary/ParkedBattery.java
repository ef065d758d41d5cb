package bayproof.vocabulary;

/**
 * A battery while the vehicle is asleep.
 *
 * @param ofVehicle     whether the vehicle starts from it
 * @param standbyShare  standby current as a share of the vehicle maker's figure
 * @param drained       whether anything draws from it
 * @param lastsSeconds  time until the planned share of its capacity is gone
 * @param wishedSeconds time the plan wishes to stand parked
 */
public record ParkedBattery(String subject, At at, boolean ofVehicle, Shown<Double> standbyShare, Shown<Boolean> drained,
                            Shown<Double> lastsSeconds, Shown<Double> wishedSeconds) implements Fact {
}
