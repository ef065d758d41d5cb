package bayproof.refit;

import java.util.List;

/**
 * One step of moving the system.
 *
 * @param id       its name: of the plan, or what it is for
 * @param kind     take-apart, restore, run, fit, make, tune, prove or wait
 * @param low      seconds when all goes well
 * @param likely   seconds as planned
 * @param high     seconds when things go wrong
 * @param after    names of the steps it waits for
 * @param from     where its hours come from: the plan, the shop, or a default with its source
 * @param causedBy row whose change causes it; null for a step that is there anyway
 */
public record WorkStep(String id, String kind, double low, double likely, double high, List<String> after, String from, String causedBy) {
    /** Kinds in the order of the work. */
    public static final List<String> KINDS = List.of("take-apart", "restore", "run", "fit", "make", "tune", "prove", "wait");

    public WorkStep {
        after = List.copyOf(after);
    }
}
