package bayproof.facts;

import bayproof.demand.Limit;
import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.solve.sound.SpeakerNet;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Nets of voice coils with the values of their coils put in. */
final class SpeakerNets {
    private static final String COIL_RESISTANCE = "coil-resistance";

    private final Model model;

    SpeakerNets(Model model) {
        this.model = model;
    }

    /** The net with nominal impedances, a capacitor before the coils of a speaker that has one. */
    Shown<SpeakerNet> nominal(CoilNet net) {
        return build(net, coil -> nominalOhms(coil).map(ohms -> new SpeakerNet.Coil(coil, ohms, farads(coil))));
    }

    private double farads(String coil) {
        return model.job.itemOf(coil) instanceof Item.Speaker speaker ? speaker.data().capacitorFarads().orElse(Double.POSITIVE_INFINITY)
                : Double.POSITIVE_INFINITY;
    }

    /** Nominal impedance of a coil, or nominal load of a complete passive network. */
    Shown<Double> nominalOhms(String coil) {
        Item item = model.job.itemOf(coil);
        String name = coil.substring(coil.indexOf('.') + 1);
        if (item instanceof Item.PassiveNetwork network && name.equals("input")) {
            return network.loadOhms();
        }
        if (item instanceof Item.LoadResistor resistor) {
            return resistor.ohms();
        }
        return item instanceof Item.Speaker speaker && speaker.coils().containsKey(name) ? speaker.coils().get(name)
                : Shown.missing(new Need("items", "the speaker of " + coil, model.job.planAt()));
    }

    /** The net with DC resistances at 20 °C at one end of what they can be; where nobody gave one, a share of the nominal impedance. */
    Shown<SpeakerNet> direct(CoilNet net, boolean least) {
        Limit window = model.limit(COIL_RESISTANCE);
        return build(net, coil -> {
            Shown<Double> ohms = given(coil) == null ? nominalOhms(coil).map(nominal -> nominal * (least ? window.low() : window.high()))
                    : given(coil);
            return ohms.map(one -> new SpeakerNet.Coil(coil, one, farads(coil)));
        });
    }

    /** The windows that stand for DC resistances nobody gave. */
    List<Window> windows(CoilNet net) {
        Limit window = model.limit(COIL_RESISTANCE);
        return net.coils().stream().filter(coil -> given(coil) == null)
                .map(coil -> new Window(path(coil), COIL_RESISTANCE, window.low(), window.high(), 0)).toList();
    }

    private String path(String coil) {
        Item item = model.job.itemOf(coil);
        return (item == null ? "items" : item.path()) + ".dc-resistance." + coil.substring(coil.indexOf('.') + 1);
    }

    /** The DC resistance that somebody gave, or null. */
    private Shown<Double> given(String coil) {
        Item item = model.job.itemOf(coil);
        if (item instanceof Item.LoadResistor resistor) {
            return resistor.ohms();
        }
        Shown<Double> ohms = item instanceof Item.Speaker speaker ? speaker.data().directOhms().get(coil.substring(coil.indexOf('.') + 1)) : null;
        return ohms != null && ohms.isGiven() ? ohms : null;
    }

    private static Shown<SpeakerNet> build(CoilNet net, Function<String, Shown<SpeakerNet.Coil>> values) {
        if (net instanceof CoilNet.Coil coil) {
            return values.apply(coil.terminal()).map(one -> one);
        }
        boolean series = net instanceof CoilNet.Series;
        Shown<List<SpeakerNet>> members = Shown.of(List.of());
        for (CoilNet member : net instanceof CoilNet.Series each ? each.members() : ((CoilNet.Parallel) net).members()) {
            members = members.with(build(member, values), (before, one) -> {
                List<SpeakerNet> more = new ArrayList<>(before);
                more.add(one);
                return more;
            });
        }
        return members.map(all -> series ? new SpeakerNet.Series(all) : new SpeakerNet.Parallel(all));
    }
}
