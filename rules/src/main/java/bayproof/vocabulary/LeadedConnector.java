package bayproof.vocabulary;

/**
 * A factory connector that the job joins.
 *
 * @param plugged  whether a plug-in lead joins it
 * @param fits     whether a lead of the job has its plug
 * @param leads    connector families that the job's leads fit
 * @param complete whether each of its cavities with a wire is in the plan; missing where one is not
 */
public record LeadedConnector(String subject, At at, Shown<Boolean> plugged, Shown<Boolean> fits, Shown<String> leads, Shown<Boolean> complete) implements Fact {
}
