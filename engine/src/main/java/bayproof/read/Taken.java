package bayproof.read;

import bayproof.units.Quantity;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Shown;

/**
 * A reading with what it replaced.
 *
 * @param id         its name in the file of the readings
 * @param of         path of the value that was measured
 * @param value      what the instrument showed
 * @param place      where the tips or the sensor were
 * @param instrument the instrument
 * @param state      state of the vehicle
 * @param conditions what else held while it was taken
 * @param who        who took it
 * @param when       date and time
 * @param photo      number or file of the photo that shows it
 * @param photoHash  SHA-256 of that photo's file
 * @param explained  why it lies far from what was planned
 * @param replaced   the value it replaced, as it was written; empty where nobody had given one
 * @param why        why it does not count; empty where it does
 */
public record Taken(String id, String of, Shown<Quantity> value, Shown<String> place, Shown<String> instrument, Shown<String> state,
                    Shown<String> conditions, Shown<String> who, Shown<String> when, Shown<String> photo,
                    Shown<String> photoHash, Shown<String> explained, String replaced, String why, At at) {

    /** Whether it replaces what was written. */
    public boolean counts() {
        return why.isEmpty();
    }

    /** Who measured, when and with what; missing while the reading leaves one of them out. */
    public Shown<Attestation> word() {
        return who.with(when, (name, day) -> new String[] {name, day})
                .with(instrument, (said, with) -> new Attestation(said[0], said[1], with + photo.map(one -> ", photo " + one).orElse("")));
    }
}
