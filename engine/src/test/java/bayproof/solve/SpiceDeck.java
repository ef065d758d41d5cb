package bayproof.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A deck for ngspice: one network of one battery and one alternator, with one combination of conditions.
 *
 * @param title      network name and both conditions
 * @param circuit    the lines of the circuit, the title first
 * @param quantities what is to be printed
 */
record SpiceDeck(String title, String circuit, List<String> quantities) {
    /** Written out here, not asked of the solver: what is under test must not say what is tried. */
    private static final List<Condition> BATTERY =
            List.of(Condition.TAKING_ACCEPTANCE, Condition.AT_REST_VOLTS, Condition.GIVING);
    private static final List<Condition> ALTERNATOR =
            List.of(Condition.STANDING_BY, Condition.HOLDING_SET_POINT, Condition.AT_LIMIT);

    /** The decks of a network, one for each combination of conditions. */
    static List<SpiceDeck> of(NetworkText.Named named) {
        List<SpiceDeck> decks = new ArrayList<>();
        for (Condition battery : BATTERY) {
            for (Condition alternator : ALTERNATOR) {
                decks.add(new Writer(named.network()).write(named.name() + " " + battery + " " + alternator, battery,
                        alternator));
            }
        }
        return decks;
    }

    static Source.Battery battery(Network network) {
        return (Source.Battery) network.sources().stream().filter(Source.Battery.class::isInstance).findFirst()
                .orElseThrow();
    }

    static Source.Regulated alternator(Network network) {
        return (Source.Regulated) network.sources().stream().filter(Source.Regulated.class::isInstance).findFirst()
                .orElseThrow();
    }

    /** The decks as one text, which {@link #read} takes apart again. */
    static String write(List<SpiceDeck> decks) {
        StringBuilder text = new StringBuilder();
        for (SpiceDeck deck : decks) {
            text.append("deck ").append(deck.title()).append('\n').append(deck.circuit());
            text.append("print ").append(String.join(" ", deck.quantities())).append('\n');
        }
        return text.toString();
    }

    static List<SpiceDeck> read(String text) {
        List<SpiceDeck> decks = new ArrayList<>();
        for (String part : text.split("(?m)^deck ")) {
            if (!part.isEmpty()) {
                String title = part.substring(0, part.indexOf('\n'));
                int print = part.lastIndexOf("print ");
                decks.add(new SpiceDeck(title, part.substring(title.length() + 1, print),
                        Arrays.asList(part.substring(print + "print ".length()).trim().split(" "))));
            }
        }
        return decks;
    }

    /** Writes one circuit. */
    private static final class Writer {
        private final Network network;
        private final StringBuilder circuit = new StringBuilder();
        private final List<String> quantities = new ArrayList<>();

        Writer(Network network) {
            this.network = network;
        }

        SpiceDeck write(String title, Condition batteryCondition, Condition alternatorCondition) {
            Source.Battery battery = battery(network);
            Source.Regulated alternator = alternator(network);
            line("*", title);
            for (Branch branch : network.branches()) {
                line("r" + branch.id(), node(branch.from()), node(branch.to()), branch.ohms());
            }
            String plus = node(battery.positive());
            String minus = node(battery.negative());
            switch (batteryCondition) {
                case TAKING_ACCEPTANCE -> line("ibattery", plus, minus, battery.acceptanceAmperes());
                case AT_REST_VOLTS -> line("vbattery", plus, minus, battery.restVolts());
                default -> {
                    line("vbattery", "inside", minus, battery.restVolts());
                    line("rbattery", "inside", plus, battery.internalOhms());
                }
            }
            String high = node(alternator.positive());
            String low = node(alternator.negative());
            switch (alternatorCondition) {
                case HOLDING_SET_POINT -> line("valternator", high, low, alternator.setVolts());
                case AT_LIMIT -> line("ialternator", low, high, alternator.limitAmperes());
                default -> {
                    // It gives nothing: no element.
                }
            }
            for (Load load : network.loads()) {
                load(load);
            }
            double start = alternatorCondition == Condition.HOLDING_SET_POINT
                    ? alternator.setVolts() : battery.restVolts();
            Set<String> fed = feedSide();
            for (String name : network.nodes()) {
                if (!name.equals(network.reference())) {
                    quantities.add("v(" + name + ")");
                    line(".nodeset v(" + name + ")=" + (fed.contains(name) ? start : 0));
                }
            }
            if (batteryCondition != Condition.TAKING_ACCEPTANCE) {
                quantities.add("i(vbattery)");
            }
            if (alternatorCondition == Condition.HOLDING_SET_POINT) {
                quantities.add("i(valternator)");
            }
            network.branches().forEach(branch -> quantities.add("@r" + branch.id() + "[i]"));
            line(".options reltol=1e-10 abstol=1e-12 vntol=1e-12");
            line(".end");
            return new SpiceDeck(title, circuit.toString(), quantities);
        }

        private void load(Load load) {
            String positive = node(load.positive());
            String negative = node(load.negative());
            if (load instanceof Load.Resistive resistive) {
                line("r" + load.id(), positive, negative, resistive.ohms());
            } else if (load instanceof Load.ConstantCurrent current) {
                line("i" + load.id(), positive, negative, current.amperes());
            } else if (load instanceof Load.ConstantPower power) {
                line("b" + load.id(), positive, negative,
                        "i=" + power.watts() + "/v(" + positive + "," + negative + ")");
            }
        }

        /** The nodes that branches join to the positive terminal of a source. */
        private Set<String> feedSide() {
            Set<String> fed = new HashSet<>();
            network.sources().forEach(source -> fed.add(source.positive()));
            boolean grown = true;
            while (grown) {
                grown = false;
                for (Branch branch : network.branches()) {
                    if (fed.contains(branch.from()) || fed.contains(branch.to())) {
                        grown |= fed.add(branch.from()) | fed.add(branch.to());
                    }
                }
            }
            return fed;
        }

        private String node(String name) {
            return name.equals(network.reference()) ? "0" : name.toLowerCase(Locale.ROOT);
        }

        private void line(Object... words) {
            for (int i = 0; i < words.length; i++) {
                circuit.append(i == 0 ? "" : " ").append(words[i]);
            }
            circuit.append('\n');
        }
    }
}
