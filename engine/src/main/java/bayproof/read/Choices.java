package bayproof.read;

import bayproof.read.Tree.MapTree;
import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * What somebody decided and already knows about moving a job into another vehicle.
 *
 * @param known merge patch over the plan for the new vehicle; null where the file has none
 */
public record Choices(Decided decided, MapTree known) {
    private static final String KNOWN = "known";

    /** The decisions, as the file says them. Names on the left are those of the old vehicle, on the right those of the new one. */
    public record Decided(At at,
                          @Field(key = "places", says = "place in the new vehicle for this place of the old one") Map<String, Shown<String>> places,
                          @Field(key = "spaces", says = "space in the new vehicle for this space of the old one") Map<String, Shown<String>> spaces,
                          @Field(key = "sources", says = "source of the new vehicle for this source of the old one") Map<String, Shown<String>> sources,
                          @Field(key = "connectors", says = "connector of the new vehicle for this connector of the old one")
                          Map<String, Shown<String>> connectors,
                          @Field(key = "outputs", says = "output of the new vehicle for this output of the old one") Map<String, Shown<String>> outputs,
                          @Field(key = "networks", says = "data bus of the new vehicle for this one of the old one") Map<String, Shown<String>> networks,
                          @Field(key = "pass-throughs", says = "hole of the new vehicle for this hole of the old one") Map<String, Shown<String>> holes,
                          @Field(key = "runs", says = "routes of the new vehicle that this run follows, in order") Map<String, Shown<List<String>>> runs,
                          @Field(key = "cables", says = "length of this cable as it comes out of the old vehicle", in = Dimension.LENGTH)
                          Map<String, Shown<Double>> cables,
                          @Field(key = "delivery", says = "time until this thing is delivered or made", in = Dimension.TIME)
                          Map<String, Shown<Double>> delivery,
                          @Field(key = "people", says = "people who work on the job at once") Shown<Integer> people,
                          @Field(key = "booked", says = "hours booked for both vehicles", in = Dimension.TIME) Shown<Double> bookedSeconds,
                          @Field(key = "opens", says = "day on which the old vehicle is to be opened, year-month-day") Shown<String> opens) {
    }

    /** No decisions at all. */
    public static Choices none() {
        At nowhere = new At("", 1, 1);
        return new Choices(new Binder(new Problems(), new Readings()).group(Decided.class, null, "", nowhere), null);
    }

    /**
     * Reads a file of choices.
     *
     * @param old job in the old vehicle
     * @param into job that holds nothing but the new vehicle
     * @throws UnusableInput when anything in it cannot be used; all mistakes are named together
     */
    public static Choices read(Path file, Job old, Job into) throws UnusableInput {
        return of(TreeReader.read(file, file.toString()), old, into);
    }

    /** The same from a tree that was read elsewhere. */
    public static Choices of(MapTree tree, Job old, Job into) throws UnusableInput {
        Problems problems = new Problems();
        JobFiles.checkHead(tree, "choices", problems);
        Decided decided = new Binder(problems, new Readings()).group(Decided.class, tree, "", tree.at(), "bayproof", "kind", KNOWN);
        MapTree known = tree.get(KNOWN) instanceof MapTree map ? map : null;
        if (known == null && tree.get(KNOWN) != null) {
            problems.add(tree.get(KNOWN).at(), "\"known\" must be a group of keys of the new plan, not " + tree.get(KNOWN).noun() + ".", "");
        }
        names(decided.places(), old.vehicle().places(), into.vehicle().places(), "a place", problems);
        names(decided.spaces(), old.vehicle().spaces(), into.vehicle().spaces(), "a space", problems);
        names(decided.sources(), old.items(), into.items(), "a source", problems);
        names(decided.connectors(), old.vehicle().connectors(), into.vehicle().connectors(), "a connector", problems);
        names(decided.outputs(), old.vehicle().outputs(), into.vehicle().outputs(), "an output", problems);
        names(decided.networks(), old.vehicle().networks(), into.vehicle().networks(), "a data bus", problems);
        names(decided.holes(), old.passThroughs(), into.passThroughs(), "a pass-through", problems);
        decided.runs().forEach((run, routes) -> {
            known(run, old.plan().runs(), "a run of the old plan", routes.atOr(decided.at()), problems);
            routes.orElse(List.of()).forEach(route -> known(route, into.vehicle().routes(), "a route of the new vehicle", routes.atOr(decided.at()), problems));
        });
        decided.cables().forEach((run, length) -> known(run, old.plan().runs(), "a run of the old plan", length.atOr(decided.at()), problems));
        problems.throwIfAny();
        return new Choices(decided, known);
    }

    private static void names(Map<String, Shown<String>> chosen, Map<String, ?> before, Map<String, ?> after, String noun, Problems problems) {
        chosen.forEach((one, other) -> {
            known(one, before, noun + " of the old vehicle", other.atOr(new At("", 1, 1)), problems);
            other.map(name -> {
                known(name, after, noun + " of the new vehicle", other.atOr(new At("", 1, 1)), problems);
                return name;
            });
        });
    }

    private static void known(String name, Map<String, ?> among, String noun, At at, Problems problems) {
        if (!among.containsKey(name)) {
            problems.unknown(at, noun, name, among.keySet());
        }
    }
}
