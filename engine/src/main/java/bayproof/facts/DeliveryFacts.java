package bayproof.facts;

import bayproof.read.Delivered;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Run;
import bayproof.read.Visit;
import bayproof.read.Vouched;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.DeliveredPaper;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.MadeVisit;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.ToldCustomer;
import bayproof.vocabulary.UnfinishedRun;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;

/** Facts about what goes back with the vehicle, and about its visits. */
final class DeliveryFacts {
    private static final String VISITS = "visits";

    private final Model model;
    private final Plan plan;
    private final Delivered delivered;
    private final At nowhere;

    DeliveryFacts(Model model) {
        this.model = model;
        this.plan = model.job.plan();
        this.delivered = plan.delivered();
        this.nowhere = model.job.planAt();
    }

    void collect(Consumer<Fact> facts) {
        Shown<Boolean> yes = Shown.of(true);
        paper("drawing", "drawing as built", yes, false, delivered.drawing(), facts);
        paper("settings", "settings, saved and printed", Shown.of(!model.job.itemsOf(Item.Processor.class).isEmpty()), false, delivered.settings(), facts);
        paper("photos", "photos of the finished work", yes, true, delivered.photos(), facts);
        paper("copies", "a copy each for customer and shop", yes, true, delivered.copies(), facts);
        paper("disposal", "disposal of old batteries and electronics", plan.keptParts().map(parts -> parts.values().stream()
                .anyMatch(part -> part.with().orElse("scrapped").equals("scrapped"))), true, delivered.disposal(), facts);
        paper("signed", "the customer's signature at handover", yes, false, delivered.signed(), facts);
        Shown<List<String>> untold = delivered.told().map(told -> model.limit("customer-told").words().stream().filter(one -> !told.contains(one)).toList());
        facts.accept(new ToldCustomer(delivered.path() + ".told", delivered.at(), untold.map(List::isEmpty), untold.map(left -> String.join(", ", left)),
                delivered.warranty(), delivered.warrantyPaper()));
        visits(facts);
    }

    private void paper(String key, String noun, Shown<Boolean> needed, boolean light, Vouched vouched, Consumer<Fact> facts) {
        String path = delivered.path() + "." + key;
        Shown<LocalDate> came = Days.day(plan.checkIn().when(), plan.checkIn().path() + ".when", plan.checkIn().at());
        Shown<Boolean> timely = Days.day(vouched.when(), path + ".when", delivered.at()).with(came, (made, in) -> !made.isBefore(in));
        facts.accept(new DeliveredPaper(path, delivered.at(), noun, needed, light, vouched.word(), timely));
    }

    // visits

    private void visits(Consumer<Fact> facts) {
        for (Visit visit : plan.visits().values()) {
            Shown<Boolean> comeback = visit.reason().map("comeback"::equals);
            facts.accept(new MadeVisit(visit.path(), visit.at(), visit.date(), visit.reason(), asked(comeback, visit.words(), ""),
                    asked(comeback, visit.cause(), ""), asked(comeback, visit.seconds(), 0.0), asked(comeback, visit.rule(), "")));
        }
        if (plan.visits().isEmpty()) {
            Shown<String> none = Shown.missing(new Need(VISITS, "the visit: its date, its reason and what is left unfinished", nowhere));
            facts.accept(new MadeVisit(VISITS, nowhere, none, none, none, none, none.map(any -> 0.0), none));
        }
        unfinished(facts);
    }

    /** What only a comeback owes. */
    private static <T> Shown<T> asked(Shown<Boolean> comeback, Shown<T> value, T otherwise) {
        return comeback.then(yes -> yes ? value : Shown.of(otherwise));
    }

    private void unfinished(Consumer<Fact> facts) {
        Visit last = plan.lastVisit();
        Shown<List<String>> runs = last == null ? Shown.missing(new Need(VISITS, "the visit: its date, its reason and what is left unfinished", nowhere))
                : last.unfinished();
        for (String id : runs.orElse(List.of())) {
            Run run = plan.runs().get(id);
            if (run != null) {
                Run.Left left = run.left();
                facts.accept(new UnfinishedRun(run.path(), run.at(), Shown.of(true), left.fuse().map("out"::equals), left.end().map("capped"::equals),
                        left.tag().map("tagged"::equals), left.word()));
            }
        }
        if (runs.orElse(List.of()).isEmpty()) {
            Shown<Boolean> any = runs.map(list -> !list.isEmpty());
            String path = last == null ? VISITS : last.path() + ".unfinished";
            facts.accept(new UnfinishedRun(path, last == null ? nowhere : last.at(), any, any, any, any, any.map(x -> new Attestation("", "", ""))));
        }
    }
}
