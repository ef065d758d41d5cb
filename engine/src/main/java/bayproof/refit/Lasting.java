package bayproof.refit;

import bayproof.graph.WorkOrder;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Mount;
import bayproof.read.Ownership;
import bayproof.read.Plan;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Kleene;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What cannot be undone in the new vehicle, whose word it needs, and where to stop at the latest.
 *
 * @param works what leaves a trace, one a line
 * @param owner who has to agree; null where nobody wrote whose vehicle it is
 * @param word  who agreed, and when; null where nobody did
 * @param stop  the last step before which both vehicles can still be driven away as they came; null where no step is written
 */
public record Lasting(List<String> works, String owner, String word, String stop) {
    public Lasting {
        works = List.copyOf(works);
    }

    static Lasting of(Job job) {
        List<String> works = new ArrayList<>();
        Set<String> used = new LinkedHashSet<>();
        job.plan().runs().values().forEach(run -> used.addAll(run.through().orElse(List.of())));
        for (String id : used) {
            Vehicle.PassThrough hole = job.passThroughs().get(id);
            if (hole != null && hole.origin().orElse("").equals("drilled")) {
                works.add("hole " + id + ": drilled in " + hole.panel().orElse("a panel that nobody named"));
            }
        }
        List<String> drilling = job.limits().named("fasteners-that-drill").words();
        for (Item item : job.items().values()) {
            Mount mount = item.path().startsWith("supply.") ? null : item.mount();
            if (mount != null && drilling.contains(mount.fastener().orElse(""))) {
                works.add("mount " + item.id() + ": " + mount.fasteners().map(String::valueOf).orElse("some") + " x " + mount.fastener().orElse(""));
            }
        }
        for (Plan.PinUse pin : job.plan().pins().values()) {
            if (pin.method().orElse("").equals("cut-and-join")) {
                works.add("pin " + pin.id() + ": factory wire cut");
            }
        }
        Ownership owner = job.plan().ownedBy();
        return new Lasting(works, owner.kind().map(kind -> kind.replace('-', ' ')).orElse(null),
                owner.agreed().word().map(word -> word.who() + ", " + word.when()).orElse(null), stop(job));
    }

    /** The first step, in the order of the work, that does something that cannot be undone. */
    private static String stop(Job job) {
        List<String> lasting = job.limits().named("refit-lasting-work").words();
        WorkOrder order = new WorkOrder(job.plan().steps());
        List<Plan.Step> steps = job.plan().steps().values().stream().filter(step -> lasting.contains(step.does().orElse(""))).toList();
        return steps.stream().filter(step -> steps.stream().noneMatch(other -> other != step && Kleene.is(order.before(other, step), true)))
                .map(Plan.Step::id).findFirst().orElse(null);
    }
}
