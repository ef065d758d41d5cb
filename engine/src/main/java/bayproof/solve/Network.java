package bayproof.solve;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A wiring network at direct current: branches, sources and loads between named nodes. Immutable. The branches are
 * reduced to the terminals of sources and loads once, when the network is built; copies with other sources or loads
 * share that work. The order in which a builder was called makes no difference to any result.
 */
public final class Network {
    private final String reference;
    private final List<Branch> branches;
    private final List<Source> sources;
    private final List<Load> loads;
    private final Wiring wiring;

    private Network(String reference, List<Branch> branches, List<Source> sources, List<Load> loads, Wiring wiring) {
        this.reference = reference;
        this.branches = branches;
        this.sources = sources;
        this.loads = loads;
        this.wiring = wiring;
    }

    /** The node whose volts are 0. */
    public String reference() {
        return reference;
    }

    /** All branches, sorted by id. */
    public List<Branch> branches() {
        return branches;
    }

    /** All sources, sorted by id. */
    public List<Source> sources() {
        return sources;
    }

    /** All loads, sorted by id. */
    public List<Load> loads() {
        return loads;
    }

    /** All nodes, sorted: the reference and every node that an element names. */
    public List<String> nodes() {
        return wiring.nodes();
    }

    /**
     * The same wiring with other loads at the same terminals, such as another power level.
     *
     * @param changed loads that replace the loads of the same ids; the others stay
     * @throws IllegalArgumentException if this network has no load of that id, has it between other nodes, or has another
     *                                  kind of load there
     */
    public Network withLoads(Collection<? extends Load> changed) {
        List<Load> next = new ArrayList<>(loads);
        for (Load load : changed) {
            int at = wiring.load(load.id());
            Load old = next.get(at);
            sameNodes("load " + load.id(), old.positive(), old.negative(), load.positive(), load.negative());
            if (old.getClass() != load.getClass()) {
                throw new IllegalArgumentException("load " + load.id() + " is another kind of load");
            }
            next.set(at, load);
        }
        return new Network(reference, branches, sources, List.copyOf(next), wiring);
    }

    /**
     * The same wiring with other source values at the same terminals, such as another charging state.
     *
     * @param changed sources that replace the sources of the same ids; the others stay
     * @throws IllegalArgumentException if this network has no source of that id, or has it between other nodes
     */
    Network withSources(Collection<? extends Source> changed) {
        List<Source> next = new ArrayList<>(sources);
        for (Source source : changed) {
            int at = wiring.source(source.id());
            Source old = next.get(at);
            sameNodes("source " + source.id(), old.positive(), old.negative(), source.positive(), source.negative());
            next.set(at, source);
        }
        return new Network(reference, branches, List.copyOf(next), loads, wiring);
    }

    Wiring wiring() {
        return wiring;
    }

    private static void sameNodes(String what, String positive, String negative, String newPositive,
            String newNegative) {
        if (!positive.equals(newPositive) || !negative.equals(newNegative)) {
            throw new IllegalArgumentException(what + " lies between " + positive + " and " + negative
                    + ", not between " + newPositive + " and " + newNegative);
        }
    }

    /** Collects a network. Branches, sources and loads each have their own ids. */
    public static final class Builder {
        private final String reference;
        private final SortedMap<String, Branch> branches = new TreeMap<>();
        private final SortedMap<String, Source> sources = new TreeMap<>();
        private final SortedMap<String, Load> loads = new TreeMap<>();

        /**
         * Begins a network.
         *
         * @param reference the node whose volts are 0, usually the negative post of the starting battery
         * @throws IllegalArgumentException if it has no name
         */
        public Builder(String reference) {
            if (reference == null || reference.isEmpty()) {
                throw new IllegalArgumentException("the reference node needs a name");
            }
            this.reference = reference;
        }

        /**
         * Adds a branch; branches may be parallel.
         *
         * @throws IllegalArgumentException as {@link Branch}, or if the id is taken
         */
        public Builder branch(String id, String from, String to, double ohms) {
            return put("branch", branches, id, new Branch(id, from, to, ohms));
        }

        /**
         * Adds a battery.
         *
         * @throws IllegalArgumentException as {@link Source.Battery}, or if the id is taken
         */
        public Builder battery(String id, String positive, String negative, double restVolts, double internalOhms,
                double acceptanceAmperes) {
            return put("source", sources, id,
                    new Source.Battery(id, positive, negative, restVolts, internalOhms, acceptanceAmperes));
        }

        /**
         * Adds an alternator or the output of a converter.
         *
         * @throws IllegalArgumentException as {@link Source.Regulated}, or if the id is taken
         */
        public Builder regulated(String id, String positive, String negative, double setVolts, double limitAmperes) {
            return put("source", sources, id,
                    new Source.Regulated(id, positive, negative, setVolts, limitAmperes));
        }

        /**
         * Adds a load that holds its power.
         *
         * @throws IllegalArgumentException as {@link Load.ConstantPower}, or if the id is taken
         */
        public Builder constantPower(String id, String positive, String negative, double watts, double cutOffVolts) {
            return put("load", loads, id, new Load.ConstantPower(id, positive, negative, watts, cutOffVolts));
        }

        /**
         * Adds a load that holds its current.
         *
         * @throws IllegalArgumentException as {@link Load.ConstantCurrent}, or if the id is taken
         */
        public Builder constantCurrent(String id, String positive, String negative, double amperes,
                double cutOffVolts) {
            return put("load", loads, id, new Load.ConstantCurrent(id, positive, negative, amperes, cutOffVolts));
        }

        /**
         * Adds a load that behaves as a resistor.
         *
         * @throws IllegalArgumentException as {@link Load.Resistive}, or if the id is taken
         */
        Builder resistive(String id, String positive, String negative, double ohms, double cutOffVolts) {
            return put("load", loads, id, new Load.Resistive(id, positive, negative, ohms, cutOffVolts));
        }

        /** The network collected so far; the builder can go on. */
        public Network build() {
            List<Branch> branchList = List.copyOf(branches.values());
            List<Source> sourceList = List.copyOf(sources.values());
            List<Load> loadList = List.copyOf(loads.values());
            return new Network(reference, branchList, sourceList, loadList,
                    new Wiring(reference, branchList, sourceList, loadList));
        }

        private <T> Builder put(String kind, Map<String, T> all, String id, T element) {
            if (all.putIfAbsent(id, element) != null) {
                throw new IllegalArgumentException("two elements of the kind " + kind + " have the id " + id);
            }
            return this;
        }
    }
}
