package bayproof.solve;

import bayproof.solve.acoustic.Filter;
import bayproof.solve.acoustic.Filter.Pass;
import bayproof.solve.acoustic.Filter.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Circuits of filters and driven boxes for ngspice, each solved at twelve points an octave. Element values of the ladders and the
 * Q of the sections are those of tables; the boxes are written from mass, compliance, losses and force factor, never from what
 * is under test.
 */
final class AcousticDecks {
    static final int PER_OCTAVE = 12;
    private static final int OHMS = 1000;
    private static final double CORNER = 1000;
    private static final int FILTER_OCTAVES = 6;
    static final double FILTER_FROM = CORNER / 8;
    static final double BOX_FROM = 10;
    private static final int BOX_OCTAVES = 5;
    /** Volts of a full sine before the planned high-pass. */
    static final double VOLTS = 30;
    static final double HIGH_PASS_HERTZ = 28;

    /**
     * Series and shunt elements of a ladder into R, from the source on, in R/f for a coil and 1/(R f) for a capacitor. Lecture notes
     * 34870 of a technical university, lesson 9, and a hobby table of crossover constants; they agree in the last digit but one.
     */
    private static final Map<String, double[]> LOW_LADDERS = new TreeMap<>(Map.of("butterworth-1", new double[] {0.15915},
            "butterworth-2", new double[] {0.2251, 0.1125}, "butterworth-3", new double[] {0.2387, 0.2122, 0.0796},
            "linkwitz-riley-2", new double[] {0.3183, 0.0796}, "linkwitz-riley-4", new double[] {0.3001, 0.2532, 0.1501, 0.0563}));
    private static final Map<String, double[]> HIGH_LADDERS = new TreeMap<>(Map.of("butterworth-1", new double[] {0.15915},
            "butterworth-2", new double[] {0.1125, 0.2251}, "butterworth-3", new double[] {0.1061, 0.1194, 0.3183},
            "linkwitz-riley-2", new double[] {0.0796, 0.3183}, "linkwitz-riley-4", new double[] {0.0844, 0.1000, 0.1688, 0.4502}));

    /** Q of the second-order sections of Butterworth filters (tables of active filters, from memory); an odd order has one of first order beside. */
    private static final Map<Integer, double[]> SECTIONS = Map.of(1, new double[0], 2, new double[] {0.70711}, 3, new double[] {1.0},
            4, new double[] {0.54120, 1.30656}, 5, new double[] {0.61803, 1.61803}, 6, new double[] {0.51764, 0.70711, 1.93185},
            7, new double[] {0.55496, 0.80194, 2.24698}, 8, new double[] {0.50980, 0.60134, 0.89998, 2.56292});

    /**
     * A box of one or several drivers alike, in what is measured of them.
     *
     * @param count    drivers, wired so that together they have the DC resistance {@code ohms}
     * @param kilograms moving mass of one
     * @param metresPerNewton compliance of one
     * @param losses   mechanical losses of one, kg/s
     * @param force    force factor of one, N/A
     * @param coilOhms DC resistance of one
     * @param square   cone area of one, m2
     * @param cubic    volume of air, m3
     * @param ports    number of ports; 0 for a closed box
     * @param portDiameter diameter of each, m
     * @param portLength length of each, m
     * @param leakage  QL
     * @param series   resistance of the leads, ohm
     */
    record Box(String name, int count, double kilograms, double metresPerNewton, double losses, double force, double coilOhms,
               double square, double cubic, int ports, double portDiameter, double portLength, double leakage, double series) {
    }

