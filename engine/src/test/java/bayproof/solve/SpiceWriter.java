package bayproof.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Writes one circuit for ngspice: a network with its sources held in given conditions. */
final class SpiceWriter {
    private final Network network;
    private final List<Converter> converters;
    private final Map<String, Condition> conditions;
    private final StringBuilder circuit = new StringBuilder();
    private final List<String> quantities = new ArrayList<>();

    SpiceWriter(NetworkText.Named named, Map<String, Condition> conditions) {
        this.network = named.network();
        this.converters = named.converters();
        this.conditions = conditions;
    }

    SpiceDeck write(String title) {
        line("*", title);
        for (Branch branch : network.branches()) {
            line("r" + branch.id(), node(branch.from()), node(branch.to()), branch.ohms());
        }
        SpiceDeck.ordered(network).forEach(this::source);
        for (Load load : network.loads()) {
            Optional<Converter> converter = converters.stream().filter(c -> c.input().equals(load.id())).findFirst();
            if (converter.isPresent()) {
                input(converter.get(), load);
            } else {
                load(load);
            }
        }
        for (String name : network.nodes()) {
            if (!name.equals(network.reference())) {
                quantities.add("v(" + name + ")");
                line(".nodeset v(" + name + ")=" + startVolts(name));
            }
        }
        for (Source source : SpiceDeck.ordered(network)) {
            if (holdsVolts(conditions.get(source.id()))) {
                quantities.add("i(v" + source.id() + ")");
            }
        }
        network.branches().forEach(branch -> quantities.add("@r" + branch.id() + "[i]"));
        line(".options reltol=1e-10 abstol=1e-12 vntol=1e-12");
        line(".end");
        return new SpiceDeck(title, circuit.toString(), quantities);
    }

    private static boolean holdsVolts(Condition condition) {
        return condition == Condition.AT_REST_VOLTS || condition == Condition.GIVING
                || condition == Condition.HOLDING_SET_POINT;
    }

    private void source(Source source) {
        String id = source.id();
        String plus = node(source.positive());
        String minus = node(source.negative());
        switch (conditions.get(id)) {
            case TAKING_ACCEPTANCE -> line("i" + id, plus, minus, ((Source.Battery) source).acceptanceAmperes());
            case AT_REST_VOLTS -> line("v" + id, plus, minus, ((Source.Battery) source).restVolts());
            case GIVING -> {
                line("v" + id, "inside_" + id, minus, ((Source.Battery) source).restVolts());
                line("r" + id, "inside_" + id, plus, ((Source.Battery) source).internalOhms());
            }
            case HOLDING_SET_POINT -> line("v" + id, plus, minus, ((Source.Regulated) source).setVolts());
            case AT_LIMIT -> line("i" + id, minus, plus, ((Source.Regulated) source).limitAmperes());
            case STANDING_BY -> {
                // It gives nothing: no element.
            }
        }
    }

    /** The input of a converter draws the power of its output over its efficiency. */
    private void input(Converter converter, Load load) {
        Source.Regulated output = (Source.Regulated) network.sources().stream()
                .filter(source -> source.id().equals(converter.source())).findFirst().orElseThrow();
        String given = switch (conditions.get(converter.source())) {
            // ngspice counts the current into the positive terminal of a voltage source: what it takes.
            case HOLDING_SET_POINT -> "(-i(v" + output.id() + "))";
            case AT_LIMIT -> String.valueOf(output.limitAmperes());
            default -> null;
        };
        if (given != null) {
            String positive = node(load.positive());
            String negative = node(load.negative());
            line("b" + load.id(), positive, negative, "i=" + given + "*v(" + node(output.positive()) + ","
                    + node(output.negative()) + ")/" + converter.efficiency() + "/v(" + positive + "," + negative + ")");
        }
    }

    private void load(Load load) {
        String positive = node(load.positive());
        String negative = node(load.negative());
        if (load instanceof Load.Resistive resistive) {
            line("r" + load.id(), positive, negative, resistive.ohms());
        } else if (load instanceof Load.ConstantCurrent current) {
            line("i" + load.id(), positive, negative, current.amperes());
        } else if (load instanceof Load.ConstantPower power) {
            line("b" + load.id(), positive, negative, "i=" + power.watts() + "/v(" + positive + "," + negative + ")");
        }
    }

    /** Where the search for a node's volts begins: at those of the sources whose positive terminals it is joined to. */
    private double startVolts(String name) {
        Set<String> joined = joined(name);
        double start = 0;
        for (Source source : SpiceDeck.ordered(network)) {
            if (joined.contains(source.positive())) {
                if (source instanceof Source.Battery battery) {
                    start = Math.max(start, battery.restVolts());
                } else if (source instanceof Source.Regulated regulated
                        && (start == 0 || conditions.get(source.id()) == Condition.HOLDING_SET_POINT)) {
                    start = regulated.setVolts();
                }
            }
        }
        return start;
    }

    private Set<String> joined(String name) {
        Set<String> joined = new HashSet<>(Set.of(name));
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Branch branch : network.branches()) {
                if (joined.contains(branch.from()) || joined.contains(branch.to())) {
                    grown |= joined.add(branch.from()) | joined.add(branch.to());
                }
            }
        }
        return joined;
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
