package bayproof.vocabulary;

/**
 * A tool whose readings or crimps rest on its calibration.
 *
 * @param holds whether its calibration holds on the day of the plan
 * @param until the day until which it holds
 */
public record CalibratedTool(String subject, At at, Shown<Boolean> holds, Shown<String> until) implements Fact {
}
