package bayproof.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * What a network's branches and terminals make, whatever the values of its sources and loads. A piece is what branches
 * hold together; an island is the pieces that sources tie together. In each piece one node, its root, is held at 0 V;
 * the volts between the roots of an island are found with its currents.
 */
final class Wiring {
    private final List<String> nodes;
    private final Map<String, Integer> nodeIndex;
    private final Map<String, Integer> branchIndex = new HashMap<>();
    private final Map<String, Integer> sourceIndex = new HashMap<>();
    private final Map<String, Integer> loadIndex = new HashMap<>();
    private final int[] from;
    private final int[] to;
    private final Terminals sources;
    private final Terminals loads;
    private final int[] root;
    private final int[] islandRoot;
    private final Elimination elimination;
    private final List<Island> islands = new ArrayList<>();
    private final boolean[] fed;

    /** The two nodes of each source, or of each load. */
    record Terminals(int[] positive, int[] negative) {
    }

    /** All lists sorted by id, so that the order of the input makes no difference to any sum. */
    Wiring(String reference, List<Branch> branches, List<Source> sources, List<Load> loads) {
        SortedSet<String> names = new TreeSet<>();
        names.add(reference);
        branches.forEach(branch -> names.addAll(List.of(branch.from(), branch.to())));
        sources.forEach(source -> names.addAll(List.of(source.positive(), source.negative())));
        loads.forEach(load -> names.addAll(List.of(load.positive(), load.negative())));
        nodes = List.copyOf(names);
        nodeIndex = new HashMap<>(2 * nodes.size());
        nodes.forEach(name -> nodeIndex.put(name, nodeIndex.size()));
        branches.forEach(branch -> branchIndex.put(branch.id(), branchIndex.size()));
        sources.forEach(source -> sourceIndex.put(source.id(), sourceIndex.size()));
        loads.forEach(load -> loadIndex.put(load.id(), loadIndex.size()));

        from = branches.stream().mapToInt(branch -> nodeIndex.get(branch.from())).toArray();
        to = branches.stream().mapToInt(branch -> nodeIndex.get(branch.to())).toArray();
        this.sources = new Terminals(
                sources.stream().mapToInt(source -> nodeIndex.get(source.positive())).toArray(),
                sources.stream().mapToInt(source -> nodeIndex.get(source.negative())).toArray());
        this.loads = new Terminals(
                loads.stream().mapToInt(load -> nodeIndex.get(load.positive())).toArray(),
                loads.stream().mapToInt(load -> nodeIndex.get(load.negative())).toArray());

        Groups pieces = new Groups(nodes.size());
        for (int i = 0; i < from.length; i++) {
            pieces.join(from[i], to[i]);
        }
        int zero = nodeIndex.get(reference);
        root = new int[nodes.size()];
        Groups tied = new Groups(nodes.size());
        for (int node = 0; node < root.length; node++) {
            root[node] = pieces.of(node) == pieces.of(zero) ? zero : pieces.of(node);
            tied.join(node, root[node]);
        }
        for (int i = 0; i < this.sources.positive().length; i++) {
            tied.join(this.sources.positive()[i], this.sources.negative()[i]);
        }
        islandRoot = new int[nodes.size()];
        Arrays.setAll(islandRoot, tied::of);

        boolean[] kept = new boolean[nodes.size()];
        for (int node = 0; node < kept.length; node++) {
            kept[node] = root[node] == node;
        }
        elimination = new Elimination(from, to,
                branches.stream().mapToDouble(branch -> 1 / branch.ohms()).toArray(), kept);

        fed = new boolean[loads.size()];
        boolean[] steady = new boolean[loads.size()];
        for (int load = 0; load < steady.length; load++) {
            steady[load] = loads.get(load) instanceof Load.ConstantCurrent;
        }
        for (int first : Arrays.stream(this.sources.positive()).map(node -> islandRoot[node]).sorted().distinct()
                .toArray()) {
            islands.add(island(first, steady));
        }
    }

    private Island island(int first, boolean[] steady) {
        int[] sourcesHere = among(sources, first);
        int[] loadsHere = among(loads, first);
        for (int load : loadsHere) {
            fed[load] = true;
        }
        int[] roots = IntStream.range(0, nodes.size())
                .filter(node -> root[node] == node && islandRoot[node] == first).toArray();
        return new Island(this, sourcesHere, loadsHere, roots, steady);
    }

    private int[] among(Terminals terminals, int first) {
        return IntStream.range(0, terminals.positive().length)
                .filter(i -> islandRoot[terminals.positive()[i]] == first
                        && islandRoot[terminals.negative()[i]] == first)
                .toArray();
    }

    List<String> nodes() {
        return nodes;
    }

    List<Island> islands() {
        return islands;
    }

    Elimination elimination() {
        return elimination;
    }

    Terminals sources() {
        return sources;
    }

    Terminals loads() {
        return loads;
    }

    int from(int branch) {
        return from[branch];
    }

    int to(int branch) {
        return to[branch];
    }

    int root(int node) {
        return root[node];
    }

    /** Whether branches and sources join both nodes. */
    boolean joined(int one, int other) {
        return islandRoot[one] == islandRoot[other];
    }

    boolean fed(int load) {
        return fed[load];
    }

    int node(String name) {
        return find("node", nodeIndex, name);
    }

    int branch(String id) {
        return find("branch", branchIndex, id);
    }

    int source(String id) {
        return find("source", sourceIndex, id);
    }

    int load(String id) {
        return find("load", loadIndex, id);
    }

    private static int find(String kind, Map<String, Integer> index, String name) {
        Integer found = index.get(name);
        if (found == null) {
            throw new IllegalArgumentException("the network has no " + kind + " " + name);
        }
        return found;
    }
}
