package bayproof.figure;

import static bayproof.figure.Input.quantities;
import static bayproof.figure.Input.quantity;
import static bayproof.figure.Input.size;
import static bayproof.figure.Input.yesNo;
import static bayproof.figure.RuleFigure.AT;
import static bayproof.figure.RuleFigure.SUBJECT;
import static bayproof.units.Units.print;

import bayproof.demand.Limit;
import bayproof.figure.RuleFigure.Asked;
import bayproof.read.SharedTables;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.BatteryLink;
import bayproof.vocabulary.BodyStrap;
import bayproof.vocabulary.ChargeSource;
import bayproof.vocabulary.ChargedSleeper;
import bayproof.vocabulary.FeedOutput;
import bayproof.vocabulary.FittedBattery;
import bayproof.vocabulary.LoadedRun;
import bayproof.vocabulary.ParkedBattery;
import bayproof.vocabulary.PlacedBattery;
import bayproof.vocabulary.PowerCable;
import bayproof.vocabulary.PoweredItem;
import bayproof.vocabulary.ReturnPath;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SignalReturn;
import bayproof.vocabulary.SourceKind;
import bayproof.vocabulary.StartingItem;
import bayproof.vocabulary.StrapBesideFeed;
import bayproof.vocabulary.UsedSource;
import bayproof.vocabulary.VoltsAtItem;
import java.util.ArrayList;
import java.util.List;

/** Rules on conductors, grounds, supply and batteries, asked by hand. */
final class SupplyRules {
    private static final Shown<Boolean> YES = Shown.of(true);
    private static final Shown<String> NOTHING = Shown.of("");
    private static final Shown<Double> ZERO = Shown.of(0.0);

    private SupplyRules() {
    }

    static List<RuleFigure> all() {
        List<RuleFigure> all = new ArrayList<>(conductors());
        all.addAll(batteries());
        all.addAll(drops());
        all.addAll(places());
        return all;
    }

    private static List<RuleFigure> conductors() {
        List<Input> current = List.of(quantity("current", Dimension.CURRENT, "current at full sine"), size("size", "size of the conductor"),
                ConductorNumbers.insulation(), ConductorNumbers.ambient(), ConductorNumbers.metal());
        String example = "current=60 A size=4 AWG insulation=105 °C ambient=50 °C";
        return List.of(
                new RuleFigure("conductor-carries-current", current, example, given -> new Asked(
                        new LoadedRun(SUBJECT, AT, Shown.of(ofAmpacity(given)), null), ofAmpacityText(given))),
                new RuleFigure("body-strap-carries-return", current, example, given -> new Asked(
                        new BodyStrap(SUBJECT, AT, Shown.of(ofAmpacity(given))), ofAmpacityText(given))),
                new RuleFigure("return-as-large-as-feed", List.of(size("return", "size of the return"), size("feed", "size of the feed")),
                        "return=8 AWG feed=4 AWG", given -> new Asked(new ReturnPath(SUBJECT, AT, Shown.of(Sums.share(area(given.word("return")), area(given.word("feed")))), null),
                                given.word("return") + " / " + given.word("feed") + ", by area")),
                new RuleFigure("insulation-fits-the-heat", List.of(quantity("insulation", Dimension.TEMPERATURE, "temperature class of the insulation"),
                        quantity("zone", Dimension.TEMPERATURE, "hottest zone it passes")), "insulation=105 °C zone=50 °C", given -> Asked.of(
                        new PowerCable(SUBJECT, AT, given.shown("insulation"), given.shown("zone"), YES, YES, ZERO, YES, YES, null))),
                new RuleFigure("wire-not-too-thin", List.of(size("size", "size of the conductor"), yesNo("sheathed", "whether all of it lies in a closed tube or enclosure")),
                        "size=18 AWG sheathed=no", given -> new Asked(new PowerCable(SUBJECT, AT, ZERO, ZERO, YES, given.shownYes("sheathed"),
                                Shown.of(area(given.word("size"))), YES, YES, null), given.word("size") + ", by area")),
                new RuleFigure("body-strap-as-large-as-feed", List.of(size("strap", "size of the strap"), size("feed", "size of the largest feed")), "strap=25 mm2 feed=4 AWG",
                        given -> new Asked(new StrapBesideFeed(SUBJECT, AT, YES, Shown.of(Sums.share(area(given.word("strap")), area(given.word("feed")))),
                                Shown.of(area(given.word("strap")))), given.word("strap") + " / " + given.word("feed") + ", by area")),
                new RuleFigure("one-signal-ground", List.of(quantity("volts", Dimension.VOLTAGE, "volts between the item's ground point and the signal ground")),
                        "volts=30 mV", given -> Asked.of(new SignalReturn(SUBJECT, AT, given.shown("volts")))));
    }

    private static double ofAmpacity(Given given) throws FigureMistake {
        return Sums.share(given.number("current"), ConductorNumbers.ampacity(given));
    }

