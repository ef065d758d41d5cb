package bayproof.vocabulary;

/**
 * A thing that rests while the vehicle is parked, in a vehicle whose own converter charges the 12 V battery meanwhile.
 *
 * @param byVolts     whether it falls asleep by the volts of its supply
 * @param unread      whether no sleep measurement was taken while the vehicle charged
 * @param sleepVolts  supply volts below which it falls asleep
 * @param parkedVolts highest volts that the parked vehicle charges with
 */
public record ChargedSleeper(String subject, At at, Shown<Boolean> byVolts, Shown<Boolean> unread, Shown<Double> sleepVolts,
                             Shown<Double> parkedVolts) implements Fact {
}
