package bayproof.figure;

import static bayproof.figure.Input.quantities;
import static bayproof.figure.Input.quantity;
import static bayproof.figure.Input.word;
import static bayproof.units.Units.print;

import bayproof.figure.NumberFigure.Value;
import bayproof.figure.NumberFigure.Worked;
import bayproof.solve.Sums;
import bayproof.solve.sound.Draw;
import bayproof.solve.sound.Hearing;
import bayproof.solve.sound.Levels;
import bayproof.units.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Numbers of what amplifiers draw, of batteries and charging, and of people who hear the result. */
final class SupplyNumbers {
    private static final List<String> LEVELS = List.of("full-sine", "loud", "normal", "idle");

    private SupplyNumbers() {
    }

    static Input outputClass() {
        return word("class", List.of("D", "AB"), "class of the output stage");
    }

    static Input efficiency() {
        return quantity("efficiency", Dimension.RATIO, "efficiency at full sine").optional();
    }

    static List<NumberFigure> all() {
        return List.of(
                new NumberFigure("draw", "current that an amplifier draws", List.of(outputClass(), quantity("power", Dimension.POWER, "output at full sine into the planned loads"),
                        word("level", LEVELS, "how hard it works").or("loud"), efficiency(), quantity("idle", Dimension.CURRENT, "idle draw").or("0 A"),
                        quantity("volts", Dimension.VOLTAGE, "supply volts").optional()),
                        "class=D power=800 W level=loud idle=1 A", "I = P/(efficiency x V), class AB falling with the square root of the level: textbook", SupplyNumbers::draw),
                new NumberFigure("plausible-power", "most output that an amplifier's own fuses let through", List.of(
                        quantities("fuses", Dimension.CURRENT, "its own fuses"), outputClass(), efficiency(), quantity("volts", Dimension.VOLTAGE, "supply volts").optional()),
                        "fuses=30 A, 30 A class=D", "P = I V x efficiency: open-encyclopedia text \"Audio power\"", given -> {
                            double best = best(given, true);
                            return Worked.of(plausibleWatts(given), Dimension.POWER, print(given.sum("fuses"), Dimension.CURRENT) + " x "
                                    + print(volts(given), Dimension.VOLTAGE) + " x " + print(best, Dimension.RATIO));
                        }),
                new NumberFigure("balance", "current that is left while the engine idles", List.of(quantity("output", Dimension.CURRENT, "output of the alternator at hot idle"),
                        quantity("own", Dimension.CURRENT, "load of the vehicle itself"), quantity("job", Dimension.CURRENT, "draw of the job at normal programme")),
                        "output=60 A own=25 A job=12 A", "the limit charge-balance", given -> Worked.of(balance(given), Dimension.CURRENT, balanceText(given))),
                new NumberFigure("standby-days", "time that a vehicle can stand parked", List.of(quantity("capacity", Dimension.CHARGE, "capacity of the battery"),
                        quantities("standby", Dimension.CURRENT, "standby currents of the vehicle and of each item")),
                        "capacity=70 Ah standby=20 mA, 3 mA", "the limit parked-share-of-capacity", given -> {
                            double seconds = lasts(given);
                            return new Worked(List.of(new Value("", seconds, Dimension.TIME)), String.format(java.util.Locale.ROOT, "That is %.1f days.", seconds / 86_400), lastsText(given));
                        }),
                new NumberFigure("exposure", "time allowed at a sound level", List.of(quantity("level", Dimension.LEVEL, "sound level where the ears are, A-weighted")),
                        "level=97 dBA", "29 CFR 1910.95 Appendix A (law at work) and NIOSH criteria document 98-126 (health advice)", given -> new Worked(List.of(
                                new Value("by law at work", criterion(given, "law").allowedSeconds(given.number("level")), Dimension.TIME),
                                new Value("by health advice", criterion(given, "health").allowedSeconds(given.number("level")), Dimension.TIME)),
                        "A caution, not a promise: wear protection and keep tests short.", criterionText(given, "law") + "; " + criterionText(given, "health"))),
                new NumberFigure("sound-dose", "sound dose of a day", doseInputs(), "level=95 dBA, 85 dBA time=1 h, 4 h",
                        "29 CFR 1910.95 Appendix A (law at work) and NIOSH criteria document 98-126 (health advice)", given -> {
                            double law = dose(given, "law");
                            return new Worked(List.of(new Value("by law at work", law, Dimension.RATIO), new Value("by health advice", dose(given, "health"), Dimension.RATIO),
                                    new Value("level for eight hours with the same dose by law", criterion(given, "law").eightHourLevel(law), Dimension.LEVEL)),
                                    "A caution, not a promise: wear protection and keep tests short.", doseText());
                        }));
    }

