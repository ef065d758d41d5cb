package bayproof.worksheet;

import bayproof.demand.Limits;
import bayproof.graph.BodyGraph;
import bayproof.graph.Role;
import bayproof.graph.WiringGraph;
import bayproof.read.Job;
import bayproof.read.Run;
import bayproof.read.SharedTables;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The cables to cut, by size.
 *
 * @param groups one for each size, thick to thin; cables without a written size last
 */
public record CutList(List<Group> groups) {
    private static final double CENTIMETRE = 0.01;
    /** A centimeter that is only rounding of the computer. */
    private static final double NOTHING = 1e-9;

    /**
     * One cable.
     *
     * @param id         id of the run
     * @param use        what it is for, as a word: feed, return, speaker, signal, control, unknown
     * @param color      its color as the plan gives it
     * @param usualColor usual color of what it is for; null where there is none
     * @param wayMetres  its way, as measured or by its routes
     * @param cutMetres  its way with the slack at a hinge and the spare, to the next whole centimeter
     * @param fuseRule   whether it joins a battery post to its fuse, so that every length left over counts
     */
    public record Cut(String id, String use, Shown<String> color, String usualColor, Shown<Double> wayMetres, Shown<Double> cutMetres,
                      boolean fuseRule, End from, End to) {
    }

    /** One end of a cable. */
    public record End(Shown<String> at, Shown<String> terminal, Shown<String> method, Shown<String> tool) {
    }

    /**
     * Cables of one size.
     *
     * @param size        the size as written; null where none is
     * @param other       its like in the other system; null with the size
     * @param totalMetres everything to cut; missing while a length is
     */
    public record Group(String size, String other, List<Cut> cuts, Shown<Double> totalMetres) {
        public int unmeasured() {
            return (int) cuts.stream().filter(cut -> !cut.cutMetres().isGiven()).count();
        }
    }

    static CutList of(Job job, Set<String> fuseRule) {
        WiringGraph wiring = new WiringGraph(job);
        BodyGraph body = new BodyGraph(job);
        Map<String, List<Cut>> bySize = new LinkedHashMap<>();
        for (Run run : job.runs().values()) {
            if (!job.isFactory(run)) {
                bySize.computeIfAbsent(run.size().orElse(""), any -> new ArrayList<>())
                        .add(cut(run, wiring.role(run), body.lengthMetres(run), fuseRule.contains(run.id()), job.limits()));
            }
        }
        List<String> sizes = new ArrayList<>(bySize.keySet());
        sizes.sort(Comparator.comparingDouble(CutList::area).reversed().thenComparing(Comparator.naturalOrder()));
        return new CutList(sizes.stream().map(size -> group(size, bySize.get(size))).toList());
    }

    private static double area(String size) {
        return size.isEmpty() ? 0 : SharedTables.conductors().areaSquareMetres(size);
    }

    private static Group group(String size, List<Cut> cuts) {
        Shown<Double> total = Shown.of(0.0);
        for (Cut cut : cuts) {
            total = total.with(cut.cutMetres(), Double::sum);
        }
        return new Group(size.isEmpty() ? null : size, size.isEmpty() ? null : Sizes.other(size), List.copyOf(cuts), total);
    }

    private static Cut cut(Run run, Role role, Shown<Double> way, boolean fuseRule, Limits limits) {
        String use = role.name().toLowerCase(Locale.ROOT);
        String color = "cable-color-" + use;
        double ends = 2 * limits.named("cut-spare-each-end").value();
        double share = limits.named("cut-spare-share").value();
        double slack = run.slackMetres().orElse(0.0);
        return new Cut(run.id(), use, run.color(), limits.has(color) ? limits.named(color).words().get(0) : null, way,
                way.map(metres -> wholeCentimetres(metres * (1 + share) + slack + ends)), fuseRule,
                end(run.from(), run.ends().from()), end(run.to(), run.ends().to()));
    }

    private static double wholeCentimetres(double metres) {
        return Math.ceil(metres / CENTIMETRE - NOTHING) * CENTIMETRE;
    }

    private static End end(Shown<String> at, Run.End end) {
        return new End(at, end.terminal(), end.method(), end.tool());
    }

    /** Every cable. */
    public List<Cut> cuts() {
        return groups.stream().flatMap(group -> group.cuts().stream()).toList();
    }

    public int unmeasured() {
        return groups.stream().mapToInt(Group::unmeasured).sum();
    }

    /** Terminals to have at hand: how many ends take each, by terminal and size; an end without a written one counts nowhere. */
    public Map<String, Integer> terminals() {
        Map<String, Integer> count = new LinkedHashMap<>();
        Set<String> names = new TreeSet<>();
        for (Group group : groups) {
            for (Cut cut : group.cuts()) {
                for (End end : List.of(cut.from(), cut.to())) {
                    end.terminal().map(terminal -> names.add(key(terminal, group)));
                }
            }
        }
        names.forEach(name -> count.put(name, 0));
        groups.forEach(group -> group.cuts().forEach(cut -> List.of(cut.from(), cut.to()).forEach(end ->
                end.terminal().map(terminal -> count.merge(key(terminal, group), 1, Integer::sum)))));
        return count;
    }

    private static String key(String terminal, Group group) {
        return terminal + (group.size() == null ? "" : " for " + group.size());
    }
}
