package bayproof.vocabulary;

/**
 * A battery, what it is and how it stands where it is.
 *
 * @param used              whether the job takes current from it or gives it any
 * @param chemistry         what kind of battery it is
 * @param added             whether the job puts it there
 * @param hottestCelsius    highest temperature of its zone
 * @param mostChargeCelsius highest temperature at which its data sheet lets it be charged
 * @param coldestCelsius    lowest temperature that the vehicle is used in
 * @param leastUseCelsius   lowest temperature at which its data sheet lets it be drained
 * @param heldShare         force that its fasteners hold, as a share of what a hold-down has to stand
 * @param moreFasteners     a larger number of fasteners
 */
public record PlacedBattery(String subject, At at, Shown<Boolean> used, Shown<String> chemistry, Shown<Boolean> added, Shown<Double> hottestCelsius,
                            Shown<Double> mostChargeCelsius, Shown<Double> coldestCelsius, Shown<Double> leastUseCelsius, Shown<Double> heldShare,
                            Knob moreFasteners) implements Fact {
}
