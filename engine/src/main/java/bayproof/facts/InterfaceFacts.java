package bayproof.facts;

import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Program;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.InterfaceLeads;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.LoadedInterface;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about each interface: what is loaded into it, and whether each of its leads is joined to the pin it is made for. */
final class InterfaceFacts {
    private final Model model;

    InterfaceFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        for (Item.Interface module : model.job.itemsOf(Item.Interface.class)) {
            facts.accept(loaded(module));
            facts.accept(leads(module));
        }
    }

    private LoadedInterface loaded(Item.Interface module) {
        Program program = module.program();
        return new LoadedInterface(module.path(), module.at(), module.programmed(), program.date(),
                program.loadedFor().with(model.job.vehicle().variant(), String::equals), program.loadedFor(),
                program.firmwareFound().with(program.firmwareWanted(), String::equals),
                program.firmwareFound().with(program.firmwareWanted(), (found, wanted) -> "found " + found + ", wanted " + wanted), program.login());
    }

    private InterfaceLeads leads(Item.Interface module) {
        TreeSet<String> wrong = new TreeSet<>();
        Shown<Boolean> joined = module.leads().isEmpty()
                ? Shown.missing(new Need(module.path() + ".leads", "the leads of " + module.id() + ", each with the function it is made for", module.at()))
                : Shown.of(true);
        for (Map.Entry<String, Shown<String>> lead : module.leads().entrySet()) {
            Shown<Boolean> right = joined(module, lead.getKey(), lead.getValue());
            if (Kleene.is(right, false)) {
                wrong.add(lead.getKey());
            }
            joined = Kleene.and(joined, right);
        }
        TreeSet<String> known = new TreeSet<>(module.unused().orElse(List.of()));
        model.job.plan().pins().values().stream().map(pin -> pin.connectedTo().orElse("")).filter(terminal -> terminal.startsWith(module.id() + "."))
                .forEach(terminal -> known.add(terminal.substring(module.id().length() + 1)));
        known.removeAll(module.leads().keySet());
        if (!known.isEmpty()) {
            joined = Kleene.and(joined, Shown.missing(new Need(module.path() + ".leads." + known.first(), "the function that its lead "
                    + known.first() + " is made for", module.at())));
        }
        return new InterfaceLeads(module.path(), module.at(), joined, Shown.of(String.join(", ", wrong)));
    }

    /** A pin of another function is wrong; no pin at all is open, unless the lead is known to stay unused. */
    private Shown<Boolean> joined(Item.Interface module, String lead, Shown<String> function) {
        List<Plan.PinUse> pins = model.job.plan().pins().values().stream()
                .filter(pin -> pin.connectedTo().orElse("").equals(module.id() + "." + lead)).toList();
        boolean unused = module.unused().orElse(List.of()).contains(lead);
        if (pins.isEmpty()) {
            // Which leads stay unused is one answer; only then is a pin asked for each of the others.
            return unused ? Shown.of(true) : module.unused().then(free -> Shown.missing(new Need("pins", "the pin that " + module.id() + "." + lead
                    + " is joined to", module.at())));
        }
        Shown<Boolean> right = Shown.of(!unused);
        for (Plan.PinUse pin : pins) {
            right = Kleene.and(right, pin.function().with(function, String::equals));
        }
        return right;
    }
}
