package bayproof.facts;

import bayproof.graph.Link;
import bayproof.read.Run;
import bayproof.vocabulary.Shown;
import java.util.List;

/**
 * What the copper on the way to a terminal loses at the least: no joint, no fuse, the coldest wire a meter is held to, and
 * only as far as the way has no branch, for behind one another current flows.
 */
final class CopperFloor {
    private final Model model;
    private final double celsius;

    CopperFloor(Model model) {
        this.model = model;
        this.celsius = model.limit("coil-temperature").low();
    }

    /** Resistance in ohms; 0 where nothing is known. */
    double ohms(String terminal) {
        double ohms = 0;
        Link came = null;
        String node = terminal;
        // A way is no longer than the job has links; a ring ends there.
        for (int steps = model.job.runs().size() * 2; steps > 0; steps--) {
            Link last = came;
            List<Link> onward = model.wiring.at(node).stream().filter(link -> link != last).toList();
            if (onward.size() != 1 || onward.get(0).kind() == Link.Kind.BODY) {
                return ohms;
            }
            came = onward.get(0);
            ohms += came.kind() == Link.Kind.RUN ? ohms(came.run()) : 0;
            node = came.other(node);
        }
        return ohms;
    }

    private double ohms(Run run) {
        Shown<Double> perMetre = run.size().with(run.metal(), (size, metal) -> model.conductors().ohmsPerMetre(size, metal, celsius));
        return perMetre.with(model.lengthMetres(run), (one, metres) -> one * metres).orElse(0.0);
    }
}
