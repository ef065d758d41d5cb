package bayproof.vocabulary;

/**
 * A speaker that is not built into an enclosure.
 *
 * @param inDoor          whether it sits in a zone that water runs through: a door or a lid
 * @param waterResistant whether its data sheet allows water on it, {@code yes} or {@code no}
 */
public record DoorSpeaker(String subject, At at, Shown<Boolean> inDoor, Shown<String> waterResistant) implements Fact {
}
