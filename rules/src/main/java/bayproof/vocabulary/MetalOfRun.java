package bayproof.vocabulary;

/**
 * A conductor of the job in the supply or the return, with its metal and what its terminals are rated for.
 *
 * @param clad  whether it is anything but copper
 * @param suits whether the terminals at both ends are rated for its metal; where the metal is not known, for every metal it may be
 * @param rated what the terminals are rated for, for the report
 */
public record MetalOfRun(String subject, At at, Shown<Boolean> clad, Shown<Boolean> suits, Shown<String> rated) implements Fact {
}
