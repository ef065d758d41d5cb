package bayproof.worksheet;

import bayproof.demand.Limits;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Mount;
import bayproof.read.Plan;
import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What has to go back into the vehicle when the system comes out, as far as the plan tells.
 *
 * @param parts what the plan touches, group by group
 * @param kept  factory parts that were taken off and kept; missing where nobody wrote the list
 * @param work  the steps that come again, with their hours
 * @param workedSeconds hours worked; missing while a step gives none
 * @param waitingSeconds hours waited
 */
public record PutBack(List<Part> parts, Shown<List<Kept>> kept, List<Work> work, Shown<Double> workedSeconds, Shown<Double> waitingSeconds) {

    /**
     * One thing to put back.
     *
     * @param group what it is: pin, hole, fastening, ground, speaker
     * @param id    the thing in the plan
     * @param where place or zone; a blank where nobody wrote one
     * @param back  what to do
     * @param kept  whether a factory part must be found for it, so that the sheet asks where it lies
     * @param lies  where that part lies and who has it, as the list of kept parts says; a blank where it does not
     */
    public record Part(String group, String id, String where, String back, boolean kept, Shown<String> lies) {
        Part(String group, String id, String where, String back, boolean kept) {
            this(group, id, where, back, kept, Shown.of(""));
        }
    }

    /**
     * A factory part that was taken off.
     *
     * @param lies where it lies
     * @param with who has it
     * @param off  the step that took it off; empty where none says so
     */
    public record Kept(String id, Shown<String> lies, Shown<String> with, String off) {
    }

    /** One step: done again in the same time, or undone in a share of it. */
    public record Work(String step, Shown<String> does, boolean again, boolean waiting, Shown<Double> seconds) {
    }

    /** Steps that put something in. */
    private static final List<String> FITTING = List.of("fit", "run-cables", "ground", "join-pins");

    /** What comes out, for a job. */
    public static PutBack of(Job job) {
        List<Part> parts = new ArrayList<>();
        pins(job, parts);
        holes(job, parts);
        items(job, parts);
        List<Work> work = work(job);
        Shown<Double> worked = Shown.of(0.0);
        Shown<Double> waited = Shown.of(0.0);
        for (Work one : work) {
            if (one.waiting()) {
                waited = waited.with(one.seconds(), Double::sum);
            } else {
                worked = worked.with(one.seconds(), Double::sum);
            }
        }
        return new PutBack(List.copyOf(parts), kept(job), work, worked, waited);
    }

    // parts that were taken off

    private static Shown<List<Kept>> kept(Job job) {
        return job.plan().keptParts().map(parts -> parts.values().stream().map(part -> new Kept(part.id(), part.lies(), part.with(), job.plan().steps().values().stream()
                .filter(step -> step.removes().orElse(List.of()).contains(part.id())).map(Plan.Step::id).findFirst().orElse(""))).toList());
    }

    /** Where a part lies and who has it; an empty text where the list does not name it. */
    private static Shown<String> lies(Job job, String part) {
        Plan.KeptPart kept = job.plan().keptParts().orElse(Map.of()).get(part);
        return kept == null ? Shown.of("") : kept.lies().with(kept.with(), (where, who) -> where + ", with: " + who);
    }

    // pins

    private static void pins(Job job, List<Part> parts) {
        Map<String, List<String>> plugs = new LinkedHashMap<>();
        for (Plan.PinUse pin : job.plan().pins().values()) {
            String connector = pin.id().substring(0, pin.id().indexOf('.'));
            String cavity = pin.id().substring(pin.id().indexOf('.') + 1);
            switch (pin.method().orElse("")) {
                case "plug-in-harness" -> plugs.computeIfAbsent(connector, any -> new ArrayList<>()).add(cavity);
                case "tap-crimp", "tap-solder" -> parts.add(new Part("pin", pin.id(), pin.color().orElse(""), "take the tap off, close the insulation, read the wire again", false));
                case "cut-and-join" -> parts.add(new Part("pin", pin.id(), pin.color().orElse(""), "join the cut factory wire again, both ends from one car: look at the color", false));
                default -> parts.add(new Part("pin", pin.id(), pin.color().orElse(""), "nobody wrote how it is joined: look before you pull", false));
            }
        }
        plugs.forEach((connector, cavities) -> parts.add(new Part("plug", connector, "", "take the adapter lead out (pins " + String.join(", ", cavities)
                + "), plug the factory connector back until it clicks", false)));
    }

