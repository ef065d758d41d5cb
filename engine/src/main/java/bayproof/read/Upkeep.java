package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;

/** What every powered thing stands, and what it does while the vehicle is parked and while its engine starts. */
public record Upkeep(@Field(key = "maximum-volts", says = "highest supply volts it is made for", in = Dimension.VOLTAGE)
                     Shown<Double> maximumVolts,
                     @Field(key = "standby", says = "current while the vehicle is asleep", in = Dimension.CURRENT, zero = true)
                     Shown<Double> standbyAmperes,
                     @Field(key = "polls-bus", says = "whether it asks on a data bus while the vehicle is parked", words = {"yes", "no"})
                     Shown<String> pollsBus,
                     @Field(key = "sleeps-by", says = "what puts it to sleep when the vehicle is locked", words = {"turn-on", "bus", "feed", "supply-volts"})
                     Shown<String> sleepsBy,
                     @Field(key = "sleep-below", says = "supply volts below which it falls asleep by itself", in = Dimension.VOLTAGE)
                     Shown<Double> sleepBelowVolts,
                     @Field(key = "at-start", says = "what it does when the supply dips while the engine starts", words = {"rides-through",
                         "mutes", "restarts", "thumps"}) Shown<String> atStart,
                     @Field(key = "turn-on-draw", says = "current its turn-on input takes", in = Dimension.CURRENT, zero = true)
                     Shown<Double> turnOnAmperes) {
}
