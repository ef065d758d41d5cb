package bayproof.vocabulary;

/**
 * The job against the sounds that the vehicle itself makes or cancels.
 *
 * @param ownSound        whether the vehicle cancels noise or adds engine sound
 * @param changes         whether the job changes a woofer or an enclosure
 * @param playedBy        what plays these sounds
 * @param decision        what becomes of them
 * @param decided         who decided
 * @param microphonesClear whether nothing is fitted at a cabin microphone
 * @param inTheWay        what is, for the report
 * @param pedestrianSound whether the vehicle has a sound for people on foot
 * @param pedestrianWork  what becomes of that
 * @param pedestrianFree  whether no pin and no run of the job joins it
 */
public record CabinSoundChange(String subject, At at, Shown<Boolean> ownSound, Shown<Boolean> changes, Shown<String> playedBy,
                               Shown<String> decision, Shown<Attestation> decided, Shown<Boolean> microphonesClear, Shown<String> inTheWay,
                               Shown<Boolean> pedestrianSound, Shown<String> pedestrianWork, Shown<Boolean> pedestrianFree) implements Fact {
}
