package bayproof.facts;

import bayproof.vocabulary.Fact;
import java.util.function.Consumer;

/** Facts about living with the job: turning on, starting, sleeping, charging, and what was there before. */
final class UpkeepFacts {
    private final Model model;
    private final Amplifiers amplifiers;

    UpkeepFacts(Model model, Amplifiers amplifiers) {
        this.model = model;
        this.amplifiers = amplifiers;
    }

    void collect(Consumer<Fact> facts) {
        new TurnOnFacts(model).collect(facts);
        new BusFacts(model).collect(facts);
        new ParkedFacts(model).collect(facts);
        new StartFacts(model, amplifiers).collect(facts);
        new BatteryFacts(model).collect(facts);
        new FoundFacts(model).collect(facts);
    }
}
