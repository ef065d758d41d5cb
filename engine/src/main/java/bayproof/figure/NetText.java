package bayproof.figure;

import bayproof.read.CoilNet;
import bayproof.solve.sound.SpeakerNet;
import bayproof.units.Dimension;
import bayproof.units.UnitException;
import bayproof.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A net of voice coils written by the values of its coils, in the form that plans write by their names. */
final class NetText {
    private static final Pattern COIL = Pattern.compile("[^+|()]+");
    private static final String BEHIND = " behind ";
    private static final int MOST_CHARACTERS = 500;

    private NetText() {
    }

    /**
     * Reads a net; its coils are named coil-1, coil-2 and so on.
     *
     * @throws IllegalArgumentException when it is no net, saying what is wrong as a clause
     * @throws UnitException            when a coil is no resistance, or a capacitor no capacitance
     */
    static SpeakerNet parse(String text) throws UnitException {
        if (text.length() > MOST_CHARACTERS) {
            throw new IllegalArgumentException("it is longer than " + MOST_CHARACTERS + " characters");
        }
        List<String> coils = new ArrayList<>();
        Matcher found = COIL.matcher(text);
        String named = found.replaceAll(coil -> {
            if (coil.group().isBlank()) {
                return " ";
            }
            coils.add(coil.group().strip());
            return "coil-" + coils.size();
        });
        List<SpeakerNet> values = new ArrayList<>();
        for (String coil : coils) {
            values.add(coil("coil-" + (values.size() + 1), coil));
        }
        return build(CoilNet.parse(named.strip()), values);
    }

    private static SpeakerNet coil(String id, String text) throws UnitException {
        int behind = text.indexOf(BEHIND);
        double ohms = Units.parse(behind < 0 ? text : text.substring(0, behind), Dimension.RESISTANCE).si();
        if (!(ohms > 0)) {
            throw new IllegalArgumentException("a coil of \"" + text + "\" cannot be");
        }
        return behind < 0 ? new SpeakerNet.Coil(id, ohms)
                : new SpeakerNet.Coil(id, ohms, Units.parse(text.substring(behind + BEHIND.length()), Dimension.CAPACITANCE).si());
    }

    private static SpeakerNet build(CoilNet net, List<SpeakerNet> values) {
        if (net instanceof CoilNet.Coil coil) {
            return values.get(Integer.parseInt(coil.terminal().substring("coil-".length())) - 1);
        }
        return net instanceof CoilNet.Series series ? new SpeakerNet.Series(series.members().stream().map(one -> build(one, values)).toList())
                : new SpeakerNet.Parallel(((CoilNet.Parallel) net).members().stream().map(one -> build(one, values)).toList());
    }
}