    private static String ofAmpacityText(Given given) throws FigureMistake {
        return print(given.number("current"), Dimension.CURRENT) + " / " + print(ConductorNumbers.ampacity(given), Dimension.CURRENT) + " (" + ConductorNumbers.ampacityText(given) + ")";
    }

    private static double area(String size) {
        return SharedTables.conductors().areaSquareMetres(size);
    }

    // drops

    private static List<RuleFigure> drops() {
        String example = "current=30 A size=4 AWG length=8 m";
        return List.of(
                new RuleFigure("drop-loud-programme", ConductorNumbers.dropInputs("loud programme"), example, given -> new Asked(
                        new PoweredItem(SUBJECT, AT, Shown.of(drop(given)), ZERO, null), dropText(given))),
                new RuleFigure("drop-full-sine", ConductorNumbers.dropInputs("full sine"), example, given -> new Asked(
                        new PoweredItem(SUBJECT, AT, ZERO, Shown.of(drop(given)), null), dropText(given))),
                new RuleFigure("rides-through-a-start", List.of(quantity("volts", Dimension.VOLTAGE, "volts left at the item while the engine starts"),
                        quantity("least", Dimension.VOLTAGE, "volts below which it shuts down")), "volts=8.8 V least=8 V", given -> Asked.of(
                        new StartingItem(SUBJECT, AT, YES, Shown.of("rides-through"), YES, given.shown("volts"), given.shown("least"), NOTHING, YES, YES))));
    }

    private static double drop(Given given) {
        return Sums.share(ConductorNumbers.lostVolts(given), given.limit("drop-reference"));
    }

    private static String dropText(Given given) {
        return ConductorNumbers.dropText(given) + " / " + print(given.limit("drop-reference"), Dimension.VOLTAGE);
    }

    // batteries

    private static List<RuleFigure> batteries() {
        Input output = quantity("output", Dimension.CURRENT, "output of the alternator");
        Input own = quantity("own", Dimension.CURRENT, "load of the vehicle itself");
        Input job = quantity("job", Dimension.CURRENT, "draw of the job at normal programme");
        return List.of(
                new RuleFigure("charge-balance-idle", List.of(output, own, job), "output=60 A own=25 A job=12 A", given -> new Asked(new ChargeSource(SUBJECT, AT,
                        SourceKind.ALTERNATOR, Shown.of(SupplyNumbers.balance(given)), ZERO, ZERO), SupplyNumbers.balanceText(given))),
                new RuleFigure("converter-balance", List.of(quantity("output", Dimension.CURRENT, "continuous output of the converter"), own, job),
                        "output=120 A own=45 A job=12 A", given -> new Asked(new ChargeSource(SUBJECT, AT, SourceKind.TRACTION_CONVERTER,
                        Shown.of(SupplyNumbers.balance(given)), ZERO, ZERO), SupplyNumbers.balanceText(given))),
                new RuleFigure("alternator-fills-battery", List.of(output, own, job, quantity("battery", Dimension.CURRENT, "what the start battery takes")),
                        "output=120 A own=25 A job=12 A battery=20 A", given -> new Asked(new ChargeSource(SUBJECT, AT, SourceKind.ALTERNATOR, ZERO,
                        Shown.of(SupplyNumbers.balance(given)), given.shown("battery")), SupplyNumbers.balanceText(given))),
                new RuleFigure("link-between-batteries-strong-enough", List.of(quantity("current", Dimension.CURRENT, "largest current that can pass it"),
                        quantity("rated", Dimension.CURRENT, "what it is made for")), "current=40 A rated=30 A", given -> Asked.of(
                        new BatteryLink(SUBJECT, AT, given.shown("current"), given.shown("rated")))),
                new RuleFigure("battery-charge-volts-fit", List.of(quantity("volts", Dimension.VOLTAGE, "highest charging volts that reach the battery"),
                        quantity("most", Dimension.VOLTAGE, "highest charging volts of its data sheet")), "volts=14.8 V most=14.7 V", given -> Asked.of(
                        battery(given.shown("volts"), ZERO, given.shown("most"), ZERO))),
                new RuleFigure("battery-fully-charged", List.of(quantity("volts", Dimension.VOLTAGE, "least charging volts that reach the battery"),
                        quantity("least", Dimension.VOLTAGE, "least charging volts for a full charge")), "volts=13.8 V least=14.2 V", given -> Asked.of(
                        battery(ZERO, given.shown("volts"), ZERO, given.shown("least")))),
                new RuleFigure("wakes-not-on-parked-charge", List.of(quantity("sleeps-below", Dimension.VOLTAGE, "supply volts below which it falls asleep"),
                        quantity("charge", Dimension.VOLTAGE, "highest volts that the parked vehicle charges with")), "sleeps-below=13.2 V charge=13.8 V", given -> Asked.of(
                        new ChargedSleeper(SUBJECT, AT, YES, YES, given.shown("sleeps-below"), given.shown("charge")))),
                new RuleFigure("parked-days", List.of(quantity("capacity", Dimension.CHARGE, "capacity of the battery"), quantities("standby", Dimension.CURRENT,
                        "standby currents of the vehicle and of each item"), quantity("wished", Dimension.TIME, "time that the vehicle is to stand parked")),
                        "capacity=70 Ah standby=20 mA, 3 mA wished=21 d", given -> new Asked(new ParkedBattery(SUBJECT, AT, true, ZERO, YES,
                        Shown.of(SupplyNumbers.lasts(given)), given.shown("wished")), SupplyNumbers.lastsText(given))),
                new RuleFigure("standby-within-figure", List.of(quantities("standby", Dimension.CURRENT, "standby currents of the vehicle and of each item"),
                        quantity("allowed", Dimension.CURRENT, "the vehicle maker's figure; left out, the usual one").optional()), "standby=20 mA, 3 mA allowed=30 mA",
                        given -> new Asked(new ParkedBattery(SUBJECT, AT, true, Shown.of(Sums.share(given.sum("standby"), allowed(given))), YES, ZERO, ZERO),
                                print(given.sum("standby"), Dimension.CURRENT) + " / " + print(allowed(given), Dimension.CURRENT))));
    }

