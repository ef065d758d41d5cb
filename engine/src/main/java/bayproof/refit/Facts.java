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

/** What the two sheets and the old plan say of each thing, beside what the rules say of it on the new vehicle. */
final class Facts {
    private final Evaluation before;
    private final Job old;
    private final Job into;
    private final Counterparts counterparts;
    private final RunWays ways;
    private final Choices.Decided choices;
    private final LevelShift levels;
    private final WiringGraph wiring;
    private final BodyGraph oldBody;
    private final BodyGraph newBody;

    Facts(Evaluation before, Job into, Counterparts counterparts, RunWays ways, Choices.Decided choices, LevelShift levels) {
        this.before = before;
        this.old = before.job();
        this.into = into;
        this.counterparts = counterparts;
        this.ways = ways;
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
        return counterpart.isNone() ? Reason.fact(Fate.NOT, choice, "no " + counterpart.kind() + " in this vehicle", null)
                : new Reason(Fate.OPEN, choice, "which " + counterpart.kind() + " takes the part of " + counterpart.old() + ": "
                + String.join(", ", counterpart.candidates()), null, null, new Need("choices." + choice + "." + counterpart.old(),
                "which one takes the part of " + counterpart.old() + ": " + String.join(", ", counterpart.candidates()), Trees.NEW), false);
    }

    // items

    private void item(String kind, String id, List<Reason> reasons) {
        Item item = old.items().get(id);
        if (item instanceof Item.Enclosure box) {
            settled(counterparts.space(box.space().orElse("")), "spaces", reasons);
            clash(box, reasons);
        }
        if (reasons.isEmpty()) {
            settled(counterparts.place(item.place().orElse("")), "places", reasons);
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

    private void clash(Item.Enclosure box, List<Reason> reasons) {
        Counterpart space = counterparts.space(box.space().orElse(""));
        if (space == null || !space.isFound()) {
            return;
        }
        List<String> others = old.itemsOf(Item.Enclosure.class).stream().filter(other -> !other.id().equals(box.id()) && !other.space().orElse("").equals(box.space().orElse("")))
                .filter(other -> counterparts.space(other.space().orElse("")) != null && space.found().equals(counterparts.space(other.space().orElse("")).found()))
                .map(Item::id).toList();
        if (!others.isEmpty()) {
            reasons.add(new Reason(Fate.OPEN, "spaces", "clash with " + String.join(", ", others) + ": both would stand in " + space.found(), null, null,
                    new Need("choices.spaces." + space.old(), "where " + box.id() + " or " + String.join(", ", others) + " goes instead of " + space.found(), Trees.NEW), false));
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
            if (pin.connectedTo().orElse("").startsWith(item.id() + ".") && !isJoined(pin)) {
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
        levels.channels().stream().filter(channel -> channel.input().equals(id) && channel.midDecibels().isGiven()).forEach(channel -> {
            double shift = channel.midDecibels().orElse(0.0);
            if (Math.abs(shift) > old.limits().named("refit-level-same").value()) {
                reasons.add(Reason.fact(Fate.CHANGED, "outputs", "source " + signed(shift) + " against the old one", null));
            }
        });
    }

    static String signed(double decibels) {
        return String.format(Locale.ROOT, "%+.1f dB", decibels);
    }

    private void setting(String id, List<Reason> reasons) {
        Setting setting = old.plan().settings().get(id);
        if (levels.channels().isEmpty() || !setting.gain().targetVolts().isGiven()) {
            return;
        }
        if (levels.breaks() != null) {
            reasons.add(Reason.fact(Fate.NOT, "outputs", "void: " + levels.breaks(), "tuned anew on the new source"));
            return;
        }
        Shown<Double> shift = levels.largestDecibels();
        shift.needs().forEach(need -> reasons.add(Reason.missing("outputs", need)));
        if (shift.isGiven() && Math.abs(shift.orElse(0.0)) > old.limits().named("refit-level-same").value()) {
            reasons.add(Reason.fact(Fate.CHANGED, "outputs", "the source gives " + signed(shift.orElse(0.0)) + ": gain " + signed(-shift.orElse(0.0))
                    + ", until " + Units.print(setting.gain().targetVolts().orElse(0.0), Dimension.VOLTAGE) + " stand at the output again", null));
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
        Counterpart found = keys.length < 2 ? null : keys[0].equals("supply") && keys.length > 2 ? counterparts.source(keys[2]) : all.get(keys[1]);
        return found == null || !found.isFound() ? subject : subject.replaceFirst("(?<=\\.)" + found.old() + "(?=\\.|$)", found.found());
    }
}
