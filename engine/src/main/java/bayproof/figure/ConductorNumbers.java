package bayproof.figure;

import static bayproof.figure.Input.quantity;
import static bayproof.figure.Input.size;
import static bayproof.figure.Input.word;
import static bayproof.units.Units.print;

import bayproof.demand.Limit;
import bayproof.figure.NumberFigure.Value;
import bayproof.figure.NumberFigure.Worked;
import bayproof.read.SharedTables;
import bayproof.solve.Conductors;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Numbers of conductors and fuses. */
final class ConductorNumbers {
    static final String AMPACITY = "33 CFR 183.425 Table 5, by analogy (boats); hotter places derived";
    private static final String RESISTANCE = "ASTM B258 and IACS copper for AWG, IEC 60228 class 5 for mm2; times (234.5 + T)/254.5";

    private ConductorNumbers() {
    }

    static Input metal() {
        return word("metal", List.of("copper", "clad-10", "clad-15"), "metal of the conductor, clad-10 and clad-15 being copper-clad aluminum").or("copper");
    }

    private static Input temperature() {
        return quantity("temperature", Dimension.TEMPERATURE, "temperature of the conductor").or("20 °C");
    }

    static Input insulation() {
        return quantity("insulation", Dimension.TEMPERATURE, "what the insulation is rated for");
    }

    static Input ambient() {
        return quantity("ambient", Dimension.TEMPERATURE, "hottest ambient along the conductor");
    }

    static List<NumberFigure> all() {
        return List.of(
                new NumberFigure("resistance", "resistance of one conductor", List.of(size("size", "its size"),
                        quantity("length", Dimension.LENGTH, "its length"), metal(), temperature()),
                        "size=4 AWG length=5 m", RESISTANCE, given -> {
                            double ohms = ohms(given);
                            return Worked.of(ohms, Dimension.RESISTANCE, resistanceText(given));
                        }),
                new NumberFigure("drop", "volts lost on the way to an item and back", List.of(
                        quantity("current", Dimension.CURRENT, "the current"), size("size", "size of the conductors"),
                        quantity("length", Dimension.LENGTH, "length of feed and return together"), metal(), temperature()),
                        "current=30 A size=4 AWG length=10 m", "Ohm's law; " + RESISTANCE, given -> {
                            double lost = lostVolts(given);
                            double reference = given.limit("drop-reference");
                            return new Worked(List.of(new Value("", lost, Dimension.VOLTAGE),
                                    new Value("as a share of " + print(reference, Dimension.VOLTAGE), Sums.share(lost, reference), Dimension.RATIO)), "", dropText(given));
                        }),
                new NumberFigure("ampacity", "current that a conductor may carry all the time", List.of(size("size", "its size"), insulation(), ambient(), metal()),
                        "size=4 AWG insulation=105 °C ambient=50 °C", AMPACITY,
                        given -> Worked.of(ampacity(given), Dimension.CURRENT, ampacityText(given))),
                new NumberFigure("fuse-window", "fuse ratings that fit a load and a conductor", List.of(
                        quantity("loud", Dimension.CURRENT, "current at loud programme"), quantity("sine", Dimension.CURRENT, "current at full sine"),
                        size("size", "size of the conductor that the fuse guards"), insulation(), ambient(), metal()),
                        "loud=30 A sine=60 A size=4 AWG insulation=105 °C ambient=50 °C",
                        "the limits fuse-load-loud, fuse-load-sine and fuse-share-of-ampacity; " + AMPACITY, ConductorNumbers::fuseWindow));
    }

    private static Conductors conductors() {
        return SharedTables.conductors();
    }

    private static double ohmsPerMetre(Given given) {
        try {
            return conductors().ohmsPerMetre(given.word("size"), given.word("metal"), given.number("temperature"));
        } catch (IllegalArgumentException e) {
            return Double.NaN;
        }
    }

    private static double ohms(Given given) {
        return ohmsPerMetre(given) * given.number("length");
    }