    /** Where nobody gave the maker's figure the lower end of the usual one counts. */
    private static double allowed(Given given) {
        Limit usual = given.named("standby-usual");
        return given.has("allowed") ? given.number("allowed") : usual.low();
    }

    // sources and batteries in their place

    private static List<RuleFigure> places() {
        Input volts = quantity("volts", Dimension.VOLTAGE, "highest volts that the source gives");
        return List.of(
                new RuleFigure("no-source-above-sixty-volts", List.of(volts), "volts=14.8 V", given -> Asked.of(new UsedSource(SUBJECT, AT, YES, given.shown("volts")))),
                new RuleFigure("stands-the-highest-volts", List.of(volts, quantity("made-for", Dimension.VOLTAGE, "highest supply volts it is made for")),
                        "volts=14.8 V made-for=16 V", given -> Asked.of(new VoltsAtItem(SUBJECT, AT,
                                Shown.of(Math.max(given.number("volts"), given.limit("highest-supply-volts"))), given.shown("made-for")))),
                new RuleFigure("battery-not-charged-too-hot", List.of(quantity("zone", Dimension.TEMPERATURE, "highest temperature of the zone"),
                        quantity("most", Dimension.TEMPERATURE, "highest temperature at which it may be charged")), "zone=40 °C most=50 °C", given -> Asked.of(
                        placed(given.shown("zone"), given.shown("most"), ZERO, ZERO, ZERO))),
                new RuleFigure("battery-not-used-too-cold", List.of(quantity("coldest", Dimension.TEMPERATURE, "lowest temperature the vehicle is used in"),
                        quantity("least", Dimension.TEMPERATURE, "lowest temperature at which it may be drained")), "coldest=-15 °C least=-20 °C", given -> Asked.of(
                        placed(ZERO, ZERO, given.shown("coldest"), given.shown("least"), ZERO))),
                new RuleFigure("battery-held-down", List.of(quantity("holds", Dimension.FORCE, "force that all its fasteners hold together"),
                        quantity("mass", Dimension.MASS, "mass of the battery")), "holds=400 N mass=28 kg", given -> new Asked(
                        placed(ZERO, ZERO, ZERO, ZERO, Shown.of(Sums.share(given.number("holds"), holdDown(given)))),
                        print(given.number("holds"), Dimension.FORCE) + " / " + print(holdDown(given), Dimension.FORCE))),
                new RuleFigure("accessory-terminal-carries-load", List.of(quantities("draws", Dimension.CURRENT, "draw of each thing that hangs on it, at full sine"),
                        quantity("most", Dimension.CURRENT, "current that the vehicle maker gives it")), "draws=5 A, 1.7 A most=10 A", given -> new Asked(
                        new FeedOutput(SUBJECT, AT, YES, Shown.of(given.sum("draws")), given.shown("most")), "added up")));
    }

    /** Force that a hold-down has to stand. */
    private static double holdDown(Given given) {
        return Sums.holdDownNewtons(given.number("mass"), given.limit("battery-hold-force"), given.limit("battery-hold-weights"));
    }

    private static PlacedBattery placed(Shown<Double> hottest, Shown<Double> mostCharge, Shown<Double> coldest, Shown<Double> leastUse, Shown<Double> held) {
        return new PlacedBattery(SUBJECT, AT, YES, NOTHING, YES, hottest, mostCharge, coldest, leastUse, held, null);
    }

    private static FittedBattery battery(Shown<Double> highest, Shown<Double> lowest, Shown<Double> most, Shown<Double> least) {
        return new FittedBattery(SUBJECT, AT, highest, lowest, most, least, YES, false, NOTHING, YES, YES, YES);
    }
}
