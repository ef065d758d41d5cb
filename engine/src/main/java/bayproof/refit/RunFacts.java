package bayproof.refit;

import bayproof.graph.BodyGraph;
import bayproof.read.Choices;
import bayproof.read.Job;
import bayproof.read.Run;
import bayproof.units.Dimension;
import bayproof.units.Units;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.List;

/** What becomes of a cable on its way in the new vehicle. */
final class RunFacts {
    private final Job old;
    private final Job into;
    private final RunWays ways;
    private final Choices.Decided choices;
    private final BodyGraph oldBody;
    private final BodyGraph newBody;

    RunFacts(Job old, Job into, RunWays ways, Choices.Decided choices, BodyGraph oldBody, BodyGraph newBody) {
        this.old = old;
        this.into = into;
        this.ways = ways;
        this.choices = choices;
        this.oldBody = oldBody;
        this.newBody = newBody;
    }

    void of(String id, List<Reason> reasons) {
        RunWays.Laid laid = ways.of(id);
        if (laid.open() != null) {
            reasons.add(Facts.unsettled(laid.open(), old.items().containsKey(laid.open().old()) ? "sources" : "places"));
            return;
        }
        if (laid.inOnePlace()) {
            return;
        }
        Run run = into.plan().runs().get(id);
        Run before = old.plan().runs().get(id);
        if (laid.way() == null && !run.lengthMetres().isGiven()) {
            reasons.add(new Reason(Fate.OPEN, "routes", "no route of the new sheet leads from its one end to the other", null, null,
                    new Need("runs." + id + ".length", "length of its way, by a string from " + run.from().orElse("its start") + " to " + run.to().orElse("its end"), Trees.NEW), false));
            return;
        }
        Shown<Double> way = newBody.lengthMetres(run);
        way.needs().forEach(need -> reasons.add(Reason.missing("routes", need)));
        if (way.isGiven()) {
            reach(id, way.orElse(0.0), cable(id, before), before, reasons);
        }
    }

    /** How long the cable is: measured as it comes out, else as long as its old way. */
    private Shown<Double> cable(String id, Run before) {
        return choices.cables().containsKey(id) && choices.cables().get(id).isGiven() ? choices.cables().get(id) : oldBody.lengthMetres(before);
    }

    private void reach(String id, double way, Shown<Double> cable, Run before, List<Reason> reasons) {
        if (!cable.isGiven()) {
            reasons.add(new Reason(Fate.OPEN, "cable", "whether it reaches: its way is " + metres(way) + ", and nobody wrote how long it is", null, null,
                    new Need("choices.cables." + id, "length of the cable as it comes out; its new way is " + metres(way), Trees.NEW), false));
            return;
        }
        double left = cable.orElse(0.0) - way;
        double same = old.limits().named("refit-length-same").value();
        if (left < -same) {
            reasons.add(Reason.fact(Fate.NOT, "routes", "its way is " + metres(way) + " and the cable " + metres(cable.orElse(0.0)) + ": " + metres(-left) + " too short",
                    "a new cable" + before.size().map(size -> " of " + size).orElse("") + " for a way of " + metres(way)));
        } else if (left > old.limits().named("refit-length-left").value()) {
            reasons.add(Reason.fact(Fate.CHANGED, "routes", "shorten by " + metres(left) + ": its way is " + metres(way) + " and the cable " + metres(cable.orElse(0.0)), null));
        }
    }

    private static String metres(double metres) {
        return Units.print(metres, Dimension.LENGTH);
    }
}
