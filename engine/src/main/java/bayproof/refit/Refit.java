package bayproof.refit;

import bayproof.read.Choices;
import bayproof.read.Job;
import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.read.Tree.MapTree;
import bayproof.read.UnusableInput;
import bayproof.review.Evaluation;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A job moved on paper into another vehicle.
 *
 * @param before       the job in the old vehicle
 * @param after        its plan rewritten for the new vehicle and judged there
 * @param choices      what somebody decided and already knew
 * @param counterparts what stands in the new vehicle for each thing of the old one
 * @param rows         every thing of the old job with what becomes of it
 * @param levels       the new source of sound against the old one
 * @param moved        verdicts that the new vehicle changes
 */
public record Refit(Evaluation before, Evaluation after, Choices choices, Counterparts counterparts, List<Row> rows, LevelShift levels, Moved moved) {
    public Refit {
        rows = List.copyOf(rows);
    }

    /** The job in a vehicle, with nothing fitted: what {@link Choices#read} checks names against. */
    public static Job bare(JobFiles old, MapTree vehicle) throws UnusableInput {
        MapTree plan = Trees.empty().with("bayproof", Trees.word("1"));
        return JobReader.bind(emptied(old, vehicle).with("plan", plan));
    }

    private static JobFiles emptied(JobFiles old, MapTree vehicle) {
        return old.with("vehicle", vehicle).with("readings", Trees.empty());
    }

    /**
     * Moves a job.
     *
     * @param before  the job in the old vehicle
     * @param vehicle the new vehicle's sheet
     * @throws UnusableInput when what is already known of the new job cannot be used
     */
    public static Refit of(Evaluation before, MapTree vehicle, Choices choices) throws UnusableInput {
        Job bare = bare(before.files(), vehicle);
        Ways routes = new Ways(bare);
        PlaceMatches places = new PlaceMatches(before.job(), bare, routes, choices.decided());
        RunWays ways = new RunWays(before.job(), bare, routes, places, choices.decided());
        Counterparts counterparts = new Counterparts(before.job(), bare, places, ways, choices.decided());
        PinMoves pins = new PinMoves(before.job(), bare, counterparts);
        MapTree plan = new NewPlan(before, bare, vehicle, counterparts, ways, pins, choices).tree();
        Evaluation after = Evaluation.of(emptied(before.files(), vehicle).with("plan", plan));
        LevelShift levels = LevelShift.of(before.job(), after.job(), counterparts);
        Facts facts = new Facts(before, after.job(), counterparts, ways, pins, choices.decided(), levels);
        return new Refit(before, after, choices, counterparts, new Rows(before, after, counterparts, facts).all(), levels, Moved.of(before, after, facts));
    }

    /** What to have in hand before the old vehicle is opened. */
    public List<Provision> provisions() {
        return Provision.of(this);
    }

    /** What cannot be undone in the new vehicle. */
    public Lasting lasting() {
        return Lasting.of(after.job());
    }

    public RefitHours hours() {
        return RefitHours.of(this);
    }

    /** How many rows fare so. */
    public int count(Fate fate) {
        return (int) rows.stream().filter(row -> row.fate() == fate).count();
    }

    public List<Row> of(Fate fate) {
        return rows.stream().filter(row -> row.fate() == fate).toList();
    }

    /** Whether anything does not carry over, or cannot be told yet. */
    public boolean counts() {
        return count(Fate.NOT) + count(Fate.OPEN) > 0;
    }

    /**
     * The plan for the new vehicle as it is kept: of items that do not carry over only their kind is left, of mounts what the new sheet says of
     * their place, and what nobody knows says so.
     *
     * @param vehicle name of the new sheet, seen from the plan
     * @param parts   names of the parts books, seen from the plan
     * @param limits  name of the shop's limits, seen from the plan; null where the old plan names none
     */
    public MapTree plan(String vehicle, List<String> parts, String limits) {
        Set<String> lost = new TreeSet<>();
        of(Fate.NOT).stream().filter(row -> before.job().items().containsKey(row.id()) && !row.kind().equals("mount")).forEach(row -> lost.add(row.id()));
        MapTree plan = NewPlan.kindsOnly(after.files().tree("plan"), after.job(), lost);
        for (Row row : of(Fate.NOT)) {
            plan = row.kind().equals("mount") ? NewPlan.withoutMount(plan, row.id()) : row.kind().equals("setting") ? Trees.without(plan, List.of("settings", row.id(), "gain", "target")) : plan;
        }
        plan = plan.with("vehicle", Trees.word(vehicle)).with("parts", Trees.list(parts));
        plan = limits == null ? plan.without("limits") : plan.with("limits", Trees.word(limits));
        return NewPlan.withUnknowns(before.files().tree("plan"), plan);
    }
}
