package bayproof.facts;

import bayproof.read.CheckIn;
import bayproof.read.FactoryFunction;
import bayproof.read.Plan;
import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.CheckedIn;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.SettledFind;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** Facts about the vehicle as it came: the sheet that was filled in, and who knows of what was found. */
final class ReceivingFacts {
    private static final String SHEET = "the check-in sheet";

    private final Model model;
    private final Plan plan;
    private final CheckIn checkIn;
    private final At at;

    ReceivingFacts(Model model) {
        this.model = model;
        this.plan = model.job.plan();
        this.checkIn = plan.checkIn();
        this.at = checkIn.at();
    }

    void collect(Consumer<Fact> facts) {
        Shown<Attestation> word = checkIn.word(SHEET);
        part("photos", "photos of the vehicle as it came", filled(checkIn.photos(), "photos"), word, facts);
        part("labels", "photos of door plate, radio label and option list", labels(), word, facts);
        part("keys", "keys and codes in hand", checkIn.keys(), word, facts);
        part("fault-codes", "fault codes before the job", joined(checkIn.faultCodes()), word, facts);
        part("lamps", "warning lamps before the job", joined(checkIn.lamps()), word, facts);
        part("floor", "whether the floor is dry", checkIn.floor(), word, facts);
        if (checkIn.batteryVolts().isGiven()) {
            model.numbers.put(checkIn.path() + ".battery", checkIn.batteryVolts().orElse(0.0), Dimension.VOLTAGE, () -> "as it came");
        }
        part("battery", "battery volts as it came", checkIn.batteryVolts().map(String::valueOf), word, facts);
        part("functions", "what works before the job", functions(), word, facts);
        part("signed", "the customer's word that this is the state", checkIn.signed().word().map(Attestation::evidence), checkIn.signed().word(), facts);
        for (Plan.Found found : plan.found().orElse(Map.of()).values()) {
            facts.accept(new SettledFind(found.path(), found.at(), found.belongsTo(), found.told().word()));
        }
        if (!plan.found().isGiven()) {
            Shown<String> missing = plan.found().map(any -> "");
            facts.accept(new SettledFind("found", model.job.planAt(), missing, missing.map(any -> new Attestation("", "", ""))));
        }
    }

    private void part(String key, String noun, Shown<String> seen, Shown<Attestation> word, Consumer<Fact> facts) {
        facts.accept(new CheckedIn(checkIn.path() + "." + key, at, noun, seen, word));
    }

    private static Shown<String> joined(Shown<List<String>> list) {
        return list.map(words -> words.isEmpty() ? "none" : String.join(", ", words));
    }

    /** A list with nothing in it shows nothing. */
    private Shown<String> filled(Shown<List<String>> list, String key) {
        return list.then(words -> words.isEmpty() ? Shown.missing(new Need(checkIn.path() + "." + key, "numbers of the " + key, list.atOr(at)))
                : Shown.of(String.join(", ", words)));
    }

    private Shown<String> labels() {
        return checkIn.labels().then(have -> {
            List<String> lacks = model.limit("labels-photographed").words().stream().filter(label -> !have.contains(label)).toList();
            return lacks.isEmpty() ? Shown.of(String.join(", ", have))
                    : Shown.missing(new Need(checkIn.path() + ".labels", "a photo of " + String.join(", ", lacks), checkIn.labels().atOr(at)));
        });
    }

    /** Functions that are asked for at every check-in, and those that somebody added. */
    static Set<String> asked(Model model) {
        Set<String> asked = new LinkedHashSet<>(model.limit("functions-asked").words());
        asked.addAll(model.job.plan().functions().keySet());
        return asked;
    }

    /** How a function was; missing where nobody wrote it. */
    static Shown<String> before(Model model, String id) {
        FactoryFunction function = model.job.plan().functions().get(id);
        return function != null ? function.before() : Shown.missing(new Need("functions." + id + ".before",
                "whether it works as the vehicle comes: " + id.replace('-', ' '), model.job.planAt()));
    }

    private Shown<String> functions() {
        List<Need> open = new ArrayList<>();
        Set<String> asked = asked(model);
        asked.forEach(id -> open.addAll(before(model, id).needs()));
        return open.isEmpty() ? Shown.of(asked.size() + " functions") : Shown.missing(open);
    }
}
