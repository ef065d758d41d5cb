package bayproof.figure;

import static bayproof.figure.Input.count;
import static bayproof.figure.Input.number;
import static bayproof.figure.Input.quantity;
import static bayproof.figure.Input.word;

import bayproof.solve.acoustic.Air;
import bayproof.solve.acoustic.ClosedBox;
import bayproof.solve.acoustic.Driver;
import bayproof.solve.acoustic.Enclosure;
import bayproof.solve.acoustic.Filter;
import bayproof.solve.acoustic.Filter.Pass;
import bayproof.solve.acoustic.Filter.Shape;
import bayproof.solve.acoustic.PlayedBand;
import bayproof.solve.acoustic.Port;
import bayproof.solve.acoustic.VentedBox;
import bayproof.units.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Speakers, boxes, ports and filters out of values on a command line. */
final class DriverGiven {
    /** Only a speaker's own response asks for it, and there it cancels out. */
    private static final double ANY_CONE = 0.03;
    private static final List<String> SHAPES = List.of("butterworth", "linkwitz-riley");

    private DriverGiven() {
    }

    // speakers and boxes

    static List<Input> speaker() {
        return List.of(quantity("resonance", Dimension.FREQUENCY, "free-air resonance of the speaker, fs"), number("mechanical-q", "mechanical Q at resonance, Qms"),
                number("electrical-q", "electrical Q at resonance, Qes"), quantity("equivalent", Dimension.VOLUME, "volume of air as stiff as the suspension, Vas"),
                quantity("air", Dimension.VOLUME, "net volume of air behind the speaker"), quantity("resistance", Dimension.RESISTANCE, "DC resistance of the voice coil"),
                quantity("wire", Dimension.RESISTANCE, "both conductors of its cable").or("0 ohm"));
    }

    static List<Input> driven() {
        List<Input> inputs = new ArrayList<>(speaker());
        inputs.add(quantity("cone", Dimension.AREA, "area of the cone, Sd"));
        inputs.add(quantity("volts", Dimension.VOLTAGE, "RMS volts of a full sine at the amplifier"));
        inputs.addAll(filter("high-pass", "high-pass before the speaker"));
        inputs.addAll(filter("low-pass", "low-pass before the speaker"));
        return inputs;
    }

    static Driver driver(Given given) {
        return new Driver(given.number("resonance"), given.number("mechanical-q"), given.number("electrical-q"), given.number("equivalent"),
                given.has("cone") ? given.number("cone") : ANY_CONE, given.number("resistance")).withSeries(given.number("wire"));
    }

    /** A vented box where a port is given, else a closed one. */
    static Enclosure box(Given given) {
        return given.has("diameter") ? vented(given) : new ClosedBox(driver(given), given.number("air"));
    }

    static VentedBox vented(Given given) {
        return new VentedBox(driver(given), given.number("air"), port(given), 1 / given.limit("box-leakage"));
    }

    static PlayedBand band(Given given) throws FigureMistake {
        List<Filter> filters = new ArrayList<>();
        if (given.has("high-pass")) {
            filters.add(filter(given, "high-pass", Pass.HIGH));
        }
        if (given.has("low-pass")) {
            filters.add(filter(given, "low-pass", Pass.LOW));
        }
        return new PlayedBand(given.limit("lowest-programme"), given.limit("highest-box-tone"), given.number("volts"), filters);
    }

    // ports

    static List<Input> port() {
        return List.of(quantity("diameter", Dimension.LENGTH, "diameter of the port"), quantity("length", Dimension.LENGTH, "length of the port"),
                count("ports", "number of such ports").or("1"));
    }

    static Port port(Given given) {
        return new Port(given.count("ports", 1), Port.roundArea(given.number("diameter")), given.number("length"));
    }

    static double tuning(Given given) {
        return port(given).tuningHertz(Air.ROOM, given.number("air"));
    }

    // filters

    /** A filter that may be left out. */
    static List<Input> filter(String pass, String says) {
        return List.of(quantity(pass, Dimension.FREQUENCY, "corner of the " + says).optional(), word(pass + "-shape", SHAPES, "family of that filter").or("linkwitz-riley"),
                count(pass + "-order", "its order, 6 dB an octave each").or("4"));
    }

    static Filter filter(Given given, String pass, Pass side) throws FigureMistake {
        Shape shape = given.word(pass + "-shape").equals("butterworth") ? Shape.BUTTERWORTH : Shape.LINKWITZ_RILEY;
        int order = given.count(pass + "-order", 0);
        if (!Filter.exists(shape, order)) {
            throw FigureMistake.of("There is no " + given.word(pass + "-shape") + " filter of order " + order + ".",
                    "Orders go from 1 to " + Filter.MOST_ORDER + "; a Linkwitz-Riley filter is of even order.");
        }
        return new Filter(shape, order, side, given.number(pass));
    }
}
