package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A piece of equipment: what its part says, overlaid by what the plan or the vehicle sheet says of this one.
 * Its kind decides which terminals it has and which facts are asked for.
 */
public sealed interface Item permits Item.Battery, Item.Charger, Item.Fuse, Item.FuseBlock, Item.Powered, Item.Speaker,
        Item.GroundPoint, Item.GroundBar, Item.Joint, Item.Harness, Item.Converter, Item.Enclosure, Item.PassiveNetwork, Item.Relay,
        Item.LoadResistor {
    String id();

    String path();

    At at();

    /** Id of the place where it sits; a source of the vehicle sheet has one as well. */
    Shown<String> place();

    /** Mass, mount and room; null for kinds that are held by what they belong to. */
    default Fitting fitting() {
        return null;
    }

    /** How it is held; null for kinds that are held by what they belong to. */
    default Mount mount() {
        return fitting() == null ? null : fitting().mount();
    }

    /** What its terminals are; null for a kind that no cable with a terminal ends at. */
    default Studs studs() {
        return null;
    }

    /** Names of its terminals; a name that ends in {@code *} stands for any ending. */
    List<String> terminals();

    /** Item kinds by the word used in files. */
    Map<String, Class<? extends Item>> KINDS = kinds(
            "battery", Battery.class, "alternator", Alternator.class, "traction-converter", TractionConverter.class, "fuse", Fuse.class, "fuse-block", FuseBlock.class,
            "amplifier", Amplifier.class, "interface", Interface.class, "speaker", Speaker.class,
            "ground-point", GroundPoint.class, "ground-bar", GroundBar.class, "joint", Joint.class, "accessory", Accessory.class, "harness", Harness.class,
            "processor", Processor.class, "converter", Converter.class, "enclosure", Enclosure.class, "passive-network", PassiveNetwork.class,
            "relay", Relay.class, "load-resistor", LoadResistor.class);

    private static Map<String, Class<? extends Item>> kinds(Object... pairs) {
        Map<String, Class<? extends Item>> kinds = new TreeMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            kinds.put((String) pairs[i], ((Class<?>) pairs[i + 1]).asSubclass(Item.class));
        }
        return Collections.unmodifiableMap(kinds);
    }

    /** A battery. Each of its posts is a terminal. */
    record Battery(String id, String path, At at,
                   @Field(key = "place", says = "where the battery sits") Shown<String> place,
                   @Field(key = "rest", says = "battery volts at rest, hours after the last charge", in = Dimension.VOLTAGE)
                   Shown<Double> restVolts,
                   @Field(key = "resistance", says = "internal resistance of the battery", in = Dimension.RESISTANCE)
                   Shown<Double> internalOhms,
                   @Field(key = "acceptance", says = "most current the battery takes while charging", in = Dimension.CURRENT, zero = true)
                   Shown<Double> acceptanceAmperes,
                   @Field(key = "chemistry", says = "type of the battery", words = {"flooded", "agm", "gel", "lithium"})
                   Shown<String> chemistry,
                   @Field(key = "capacity", says = "capacity of the battery", in = Dimension.CHARGE) Shown<Double> capacityCoulombs,
                   @Field(key = "charge-volts-most", says = "highest charging volts its data sheet allows", in = Dimension.VOLTAGE)
                   Shown<Double> mostChargeVolts,
                   @Field(key = "charge-volts-least", says = "least charging volts for a full charge", in = Dimension.VOLTAGE)
                   Shown<Double> leastChargeVolts,
                   @Field(key = "vent", says = "where its gas goes", words = {"vented-box", "tube-outside", "engine-bay", "none"})
                   Shown<String> vent,
                   @Field(key = "cold-cut-off", says = "whether its board blocks charging below freezing", words = {"yes", "no"})
                   Shown<String> coldCutOff,
                   @Field(key = "charge-hottest", says = "highest temperature its data sheet lets it be charged at", in = Dimension.TEMPERATURE)
                   Shown<Double> hottestChargeCelsius,
                   @Field(key = "use-coldest", says = "lowest temperature its data sheet lets it be drained at", in = Dimension.TEMPERATURE)
                   Shown<Double> coldestUseCelsius,
                   @Field(key = "charging", says = "its volts while everything plays loud") ChargingTest charging,
                   @Inline Fitting fitting, @Inline Studs studs) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("positive", "negative");
        }
    }

    /** What feeds the vehicle's supply and charges its battery: it holds a set point at its output; its case is its negative terminal. */
    sealed interface Charger extends Item permits Alternator, TractionConverter {
        Shown<Double> ratedAmperes();

        Shown<Double> setVolts();

        Shown<String> control();

        @Override
        default List<String> terminals() {
            return List.of("output", "case");
        }
    }

    /** An alternator. */
    record Alternator(String id, String path, At at,
                      @Field(key = "place", says = "where the alternator sits") Shown<String> place,
                      @Field(key = "rated", says = "rated output on the alternator's label", in = Dimension.CURRENT)
                      Shown<Double> ratedAmperes,
                      @Field(key = "idle-output", says = "alternator output at hot idle", in = Dimension.CURRENT, zero = true)
                      Shown<Double> idleAmperes,
                      @Field(key = "set-point", says = "charging volts at the alternator", in = Dimension.VOLTAGE)
                      Shown<Double> setVolts,
                      @Field(key = "control", says = "whether a computer moves the charging volts", words = {"fixed", "computer"})
                      Shown<String> control,
                      @Inline Studs studs) implements Charger {
    }

    /** The vehicle's own DC-to-DC converter, which feeds the low-voltage supply off the traction battery whether the vehicle moves or stands. */
    record TractionConverter(String id, String path, At at,
                             @Field(key = "place", says = "where the converter sits") Shown<String> place,
                             @Field(key = "rated", says = "continuous output on the low-voltage side", in = Dimension.CURRENT)
                             Shown<Double> ratedAmperes,
                             @Field(key = "set-point", says = "charging volts at the converter", in = Dimension.VOLTAGE)
                             Shown<Double> setVolts,
                             @Field(key = "control", says = "whether a computer moves the charging volts", words = {"fixed", "computer"})
                             Shown<String> control,
                             @Inline Studs studs) implements Charger {
    }

    /** A fuse in its holder. */
    record Fuse(String id, String path, At at,
                @Field(key = "place", says = "where the fuse holder sits") Shown<String> place,
                @Field(key = "rating", says = "rating of the fuse", in = Dimension.CURRENT) Shown<Double> ratingAmperes,
                @Field(key = "resistance", says = "resistance of fuse and holder", in = Dimension.RESISTANCE)
                Shown<Double> ohms,
                @Field(key = "holder-rating", says = "most current the holder is made for", in = Dimension.CURRENT)
                Shown<Double> holderAmperes,
                @Field(key = "holder-takes", says = "largest cable size the holder takes", size = true) Shown<String> holderTakes,
                @Field(key = "holder-sealed", says = "whether the holder keeps water out", words = {"yes", "no"}) Shown<String> holderSealed,
                @Inline FuseMake make,
                @Inline Studs studs)
            implements Item {
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
                     Shown<Double> ohms,
                     @Field(key = "holder-rating", says = "most current one outlet is made for", in = Dimension.CURRENT)
                     Shown<Double> holderAmperes,
                     @Field(key = "holder-takes", says = "largest cable size its clamps take", size = true) Shown<String> holderTakes,
                     @Field(key = "holder-sealed", says = "whether the block keeps water out", words = {"yes", "no"}) Shown<String> holderSealed,
                     @Inline FuseMake make,
                     @Inline Fitting fitting, @Inline Studs studs) implements Item {
        @Override
        public List<String> terminals() {
            List<String> names = new ArrayList<>(List.of("in"));
            names.addAll(fuses.keySet());
            return names;
        }
    }

    /** An amplifier. */
    record Amplifier(String id, String path, At at,
                     @Field(key = "place", says = "where the amplifier is mounted") Shown<String> place,
                     @Field(key = "class", says = "class of the output stage", words = {"AB", "D"}) Shown<String> outputClass,
                     @Field(key = "channels", says = "number of channels") Shown<Integer> channels,
                     @Field(key = "free-channels", says = "channels that stay free in this job; none is []") Shown<List<String>> freeChannels,
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
                     Shown<Double> minimumVolts,
                     @Field(key = "dc-shut-down", says = "whether it shuts down when DC stands at its output, by its papers", words = {"yes", "no"})
                     Shown<String> directShutDown,
                     @Field(key = "under-load", says = "what was measured at it while it played loud") UnderLoad underLoad,
                     @Inline AmplifierInput input, @Inline Upkeep upkeep, @Inline Fitting fitting, @Inline Studs studs) implements Powered {
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
                     Map<String, MadeFor> madeFor,
                     @Field(key = "turn-on-limit", says = "most current its turn-on output gives", in = Dimension.CURRENT)
                     Shown<Double> turnOnLimitAmperes,
                     @Field(key = "leads", says = "function of the factory pin this lead is made for", words = {"constant-supply", "switched-supply",
                         "ground", "illumination", "turn-on", "speaker"}) Map<String, Shown<String>> leads,
                     @Field(key = "unused", says = "leads that stay unused in this job, capped; none is []") Shown<List<String>> unused,
                     @Field(key = "programmed", says = "whether it takes a program at all") Shown<Boolean> programmed,
                     @Field(key = "program", says = "what is loaded into it") Program program,
                     @Inline LineSignal signal, @Inline Upkeep upkeep, @Inline Fitting fitting, @Inline Studs studs) implements Powered {
        @Override
        public List<String> terminals() {
            return List.of("supply", "ground", "memory", "ignition", "wake", "illumination", "reference", "turn-on", "signal-*", "speaker-*");
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
                   Map<String, Shown<Double>> coils,
                   @Field(key = "enclosure", says = "enclosure it is built into") Shown<String> enclosure,
                   @Field(key = "replaces", says = "kept factory part whose place it takes; none is none") Shown<String> replaces,
                   @Field(key = "distance", says = "way from the speaker to the head of the listener it is set for", in = Dimension.LENGTH)
                   Shown<Double> distanceMetres,
                   @Inline SpeakerData data, @Inline DriverData driver) implements Item {
        @Override
        public List<String> terminals() {
            return List.copyOf(coils.keySet());
        }
    }

    /** A complete passive network with its speakers: one load to the output that feeds it. */
    record PassiveNetwork(String id, String path, At at,
                          @Field(key = "place", says = "where the network is mounted") Shown<String> place,
                          @Field(key = "load", says = "nominal load of the network with its speakers", in = Dimension.RESISTANCE) Shown<Double> loadOhms,
                          @Field(key = "feeds", says = "speakers behind the network") Shown<List<String>> feeds) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("input", "speaker-*");
        }
    }

    /** A point where returns meet the body. */
    record GroundPoint(String id, String path, At at,
                       @Field(key = "place", says = "where the ground point is") Shown<String> place,
                       @Field(key = "body-return", says = "resistance from this point through the body to the battery strap",
                              in = Dimension.RESISTANCE) Shown<Double> bodyReturnOhms,
                       @Field(key = "surface", says = "what the eyelet sits on", words = {"bare-metal", "paint", "primer", "plated-stud"})
                       Shown<String> surface,
                       @Field(key = "structure", says = "what part of the body it is", words = {"welded-body", "frame", "factory-point",
                           "bracket", "door", "lid", "bonded-panel"}) Shown<String> structure,
                       @Field(key = "fastener", says = "what holds the eyelet", words = {"weld-nut", "bolt-nut", "stud", "machine-screw",
                           "self-tapping", "self-drilling"}) Shown<String> fastener,
                       @Field(key = "shares", says = "what else the fastener holds; nothing is none", words = {"none", "belt", "restraint",
                           "seat", "steering", "brake", "fuel"}) Shown<String> shares,
                       @Field(key = "sealed", says = "whether the joint is sealed against water", words = {"yes", "no"}) Shown<String> sealed,
                       @Field(key = "near", says = "clear distance from the ground screw to this keep-out", in = Dimension.LENGTH, zero = true)
                       Map<String, Shown<Double>> near,
                       @Inline Seen seen, @Inline Studs studs) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("stud");
        }
    }

    /** A bar that gathers returns; one cable leads on from it to a ground point. */
    record GroundBar(String id, String path, At at,
                     @Field(key = "place", says = "where the bar is mounted") Shown<String> place,
                     @Field(key = "screws", says = "number of screws or studs on the bar") Shown<Integer> screws,
                     @Inline Studs studs) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("bar");
        }
    }

    /** A place where conductors are joined in line or branch: a splice, or the two halves of a plug connector. */
    record Joint(String id, String path, At at,
                 @Field(key = "place", says = "where the joint lies") Shown<String> place,
                 @Field(key = "resistance", says = "resistance from wire to wire through the joint, its crimps included", in = Dimension.RESISTANCE,
                        zero = true) Shown<Double> ohms,
                 @Inline Studs studs) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("joint");
        }
    }

    /** Any other powered thing, with a current draw of its own. */
    record Accessory(String id, String path, At at,
                     @Field(key = "place", says = "where it sits") Shown<String> place,
                     @Field(key = "draw", says = "supply current in use", in = Dimension.CURRENT, zero = true) Shown<Double> drawAmperes,
                     @Field(key = "minimum-volts", says = "supply volts below which it shuts down", in = Dimension.VOLTAGE)
                     Shown<Double> minimumVolts,
                     @Inline LineSignal signal, @Inline Upkeep upkeep, @Inline Fitting fitting, @Inline Studs studs) implements Powered {
        @Override
        public List<String> terminals() {
            return List.of("supply", "ground", "turn-on", "signal-*");
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

    /** A signal processor. */
    record Processor(String id, String path, At at,
                     @Field(key = "place", says = "where the processor is mounted") Shown<String> place,
                     @Field(key = "draw", says = "supply current in use", in = Dimension.CURRENT, zero = true) Shown<Double> drawAmperes,
                     @Field(key = "minimum-volts", says = "supply volts below which it shuts down", in = Dimension.VOLTAGE)
                     Shown<Double> minimumVolts,
                     @Field(key = "turn-on-limit", says = "most current its turn-on output gives", in = Dimension.CURRENT)
                     Shown<Double> turnOnLimitAmperes,
                     @Inline LineSignal signal, @Inline Upkeep upkeep, @Inline Fitting fitting, @Inline Studs studs) implements Powered {
        @Override
        public List<String> terminals() {
            return List.of("supply", "ground", "turn-on", "turn-on-out", "signal-*", "out-*");
        }
    }

    /** A DC-to-DC converter that charges a second battery. */
    record Converter(String id, String path, At at,
                     @Field(key = "place", says = "where the converter is mounted") Shown<String> place,
                     @Field(key = "set-point", says = "volts at its output", in = Dimension.VOLTAGE) Shown<Double> setVolts,
                     @Field(key = "limit", says = "most current it gives", in = Dimension.CURRENT) Shown<Double> limitAmperes,
                     @Field(key = "rated", says = "most current it may give for hours", in = Dimension.CURRENT) Shown<Double> ratedAmperes,
                     @Field(key = "efficiency", says = "efficiency at its limit") Shown<Double> efficiency,
                     @Field(key = "self-limiting", says = "whether its data sheet says that its output limits itself", words = {"yes", "no"})
                     Shown<String> selfLimiting,
                     @Inline Upkeep upkeep, @Inline Fitting fitting, @Inline Studs studs) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("in", "out", "common");
        }
    }

    /** A relay; its terminals are named as in DIN 72552: 30 and 87 for the contacts, 86 and 85 for the coil. */
    record Relay(String id, String path, At at,
                 @Field(key = "place", says = "where the relay sits") Shown<String> place,
                 @Field(key = "contacts", says = "most current its contacts are made for", in = Dimension.CURRENT) Shown<Double> contactAmperes,
                 @Field(key = "resistance", says = "resistance across its closed contacts", in = Dimension.RESISTANCE) Shown<Double> ohms,
                 @Field(key = "coil-draw", says = "current its coil takes", in = Dimension.CURRENT) Shown<Double> coilAmperes,
                 @Field(key = "damped", says = "what takes up the spike of its coil", words = {"diode", "resistor", "none"}) Shown<String> damped,
                 @Inline Studs studs) implements Item {
        @Override
        public List<String> terminals() {
            return List.of("30", "87", "86", "85");
        }
    }

    /** A resistor that stands in for a speaker, so that what checks its outputs finds one. */
    record LoadResistor(String id, String path, At at,
                        @Field(key = "place", says = "where the resistor is mounted") Shown<String> place,
                        @Field(key = "ohms", says = "resistance of the resistor", in = Dimension.RESISTANCE) Shown<Double> ohms,
                        @Field(key = "rated", says = "heat it stands where it is mounted, by its data sheet", in = Dimension.POWER) Shown<Double> ratedWatts,
                        @Field(key = "sits-on", says = "what it is fastened to", words = {"metal", "plastic", "trim", "loom"}) Shown<String> sitsOn)
            implements Item {
        @Override
        public List<String> terminals() {
            return List.of("ends");
        }
    }

    /** A box for speakers. */
    record Enclosure(String id, String path, At at,
                     @Field(key = "place", says = "where the enclosure stands") Shown<String> place,
                     @Field(key = "space", says = "space of the vehicle sheet it stands in") Shown<String> space,
                     @Field(key = "height", says = "outer height", in = Dimension.LENGTH) Shown<Double> heightMetres,
                     @Field(key = "width", says = "outer width", in = Dimension.LENGTH) Shown<Double> widthMetres,
                     @Field(key = "depth", says = "outer depth, at its deepest", in = Dimension.LENGTH) Shown<Double> depthMetres,
                     @Inline BoxShape shape, @Inline BoxAir air, @Inline BoxPort port, @Inline Fitting fitting) implements Item {
        @Override
        public List<String> terminals() {
            return List.of();
        }
    }

    /** What draws current from the supply. */
    sealed interface Powered extends Item permits Amplifier, Interface, Accessory, Processor {
        Shown<Double> minimumVolts();

        Upkeep upkeep();

        @Override
        Fitting fitting();
    }

    /** Whether a terminal of that name exists. */
    default boolean hasTerminal(String name) {
        return terminals().stream().anyMatch(known -> known.endsWith("*")
                ? name.startsWith(known.substring(0, known.length() - 1)) && name.length() >= known.length()
                : known.equals(name));
    }
}
