package bayproof.vocabulary;

/**
 * Drives with the audio off, before the vehicle is opened and after it works again.
 *
 * @param due    whether the vehicle cancels noise or adds engine sound
 * @param before number of engine speeds of the drive before
 * @param after  number of engine speeds of the drive after
 */
public record DriveTest(String subject, At at, Shown<Boolean> due, Shown<String> before, Shown<String> after) implements Fact {
}
