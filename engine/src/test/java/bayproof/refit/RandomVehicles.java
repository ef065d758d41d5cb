package bayproof.refit;

import bayproof.read.Tree;
import bayproof.read.Tree.MapTree;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Makes vehicle sheets at random within their schema: some things are named as in the old vehicle, some are not, some are missing. */
final class RandomVehicles {
    private static final List<String> ZONES = List.of("engine-bay", "dash", "cabin-front", "cabin-rear", "cargo", "door", "tailgate", "roof", "seat", "underbody", "outside");
    private static final List<String> FAMILIES = List.of("iso-10487-a", "iso-10487-b", "block-24", "door-2");
    private static final List<String> FUNCTIONS = List.of("constant-supply", "switched-supply", "ground", "illumination", "turn-on", "speaker");
    private static final List<String> PLACES = List.of("battery-tray", "engine-front", "radio-bay", "rack-wall", "cargo-front", "cargo-floor-nut", "door-left-baffle",
            "door-right-baffle", "pillar-foot-nut");

    private final Random random;

    RandomVehicles(long seed) {
        random = new Random(seed);
    }

    MapTree next() {
        Map<String, Tree> sheet = new LinkedHashMap<>();
        sheet.put("bayproof", Trees.word("1"));
        sheet.put("kind", Trees.word("vehicle"));
        List<String> zones = names("zone", 1 + random.nextInt(9));
        List<String> places = new ArrayList<>(names("place", random.nextInt(6)));
        PLACES.stream().filter(place -> random.nextInt(3) > 0).forEach(places::add);
        List<String> holes = names("hole", random.nextInt(6));
        sheet.put("zones", each(zones, id -> maybe(group("kind", Trees.word(one(ZONES))))));
        sheet.put("places", each(places, id -> place(zones)));
        sheet.put("pass-throughs", each(holes, id -> group("between", Trees.list(List.of(one(zones), one(zones))), "hinge", Trees.word("no"),
                "panel", Trees.word(one(List.of("steel", "aluminum"))))));
        List<String> ends = new ArrayList<>(places);
        ends.addAll(holes);
        sheet.put("routes", each(ends.isEmpty() ? List.of() : names("route", random.nextInt(16)), id -> {
            MapTree route = group("between", Trees.list(List.of(one(ends), one(ends))));
            return random.nextInt(4) == 0 ? route : route.with("length", Trees.word((1 + random.nextInt(50)) / 10.0 + " m"));
        }));
        sheet.put("spaces", each(places.isEmpty() ? List.of() : names("space", random.nextInt(3)), id -> group("place", Trees.word(one(places)))));
        sheet.put("outputs", each(names("output", random.nextInt(4)), id -> group("kind", Trees.word(one(List.of("feed", "turn-on", "audio"))))));
        sheet.put("connectors", each(names("plug", random.nextInt(4)), id -> group("family", Trees.word(one(FAMILIES)), "cavities",
                each(List.of("1", "2", "3", "4", "5"), cavity -> group("function", Trees.word(one(FUNCTIONS)))))));
        sheet.put("networks", each(names("bus", random.nextInt(2)), id -> group("kind", Trees.word(one(List.of("can-high-speed", "lin", "optical"))))));
        sheet.put("supply", supply(places));
        return Trees.group(sheet);
    }

    private MapTree place(List<String> zones) {
        MapTree place = group("zone", Trees.word(one(zones)));
        place = random.nextBoolean() ? place : place.with("free-depth", Trees.word(random.nextInt(80) + " mm")).with("behind", Trees.list(List.of()));
        return random.nextInt(4) > 0 ? place : place.with("ground", group("structure", Trees.word(one(List.of("welded-body", "bracket", "bonded-panel")))));
    }

    private MapTree supply(List<String> places) {
        Map<String, Tree> sources = new LinkedHashMap<>();
        if (random.nextInt(5) > 0) {
            MapTree battery = group("part", Trees.word(random.nextBoolean() ? "starter-battery-70" : "agm-100"));
            sources.put(random.nextBoolean() ? "start-battery" : "main-battery", places.isEmpty() ? battery : battery.with("place", Trees.word(one(places))));
        }
        if (random.nextInt(3) > 0) {
            sources.put("alternator", group("part", Trees.word("alternator-120")));
        }
        return group("own-load", Trees.word((10 + random.nextInt(40)) + " A"), "sources", Trees.group(sources));
    }

    private List<String> names(String noun, int count) {
        List<String> names = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            names.add(noun + "-" + i);
        }
        return names;
    }

    private String one(List<String> words) {
        return words.get(random.nextInt(words.size()));
    }

    private MapTree maybe(MapTree map) {
        return random.nextInt(10) == 0 ? Trees.empty() : map;
    }

    private interface Making {
        Tree of(String id);
    }

    private static MapTree each(List<String> names, Making making) {
        Map<String, Tree> made = new LinkedHashMap<>();
        names.forEach(name -> made.put(name, making.of(name)));
        return Trees.group(made);
    }

    private static MapTree group(Object... pairs) {
        Map<String, Tree> values = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            values.put((String) pairs[i], (Tree) pairs[i + 1]);
        }
        return Trees.group(values);
    }
}