    static final List<Box> BOXES = List.of(
            new Box("one-in-a-vented-box", 1, 0.105, 0.00027, 3.9, 12.1, 3.3, 0.033, 0.045, 1, 0.075, 0.19, 7, 0),
            new Box("two-with-two-ports-and-long-leads", 2, 0.098, 0.00031, 4.4, 11.4, 3.4, 0.035, 0.09, 2, 0.08, 0.25, 10, 0.2),
            new Box("a-leaking-one", 1, 0.080, 0.00055, 3.25, 11.6, 5.46, 0.0519, 0.12, 1, 0.10, 0.12, 4, 0.05),
            new Box("four-in-a-long-box", 4, 0.062, 0.00040, 2.9, 8.2, 3.1, 0.022, 0.07, 1, 0.15, 0.45, 15, 0.1),
            new Box("one-in-a-closed-box", 1, 0.105, 0.00027, 3.9, 12.1, 3.3, 0.033, 0.025, 0, 0, 0, 0, 0.1));

    private AcousticDecks() {
    }

    static List<SpiceDeck> all() {
        List<SpiceDeck> decks = new ArrayList<>();
        LOW_LADDERS.forEach((name, values) -> decks.add(ladder("ladder low " + name, values, true)));
        HIGH_LADDERS.forEach((name, values) -> decks.add(ladder("ladder high " + name, values, false)));
        for (Shape shape : Shape.values()) {
            for (int order = 1; order <= Filter.MOST_ORDER; order++) {
                if (Filter.exists(shape, order)) {
                    decks.add(sections(shape, order, true));
                    decks.add(sections(shape, order, false));
                }
            }
        }
        BOXES.forEach(box -> decks.add(driven(box, false)));
        BOXES.forEach(box -> decks.add(driven(box, true)));
        return decks;
    }

    /** The filter a deck's title names. */
    static Filter filter(String title) {
        String[] words = title.split(" ");
        int cut = words[2].lastIndexOf('-');
        return new Filter(words[2].startsWith("b") ? Shape.BUTTERWORTH : Shape.LINKWITZ_RILEY, Integer.parseInt(words[2].substring(cut + 1)),
                words[1].equals("low") ? Pass.LOW : Pass.HIGH, CORNER);
    }

    static int points(boolean box) {
        return (box ? BOX_OCTAVES : FILTER_OCTAVES) * PER_OCTAVE + 1;
    }

    private static List<String> at(String quantity, boolean box) {
        List<String> quantities = new ArrayList<>();
        for (int i = 0; i < points(box); i++) {
            quantities.add("mag(" + quantity + "[" + i + "])");
        }
        return quantities;
    }

    private static SpiceDeck ladder(String title, double[] values, boolean low) {
        StringBuilder text = new StringBuilder("* " + title + "\nv1 n0 0 dc 0 ac 1\n");
        int node = 0;
        for (int i = 0; i < values.length; i++) {
            boolean series = i % 2 == 0;
            boolean coil = series == low;
            double value = coil ? values[i] * OHMS / CORNER : values[i] / (OHMS * CORNER);
            text.append(coil ? "l" : "c").append(i).append(series ? " n" + node + " n" + ++node : " n" + node + " 0").append(' ').append(value).append('\n');
        }
        text.append("r1 n").append(node).append(" 0 ").append(OHMS).append('\n');
        text.append(".ac oct ").append(PER_OCTAVE).append(' ').append(FILTER_FROM).append(' ').append(FILTER_FROM * (1 << FILTER_OCTAVES)).append("\n.end\n");
        return new SpiceDeck(title, text.toString(), at("v(n" + node + ")", false));
    }

    private static SpiceDeck sections(Shape shape, int order, boolean low) {
        String title = "sections " + (low ? "low " : "high ") + (shape == Shape.BUTTERWORTH ? "butterworth-" : "linkwitz-riley-") + order;
        StringBuilder text = new StringBuilder("* " + title + "\nv1 s0 0 dc 0 ac 1\n");
        int half = shape == Shape.BUTTERWORTH ? order : order / 2;
        int stage = 0;
        for (int i = 0; i < order / half; i++) {
            stage = sections(text, half, low, CORNER, stage);
        }
        text.append(".ac oct ").append(PER_OCTAVE).append(' ').append(FILTER_FROM).append(' ').append(FILTER_FROM * (1 << FILTER_OCTAVES)).append("\n.end\n");
        return new SpiceDeck(title, text.toString(), at("v(s" + stage + ")", false));
    }

