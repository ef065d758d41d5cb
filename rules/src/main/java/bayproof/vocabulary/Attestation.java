package bayproof.vocabulary;

/**
 * What somebody vouches for.
 *
 * @param who      role or initials
 * @param when     date or date and time, ISO 8601
 * @param evidence how it was found out: the instrument, the photo, the document
 */
public record Attestation(String who, String when, String evidence) {
}
