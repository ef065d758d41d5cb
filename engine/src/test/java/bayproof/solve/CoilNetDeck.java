package bayproof.solve;

import bayproof.read.CoilNet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * A net of voice coils with the deck that asks ngspice what it is to a source of 1 V at one frequency.
 *
 * @param name  its name
 * @param net   the net as a plan writes it
 * @param hertz frequency
 * @param coils coils by name
 */
record CoilNetDeck(String name, String net, double hertz, Map<String, Values> coils) {
    /** Resistance of a coil and the capacitor in series with it; 0 F where there is none. */
    record Values(double ohms, double farads) {
    }

    /** Nets of one to eight coils; every second one has a capacitor before some of its coils. */
    static List<CoilNetDeck> random(long seed, int count) {
        Random random = new Random(seed);
        List<CoilNetDeck> decks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Map<String, Values> coils = new LinkedHashMap<>();
            int wanted = 1 + random.nextInt(8);
            for (int c = 0; c < wanted; c++) {
                double farads = i % 2 == 1 && random.nextInt(3) == 0 ? Math.round(1 + random.nextDouble() * 50) * 1e-6 : 0;
                coils.put("s" + c / 2 + ".coil-" + (c % 2 + 1), new Values(Math.round((0.5 + random.nextDouble() * 15.5) * 100) / 100.0, farads));
            }
            double hertz = Math.round(20 * Math.pow(1000, random.nextDouble()));
            decks.add(new CoilNetDeck("c" + i, text(new ArrayList<>(coils.keySet()), random, 0), hertz, coils));
        }
        return decks;
    }

    private static String text(List<String> coils, Random random, int depth) {
        if (coils.size() == 1) {
            return coils.get(0);
        }
        int cut = 1 + random.nextInt(coils.size() - 1);
        String joined = text(coils.subList(0, cut), random, depth + 1) + (random.nextBoolean() ? " + " : " | ")
                + text(coils.subList(cut, coils.size()), random, depth + 1);
        return depth == 0 ? joined : "(" + joined + ")";
    }

    /** The deck: a resistor for each coil, a capacitor before it where it has one. */
    SpiceDeck deck() {
        Writer writer = new Writer();
        writer.circuit.append("* ").append(name).append("\nv1 top 0 dc 1 ac 1\n");
        writer.between(CoilNet.parse(net), "top", "0");
        writer.circuit.append(".ac lin 1 ").append(hertz).append(' ').append(hertz).append("\n.end\n");
        return new SpiceDeck(name, writer.circuit.toString(), writer.quantities);
    }

    /** What {@link #deck} asks for of a coil: the volts across its resistance, in the order of the net. */
    private final class Writer {
        private final StringBuilder circuit = new StringBuilder();
        private final List<String> quantities = new ArrayList<>(List.of("mag(i(v1))"));
        private int nodes;

        private void between(CoilNet part, String from, String to) {
            if (part instanceof CoilNet.Coil coil) {
                Values values = coils.get(coil.terminal());
                String start = from;
                if (values.farads() > 0) {
                    start = node();
                    circuit.append("c").append(start).append(' ').append(from).append(' ').append(start).append(' ').append(values.farads()).append('\n');
                }
                circuit.append("r").append(quantities.size()).append(' ').append(start).append(' ').append(to).append(' ').append(values.ohms()).append('\n');
                quantities.add(to.equals("0") ? "mag(v(" + start + "))" : "mag(v(" + start + ")-v(" + to + "))");
            } else if (part instanceof CoilNet.Series series) {
                String at = from;
                for (int i = 0; i < series.members().size(); i++) {
                    String next = i == series.members().size() - 1 ? to : node();
                    between(series.members().get(i), at, next);
                    at = next;
                }
            } else {
                ((CoilNet.Parallel) part).members().forEach(member -> between(member, from, to));
            }
        }

        private String node() {
            return "n" + ++nodes;
        }
    }

    /** The nets as one text, which {@link #read} takes apart again. */
    static String write(List<CoilNetDeck> decks) {
        StringBuilder text = new StringBuilder();
        for (CoilNetDeck deck : decks) {
            text.append("net ").append(deck.name).append(' ').append(deck.hertz).append(' ').append(deck.net).append('\n');
            deck.coils.forEach((coil, values) -> text.append(coil).append(' ').append(values.ohms()).append(' ').append(values.farads()).append('\n'));
        }
        return text.toString();
    }

    static List<CoilNetDeck> read(String text) {
        List<CoilNetDeck> decks = new ArrayList<>();
        for (String line : text.lines().toList()) {
            if (line.startsWith("net ")) {
                String[] words = line.split(" ", 4);
                decks.add(new CoilNetDeck(words[1], words[3], Double.parseDouble(words[2]), new LinkedHashMap<>()));
            } else {
                String[] words = line.split(" ");
                decks.get(decks.size() - 1).coils().put(words[0], new Values(Double.parseDouble(words[1]), Double.parseDouble(words[2])));
            }
        }
        return decks;
    }
}