    /** A Butterworth filter as a chain of passive sections with a buffer after each; returns the number of its last node. */
    private static int sections(StringBuilder text, int order, boolean low, double hertz, int from) {
        int stage = from;
        double omega = 2 * Math.PI * hertz;
        if (order % 2 == 1) {
            text.append(low ? "rx" : "cx").append(stage).append(" s" + stage + " a" + stage + " ").append(low ? OHMS : 1 / (OHMS * omega)).append('\n');
            text.append(low ? "cx" : "rx").append(stage).append(" a" + stage + " 0 ").append(low ? 1 / (OHMS * omega) : OHMS).append('\n');
            text.append("ex" + stage + " s" + (stage + 1) + " 0 a" + stage + " 0 1\n");
            stage++;
        }
        for (double q : SECTIONS.get(order)) {
            double henries = OHMS / (omega * q);
            double farads = q / (omega * OHMS);
            text.append(low ? "lx" + stage + " s" + stage + " a" + stage + " " + henries : "cx" + stage + " s" + stage + " a" + stage + " " + farads).append('\n');
            text.append(low ? "cx" + stage + " a" + stage + " 0 " + farads : "lx" + stage + " a" + stage + " 0 " + henries).append('\n');
            text.append("rx" + stage + " a" + stage + " 0 " + OHMS + "\nex" + stage + " s" + (stage + 1) + " 0 a" + stage + " 0 1\n");
            stage++;
        }
        return stage;
    }

    /**
     * A driven box: electrical, mechanical and acoustic loop, volts for force and pressure. Drivers alike move as one of their summed
     * area; each coil gets its part of the amplifier, so mass, losses and stiffness add up and the coils stand in parallel.
     */
    private static SpiceDeck driven(Box box, boolean filtered) {
        String title = "box " + box.name + (filtered ? " behind-a-high-pass" : "");
        double compliance = box.cubic / (1.2 * 344 * 344);
        StringBuilder text = new StringBuilder("* " + title + "\nv1 s0 0 dc 0 ac " + (filtered ? VOLTS : 1) + "\n");
        int stage = filtered ? sections(text, 4, false, HIGH_PASS_HERTZ, 0) : 0;
        text.append("eamp amp 0 s" + stage + " 0 1\nvin amp e0 dc 0\nrs e0 e1 " + Math.max(box.series, 1e-9) + "\nre e1 e2 " + box.coilOhms / box.count + "\n");
        text.append("hemf e2 0 vcone " + box.force + "\n");
        text.append("hforce m0 0 vin " + box.force + "\nvcone m0 m1 dc 0\nlmass m1 m2 " + box.kilograms * box.count + "\nccms m2 m3 " + box.metresPerNewton / box.count
                + "\nrcms m2 m3 1e12\nrms m3 m4 " + box.losses * box.count + "\n");
        text.append("ebox m4 0 p 0 " + box.square * box.count + "\nfvol 0 p vcone " + box.square * box.count + "\nvair p p1 dc 0\ncair p1 0 " + compliance + "\nrair p1 0 1e15\n");
        List<String> quantities = new ArrayList<>(at("i(vair)", true));
        quantities.addAll(at("i(vcone)", true));
        quantities.addAll(at("i(vin)", true));
        if (box.ports > 0) {
            double square = Math.PI * box.portDiameter * box.portDiameter / 4;
            double mass = 1.2 * (box.portLength + (8 / (3 * Math.PI) + 0.6133) * box.portDiameter / 2) / (square * box.ports);
            double leak = box.leakage * Math.sqrt(mass / compliance);
            text.append("rleak p 0 " + leak + "\nvport p p2 dc 0\nlport p2 0 " + mass + "\n");
            quantities.addAll(at("i(vport)", true));
        }
        text.append(".ac oct ").append(PER_OCTAVE).append(' ').append(BOX_FROM).append(' ').append(BOX_FROM * (1 << BOX_OCTAVES)).append("\n.end\n");
        return new SpiceDeck(title, text.toString(), quantities);
    }
}
