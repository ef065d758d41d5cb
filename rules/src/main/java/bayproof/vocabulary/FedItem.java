package bayproof.vocabulary;

/**
 * A thing that the job feeds.
 *
 * @param draws  whether it draws any current
 * @param source what its feed comes from
 */
public record FedItem(String subject, At at, Shown<Boolean> draws, Shown<String> source) implements Fact {
}