    // draw

    static double volts(Given given) {
        return given.has("volts") ? given.number("volts") : given.limit("amplifier-rating-volts");
    }

    /** The efficiency that was given, else an end of the window of its class. */
    private static double best(Given given, boolean good) {
        if (given.has("efficiency")) {
            return given.number("efficiency");
        }
        var window = given.named(given.word("class").equals("D") ? "efficiency-class-d" : "efficiency-class-ab");
        return good ? window.high() : window.low();
    }

    private static Worked draw(Given given) {
        double share = switch (given.word("level")) {
            case "full-sine" -> 1;
            case "loud" -> given.limit("level-loud-programme");
            case "normal" -> given.limit("level-normal-programme");
            default -> 0;
        };
        double full = best(given, false);
        double amperes = Draw.amplifierAmperes(given.number("idle"), given.number("power"), given.word("class").equals("D"), full, share, volts(given));
        double output = given.number("power") * share;
        List<Value> values = new ArrayList<>(List.of(new Value("", amperes, Dimension.CURRENT),
                new Value("heat in the amplifier", Draw.heatWatts(amperes * volts(given), output), Dimension.POWER)));
        if (share > 0) {
            values.add(new Value("room above this level", Levels.headroomDecibels(share), Dimension.LEVEL));
        }
        return new Worked(values, given.has("efficiency") ? "" : "Efficiency taken at the poor end of its window, because none is given.",
                share == 0 ? "idle draw alone" : print(output, Dimension.POWER) + " / (" + print(Draw.efficiency(given.word("class").equals("D"), full, share), Dimension.RATIO)
                        + " x " + print(volts(given), Dimension.VOLTAGE) + ") + " + print(given.number("idle"), Dimension.CURRENT));
    }

    static double plausibleWatts(Given given) {
        return Draw.plausibleWatts(given.sum("fuses"), volts(given), best(given, true));
    }

    // batteries and charging

    static double balance(Given given) {
        return Sums.leftAmperes(given.number("output"), given.number("own") + given.number("job"));
    }

    static String balanceText(Given given) {
        return print(given.number("output"), Dimension.CURRENT) + " - " + print(given.number("own"), Dimension.CURRENT) + " - " + print(given.number("job"), Dimension.CURRENT);
    }

    static double lasts(Given given) {
        return Sums.lastsSeconds(given.limit("parked-share-of-capacity"), given.number("capacity"), given.sum("standby"));
    }

    static String lastsText(Given given) {
        return print(given.limit("parked-share-of-capacity"), Dimension.RATIO) + " of " + print(given.number("capacity"), Dimension.CHARGE) + " over "
                + print(given.sum("standby"), Dimension.CURRENT);
    }

    // hearing

    static List<Input> doseInputs() {
        return List.of(quantities("level", Dimension.LEVEL, "sound levels where the ears are, A-weighted"), quantities("time", Dimension.TIME, "time at each of them"));
    }

    private static Hearing.Criterion criterion(Given given, String rule) {
        return new Hearing.Criterion(given.limit("hearing-level-" + rule), given.limit("hearing-exchange-" + rule));
    }

    private static String criterionText(Given given, String rule) {
        return "8 h / 2^((L - " + print(given.limit("hearing-level-" + rule), Dimension.LEVEL) + ") / " + print(given.limit("hearing-exchange-" + rule), Dimension.LEVEL) + ")";
    }

    /** @throws FigureMistake where levels and times do not pair */
    static double dose(Given given, String rule) throws FigureMistake {
        List<Double> levels = given.numbers("level");
        List<Double> times = given.numbers("time");
        if (levels.size() != times.size()) {
            throw FigureMistake.of("There are " + levels.size() + " levels and " + times.size() + " times.", "Write one time for each level, in the same order.");
        }
        List<Hearing.Exposure> heard = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            heard.add(new Hearing.Exposure(levels.get(i), times.get(i)));
        }
        return criterion(given, rule).dose(heard);
    }

    static String doseText() {
        return "time at each level over the time allowed there, added up";
    }
}
