package bayproof.read;

import bayproof.units.Dimension;
import bayproof.units.Quantity;
import bayproof.units.UnitException;
import bayproof.units.Units;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/** Checks that what one value names stands somewhere. What an unnamed vehicle sheet would hold is not checked. */
public final class References {
    /** The vehicle body, where ground points end; a terminal of its own. */
    static final String BODY = "body";

    /** How the terminal of an output of the vehicle sheet ends; a run may begin there. */
    public static final String OUTPUT = ".out";

    private static final String NONE = "none";

    private final Job job;
    private final Set<String> unread;
    private final Problems problems;

    /** @param unread items that are written but could not be read; what names them is no further mistake */
    References(Job job, Set<String> unread, Problems problems) {
        this.job = job;
        this.unread = unread;
        this.problems = problems;
    }

    void check() {
        job.items().values().forEach(item -> place(item.place(), item.at()));
        job.runs().values().forEach(this::run);
        job.plan().speakerWiring().values().forEach(this::wiring);
        job.plan().pins().values().forEach(this::pin);
        job.plan().settings().values().forEach(this::setting);
        job.itemsOf(Item.PassiveNetwork.class).forEach(network -> names(network.feeds(), network.at(), "a speaker of this job",
                job.itemsOf(Item.Speaker.class).stream().map(Item::id).toList()));
        if (!unread.contains(job.plan().signalGround().orElse(""))) {
            name(job.plan().signalGround(), job.planAt(), "a ground point of this job",
                    job.itemsOf(Item.GroundPoint.class).stream().map(Item::id).toList());
        }
        Set<String> steps = job.plan().steps().keySet();
        job.plan().steps().values().forEach(step -> names(step.after(), step.at(), "a step of the plan", steps));
        job.plan().audioInputs().values().forEach(this::audioInput);
        job.plan().inspections().values().forEach(this::inspection);
        for (Visit visit : job.plan().visits().values()) {
            names(visit.done(), visit.at(), "a step of the plan", steps);
            names(visit.unfinished(), visit.at(), "a run of the plan", job.plan().runs().keySet());
        }
        job.itemsOf(Item.Speaker.class).forEach(speaker -> name(speaker.enclosure(), speaker.at(), "an item of this job", job.items().keySet()));
        job.itemsOf(Item.Enclosure.class).forEach(box -> names(box.shape().stands(), box.at(), "a way to stand", BoxShape.STANDS));
        if (job.vehicleNamed()) {
            names(job.plan().looked().where(), job.plan().looked().at(), "a zone of the vehicle sheet", job.vehicle().zones().keySet());
            names(job.vehicle().cabinSound().microphones(), job.vehicle().cabinSound().at(), "a place of the vehicle sheet", job.vehicle().places().keySet());
            job.itemsOf(Item.Enclosure.class).forEach(box -> name(box.space(), box.at(), "a space of the vehicle sheet",
                    job.vehicle().spaces().keySet()));
        }
        Set<String> zones = job.vehicle().zones().keySet();
        job.vehicle().zones().values().forEach(zone -> names(zone.openTo(), zone.at(), "a zone of the vehicle sheet", zones));
        job.vehicle().places().values().forEach(place -> name(place.zone(), place.at(), "a zone of the vehicle sheet", zones));
        job.passThroughs().values().forEach(hole -> two(hole.between(), hole.at(), "a zone of the vehicle sheet", zones));
        job.vehicle().connectors().values().forEach(connector -> connector.cavities().values().forEach(cavity ->
                name(cavity.output(), cavity.at(), "an output of the vehicle sheet", job.vehicle().outputs().keySet())));
        job.vehicle().keepOuts().values().forEach(one -> names(one.zones(), one.at(), "a zone of the vehicle sheet", zones));
        Collection<String> ends = new TreeSet<>(job.vehicle().places().keySet());
        ends.addAll(job.passThroughs().keySet());
        job.vehicle().routes().values().forEach(route -> two(route.between(), route.at(), "a place or pass-through of the vehicle sheet", ends));
    }

    /** A comeback belongs to a rule, or to none. */
    void rules(Supplier<Collection<String>> rules) {
        for (Visit visit : job.plan().visits().values()) {
            if (visit.rule().isGiven() && !visit.rule().orElse(NONE).equals(NONE)) {
                Collection<String> known = rules.get();
                if (known != null) {
                    name(visit.rule(), visit.at(), "a rule, or none", known);
                }
            }
        }
    }