    // holes

    private static void holes(Job job, List<Part> parts) {
        for (Vehicle.PassThrough hole : job.passThroughs().values()) {
            List<String> cables = job.plan().runs().values().stream().filter(run -> uses(run, hole.id(), job)).map(Run::id).toList();
            if (cables.isEmpty()) {
                continue;
            }
            String where = hole.between().map(zones -> String.join(" to ", zones)).orElse("");
            boolean drilled = hole.origin().orElse("").equals("drilled");
            String edge = hole.edge().orElse("");
            String back = drilled ? "drilled: close it with a plug made for " + hole.panel().orElse("that panel") + ", seal it, pour water on it"
                    : edge.equals("factory-boot") ? "draw the cables out of the boot, look for tears, seat it again"
                    : "factory hole: the blank plug or the factory grommet back in, sealed";
            parts.add(new Part("hole", hole.id(), where, back + "; " + cables.size() + (cables.size() == 1 ? " cable" : " cables") + " out", !drilled && !edge.equals("factory-boot")));
        }
    }

    private static boolean uses(Run run, String hole, Job job) {
        return run.through().orElse(List.of()).contains(hole) || run.along().orElse(List.of()).stream()
                .anyMatch(route -> job.vehicle().routes().containsKey(route) && job.vehicle().routes().get(route).between().orElse(List.of()).contains(hole));
    }

    // what was screwed to the vehicle

    private static void items(Job job, List<Part> parts) {
        for (Item item : job.items().values()) {
            if (item instanceof Item.Speaker speaker) {
                if (!stands(job, item)) {
                    String old = speaker.replaces().orElse("none");
                    parts.add(new Part("speaker", item.id(), item.place().orElse(""), old.equals("none") ? "the factory speaker, or the blank of that opening, back in its place"
                            : old + " back in its place", true, lies(job, old)));
                }
            } else if (item instanceof Item.GroundPoint point) {
                String structure = point.structure().orElse("");
                parts.add(new Part("ground", item.id(), item.place().orElse(""), structure.equals("factory-point")
                        ? "the factory ground point back as it was, torqued to the maker's figure" : "cable off, bare metal primed, painted and sealed", false));
            }
            Mount mount = item.mount();
            if (mount != null && !item.path().startsWith("supply.")) {
                fastening(item, mount, parts);
            }
        }
    }

    /** Whether a speaker stands in a box of the plan, and not in an opening of the vehicle. */
    private static boolean stands(Job job, Item speaker) {
        return speaker.place().isGiven() && job.itemsOf(Item.Enclosure.class).stream()
                .anyMatch(box -> box.place().orElse("").equals(speaker.place().orElse("")));
    }

    private static void fastening(Item item, Mount mount, List<Part> parts) {
        String count = mount.fasteners().map(String::valueOf).orElse("its");
        String thread = mount.thread().map(name -> " " + name).orElse("");
        String back = switch (mount.fastener().orElse("")) {
            case "rivet-nut" -> "drill out " + count + " rivet nuts" + thread + " or close them with sealed screws";
            case "bolt-nut", "self-tapping", "self-drilling" -> "close " + count + " holes" + thread + ": plug, prime, seal; underside as well";
            case "strap", "clip" -> "take the " + mount.fastener().orElse("") + " off, nothing stays";
            case "adhesive" -> "loosen with heat, clean the trim";
            case "stud" -> "caps on " + count + " studs" + thread;
            default -> null;
        };
        parts.add(new Part("fastening", item.id(), item.place().orElse(""), back == null ? "nobody wrote how it is held: look" : back, false));
    }

    // hours

    private static List<Work> work(Job job) {
        Limits limits = job.limits();
        List<String> again = limits.named("put-back-work").words();
        List<String> waits = limits.named("waiting-work").words();
        double share = limits.named("take-out-share").value();
        List<Work> work = new ArrayList<>();
        for (Plan.Step step : job.plan().steps().values()) {
            String does = step.does().orElse("");
            if (again.contains(does)) {
                work.add(new Work(step.id(), step.does(), true, waits.contains(does), step.seconds()));
            } else if (FITTING.contains(does)) {
                work.add(new Work(step.id(), step.does(), false, false, step.seconds().map(seconds -> seconds * share)));
            }
        }
        return List.copyOf(work);
    }
}
