package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A piece of equipment: what its part says, overlaid by what the plan or the vehicle sheet says of this one.
 * Its kind decides which terminals it has and which facts are asked for.
 */
public sealed interface Item {
    String id();

    String path();

    At at();

    /** Id of the place where it sits; a source of the vehicle sheet has one as well. */
    Shown<String> place();

    /** Names of its terminals; a name that ends in {@code *} stands for any ending. */
    List<String> terminals();

    /** Item kinds by the word used in files. */
    Map<String, Class<? extends Item>> KINDS = new TreeMap<>(Map.of(
            "battery", Battery.class, "alternator", Alternator.class, "fuse", Fuse.class, "fuse-block", FuseBlock.class,
            "amplifier", Amplifier.class, "interface", Interface.class, "speaker", Speaker.class,
            "ground-point", GroundPoint.class, "accessory", Accessory.class, "harness", Harness.class));

    /** A battery. Each of its posts is a terminal. */
    record Battery(String id, String path, At at,
                   @Field(key = "place", says = "where the battery sits") Shown<String> place,
                   @Field(key = "rest", says = "battery volts at rest, hours after the last charge", in = Dimension.VOLTAGE)
                   Shown<Double> restVolts,
                   @Field(key = "resistance", says = "internal resistance of the battery", in = Dimension.RESISTANCE)
                   Shown<Double> internalOhms,
                   @Field(key = "acceptance", says = "most current the battery takes while charging", in = Dimension.CURRENT, zero = true)
                   Shown<Double> acceptanceAmperes) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("positive", "negative");
        }
    }

    /** An alternator; its case is its negative terminal. */
    record Alternator(String id, String path, At at,
                      @Field(key = "place", says = "where the alternator sits") Shown<String> place,
                      @Field(key = "rated", says = "rated output on the alternator's label", in = Dimension.CURRENT)
                      Shown<Double> ratedAmperes,
                      @Field(key = "idle-output", says = "alternator output at hot idle", in = Dimension.CURRENT, zero = true)
                      Shown<Double> idleAmperes,
                      @Field(key = "set-point", says = "charging volts at the alternator", in = Dimension.VOLTAGE)
                      Shown<Double> setVolts) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("output", "case");
        }
    }

    /** A fuse in its holder. */
    record Fuse(String id, String path, At at,
                @Field(key = "place", says = "where the fuse holder sits") Shown<String> place,
                @Field(key = "rating", says = "rating of the fuse", in = Dimension.CURRENT) Shown<Double> ratingAmperes,
                @Field(key = "resistance", says = "resistance of fuse and holder", in = Dimension.RESISTANCE)
                Shown<Double> ohms) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("in", "out");
        }
    }

    /** A distribution block with a fuse in each outlet. */
    record FuseBlock(String id, String path, At at,
                     @Field(key = "place", says = "where the fuse block sits") Shown<String> place,
                     @Field(key = "fuses", says = "rating of the fuse in this outlet", in = Dimension.CURRENT)
                     Map<String, Shown<Double>> fuses,
                     @Field(key = "resistance", says = "resistance from inlet to outlet with its fuse", in = Dimension.RESISTANCE)
                     Shown<Double> ohms) implements Item {
        @Override
        public List<String> terminals() {
            List<String> names = new java.util.ArrayList<>(List.of("in"));
            names.addAll(fuses.keySet());
            return names;
        }
    }

    /** An amplifier. */
    record Amplifier(String id, String path, At at,
                     @Field(key = "place", says = "where the amplifier is mounted") Shown<String> place,
                     @Field(key = "class", says = "class of the output stage", words = {"AB", "D"}) Shown<String> outputClass,
                     @Field(key = "channels", says = "number of channels") Shown<Integer> channels,
                     @Field(key = "minimum-load", says = "least rated load of one channel", in = Dimension.RESISTANCE)
                     Shown<Double> minimumLoadOhms,
                     @Field(key = "minimum-load-bridged", says = "least rated load of a bridged pair", in = Dimension.RESISTANCE)
                     Shown<Double> minimumLoadBridgedOhms,
                     @Field(key = "rated-output", says = "continuous output of one channel into the rated load", in = Dimension.POWER)
                     Shown<Double> ratedWatts,
                     @Field(key = "rated-load", says = "load at which the output is rated", in = Dimension.RESISTANCE)
                     Shown<Double> ratedLoadOhms,
                     @Field(key = "efficiency", says = "efficiency at rated output") Shown<Double> efficiency,
                     @Field(key = "idle-draw", says = "current at idle", in = Dimension.CURRENT, zero = true) Shown<Double> idleAmperes,
                     @Field(key = "minimum-volts", says = "supply volts below which it shuts down", in = Dimension.VOLTAGE)
                     Shown<Double> minimumVolts) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("supply", "ground", "turn-on", "signal-*", "ch-*", "bridged-*");
        }
    }

    /** A module between the factory radio and the equipment. */
    record Interface(String id, String path, At at,
                     @Field(key = "place", says = "where the interface sits") Shown<String> place,
                     @Field(key = "draw", says = "supply current in use", in = Dimension.CURRENT, zero = true) Shown<Double> drawAmperes,
                     @Field(key = "minimum-volts", says = "supply volts below which it shuts down", in = Dimension.VOLTAGE)
                     Shown<Double> minimumVolts,
                     @Field(key = "made-for", says = "radios and connectors the interface is listed for")
                     Map<String, MadeFor> madeFor) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("supply", "ground", "memory", "ignition", "wake", "reference", "turn-on", "signal-*", "speaker-*");
        }
    }

    /** One line of an interface's list of vehicles and radios. */
    record MadeFor(String path, At at,
                   @Field(key = "radio", says = "radio variant it is listed for") Shown<String> radio,
                   @Field(key = "connectors", says = "connector families it plugs into") Shown<List<String>> connectors,
                   @Field(key = "factory-amplifier", says = "whether it is listed for a factory amplifier",
                          words = {"none", "fitted"}) Shown<String> factoryAmplifier) {
    }

    /** A speaker with its voice coils. */
    record Speaker(String id, String path, At at,
                   @Field(key = "place", says = "where the speaker is mounted") Shown<String> place,
                   @Field(key = "coils", says = "nominal impedance of this voice coil", in = Dimension.RESISTANCE)
                   Map<String, Shown<Double>> coils) implements Item {
        @Override
        public List<String> terminals() {
            return List.copyOf(coils.keySet());
        }
    }

    /** A point where returns meet the body. */
    record GroundPoint(String id, String path, At at,
                       @Field(key = "place", says = "where the ground point is") Shown<String> place,
                       @Field(key = "body-return", says = "resistance from this point through the body to the battery strap",
                              in = Dimension.RESISTANCE) Shown<Double> bodyReturnOhms) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("stud");
        }
    }

    /** Any other powered thing, with a current draw of its own. */
    record Accessory(String id, String path, At at,
                     @Field(key = "place", says = "where it sits") Shown<String> place,
                     @Field(key = "draw", says = "supply current in use", in = Dimension.CURRENT, zero = true) Shown<Double> drawAmperes,
                     @Field(key = "minimum-volts", says = "supply volts below which it shuts down", in = Dimension.VOLTAGE)
                     Shown<Double> minimumVolts) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("supply", "ground");
        }
    }

    /** An adapter lead that plugs between factory connectors. */
    record Harness(String id, String path, At at,
                   @Field(key = "place", says = "where the adapter lead sits") Shown<String> place,
                   @Field(key = "connectors", says = "connector families the lead plugs between") Shown<List<String>> connectors)
            implements Item {
        @Override
        public List<String> terminals() {
            return List.of();
        }
    }

    /** Whether a terminal of that name exists. */
    default boolean hasTerminal(String name) {
        return terminals().stream().anyMatch(known -> known.endsWith("*")
                ? name.startsWith(known.substring(0, known.length() - 1)) && name.length() >= known.length()
                : known.equals(name));
    }
}
