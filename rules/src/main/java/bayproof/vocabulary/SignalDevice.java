package bayproof.vocabulary;

/**
 * A device that signals enter or leave.
 *
 * @param accounted whether each of its signal terminals is either joined by a run or known to stay free
 * @param open      the terminals that are neither or both
 */
public record SignalDevice(String subject, At at, Shown<Boolean> accounted, Shown<String> open) implements Fact {
}
