package bayproof.facts;

import bayproof.read.CabinSound;
import bayproof.read.CabinSoundWork;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.vocabulary.CabinSoundChange;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about the sounds that the vehicle itself makes or cancels, and what the job does to them. */
final class CabinSoundFacts {
    private static final String SUBJECT = "cabin-sound";
    private static final String PEDESTRIAN = "pedestrian-sound";

    private final Model model;
    private final CabinSound sound;

    CabinSoundFacts(Model model) {
        this.model = model;
        this.sound = model.job.vehicle().cabinSound();
    }

    void collect(Consumer<Fact> facts) {
        CabinSoundWork work = model.job.plan().cabinSoundWork();
        TreeSet<String> inTheWay = new TreeSet<>();
        Shown<Boolean> clear = microphonesClear(inTheWay);
        facts.accept(new CabinSoundChange(SUBJECT, sound.at(), ownSound(model), changes(), sound.playedBy(), work.decision(), work.decided().word(),
                clear, Shown.of(String.join(", ", inTheWay)), sound.pedestrianSound(), work.pedestrianSound(), pedestrianFree()));
    }

    /** Whether the vehicle cancels noise or adds engine sound. */
    static Shown<Boolean> ownSound(Model model) {
        CabinSound sound = model.job.vehicle().cabinSound();
        return Kleene.or(sound.cancelsNoise(), sound.addsEngineSound());
    }

    /** A speaker that plays bass, or a box for one, changes what the cancelling hears. */
    private Shown<Boolean> changes() {
        Shown<Boolean> changes = Shown.of(!model.job.itemsOf(Item.Enclosure.class).isEmpty());
        List<String> bass = model.limit("speakers-with-bass").words();
        for (Item.Speaker speaker : model.job.itemsOf(Item.Speaker.class)) {
            changes = Kleene.or(changes, speaker.data().plays().map(bass::contains));
        }
        return changes;
    }

    private Shown<Boolean> microphonesClear(TreeSet<String> inTheWay) {
        return sound.microphones().then(places -> {
            Shown<Boolean> clear = Shown.of(true);
            for (Item item : model.job.items().values()) {
                if (!places.isEmpty() && !item.path().startsWith("supply.") && !(item instanceof Item.Harness)) {
                    Shown<Boolean> away = item.place().map(place -> !places.contains(place));
                    if (Kleene.is(away, false)) {
                        inTheWay.add(item.id());
                    }
                    clear = Kleene.and(clear, away);
                }
            }
            return clear;
        });
    }

    private Shown<Boolean> pedestrianFree() {
        Shown<Boolean> free = Shown.of(true);
        for (Vehicle.Output output : model.job.vehicle().outputs().values()) {
            if (isJoined(output.id())) {
                free = Kleene.and(free, output.from().map(from -> !from.equals(PEDESTRIAN)));
            }
        }
        return free;
    }

    private boolean isJoined(String output) {
        for (Run run : model.job.plan().runs().values()) {
            if (run.from().orElse("").equals(output + ".out") || run.to().orElse("").equals(output + ".out")) {
                return true;
            }
        }
        for (Plan.PinUse pin : model.job.plan().pins().values()) {
            Vehicle.Cavity cavity = model.job.vehicle().cavity(pin);
            if (cavity != null && cavity.output().orElse("").equals(output)) {
                return true;
            }
        }
        return false;
    }
}
