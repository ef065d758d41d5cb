package bayproof.vocabulary;

/**
 * A tool that the planned work takes somewhere.
 *
 * @param work    what it does: {@code crimps} or {@code drills}
 * @param applies whether that work is there
 * @param named   whether a step names the tool
 * @param wants   the tool, or the tools of which one will do
 */
public record PlannedTool(String subject, At at, String work, Shown<Boolean> applies, Shown<Boolean> named, Shown<String> wants) implements Fact {
}