    private void setting(Setting setting) {
        terminal(Shown.of(setting.id()), setting.at());
        names(setting.inputs(), setting.at(), "an audio input of the plan", job.plan().audioInputs().keySet());
        setting.bandAbove().orElse(List.of()).forEach(above -> terminal(Shown.at(above, setting.bandAbove().atOr(setting.at())), setting.at()));
    }

    private void audioInput(AudioInput input) {
        if (job.vehicleNamed()) {
            names(input.of(), input.at(), "an output of the vehicle sheet", job.vehicle().outputs().keySet());
        }
        if (!input.correctedBy().orElse(NONE).equals(NONE)) {
            name(input.correctedBy(), input.at(), "an item of this job", job.items().keySet());
        }
    }

    private void inspection(Inspection inspection) {
        name(Shown.of(inspection.id()), inspection.at(), "an inspection", InspectionList.points().keySet());
        inspected(inspection.faults(), inspection.at());
        inspected(inspection.leftOut(), inspection.at());
        measured(inspection);
    }

    /** What was measured is of the kind that the look measures. */
    private void measured(Inspection inspection) {
        InspectionList.Point point = InspectionList.points().get(inspection.id());
        Quantity value = inspection.measured().orElse(null);
        if (point == null || value == null || value.dimension() == point.measures()) {
            return;
        }
        At at = inspection.measured().atOr(inspection.at());
        if (point.measures() == null) {
            problems.add(at, inspection.path() + " takes no measure: it is a look of eyes and hands.", "Take this value out.");
        } else {
            problems.add(at, inspection.path() + ".measured is " + value.dimension().noun() + ".", "It takes " + point.measures().noun() + ", such as \"" + point.measure().suchAs() + "\".");
        }
    }

    /** Things go by the names of the plan, keep-outs by those of the vehicle sheet; an end of a run has a dot before it. */
    private void inspected(Shown<List<String>> things, At at) {
        for (String thing : things.orElse(List.of())) {
            String run = thing.endsWith(".from") || thing.endsWith(".to") ? thing.substring(0, thing.indexOf('.')) : thing;
            if (!unread.contains(run)) {
                Set<String> known = things();
                name(Shown.at(known.contains(thing) ? thing : run, things.atOr(at)), at, "a thing of this job", known);
            }
        }
    }

    private Set<String> things() {
        Set<String> known = new TreeSet<>(job.items().keySet());
        known.addAll(job.plan().runs().keySet());
        known.addAll(job.passThroughs().keySet());
        known.addAll(job.plan().pins().keySet());
        known.addAll(job.plan().steps().keySet());
        known.addAll(job.plan().found().orElse(Map.of()).keySet());
        known.addAll(job.plan().keptParts().orElse(Map.of()).keySet());
        known.addAll(job.plan().buses().orElse(Map.of()).keySet());
        known.addAll(job.vehicle().keepOuts().keySet());
        return known;
    }

    private void place(Shown<String> place, At at) {
        if (job.vehicleNamed()) {
            name(place, at, "a place of the vehicle sheet", job.vehicle().places().keySet());
        }
    }

    private void near(Map<String, Shown<Double>> distances, At at) {
        if (job.vehicleNamed()) {
            distances.forEach((keepOut, metres) -> name(Shown.of(keepOut), metres.atOr(at), "a keep-out of the vehicle sheet", job.vehicle().keepOuts().keySet()));
        }
    }

    private void run(Run run) {
        terminal(run.from(), run.at());
        terminal(run.to(), run.at());
        if (run.from().isGiven() && run.from().orElse("").equals(run.to().orElse(""))) {
            problems.add(run.to().atOr(run.at()), run.id() + " begins and ends at " + run.to().orElse("") + ".", "Name the terminal at its other end, or unknown.");
        }
        joined(run.from(), run.to(), run.at());
        joined(run.to(), run.from(), run.at());
        if (job.vehicleNamed()) {
            names(run.along(), run.at(), "a route of the vehicle sheet", job.vehicle().routes().keySet());
            names(run.through(), run.at(), "a pass-through of the vehicle sheet", job.passThroughs().keySet());
        }
        near(run.near(), run.at());
        if (run.insulation().isGiven()) {
            insulation(run);
        }
    }

    /** What a signal cable brings is read off the plugs at its two ends: a joint in it would hide one of them. */
    private void joined(Shown<String> end, Shown<String> other, At at) {
        String name = other.orElse("");
        Item item = job.itemOf(name);
        if (job.itemOf(end.orElse("")) instanceof Item.Joint && item != null
                && (name.contains(".signal-") || item instanceof Item.Processor && name.contains(".out-"))) {
            problems.add(end.atOr(at), "a signal cable from " + name + " ends at the joint " + end.orElse("") + ".",
                    "Write it as one run from plug to plug; joints are for power and speaker conductors.");
        }
    }