    private static String resistanceText(Given given) {
        return print(given.number("length"), Dimension.LENGTH) + " x " + print(ohmsPerMetre(given), Dimension.RESISTANCE) + " a meter of " + given.word("size") + ", "
                + given.word("metal") + ", at " + print(given.number("temperature"), Dimension.TEMPERATURE);
    }

    /** Volts that a current loses in conductors of one size; their length counts feed and return. */
    static double lostVolts(Given given) {
        return given.number("current") * ohms(given);
    }

    static String dropText(Given given) {
        return print(given.number("current"), Dimension.CURRENT) + " x " + print(ohms(given), Dimension.RESISTANCE) + " (" + resistanceText(given) + ")";
    }

    /** Values that a drop in conductors of one size is worked out from. */
    static List<Input> dropInputs(String level) {
        return List.of(quantity("current", Dimension.CURRENT, "the current at " + level), size("size", "size of the conductors"),
                quantity("length", Dimension.LENGTH, "length of feed and return together"), metal(), temperature());
    }

    /** @throws FigureMistake where there is no published figure, or nothing is left in that heat */
    static double ampacity(Given given) throws FigureMistake {
        OptionalDouble amperes = conductors().ampacityAmperes(given.word("size"), given.word("metal"), given.number("insulation"), given.number("ambient"));
        if (amperes.isEmpty()) {
            throw FigureMistake.of("There is no published current for " + given.word("size") + " with " + print(given.number("insulation"), Dimension.TEMPERATURE) + " insulation.",
                    "The table begins at 18 AWG and at its lowest insulation class.");
        }
        if (amperes.getAsDouble() == 0) {
            throw FigureMistake.of("It may carry no current at all: " + print(given.number("ambient"), Dimension.TEMPERATURE) + " uses up "
                    + print(given.number("insulation"), Dimension.TEMPERATURE) + " insulation.", "Plan another way or a higher insulation class.");
        }
        return amperes.getAsDouble();
    }

    static String ampacityText(Given given) {
        return given.word("size") + ", " + given.word("metal") + ", " + print(given.number("insulation"), Dimension.TEMPERATURE) + " insulation, hottest place "
                + print(given.number("ambient"), Dimension.TEMPERATURE);
    }

    private static Worked fuseWindow(Given given) throws FigureMistake {
        double carries = ampacity(given);
        double loud = given.limit("fuse-load-loud");
        double sine = given.limit("fuse-load-sine");
        List<Limit.Step> steps = given.named("fuse-share-of-ampacity").steps();
        double least = Math.max(given.number("loud") / loud, given.number("sine") / sine);
        double most = carries * steps.get(0).value();
        List<Double> fit = SharedTables.fuses().between(least, most);
        String remark = fit.isEmpty() ? "No rating that is made lies in it: thicker conductor first."
                : "Made and in it: " + fit.stream().map(rating -> print(rating, Dimension.CURRENT)).collect(Collectors.joining(", ")) + ".";
        if (fit.isEmpty() && steps.size() > 1) {
            List<Double> nearly = SharedTables.fuses().between(least, carries * steps.get(1).value());
            remark += nearly.isEmpty() ? "" : " Up to " + print(steps.get(1).value(), Dimension.RATIO) + " of the ampacity, where it is only advised otherwise: "
                    + nearly.stream().map(rating -> print(rating, Dimension.CURRENT)).collect(Collectors.joining(", ")) + ".";
        }
        return new Worked(List.of(new Value("least", least, Dimension.CURRENT), new Value("greatest", most, Dimension.CURRENT)), remark,
                "least: the larger of " + print(given.number("loud"), Dimension.CURRENT) + " / " + print(loud, Dimension.RATIO) + " and "
                        + print(given.number("sine"), Dimension.CURRENT) + " / " + print(sine, Dimension.RATIO) + "; greatest: " + print(carries, Dimension.CURRENT)
                        + " of " + ampacityText(given) + " x " + print(steps.get(0).value(), Dimension.RATIO));
    }
}
