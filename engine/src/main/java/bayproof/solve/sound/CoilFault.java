package bayproof.solve.sound;

import bayproof.solve.sound.SpeakerNet.Coil;
import bayproof.solve.sound.SpeakerNet.Parallel;
import bayproof.solve.sound.SpeakerNet.Series;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * One thing that can be wrong with a net of voice coils, and the net as it then is.
 *
 * @param kind what is wrong
 * @param what the coil or speaker it is wrong with; empty where it is the net itself
 * @param net  the net with the fault in it
 */
public record CoilFault(Kind kind, String what, SpeakerNet net) {

    /** What can be wrong. */
    public enum Kind { COIL_OPEN, COIL_SHORTED, SPEAKER_MISSING, SERIES_WIRED_PARALLEL, PARALLEL_WIRED_SERIES }

    /** What is wrong, in a few words. */
    public String words() {
        return what + switch (kind) {
            case COIL_OPEN -> " open";
            case COIL_SHORTED -> " shorted";
            case SPEAKER_MISSING -> " missing";
            case SERIES_WIRED_PARALLEL -> " in parallel";
            case PARALLEL_WIRED_SERIES -> " in series";
        };
    }

    /**
     * Every single fault of a net: each coil open, each shorted, each speaker of several coils left off, each group of coils in
     * series wired in parallel, each group in parallel wired in series. A speaker is what stands before the dot of a coil's name.
     */
    public static List<CoilFault> all(SpeakerNet net) {
        List<String> coils = new ArrayList<>();
        names(net, coils);
        List<CoilFault> faults = new ArrayList<>();
        for (String coil : coils) {
            faults.add(new CoilFault(Kind.COIL_OPEN, coil, with(net, one -> one.id().equals(coil) ? infinite(one) : one)));
        }
        for (String coil : coils) {
            faults.add(new CoilFault(Kind.COIL_SHORTED, coil, with(net, one -> one.id().equals(coil) ? new Coil(one.id(), 0, one.farads()) : one)));
        }
        Set<String> speakers = new LinkedHashSet<>();
        coils.forEach(coil -> speakers.add(speaker(coil)));
        for (String speaker : speakers) {
            if (coils.stream().filter(coil -> speaker(coil).equals(speaker)).count() > 1) {
                faults.add(new CoilFault(Kind.SPEAKER_MISSING, speaker, with(net, one -> speaker(one.id()).equals(speaker) ? infinite(one) : one)));
            }
        }
        swaps(net, UnaryOperator.identity(), faults);
        return faults;
    }

    private static void names(SpeakerNet net, List<String> names) {
        if (net instanceof Coil coil) {
            names.add(coil.id());
        } else {
            members(net).forEach(member -> names(member, names));
        }
    }

    private static String speaker(String coil) {
        int dot = coil.indexOf('.');
        return dot < 0 ? coil : coil.substring(0, dot);
    }

    private static Coil infinite(Coil coil) {
        return new Coil(coil.id(), Double.POSITIVE_INFINITY, coil.farads());
    }

    private static List<SpeakerNet> members(SpeakerNet net) {
        return net instanceof Series series ? series.members() : ((Parallel) net).members();
    }

    private static SpeakerNet with(SpeakerNet net, UnaryOperator<Coil> change) {
        if (net instanceof Coil coil) {
            return change.apply(coil);
        }
        List<SpeakerNet> changed = members(net).stream().map(member -> with(member, change)).toList();
        return net instanceof Series ? new Series(changed) : new Parallel(changed);
    }

    /** Adds the net with each of its groups joined the other way; {@code around} puts a changed group back in its place. */
    private static void swaps(SpeakerNet net, UnaryOperator<SpeakerNet> around, List<CoilFault> faults) {
        if (net instanceof Coil) {
            return;
        }
        List<SpeakerNet> members = members(net);
        boolean series = net instanceof Series;
        List<String> inside = new ArrayList<>();
        names(net, inside);
        faults.add(new CoilFault(series ? Kind.SERIES_WIRED_PARALLEL : Kind.PARALLEL_WIRED_SERIES, String.join(", ", inside),
                around.apply(series ? new Parallel(members) : new Series(members))));
        for (int i = 0; i < members.size(); i++) {
            int at = i;
            swaps(members.get(i), changed -> {
                List<SpeakerNet> others = new ArrayList<>(members);
                others.set(at, changed);
                return around.apply(series ? new Series(others) : new Parallel(others));
            }, faults);
        }
    }
}
