package bayproof.refit;

import bayproof.demand.Outcome;
import bayproof.graph.BodyGraph;
import bayproof.graph.Role;
import bayproof.graph.WiringGraph;
import bayproof.judge.Verdict;
import bayproof.read.Choices;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Mount;
import bayproof.read.Plan;
import bayproof.read.Run;
import bayproof.read.Setting;
import bayproof.read.Vehicle;
import bayproof.review.Evaluation;
import bayproof.units.Dimension;
import bayproof.units.Units;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** What the two sheets and the old plan say of each thing, beside what the rules say of it on the new vehicle. */
final class Facts {
    static final String CHOICES = "choices.";
    /** Facts that leave a thing without any place in the new vehicle. */
    static final List<String> NOWHERE = List.of("places", "sources");

    private final Evaluation before;
    private final Job old;
    private final Job into;
    private final Counterparts counterparts;
    private final RunWays ways;
    private final PinMoves pins;
    private final Choices.Decided choices;
    private final LevelShift levels;
    private final WiringGraph wiring;
    private final BodyGraph oldBody;
    private final BodyGraph newBody;

    Facts(Evaluation before, Job into, Counterparts counterparts, RunWays ways, PinMoves pins, Choices.Decided choices, LevelShift levels) {
        this.before = before;
        this.old = before.job();
        this.into = into;
        this.counterparts = counterparts;
        this.ways = ways;
        this.pins = pins;
        this.choices = choices;
        this.levels = levels;
        this.wiring = new WiringGraph(old);
        this.oldBody = new BodyGraph(old);
        this.newBody = new BodyGraph(into);
    }

    boolean isMounted(String item) {
        Mount mount = old.items().get(item).mount();
        return mount != null && (mount.fastener().isGiven() || mount.fasteners().isGiven() || mount.thread().isGiven());
    }

    /** Holes that the old job uses. */
    Collection<String> holes() {
        return counterparts.holes().keySet();
    }

    /** Reasons that facts give, for a row by kind and name. */
    List<Reason> of(String key) {
        String kind = key.substring(0, key.indexOf(' '));
        String id = key.substring(key.indexOf(' ') + 1);
        List<Reason> reasons = new ArrayList<>();
        switch (kind) {
            case "run" -> new RunFacts(old, into, ways, choices, oldBody, newBody).of(id, reasons);
            case "hole" -> hole(id, reasons);
            case "channel" -> channel(id, reasons);
            case "setting" -> setting(id, reasons);
            case "bus" -> settled(counterparts.network(id), "networks", reasons);
            default -> item(kind, id, reasons);
        }
        return reasons;
    }

    /** A counterpart that is not settled is a reason by itself. */
    private void settled(Counterpart counterpart, String choice, List<Reason> reasons) {
        if (counterpart != null && !counterpart.isFound()) {
            reasons.add(unsettled(counterpart, choice));
        }
    }

    static Reason unsettled(Counterpart counterpart, String choice) {
        return counterpart.isNone() ? Reason.fact(Fate.NOT, choice, "no " + counterpart.kind() + " in this vehicle", instead(choice))
                : Reason.missing(choice, new Need(CHOICES + choice + "." + counterpart.old(), "which " + counterpart.kind() + " takes the part of " + counterpart.old() + ": "
                + String.join(", ", counterpart.candidates()), Trees.NEW));
    }

    /** What to have where the new vehicle has nothing of a kind. */
    private static String instead(String choice) {
        return switch (choice) {
            case "places" -> "a place of another kind, written into the choices, or do without";
            case "spaces" -> "an enclosure for a space that is there, written into the choices";
            case "sources" -> "a source that is there, written into the choices";
            case "pass-throughs" -> "a way around, or a hole with the owner's word";
            case "connectors" -> "a lead for the connectors that are there";
            case "outputs" -> "an output that is there, or an interface that makes one";
            default -> "an interface for what is there";
        };
    }

    // items

    private void item(String kind, String id, List<Reason> reasons) {
        Item item = old.items().get(id);
        if (item instanceof Item.Enclosure box) {
            settled(counterparts.space(box.space().orElse("")), "spaces", reasons);
        }
        if (reasons.isEmpty()) {
            settled(counterparts.place(item.place().orElse("")), "places", reasons);
        }
        if (reasons.isEmpty()) {
            clash(item, reasons);
        }
        if (kind.equals("mount")) {
            return;
        }
        if (item instanceof Item.Harness lead) {
            lead(lead, reasons);
        } else {
            pins(item, reasons);
        }
        if (item instanceof Item.GroundPoint point && into.items().get(id) instanceof Item.GroundPoint there) {
            differs("structure", point.structure(), there.structure(), reasons);
            differs("fastener", point.fastener(), there.fastener(), reasons);
        }
    }

