package bayproof.facts;

import bayproof.facts.Boxes.Driven;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.solve.acoustic.ClosedBox;
import bayproof.solve.acoustic.Enclosure;
import bayproof.solve.acoustic.VentedBox;
import java.util.ArrayList;
import java.util.List;

/** How each enclosure of a job answers to a little more or less air than planned. */
public final class BoxNeighbors {
    /** A tenth less, as planned, a tenth more. */
    private static final List<Double> SHARES = List.of(0.9, 1.0, 1.1);

    private BoxNeighbors() {
    }

    /**
     * One volume of an enclosure.
     *
     * @param box          the enclosure
     * @param share        the volume as a share of the one planned
     * @param cubicMetres  the volume, filling counted
     * @param cornerHertz  where its response has fallen 3 dB
     * @param peakDecibels height of its peak; 0 where it has none
     * @param totalQ       Qtc of a closed one; null for a vented one
     * @param tuningHertz  tuning of a vented one; null for a closed one
     */
    public record Neighbor(String box, double share, double cubicMetres, double cornerHertz, double peakDecibels, Double totalQ, Double tuningHertz) {
    }

    /** Every enclosure whose circuit is known, at each volume; one that lacks a figure is not there. */
    public static List<Neighbor> of(Job job) {
        Model model = new Model(job);
        Boxes boxes = Boxes.of(model, new Amplifiers(model));
        List<Neighbor> all = new ArrayList<>();
        for (Item.Enclosure box : job.itemsOf(Item.Enclosure.class)) {
            Driven driven = boxes.driven(box, new Gathered());
            if (driven != null) {
                around(driven.enclosure()).forEach(one -> all.add(neighbor(box.id(), one, driven.enclosure().netCubicMetres())));
            }
        }
        return all;
    }

    /** The same enclosure with less air, as planned, and with more. */
    static List<Enclosure> around(Enclosure planned) {
        return SHARES.stream().map(share -> planned.withVolume(planned.netCubicMetres() * share)).toList();
    }

    private static Neighbor neighbor(String id, Enclosure box, double plannedCubicMetres) {
        return new Neighbor(id, box.netCubicMetres() / plannedCubicMetres, box.netCubicMetres(), box.cornerHertz(), box.peakDecibels(),
                box instanceof ClosedBox closed ? closed.totalQ() : null, box instanceof VentedBox vented ? vented.tuningHertz() : null);
    }
}
