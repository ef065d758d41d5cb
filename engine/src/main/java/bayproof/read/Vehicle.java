package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.Map;

/** Facts of one vehicle variant, as the vehicle sheet says them. Sources are bound apart, because a part stands behind them. */
public record Vehicle(@Field(key = "title", says = "what vehicle this is") Shown<String> title,
                      @Field(key = "supply", says = "the vehicle's own supply") Supply supply,
                      @Field(key = "radio", says = "the factory radio") Radio radio,
                      @Field(key = "connectors", says = "connectors of the factory radio") Map<String, Connector> connectors,
                      @Field(key = "zones", says = "zones of the vehicle") Map<String, Zone> zones,
                      @Field(key = "places", says = "places in the zones") Map<String, Place> places,
                      @Field(key = "routes", says = "routes between places") Map<String, Route> routes) {

    /** What the vehicle itself feeds and draws. */
    public record Supply(String path, At at,
                         @Field(key = "own-load", says = "current the vehicle itself takes at hot idle, lamps and blower on",
                                in = Dimension.CURRENT, zero = true) Shown<Double> ownLoadAmperes,
                         @Field(key = "links", says = "conductors the vehicle maker laid") Map<String, Run> links) {
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
                            @Field(key = "cavities", says = "cavities with a wire") Map<String, Cavity> cavities) {
    }

    /** One cavity as the vehicle's papers or another vehicle of the variant show it. */
    public record Cavity(String path, At at,
                         @Field(key = "function", says = "function of the cavity", words = {"constant-supply", "switched-supply", "ground",
                             "illumination", "turn-on", "speaker"}) Shown<String> function,
                         @Field(key = "color", says = "color of the wire in the cavity") Shown<String> color) {
    }

    /** A part of the vehicle. */
    public record Zone(String id, String path, At at,
                       @Field(key = "kind", says = "kind of zone", words = {"engine-bay", "dash", "cabin-front", "cabin-rear", "cargo",
                           "door", "tailgate", "roof", "seat", "underbody", "outside", "trailer"}) Shown<String> kind,
                       @Field(key = "open-to", says = "zones one can reach from here without a hole") Shown<List<String>> openTo,
                       @Field(key = "ambient", says = "highest temperature of the zone", in = Dimension.TEMPERATURE)
                       Shown<Double> ambientCelsius) {
    }

    /** A point in a zone. */
    public record Place(String id, String path, At at, @Field(key = "zone", says = "zone of the place") Shown<String> zone) {
    }

    /** A path between two places of a zone; a pass-through is a place of both its zones. */
    public record Route(String id, String path, At at,
                        @Field(key = "between", says = "the two places a route joins") Shown<List<String>> between,
                        @Field(key = "length", says = "length of the route, by a string along it", in = Dimension.LENGTH)
                        Shown<Double> lengthMetres) {
    }

    /** A hole between two zones, with what the plan does to its edge. */
    public record PassThrough(String id, String path, At at,
                              @Field(key = "between", says = "the two zones the hole joins") Shown<List<String>> between,
                              @Field(key = "panel", says = "what the panel is made of", words = {"steel", "aluminum", "plastic", "rubber"})
                              Shown<String> panel,
                              @Field(key = "edge", says = "what guards the edge of the hole", words = {"grommet", "bushing", "rolled",
                                  "sealed-gland", "factory-boot", "bare", "tape"}) Shown<String> edge) {
    }
}