    private static void differs(String fact, Shown<String> was, Shown<String> is, List<Reason> reasons) {
        if (was.isGiven() && is.isGiven() && !was.orElse("").equals(is.orElse(""))) {
            reasons.add(Reason.fact(Fate.CHANGED, fact, fact + " " + is.orElse("") + ", was " + was.orElse(""), null));
        }
    }

    /** Two things that stood apart and would stand in one space, or at one place that nobody chose for both. */
    private void clash(Item item, List<Reason> reasons) {
        if (item instanceof Item.Enclosure box && !box.space().orElse("").isEmpty()) {
            clash(item, counterparts.spaces(), "spaces", other -> other instanceof Item.Enclosure ? ((Item.Enclosure) other).space().orElse("") : "", reasons);
        }
        Counterpart place = counterparts.place(item.place().orElse(""));
        if (reasons.isEmpty() && place != null && !place.isChosen()) {
            clash(item, counterparts.places(), "places", other -> other.place().orElse(""), reasons);
        }
    }

    private void clash(Item item, Map<String, Counterpart> all, String choice, Function<Item, String> where, List<Reason> reasons) {
        Counterpart here = all.get(where.apply(item));
        if (here == null || !here.isFound()) {
            return;
        }
        List<String> others = old.items().values().stream().filter(other -> other.path().startsWith("items.") && !where.apply(other).equals(here.old())
                && all.containsKey(where.apply(other)) && here.found().equals(all.get(where.apply(other)).found())).map(Item::id).toList();
        if (!others.isEmpty()) {
            String names = String.join(", ", others);
            reasons.add(new Reason(Fate.OPEN, choice, "clash with " + names + ": both would be at " + here.found(), null, null, new Need(CHOICES + choice + "." + here.old(),
                    "where " + item.id() + " or " + names + " goes instead of " + here.found(), Trees.NEW), false));
        }
    }

    private void lead(Item.Harness lead, List<Reason> reasons) {
        Set<String> connectors = new LinkedHashSet<>();
        for (Plan.PinUse pin : old.plan().pins().values()) {
            String connector = pin.id().substring(0, pin.id().indexOf('.'));
            Vehicle.Connector known = old.vehicle().connectors().get(connector);
            if (known != null && lead.connectors().orElse(List.of()).contains(known.family().orElse(""))) {
                connectors.add(connector);
            }
        }
        for (String connector : connectors) {
            Counterpart found = counterparts.connector(connector);
            if (found.isNone()) {
                Set<String> families = new TreeSet<>();
                into.vehicle().connectors().values().forEach(one -> one.family().map(families::add));
                reasons.add(Reason.fact(Fate.NOT, "connectors", "no " + found.kind() + " in this vehicle" + (families.isEmpty() ? "" : "; it has " + String.join(", ", families)),
                        "a lead for the connectors that are there"));
            } else {
                settled(found, "connectors", reasons);
            }
        }
    }

    private void pins(Item item, List<Reason> reasons) {
        for (Plan.PinUse pin : old.plan().pins().values()) {
            boolean lost = pin.connectedTo().orElse("").startsWith(item.id() + ".") && !isJoined(pin);
            Counterpart connector = counterparts.connector(Counterparts.connectorOf(pin.id()));
            if (lost && connector != null && !connector.isFound() && !connector.isNone()) {
                reasons.add(unsettled(connector, "connectors"));
            } else if (lost) {
                reasons.add(new Reason(Fate.OPEN, "connectors", "no cavity is known that does what " + pin.id() + " did (" + pin.function().orElse("unknown") + ")", null, null,
                        new Need("connectors", "the cavity with the function " + pin.function().orElse("unknown") + " for " + pin.connectedTo().orElse(""), Trees.NEW), false));
            }
        }
    }

    /** Whether as many pins of the new plan join the terminal with that function as in the old one. */
    private boolean isJoined(Plan.PinUse pin) {
        return count(into, pin) >= count(old, pin);
    }

    private static long count(Job job, Plan.PinUse pin) {
        return job.plan().pins().values().stream().filter(one -> one.connectedTo().orElse("").equals(pin.connectedTo().orElse(""))
                && one.function().orElse("").equals(pin.function().orElse(""))).count();
    }

    // holes, channels, settings

    private void hole(String id, List<Reason> reasons) {
        Counterpart hole = counterparts.hole(id);
        settled(hole, "pass-throughs", reasons);
        if (hole.isFound()) {
            differs("panel", old.passThroughs().get(id).panel(), into.passThroughs().get(hole.found()).panel(), reasons);
        }
    }

