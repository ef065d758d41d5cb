package bayproof.read;

import bayproof.vocabulary.At;

/**
 * One mistake in a file, in words its writer can act on.
 *
 * @param at   where it stands
 * @param what what is wrong
 * @param fix  what to write instead; may be empty
 */
public record Problem(At at, String what, String fix) implements Comparable<Problem> {
    @Override
    public int compareTo(Problem other) {
        int byPlace = at.compareTo(other.at);
        return byPlace != 0 ? byPlace : what.compareTo(other.what);
    }

    @Override
    public String toString() {
        return at + ": " + what + (fix.isEmpty() ? "" : " " + fix);
    }
}
