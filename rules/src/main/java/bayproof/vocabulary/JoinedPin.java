package bayproof.vocabulary;

/**
 * A pin of a factory connector that the job joins.
 *
 * @param method     how it is joined
 * @param spareable  whether it can be joined without a cut: a plug-in harness for its connector is in the parts book, or a tap does
 * @param harness    what would do instead, for the report
 * @param proved     who proved the pin, when and by what
 * @param instrument what it was proved with
 * @param expected   name of the limit that the reading of its function and state must fit
 * @param reading    the reading, SI
 * @param agrees     whether function and color agree with the vehicle sheet
 * @param plugIn     the harness to use
 */
public record JoinedPin(String subject, At at, Shown<String> method, Shown<Boolean> spareable, String harness,
                        Shown<Attestation> proved, Shown<String> instrument, Shown<String> expected, Shown<Double> reading,
                        Shown<Boolean> agrees, Knob plugIn) implements Fact {
}