    private void channel(String id, List<Reason> reasons) {
        old.plan().audioInputs().get(id).of().orElse(List.of()).forEach(output -> settled(counterparts.output(output), "outputs", reasons));
        levels.channels().stream().filter(channel -> channel.input().equals(id) && channel.decibels(Tone.MID).isGiven()).forEach(channel -> {
            double shift = channel.decibels(Tone.MID).orElse(0.0);
            if (Math.abs(shift) > old.limits().named("refit-level-same").value()) {
                reasons.add(Reason.fact(Fate.CHANGED, "outputs", "source " + signed(shift) + " against the old one", null));
            }
        });
    }

    static String signed(double decibels) {
        return String.format(Locale.ROOT, "%+.1f dB", decibels);
    }

    private void setting(String id, List<Reason> reasons) {
        LevelShift.Output output = levels.output(id);
        if (output == null) {
            return;
        }
        if (output.breaks() != null) {
            reasons.add(Reason.fact(Fate.NOT, "outputs", "void: " + output.breaks(), "tuned anew on the new source"));
            return;
        }
        output.decibels().needs().forEach(need -> reasons.add(Reason.missing("outputs", need)));
        double shift = output.decibels().orElse(0.0);
        if (Math.abs(shift) > old.limits().named("refit-level-same").value()) {
            reasons.add(Reason.fact(Fate.CHANGED, "outputs", "the source gives " + signed(shift) + ": gain " + signed(-shift) + ", until "
                    + Units.print(output.target().orElse(0.0), Dimension.VOLTAGE) + " stand at the output again", null));
        }
    }

    // what a row serves for and where it goes

    /** What a run joins, in its role; empty for everything that its name tells. */
    String serves(String kind, String id) {
        if (!kind.equals("run")) {
            return "";
        }
        Run run = old.plan().runs().get(id);
        Role role = wiring.role(run);
        return role.name().toLowerCase(Locale.ROOT) + " " + run.from().orElse("?") + " to " + run.to().orElse("?");
    }

    /** Where a thing goes; null where that is not settled. */
    String where(String kind, String id) {
        return switch (kind) {
            case "run" -> ways.of(id) == null || ways.of(id).way() == null ? null : String.join(" + ", ways.of(id).way().routes());
            case "hole" -> counterparts.hole(id) == null ? null : counterparts.hole(id).found();
            case "bus" -> counterparts.network(id) == null ? null : counterparts.network(id).found();
            case "channel" -> levels.channels().stream().filter(one -> one.input().equals(id) && !one.after().isEmpty()).map(one -> String.join(" + ", one.after()))
                    .findFirst().orElse(null);
            case "setting", "job" -> null;
            default -> {
                Counterpart place = old.items().containsKey(id) ? counterparts.place(old.items().get(id).place().orElse("")) : null;
                yield place == null ? null : place.found();
            }
        };
    }

    /** Whether the rule that breaks here breaks on the same thing in the old vehicle. */
    boolean brokenBefore(Verdict verdict) {
        return before.judgment().of(Outcome.BROKEN).stream().anyMatch(one -> one.rule().id().equals(verdict.rule().id())
                && renamed(one.subject()).equals(verdict.subject()));
    }

    /** A subject of the old job under its name in the new one. */
    String renamed(String subject) {
        String[] keys = subject.split("\\.");
        Map<String, Counterpart> all = switch (keys[0]) {
            case "pass-throughs" -> counterparts.holes();
            case "outputs" -> counterparts.outputs();
            case "networks", "buses" -> counterparts.networks();
            case "spaces" -> counterparts.spaces();
            default -> Map.of();
        };
        if (keys[0].equals("pins") && keys.length > 2) {
            String pin = keys[1] + "." + keys[2];
            return subject.replace(pin, pins.of(pin));
        }
        Counterpart found = keys.length < 2 ? null : keys[0].equals("supply") && keys.length > 2 ? counterparts.source(keys[2]) : all.get(keys[1]);
        return found == null || !found.isFound() ? subject : subject.replaceFirst("(?<=\\.)" + found.old() + "(?=\\.|$)", found.found());
    }

    /** What the new vehicle lacks, so that a rule has nothing to say of a subject; null where it lacks nothing for it. */
    String lacks(String subject) {
        String[] keys = subject.split("\\.");
        Counterpart sought = keys.length < 2 ? null : switch (keys[0]) {
            case "items" -> old.items().containsKey(keys[1]) ? counterparts.place(old.items().get(keys[1]).place().orElse("")) : null;
            case "runs" -> ways.of(keys[1]) == null ? null : ways.of(keys[1]).open();
            case "pass-throughs" -> counterparts.hole(keys[1]);
            case "networks", "buses" -> counterparts.network(keys[1]);
            case "outputs" -> counterparts.output(keys[1]);
            case "spaces" -> counterparts.space(keys[1]);
            default -> null;
        };
        return sought != null && sought.isNone() ? "no " + sought.kind() + " in this vehicle" : null;
    }
}
