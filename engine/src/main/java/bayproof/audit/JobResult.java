package bayproof.audit;

import java.util.List;

/**
 * What became of one job of an archive: small, so that an archive of any size fits.
 *
 * @param job       its plan as seen from the archive's folder
 * @param state     whether it may go
 * @param tag       its tag; empty where it has none
 * @param promised  when the vehicle is promised; empty where nobody wrote it
 * @param ageDays   days from the date of its plan to today; -1 where the plan has no date
 * @param holds     the one thing that holds it; for a job that cannot be read its first mistake; empty where it may go
 * @param waived    checks that are waived, each with the reason
 * @param open      checks that count against it, heaviest first
 * @param files     one hash of all its files; empty where they cannot be read
 * @param comebacks its visits that were comebacks
 */
public record JobResult(String job, State state, String tag, String promised, int ageDays, String holds, List<Accepted> waived, List<OpenCheck> open,
                        String files, List<Comeback> comebacks) {

    /** Whether a job may go, from good to bad. */
    public enum State {
        MAY_GO("may-go"), MAY_NOT_GO("may-not-go"), UNREADABLE("cannot-be-read"), FAULT("fault-of-ours");

        private final String word;

        State(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        static State of(String word) {
            for (State state : values()) {
                if (state.word.equals(word)) {
                    return state;
                }
            }
            throw new IllegalArgumentException(word);
        }
    }

    /**
     * A vehicle that came back.
     *
     * @param day     day of the visit; empty where nobody wrote it
     * @param rule    the rule it belongs to, none, or empty where nobody wrote it
     * @param unshown rules that were not shown when it was signed before that day, or now where it was not signed; without repeats
     * @param signed  whether that is from the record
     */
    public record Comeback(String day, String rule, List<String> unshown, boolean signed) {
        public Comeback {
            unshown = List.copyOf(unshown);
        }
    }

    /** A check that is waived, and why. */
    public record Accepted(String rule, String subject, String reason) {
        String key() {
            return rule + " " + subject;
        }
    }

    public JobResult {
        waived = List.copyOf(waived);
        open = List.copyOf(open);
        comebacks = List.copyOf(comebacks);
    }
}
