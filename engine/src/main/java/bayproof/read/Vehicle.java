package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Facts of one vehicle variant, as the vehicle sheet says them. Sources are bound apart, because a part stands behind them. */
public record Vehicle(@Field(key = "title", says = "what vehicle this is") Shown<String> title,
                      @Field(key = "variant", says = "code of the vehicle variant") Shown<String> variant,
                      @Field(key = "tag", says = "tag of the job that this sheet was filled in for") Shown<String> tag,
                      @Field(key = "seen-on", says = "where the values of this sheet were seen", words = {"this-car", "same-variant", "document"})
                      Shown<String> seenOn,
                      @Field(key = "payload-left", says = "mass the vehicle may still carry, every seat filled and all on board that it always carries",
                             in = Dimension.MASS, zero = true) Shown<Double> payloadLeftKilograms,
                      @Field(key = "cabin-sound", says = "sounds the vehicle itself makes or cancels") CabinSound cabinSound,
                      @Field(key = "supply", says = "the vehicle's own supply") Supply supply,
                      @Field(key = "radio", says = "the factory radio") Radio radio,
                      @Field(key = "connectors", says = "connectors of the factory radio") Map<String, Connector> connectors,
                      @Field(key = "zones", says = "zones of the vehicle") Map<String, Zone> zones,
                      @Field(key = "places", says = "places in the zones") Map<String, Place> places,
                      @Field(key = "routes", says = "routes between places") Map<String, Route> routes,
                      @Field(key = "keep-outs", says = "what cables and boxes stay away from") Map<String, KeepOut> keepOuts,
                      @Field(key = "spaces", says = "spaces for enclosures and devices") Map<String, Space> spaces,
                      @Field(key = "networks", says = "data buses") Map<String, Bus> networks,
                      @Field(key = "outputs", says = "feeds and signals the factory system gives") Map<String, Output> outputs,
                      @Field(key = "restraints", says = "the restraint system") Restraints restraints) {

    /** The cavity that a pin of the plan names as {@code connector.cavity}; null where the sheet has none of that name. */
    public Cavity cavity(Plan.PinUse pin) {
        int dot = pin.id().indexOf('.');
        Connector connector = dot < 0 ? null : connectors.get(pin.id().substring(0, dot));
        return connector == null ? null : connector.cavities().get(pin.id().substring(dot + 1));
    }

    /** What cables and boxes stay away from. */
    public record KeepOut(String id, String path, At at,
                          @Field(key = "kind", says = "what it is", words = {"fuel", "brake", "exhaust", "moving", "restraint-path",
                              "high-voltage", "coolant"}) Shown<String> kind,
                          @Field(key = "zones", says = "zones it lies in") Shown<List<String>> zones,
                          @Field(key = "fitted", says = "false where the vehicle has nothing of this kind") Shown<Boolean> fitted) {

        /** Whether the vehicle has it: what lies in zones is there. Where neither is written, either of them answers. */
        public Shown<Boolean> isThere() {
            if (fitted.isGiven() || zones.isGiven()) {
                return fitted.isGiven() ? fitted : Shown.of(true);
            }
            List<Need> either = new ArrayList<>(zones.needs());
            either.add(new Need(path + ".fitted", "whether the vehicle has it at all: false where it has nothing of this kind", at));
            return Shown.missing(either);
        }
    }

    /** A space for an enclosure, per position of what moves into it. */
    public record Space(String id, String path, At at,
                        @Field(key = "place", says = "place of the space") Shown<String> place,
                        @Inline Seen seen,
                        @Field(key = "way-in", says = "the smallest opening on the way in, such as the open door") Opening wayIn,
                        @Field(key = "positions", says = "clear size in this position of seats and lids") Map<String, Box> positions) {
    }

    /** An opening that a box is carried through. */
    public record Opening(String path, At at,
                          @Field(key = "height", says = "clear height of the opening", in = Dimension.LENGTH) Shown<Double> heightMetres,
                          @Field(key = "width", says = "clear width of the opening", in = Dimension.LENGTH) Shown<Double> widthMetres) {
    }

    /** A clear size. */
    public record Box(String path, At at,
                      @Field(key = "height", says = "clear height", in = Dimension.LENGTH) Shown<Double> heightMetres,
                      @Field(key = "width", says = "clear width", in = Dimension.LENGTH) Shown<Double> widthMetres,
                      @Field(key = "depth", says = "clear depth", in = Dimension.LENGTH) Shown<Double> depthMetres,
                      @Field(key = "top-depth", says = "clear depth at the top; as at the floor where nothing slopes", in = Dimension.LENGTH)
                      Shown<Double> topDepthMetres) {
    }

    /** A data bus. */
    public record Bus(String id, String path, At at,
                      @Field(key = "kind", says = "kind of bus", words = {"can-high-speed", "can-fault-tolerant", "lin", "optical"})
                      Shown<String> kind,
                      @Field(key = "carries", says = "what the bus is for", words = {"comfort", "multimedia", "diagnosis", "drive", "brakes",
                          "restraints"}) Shown<String> carries,
                      @Field(key = "resistance", says = "resistance across the pair with the supply off", in = Dimension.RESISTANCE)
                      Shown<Double> ohms) {
    }

    /** A feed or signal of the factory system that a job may use. */
    public record Output(String id, String path, At at,
                         @Field(key = "kind", says = "what the output gives", words = {"feed", "turn-on", "audio"}) Shown<String> kind,
                         @Field(key = "from", says = "what drives it", words = {"accessory-terminal", "radio", "factory-amplifier", "control-unit",
                             "ignition", "airbag", "pedestrian-sound"}) Shown<String> from,
                         @Field(key = "limit", says = "most current it gives", in = Dimension.CURRENT) Shown<Double> limitAmperes,
                         @Field(key = "shed", says = "whether the vehicle switches it off by itself", words = {"yes", "no"}) Shown<String> shed,
                         @Inline AudioTable audio) {
    }

    /** The restraint system. */
    public record Restraints(String path, At at,
                             @Field(key = "wait", says = "waiting time after the battery is off, from the label or service data",
                                    in = Dimension.TIME) Shown<Double> waitSeconds) {
    }

    /** What the vehicle itself feeds and draws. */
    public record Supply(String path, At at,
                         @Field(key = "own-load", says = "current the vehicle itself takes at hot idle, or standing without an engine, lamps and blower on",
                                in = Dimension.CURRENT, zero = true) Shown<Double> ownLoadAmperes,
                         @Field(key = "links", says = "conductors the vehicle maker laid") Map<String, Run> links,
                         @Field(key = "standby-limit", says = "most current the vehicle maker allows asleep", in = Dimension.CURRENT)
                         Shown<Double> standbyLimitAmperes,
                         @Field(key = "sleep-time", says = "time the vehicle takes to fall asleep, by its maker", in = Dimension.TIME)
                         Shown<Double> sleepSeconds,
                         @Field(key = "standby-before", says = "current asleep before the job, measured", in = Dimension.CURRENT)
                         Shown<Double> standbyBeforeAmperes,
                         @Field(key = "ground-side", says = "which side of the supply is grounded", words = {"negative", "positive"})
                         Shown<String> groundSide,
                         @Field(key = "start-dip", says = "lowest supply volts while the engine starts", in = Dimension.VOLTAGE)
                         Shown<Double> startDipVolts,
                         @Field(key = "start-stop", says = "whether the engine stops at lights; no-engine where this supply starts none",
                                words = {"yes", "no", "no-engine"}) Shown<String> startStop,
                         @Field(key = "parked-charge", says = "highest volts at the posts while the parked vehicle charges its own 12 V battery",
                                in = Dimension.VOLTAGE) Shown<Double> parkedChargeVolts,
                         @Field(key = "battery-sensor", says = "where a current sensor sits", words = {"none", "negative-post", "positive-post"})
                         Shown<String> batterySensor,
                         @Field(key = "lowest-celsius", says = "lowest temperature the vehicle is charged in", in = Dimension.TEMPERATURE)
                         Shown<Double> lowestCelsius) {
    }

    /** The factory radio. */
    public record Radio(String path, At at,
                        @Field(key = "variant", says = "code on the radio's label") Shown<String> variant,
                        @Field(key = "factory-amplifier", says = "whether a factory amplifier is fitted", words = {"none", "fitted"})
                        Shown<String> factoryAmplifier) {
    }

    /** A connector of the radio. */
    public record Connector(String id, String path, At at,
                            @Field(key = "family", says = "connector family, by shape and number of cavities") Shown<String> family,
                            @Field(key = "speaker-returns", says = "whether each speaker behind it has a return wire of its own or several share one",
                                   words = {"own", "shared"}) Shown<String> speakerReturns,
                            @Inline Seen seen,
                            @Field(key = "cavities", says = "cavities with a wire") Map<String, Cavity> cavities) {
    }

    /** One cavity as the vehicle's papers or another vehicle of the variant show it. */
    public record Cavity(String path, At at,
                         @Field(key = "function", says = "function of the cavity", words = {"constant-supply", "switched-supply", "ground",
                             "illumination", "turn-on", "speaker", "can-high", "can-low", "lin"}) Shown<String> function,
                         @Field(key = "color", says = "color of the wire in the cavity") Shown<String> color,
                         @Field(key = "output", says = "output of the vehicle sheet that comes out of this cavity") Shown<String> output,
                         @Inline Seen seen) {
    }

    /** A part of the vehicle. */
    public record Zone(String id, String path, At at,
                       @Field(key = "kind", says = "kind of zone", words = {"engine-bay", "dash", "cabin-front", "cabin-rear", "cargo",
                           "door", "tailgate", "roof", "seat", "underbody", "outside", "trailer"}) Shown<String> kind,
                       @Field(key = "open-to", says = "zones one can reach from here without a hole") Shown<List<String>> openTo,
                       @Field(key = "ambient", says = "highest temperature of the zone", in = Dimension.TEMPERATURE)
                       Shown<Double> ambientCelsius,
                       @Field(key = "travel", says = "longest way that a point of a seat moves, fore and aft, recline and height", in = Dimension.LENGTH)
                       Shown<Double> travelMetres) {
    }

    /** A point in a zone, with what a thing mounted there meets. */
    public record Place(String id, String path, At at, @Field(key = "zone", says = "zone of the place") Shown<String> zone,
                        @Field(key = "depth", says = "clear depth behind the face a speaker is mounted on, glass all the way down", in = Dimension.LENGTH)
                        Shown<Double> depthMetres,
                        @Inline Seen seen,
                        @Field(key = "clearance", says = "free space over what is mounted at this place", in = Dimension.LENGTH, zero = true)
                        Shown<Double> clearanceMetres,
                        @Field(key = "free-depth", says = "clear depth behind the panel of this place", in = Dimension.LENGTH, zero = true)
                        Shown<Double> freeDepthMetres,
                        @Field(key = "behind", says = "what lies behind the panel of this place; nothing is []") Shown<List<String>> behind,
                        @Field(key = "seen-by", says = "who looked behind the panel of this place, and how") Shown<String> seenBy,
                        @Field(key = "ground", says = "the ground point at this place") GroundSite ground) {
    }

    /** What a ground point would be fastened to at a place. */
    public record GroundSite(@Field(key = "structure", says = "what part of the body it is", words = {"welded-body", "frame", "factory-point",
                                 "bracket", "door", "lid", "bonded-panel"}) Shown<String> structure,
                             @Field(key = "fastener", says = "what holds the eyelet there", words = {"weld-nut", "bolt-nut", "stud", "machine-screw",
                                 "self-tapping", "self-drilling"}) Shown<String> fastener,
                             @Field(key = "shares", says = "what else the fastener holds; nothing is none", words = {"none", "belt", "restraint",
                                 "seat", "steering", "brake", "fuel"}) Shown<String> shares,
                             @Field(key = "body-return", says = "resistance from this point through the body to the battery strap",
                                 in = Dimension.RESISTANCE) Shown<Double> bodyReturnOhms) {
    }

    /** A path between two places of a zone; a pass-through is a place of both its zones. */
    public record Route(String id, String path, At at,
                        @Field(key = "between", says = "the two places a route joins") Shown<List<String>> between,
                        @Field(key = "length", says = "length of the route, by a string along it", in = Dimension.LENGTH)
                        Shown<Double> lengthMetres,
                        @Field(key = "near", says = "clear distance from a cable on this route to this keep-out", in = Dimension.LENGTH, zero = true)
                        Map<String, Shown<Double>> near) {
    }

    /** A hole between two zones, with what the plan does to it. */
    public record PassThrough(String id, String path, At at,
                              @Field(key = "between", says = "the two zones the hole joins") Shown<List<String>> between,
                              @Field(key = "panel", says = "what the panel is made of", words = {"steel", "aluminum", "plastic", "rubber"})
                              Shown<String> panel,
                              @Field(key = "edge", says = "what guards the edge of the hole", words = {"grommet", "bushing", "rolled",
                                  "sealed-gland", "factory-boot", "added-boot", "bare", "tape"}) Shown<String> edge,
                              @Field(key = "origin", says = "whether the hole is the maker's or is drilled", words = {"factory", "drilled"})
                              Shown<String> origin,
                              @Field(key = "room", says = "whether the factory hole has room left", words = {"yes", "no"}) Shown<String> room,
                              @Field(key = "finish", says = "how a drilled hole is finished", words = {"deburred-painted-sealed",
                                  "deburred-painted", "deburred", "raw"}) Shown<String> finish,
                              @Field(key = "hinge", says = "whether it crosses a hinge", words = {"yes", "no"}) Shown<String> hinge) {
    }
}
