package bayproof.vocabulary;

/**
 * An amplifier output in use and its place in the channel map.
 *
 * @param group    the net of coils that hangs on it
 * @param own      whether no other amplifier output has its name
 * @param sameName whether the processor output that feeds it has the same name; true where none feeds it
 * @param names    the names, for the report
 */
public record MappedOutput(String subject, At at, Shown<String> group, Shown<Boolean> own, Shown<Boolean> sameName, Shown<String> names) implements Fact {
}
