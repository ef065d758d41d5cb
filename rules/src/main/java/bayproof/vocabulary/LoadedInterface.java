package bayproof.vocabulary;

/**
 * What is loaded into an interface.
 *
 * @param programmed     whether it takes a program
 * @param date           day the program was loaded
 * @param forThisVehicle whether it was loaded for this vehicle variant
 * @param loadedFor      the variant it was loaded for
 * @param firmwareFits   whether the firmware found is the one wanted
 * @param firmware       both, for the report
 * @param login          who holds the login
 */
public record LoadedInterface(String subject, At at, Shown<Boolean> programmed, Shown<String> date, Shown<Boolean> forThisVehicle,
                              Shown<String> loadedFor, Shown<Boolean> firmwareFits, Shown<String> firmware, Shown<String> login)
        implements Fact {
}
