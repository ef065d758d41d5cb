package bayproof.vocabulary;

/**
 * A battery where it sits and as it is charged.
 *
 * @param highestVolts   charging volts that reach it, at the upper end
 * @param lowestVolts    charging volts that reach it, at the lower end
 * @param mostVolts      highest charging volts of its data sheet
 * @param leastVolts     least charging volts for a full charge
 * @param gasses         whether it gives off gas in use
 * @param valveRegulated whether it is known to keep its gas in but for a valve
 * @param vent           where its gas goes
 * @param outward        whether no gas stays where people and cargo are
 * @param lithium        whether it is a lithium battery
 * @param warded         whether it is never charged below freezing
 */
public record FittedBattery(String subject, At at, Shown<Double> highestVolts, Shown<Double> lowestVolts, Shown<Double> mostVolts,
                            Shown<Double> leastVolts, Shown<Boolean> gasses, boolean valveRegulated, Shown<String> vent,
                            Shown<Boolean> outward, Shown<Boolean> lithium, Shown<Boolean> warded) implements Fact {
}
