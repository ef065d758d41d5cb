package bayproof.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * Networks as lines of words: {@code network <name> <reference>} begins one, and each further line is an element with
 * the arguments of the builder method of that name, or a {@code converter} with the ids of its source and its load and
 * its efficiency.
 */
final class NetworkText {
    private NetworkText() {
    }

    /** A network, its converters and the name it is stored under. */
    record Named(String name, Network network, List<Converter> converters) {
        Named(String name, Network network) {
            this(name, network, List.of());
        }

        Solution solve() {
            return converters.isEmpty() ? Solver.solve(network) : ConverterSolver.solve(network, converters);
        }
    }

    static String write(Named named) {
        StringBuilder text = new StringBuilder();
        line(text, "network", named.name(), named.network().reference());
        for (Branch branch : named.network().branches()) {
            line(text, "branch", branch.id(), branch.from(), branch.to(), branch.ohms());
        }
        for (Source source : named.network().sources()) {
            if (source instanceof Source.Battery b) {
                line(text, "battery", b.id(), b.positive(), b.negative(), b.restVolts(), b.internalOhms(),
                        b.acceptanceAmperes());
            } else if (source instanceof Source.Regulated r) {
                line(text, "regulated", r.id(), r.positive(), r.negative(), r.setVolts(), r.limitAmperes());
            }
        }
        for (Load load : named.network().loads()) {
            if (load instanceof Load.ConstantPower l) {
                line(text, "constantPower", l.id(), l.positive(), l.negative(), l.watts(), l.cutOffVolts());
            } else if (load instanceof Load.ConstantCurrent l) {
                line(text, "constantCurrent", l.id(), l.positive(), l.negative(), l.amperes(), l.cutOffVolts());
            } else if (load instanceof Load.Resistive l) {
                line(text, "resistive", l.id(), l.positive(), l.negative(), l.ohms(), l.cutOffVolts());
            }
        }
        for (Converter converter : named.converters()) {
            line(text, "converter", converter.source(), converter.input(), converter.efficiency());
        }
        return text.toString();
    }

    private static void line(StringBuilder text, Object... words) {
        for (int i = 0; i < words.length; i++) {
            text.append(i == 0 ? "" : " ").append(words[i]);
        }
        text.append('\n');
    }

    static List<Named> read(String text) {
        List<Named> networks = new ArrayList<>();
        String name = null;
        Network.Builder builder = null;
        List<Converter> converters = new ArrayList<>();
        for (String line : text.lines().toList()) {
            String[] w = line.split(" ");
            if (w[0].equals("network")) {
                if (builder != null) {
                    networks.add(new Named(name, builder.build(), List.copyOf(converters)));
                }
                converters.clear();
                name = w[1];
                builder = new Network.Builder(w[2]);
                continue;
            }
            if (w[0].equals("converter")) {
                converters.add(new Converter(w[1], w[2], number(w[3])));
                continue;
            }
            double first = Double.parseDouble(w[4]);
            switch (w[0]) {
                case "branch" -> builder.branch(w[1], w[2], w[3], first);
                case "battery" -> builder.battery(w[1], w[2], w[3], first, number(w[5]), number(w[6]));
                case "regulated" -> builder.regulated(w[1], w[2], w[3], first, number(w[5]));
                case "constantPower" -> builder.constantPower(w[1], w[2], w[3], first, number(w[5]));
                case "constantCurrent" -> builder.constantCurrent(w[1], w[2], w[3], first, number(w[5]));
                case "resistive" -> builder.resistive(w[1], w[2], w[3], first, number(w[5]));
                default -> throw new IllegalArgumentException("no element begins: " + line);
            }
        }
        networks.add(new Named(name, builder.build(), List.copyOf(converters)));
        return networks;
    }

    private static double number(String word) {
        return Double.parseDouble(word);
    }
}
