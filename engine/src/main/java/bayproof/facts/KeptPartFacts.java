package bayproof.facts;

import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.TakenPart;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Facts about the factory parts that the job takes off: that each is listed, and where it lies. */
final class KeptPartFacts {
    private final Model model;
    private final Shown<Map<String, Plan.KeptPart>> kept;

    KeptPartFacts(Model model) {
        this.model = model;
        this.kept = model.job.plan().keptParts();
    }

    void collect(Consumer<Fact> facts) {
        Map<String, At> taken = new LinkedHashMap<>();
        List<String> kinds = model.limit("work-that-takes-off").words();
        Shown<Boolean> yes = Shown.of(true);
        Shown<String> nothing = Shown.of("");
        for (Plan.Step step : model.job.plan().steps().values()) {
            step.removes().orElse(List.of()).forEach(part -> taken.putIfAbsent(part, step.removes().atOr(step.at())));
            boolean mayTake = !Kleene.is(step.does().map(kinds::contains), false);
            if (mayTake && !step.removes().isGiven()) {
                facts.accept(new TakenPart(step.path(), step.at(), step.removes().map(x -> true), yes, nothing, yes));
            }
        }
        for (Item.Speaker speaker : model.job.itemsOf(Item.Speaker.class)) {
            // A speaker in the place of a factory speaker: that one must come off in some step.
            String old = speaker.replaces().orElse("none");
            if (!speaker.replaces().isGiven() || !old.equals("none") && !taken.containsKey(old)) {
                facts.accept(new TakenPart(speaker.path(), speaker.at(), speaker.replaces().then(part -> unstepped(part, speaker.at())), yes, nothing, yes));
            }
        }
        taken.forEach((part, at) -> facts.accept(part(part, at, yes)));
        kept.orElse(Map.of()).values().stream().filter(part -> !taken.containsKey(part.id()))
                .forEach(part -> facts.accept(part(part.id(), part.at(), unstepped(part.id(), part.at()))));
        if (!kept.isGiven() && taken.isEmpty()) {
            facts.accept(new TakenPart("kept-parts", model.job.planAt(), kept.map(x -> true), yes, nothing, yes));
        }
    }

    private TakenPart part(String id, At at, Shown<Boolean> taken) {
        Plan.KeptPart part = kept.orElse(Map.of()).get(id);
        if (part == null) {
            return new TakenPart("kept-parts." + id, at, taken, kept.map(parts -> false), Shown.of(""), Shown.of(true));
        }
        Shown<Boolean> stays = Kleene.or(part.with().map(holder -> !holder.equals("scrapped")),
                part.with().with(model.job.plan().ownedBy().returns(), (holder, returns) -> !returns));
        return new TakenPart(part.path(), part.at(), taken, Shown.of(true), part.lies(), stays);
    }

    private static Shown<Boolean> unstepped(String part, At at) {
        return Shown.missing(new Need("steps", "the step that takes off " + part + ", with it in its removes", at));
    }
}
