package bayproof.solve;

/** The answer to a network: where it settles, or that it settles nowhere. */
public sealed interface Solution permits OperatingPoint, NoSolution {
}
