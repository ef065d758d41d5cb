package bayproof.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Makes the networks that are stored for the comparison with ngspice: a battery, an alternator on the engine block,
 * three ground points on the body, distribution blocks and loads, with resistances of the size found in vehicles.
 * Every second one is meshed. Of four, one charges, one is at or near the alternator's limit, one runs below the
 * battery's rest volts, and one draws 82 % to 98 % of the most power its sources can bring.
 */
final class RandomNetworks {
    private static final String[] GROUNDS = {"ground1", "ground2", "ground3"};

    private final Random random;
    private Network.Builder builder;
    private int branches;

    RandomNetworks(long seed) {
        random = new Random(seed);
    }

    List<NetworkText.Named> make(int count) {
        List<NetworkText.Named> networks = new ArrayList<>();
        while (networks.size() < count) {
            int number = networks.size();
            Network network = make(number % 4, number / 4 % 2 == 0);
            if (Solver.solve(network) instanceof OperatingPoint) {
                networks.add(new NetworkText.Named("n" + number, network));
            }
        }
        return networks;
    }

    /**
     * One network, which may have no solution.
     *
     * @param kind 0 charging, 1 near the limit, 2 below rest volts, 3 near the most power
     */
    Network make(int kind, boolean meshed) {
        builder = new Network.Builder("minus");
        branches = 0;
        double restVolts = between(12.0, 12.9);
        builder.battery("battery", "plus", "minus", restVolts, between(0.003, 0.03), between(0, 60));
        double setVolts = kind == 2 ? restVolts - between(0.05, 1) : between(13.6, 14.9);
        int loads = 3 + random.nextInt(6);
        double limitAmperes = kind == 1 ? loads * between(4, 16) : between(60, 180);
        builder.regulated("alternator", "charge", "engine", setVolts, limitAmperes);
        branch("charge", "plus", 0.002, 0.01);
        branch("minus", "engine", 0.0005, 0.003);
        branch("minus", "ground1", 0.0005, 0.003);
        branch("ground1", "ground2", 0.0003, 0.003);
        branch("ground2", "ground3", 0.0003, 0.003);
        int blocks = 1 + random.nextInt(3);
        for (int block = 0; block < blocks; block++) {
            branch("plus", "fuse" + block, 0.0005, 0.002);
            branch("fuse" + block, "block" + block, 0.002, 0.01);
        }
        for (int load = 0; load < loads; load++) {
            load("load" + load, "block" + random.nextInt(blocks), kind);
        }
        if (meshed) {
            mesh(blocks);
        }
        Network network = builder.build();
        return kind == 3 ? nearMostPower(network) : network;
    }

    private void load(String id, String block, int kind) {
        String positive = id + "p";
        String negative = id + "n";
        if (random.nextBoolean()) {
            branch(block, id + "f", 0.001, 0.01);
            branch(id + "f", positive, 0.002, 0.05);
        } else {
            branch(block, positive, 0.002, 0.06);
        }
        branch(negative, GROUNDS[random.nextInt(GROUNDS.length)], 0.0005, 0.02);
        int draw = kind == 3 ? random.nextInt(6) : random.nextInt(4);
        if (draw == 0) {
            builder.resistive(id, positive, negative, between(0.7, 20), 9);
        } else if (draw == 1) {
            builder.constantCurrent(id, positive, negative, between(0.05, 20), 10);
        } else {
            builder.constantPower(id, positive, negative, between(5, 250), 10.5);
        }
    }

    private void mesh(int blocks) {
        branch("ground1", "ground3", 0.0003, 0.003);
        branch("engine", GROUNDS[random.nextInt(GROUNDS.length)], 0.0005, 0.01);
        branch("plus", "block" + random.nextInt(blocks), 0.003, 0.02);
        if (blocks > 1) {
            branch("block0", "block1", 0.001, 0.02);
        }
        for (int more = random.nextInt(4); more > 0; more--) {
            branch("load" + random.nextInt(3) + "p", "block" + random.nextInt(blocks), 0.003, 0.08);
        }
        if (random.nextBoolean()) {
            branch("load0n", "minus", 0.004, 0.02);
            branch("load0p", "load1p", 0.002, 0.05);
        }
    }

    /** The network with its powers scaled to 82 % to 98 % of the most it can carry. */
    private Network nearMostPower(Network network) {
        double carried = 0;
        double refused = 1000;
        while (refused - carried > 1e-6 * refused) {
            double middle = (carried + refused) / 2;
            if (Solver.solve(scaled(network, middle)) instanceof OperatingPoint) {
                carried = middle;
            } else {
                refused = middle;
            }
        }
        return scaled(network, between(0.82, 0.98) * carried);
    }

    /** The network with every held power multiplied. */
    static Network scaled(Network network, double factor) {
        List<Load> scaled = new ArrayList<>();
        for (Load load : network.loads()) {
            if (load instanceof Load.ConstantPower power) {
                scaled.add(new Load.ConstantPower(load.id(), load.positive(), load.negative(), power.watts() * factor,
                        load.cutOffVolts()));
            }
        }
        return network.withLoads(scaled);
    }

    private void branch(String from, String to, double low, double high) {
        builder.branch("w" + branches++, from, to, between(low, high));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
