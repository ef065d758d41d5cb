package bayproof.vocabulary;

/**
 * A filter that is set at an output.
 *
 * @param pass which filter
 * @param shape its family
 * @param order its order
 * @param exists whether the family has that order
 */
public record SetFilter(String subject, At at, String pass, Shown<String> shape, Shown<Integer> order, Shown<Boolean> exists) implements Fact {
}
