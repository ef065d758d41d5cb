package bayproof.facts;

import bayproof.read.CheckIn;
import bayproof.read.FactoryFunction;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.units.Dimension;
import bayproof.units.Units;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is asked when a vehicle comes in, section by section. */
public final class CheckInSheet {
    /**
     * One question.
     *
     * @param ask  what to find out
     * @param path where its answer is written
     * @param now  what is written so far; empty for nothing
     */
    public record Line(String ask, String path, String now) {
    }

    private final Map<String, List<Line>> sections = new LinkedHashMap<>();
    private List<Line> section;

    private CheckInSheet() {
    }

    /** The questions of a job by heading, in the order of the walk. */
    public static Map<String, List<Line>> of(Job job) {
        CheckInSheet sheet = new CheckInSheet();
        sheet.owner(job);
        sheet.functions(job);
        sheet.vehicle(job);
        sheet.found(job);
        sheet.photos(job.plan().checkIn());
        return sheet.sections;
    }

    private void begin(String heading) {
        section = new ArrayList<>();
        sections.put(heading, section);
    }

    private void ask(String ask, String path, Shown<?> now) {
        section.add(new Line(ask, path, now.map(Object::toString).orElse("")));
    }

    private void list(String ask, String path, Shown<List<String>> now) {
        ask(ask, path, now.map(words -> words.isEmpty() ? "none" : String.join(", ", words)));
    }

    private static Shown<String> amount(Shown<Double> value, Dimension dimension) {
        return value.map(si -> Units.print(si, dimension));
    }

    private void owner(Job job) {
        begin("Owner and wishes");
        ask("whose vehicle it is", "owned-by.kind", job.plan().ownedBy().kind());
        Set<String> wishes = new LinkedHashSet<>(job.limits().named("wishes-asked").words());
        wishes.addAll(job.plan().wishes().keySet());
        for (String id : wishes) {
            Plan.Wish wish = job.plan().wishes().get(id);
            section.add(new Line("wish, in the customer's words: " + id.replace('-', ' '), "wishes." + id + ".want", wish == null ? "" : wish.want().orElse("")));
        }
    }

    private void functions(Job job) {
        begin("What works now");
        Set<String> asked = new LinkedHashSet<>(job.limits().named("functions-asked").words());
        asked.addAll(job.plan().functions().keySet());
        for (String id : asked) {
            FactoryFunction function = job.plan().functions().get(id);
            section.add(new Line(id.replace('-', ' '), "functions." + id + ".before", function == null ? "" : function.before().orElse("")));
        }
    }

    private void vehicle(Job job) {
        CheckIn in = job.plan().checkIn();
        begin("The vehicle as it came");
        list("fault codes stored", "check-in.fault-codes", in.faultCodes());
        list("warning lamps that stay lit, ignition on", "check-in.lamps", in.lamps());
        ask("battery volts at rest", "check-in.battery", amount(in.batteryVolts(), Dimension.VOLTAGE));
        ask("current asleep before the job, meter in without breaking the circuit, after the wait", "supply.standby-before",
                amount(job.vehicle().supply().standbyBeforeAmperes(), Dimension.CURRENT));
        ask("the floor, felt under the mats", "check-in.floor", in.floor());
        ask("keys and codes in hand", "check-in.keys", in.keys());
    }

    private void found(Job job) {
        begin("Found things");
        ask("who looked for old wiring and devices", "looked.who", job.plan().looked().who());
        ask("when", "looked.when", job.plan().looked().when());
        list("zones that were looked into", "looked.where", job.plan().looked().where());
        Map<String, Plan.Found> things = job.plan().found().orElse(Map.of());
        if (things.isEmpty()) {
            ask("what was found, as { name: { what: ..., state: live } }", "found", job.plan().found().map(any -> "none"));
        }
        for (Plan.Found thing : things.values()) {
            String path = thing.path();
            ask(thing.id() + ": what it is", path + ".what", thing.what());
            ask(thing.id() + ": live or dead, by the meter", path + ".state", thing.state());
            ask(thing.id() + ": whose it is", path + ".belongs-to", thing.belongsTo());
            ask(thing.id() + ": what becomes of it", path + ".decision", thing.decision());
        }
    }

    private void photos(CheckIn in) {
        begin("Photos and signature");
        list("numbers of the photos, body and interior", "check-in.photos", in.photos());
        list("labels photographed: door-plate, radio, option-list", "check-in.labels", in.labels());
        ask("customer: that this is the state, name or role", "check-in.signed.who", in.signed().who());
        ask("customer: day of the signature", "check-in.signed.when", in.signed().when());
        ask("customer: where the signature stands", "check-in.signed.evidence", in.signed().evidence());
    }
}