    private void insulation(Run run) {
        String text = run.insulation().orElse("");
        if (!text.equals("no-print")) {
            try {
                Units.parse(text, Dimension.TEMPERATURE);
            } catch (UnitException e) {
                problems.add(run.insulation().atOr(run.at()), "\"" + text + "\" cannot be read as \"insulation\".", e.getMessage() + " Or write no-print.");
            }
        }
    }

    private void terminal(Shown<String> terminal, At at) {
        String name = terminal.orElse(null);
        At here = terminal.atOr(at);
        if (name == null || name.equals(BODY)) {
            return;
        }
        int dot = name.indexOf('.');
        Item item = dot < 0 ? null : job.items().get(name.substring(0, dot));
        if (item == null && dot >= 0 && name.endsWith(OUTPUT) && job.vehicle().outputs().containsKey(name.substring(0, dot))) {
            return;
        }
        if (item == null && unread.contains(dot < 0 ? name : name.substring(0, dot))) {
            return;
        }
        if (item == null) {
            Collection<String> known = new TreeSet<>(job.items().keySet());
            known.add(BODY);
            problems.unknown(here, dot < 0 ? "a terminal (an item, a dot and its terminal)" : "an item of this job",
                    dot < 0 ? name : name.substring(0, dot), known);
        } else if (!item.hasTerminal(name.substring(dot + 1))) {
            problems.unknown(here, "a terminal of " + item.id(), name.substring(dot + 1), item.terminals());
        }
    }

    private void wiring(Plan.Wiring wiring) {
        terminal(Shown.of(wiring.id()), wiring.at());
        Item item = job.itemOf(wiring.id());
        if (item != null && !(item instanceof Item.Amplifier && wiring.id().matches(".*\\.(ch|bridged)-.*"))) {
            problems.add(wiring.at(), "\"" + wiring.id() + "\" is no output that speakers hang on.",
                    "Name a channel of an amplifier, such as amp.ch-1 or amp.bridged-1, or an output of the vehicle sheet, such as radio-left.out.");
        }
        String text = wiring.net().orElse(null);
        if (text == null) {
            return;
        }
        try {
            CoilNet.parse(text).coils().forEach(coil -> terminal(Shown.of(coil), wiring.net().atOr(wiring.at())));
        } catch (IllegalArgumentException e) {
            problems.add(wiring.net().atOr(wiring.at()), "the net \"" + text + "\" cannot be read: " + e.getMessage() + ".",
                    "Join coils by + in series and | in parallel, such as sub.coil-1 | sub.coil-2.");
        }
    }

    private void pin(Plan.PinUse pin) {
        terminal(pin.connectedTo(), pin.at());
        int dot = pin.id().indexOf('.');
        if (dot < 0) {
            problems.add(pin.at(), "\"" + pin.id() + "\" does not say which cavity of a connector it is.",
                    "Write connector, dot and cavity, such as radio-a.4.");
        }
        if (!job.vehicleNamed() || dot < 0) {
            return;
        }
        Vehicle.Connector connector = job.vehicle().connectors().get(pin.id().substring(0, dot));
        if (connector == null) {
            problems.unknown(pin.at(), "a connector of the vehicle sheet", pin.id().substring(0, dot),
                    job.vehicle().connectors().keySet());
        } else if (!connector.cavities().containsKey(pin.id().substring(dot + 1))) {
            problems.unknown(pin.at(), "a cavity of " + connector.id(), pin.id().substring(dot + 1), connector.cavities().keySet());
        }
    }

    private void name(Shown<String> name, At at, String noun, Collection<String> known) {
        String word = name.orElse(null);
        if (word != null && !known.contains(word)) {
            problems.unknown(name.atOr(at), noun, word, known);
        }
    }

    private void names(Shown<List<String>> names, At at, String noun, Collection<String> known) {
        names.orElse(List.of()).stream().filter(name -> !known.contains(name)).forEach(name -> problems.unknown(names.atOr(at), noun, name, known));
    }

    private void two(Shown<List<String>> names, At at, String noun, Collection<String> known) {
        names(names, at, noun, known);
        if (names.isGiven() && names.orElse(List.of()).size() != 2) {
            problems.add(names.atOr(at), "\"between\" needs two names.", "Write [ one, other ].");
        }
    }
}
