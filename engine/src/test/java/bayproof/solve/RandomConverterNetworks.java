package bayproof.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Makes the networks that are stored for the comparison with ngspice: two tied sources on each side or on one side of a
 * DC-to-DC converter, with common grounds on the body. Of four, one has a starting battery and an alternator on the
 * converter's input and loads alone on its output; one has two linked batteries on the input; two have a
 * second battery that the converter charges, one of them with an alternator on the input and one with the engine off.
 */
final class RandomConverterNetworks {
    private final Random random;
    private Network.Builder builder;
    private int branches;

    RandomConverterNetworks(long seed) {
        random = new Random(seed);
    }

    List<NetworkText.Named> make(int count) {
        List<NetworkText.Named> networks = new ArrayList<>();
        while (networks.size() < count) {
            int number = networks.size();
            NetworkText.Named named = make("c" + number, number % 4);
            if (named.solve() instanceof OperatingPoint) {
                networks.add(named);
            }
        }
        return networks;
    }

    /** One network, which may have no solution. */
    private NetworkText.Named make(String name, int kind) {
        builder = new Network.Builder("minus");
        branches = 0;
        double restVolts = between(12.2, 12.9);
        builder.battery("battery", "plus", "minus", restVolts, between(0.003, 0.03), between(0, 80));
        branch("minus", "ground1", 0.0005, 0.003);
        branch("ground1", "ground2", 0.0003, 0.003);
        branch("ground2", "ground3", 0.0003, 0.003);
        if (kind == 1) {
            linkedSecond(restVolts);
        } else if (kind != 3) {
            alternator(restVolts);
        }
        inputSide();
        outputSide(kind);
        return new NetworkText.Named(name, builder.build(),
                List.of(new Converter("converter", "input", between(0.8, 0.96))));
    }

    /** A second battery on the input side, its rest volts a little off: one charges the other or both give. */
    private void linkedSecond(double restVolts) {
        double second = restVolts + between(-0.4, 0.4);
        builder.battery("second", "plus2", "minus2", second, between(0.003, 0.02), between(0, 60));
        branch("plus", "plus2", 0.002, 0.01);
        branch("minus2", "ground3", 0.0005, 0.003);
    }

    /** Running, at a small limit, or standing with its set point below the battery's rest volts. */
    private void alternator(double restVolts) {
        int state = random.nextInt(3);
        double setVolts = state == 2 ? restVolts - between(0.4, 1.6) : between(13.4, 14.9);
        double limit = state == 1 ? between(10, 50) : between(80, 200);
        builder.regulated("alternator", "charge", "engine", setVolts, limit);
        branch("charge", "plus", 0.002, 0.01);
        branch("minus", "engine", 0.0005, 0.003);
        branch("engine", "ground1", 0.0005, 0.005);
    }

    private void inputSide() {
        branch("plus", "infuse", 0.001, 0.004);
        branch("infuse", "in", 0.004, 0.03);
        for (int load = 0; load < 1 + random.nextInt(3); load++) {
            load("infuse", "in" + load, 2 + random.nextInt(2));
        }
        builder.constantPower("input", "in", "common", 0, 0);
        branch("common", "ground" + (2 + random.nextInt(2)), 0.0005, 0.01);
    }

    private void outputSide(int kind) {
        double limit = between(5, 50);
        boolean battery = kind >= 2;
        double secondVolts = between(12.2, 13.4);
        double setVolts = !battery ? between(12.5, 14.6)
                : random.nextInt(3) == 0 ? secondVolts - between(0.2, 0.8) : between(13.6, 14.6);
        builder.regulated("converter", "out", "common", setVolts, limit);
        branch("out", "block", 0.002, 0.02);
        if (battery) {
            double acceptance = random.nextBoolean() ? between(1, 10) : between(20, 80);
            builder.battery("second", "plus2", "minus2", secondVolts, between(0.003, 0.02), acceptance);
            branch("block", "plus2", 0.001, 0.01);
            branch("minus2", "ground3", 0.0005, 0.004);
            for (int load = 0; load < 1 + random.nextInt(4); load++) {
                load("block", "load" + load, random.nextInt(4));
            }
        } else {
            // A lamp's current at the set point about the limit: without a battery it holds the volts at the limit.
            double ohms = setVolts / (limit * between(0.3, 1.4));
            branch("block", "lamp", 0.002, 0.02);
            branch("lampn", "ground2", 0.0005, 0.02);
            builder.resistive("lamp", "lamp", "lampn", ohms, 9);
            if (random.nextBoolean()) {
                load("block", "load0", 1);
            }
        }
    }

    private void load(String block, String id, int draw) {
        branch(block, id + "p", 0.002, 0.05);
        branch(id + "n", "ground" + (1 + random.nextInt(3)), 0.0005, 0.02);
        if (draw == 0) {
            builder.resistive(id, id + "p", id + "n", between(0.7, 20), 9);
        } else if (draw == 1) {
            builder.constantCurrent(id, id + "p", id + "n", between(0.05, 6), 10);
        } else {
            builder.constantPower(id, id + "p", id + "n", between(5, 200), 10.5);
        }
    }

    private void branch(String from, String to, double low, double high) {
        builder.branch("w" + branches++, from, to, between(low, high));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
