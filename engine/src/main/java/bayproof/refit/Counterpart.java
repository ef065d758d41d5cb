package bayproof.refit;

import java.util.List;

/**
 * What stands in the new vehicle for a thing of the old one.
 *
 * @param old        the thing of the old vehicle
 * @param found      its counterpart; null where there is none or several are left
 * @param how        how it was found, as a phrase
 * @param candidates those that are left where several are
 * @param kind       what kind of thing it is, as a phrase: "place in a zone of the kind cargo"
 */
public record Counterpart(String old, String found, String how, List<String> candidates, String kind) {
    static final String CHOSEN = "as chosen";

    public Counterpart {
        candidates = List.copyOf(candidates);
    }

    static Counterpart of(String old, String found, String how, String kind) {
        return new Counterpart(old, found, how, List.of(), kind);
    }

    /** Whether somebody chose it. */
    public boolean isChosen() {
        return CHOSEN.equals(how);
    }

    public boolean isFound() {
        return found != null;
    }

    /** Whether the new vehicle has nothing of the kind. */
    public boolean isNone() {
        return found == null && candidates.isEmpty();
    }
}
