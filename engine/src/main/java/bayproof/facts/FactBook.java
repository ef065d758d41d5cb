package bayproof.facts;

import bayproof.read.Job;
import bayproof.vocabulary.Fact;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything the rules can ask about a job: flat facts, and the figures that stand behind them.
 *
 * @param facts   facts in a stable order
 * @param numbers figures with their calculations
 */
public record FactBook(List<Fact> facts, Numbers numbers) {

    /** Works out the facts of a job. */
    public static FactBook of(Job job) {
        Model model = new Model(job);
        Amplifiers amplifiers = new Amplifiers(model);
        List<Fact> facts = new ArrayList<>();
        new ProtectionFacts(model).collect(facts::add);
        SolvedNetworks networks = new SolvedNetworks(model, amplifiers);
        new NetworkFacts(model, amplifiers, networks).collect(facts::add);
        new CurrentFacts(model, networks).collect(facts::add);
        new BatteryLinkFacts(model, networks).collect(facts::add);
        new SourceFacts(model).collect(facts::add);
        new FeedSourceFacts(model, amplifiers).collect(facts::add);
        new FuseDutyFacts(model).collect(facts::add);
        new FusePathFacts(model).collect(facts::add);
        new CableFacts(model).collect(facts::add);
        new HolderFacts(model).collect(facts::add);
        new RelayFacts(model).collect(facts::add);
        new OwnFuseFacts(model).collect(facts::add);
        new ConductorFacts(model).collect(facts::add);
        new SpeakerFacts(model, amplifiers).collect(facts::add);
        new LoadResistorFacts(model, amplifiers).collect(facts::add);
        new BodyFacts(model).collect(facts::add);
        new RadioFacts(model).collect(facts::add);
        new GroundFacts(model, networks).collect(facts::add);
        new UpkeepFacts(model, amplifiers).collect(facts::add);
        new KeepOutFacts(model).collect(facts::add);
        new SeatFacts(model).collect(facts::add);
        new RoutingFacts(model).collect(facts::add);
        new TerminationFacts(model).collect(facts::add);
        new MountFacts(model).collect(facts::add);
        new PayloadFacts(model).collect(facts::add);
        new FitFacts(model).collect(facts::add);
        new LeadFacts(model).collect(facts::add);
        new WorkFacts(model).collect(facts::add);
        new ToolFacts(model).collect(facts::add);
        new WishFacts(model).collect(facts::add);
        new OwnershipFacts(model).collect(facts::add);
        new KeptPartFacts(model).collect(facts::add);
        new SeenFacts(model).collect(facts::add);
        new FactorySoundFacts(model).collect(facts::add);
        new CabinSoundFacts(model).collect(facts::add);
        new InterfaceFacts(model).collect(facts::add);
        new CalibrationFacts(model).collect(facts::add);
        new DoneFacts(model).collect(facts::add);
        new ScheduleFacts(model).collect(facts::add);
        new InspectionFacts(model).collect(facts::add);
        new ReceivingFacts(model).collect(facts::add);
        new PlannedReadingFacts(model).collect(facts::add);
        new ProvingFacts(model).collect(facts::add);
        new DeliveryFacts(model).collect(facts::add);
        return new FactBook(List.copyOf(facts), model.numbers);
    }
}
