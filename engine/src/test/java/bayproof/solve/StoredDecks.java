package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.support.Tally;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Assumptions;

/**
 * The networks, decks and printed values kept among the test resources. {@link #main} makes them anew where ngspice is
 * installed; after the build, in the folder {@code engine}:
 *
 * <pre>
 * java -cp "target/test-classes:target/classes:target/lib/*" bayproof.solve.StoredDecks
 * </pre>
 *
 * @param folder under {@code /ngspice} of the test resources
 */
record StoredDecks(String folder) {
    /** 200 networks of one battery and one alternator. */
    static final StoredDecks PLAIN = new StoredDecks("");
    /** 100 networks of tied sources and a converter. */
    static final StoredDecks CONVERTER = new StoredDecks("converter/");

    private static final long SEED = 20261125;

    List<NetworkText.Named> networks() throws IOException {
        try (InputStream stream = stream("networks.txt")) {
            return NetworkText.read(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    List<SpiceDeck> decks() throws IOException {
        return SpiceDeck.read(unzipped("decks.txt.gz"));
    }

    Map<String, Map<String, Double>> printed() throws IOException {
        return Ngspice.values(unzipped("printed.txt.gz"));
    }

    static List<CoilNetDeck> coilNets() throws IOException {
        try (InputStream stream = PLAIN.stream("coil-nets.txt")) {
            return CoilNetDeck.read(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    static Map<String, Map<String, Double>> coilNetsPrinted() throws IOException {
        try (InputStream stream = PLAIN.stream("coil-nets-printed.txt")) {
            return Ngspice.values(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    static Map<String, Map<String, Double>> acousticPrinted() throws IOException {
        return Ngspice.values(PLAIN.unzipped("acoustic-printed.txt.gz"));
    }

    private InputStream stream(String name) {
        return StoredDecks.class.getResourceAsStream("/ngspice/" + folder + name);
    }

    private String unzipped(String name) throws IOException {
        try (InputStream stream = new GZIPInputStream(stream(name))) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Runs the decks again where ngspice is installed and compares; says so where it is not. */
    void assertReproduced(String what) throws IOException, InterruptedException {
        Optional<String> version = Ngspice.version();
        if (version.isEmpty()) {
            Tally.notRun("ngspice re-run of " + what, "ngspice is not installed");
            Assumptions.abort("ngspice is not installed");
        }
        Map<String, Map<String, Double>> printed = printed();
        List<SpiceDeck> decks = decks();
        Map<String, Map<String, Double>> again = Ngspice.values(Ngspice.run(decks));
        Set<String> compared = new HashSet<>();
        for (SpiceDeck deck : decks) {
            Map<String, Double> before = printed.get(deck.title());
            Map<String, Double> now = again.get(deck.title());
            if (SpicePoint.isMeaningless(before)) {
                assertTrue(SpicePoint.isMeaningless(now), deck.title());
                continue;
            }
            assertEquals(before.keySet(), now.keySet(), deck.title());
            before.forEach((quantity, value) -> assertEquals(value, now.get(quantity),
                    1e-9 * Math.max(Math.abs(value), quantity.startsWith("v(") ? 1 : 1e-2),
                    deck.title() + " " + quantity + " by " + version.get()));
            compared.add(deck.title().split(" ")[0]);
        }
        assertEquals(networks().size(), compared.size());
    }

    /** Runs other decks again where ngspice is installed and compares every printed value. */
    static void assertReproduced(String what, List<SpiceDeck> decks, Map<String, Map<String, Double>> before)
            throws IOException, InterruptedException {
        if (Ngspice.version().isEmpty()) {
            Tally.notRun("ngspice re-run of " + what, "ngspice is not installed");
            Assumptions.abort("ngspice is not installed");
        }
        Map<String, Map<String, Double>> again = Ngspice.values(Ngspice.run(decks));
        assertEquals(before.keySet(), again.keySet());
        before.forEach((name, values) -> {
            assertTrue(values.size() >= 2, name);
            assertEquals(values.keySet(), again.get(name).keySet(), name);
            values.forEach((quantity, value) -> assertEquals(value, again.get(name).get(quantity), 1e-9 * Math.max(Math.abs(value), 1e-2), name));
        });
    }

    /** Writes the stored files into the folder named by the first argument, or {@code src/test/resources/ngspice}. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "src/test/resources/ngspice");
        PLAIN.write(folder, new RandomNetworks(SEED).make(200));
        CONVERTER.write(folder, new RandomConverterNetworks(SEED).make(100));
        List<CoilNetDeck> coilNets = CoilNetDeck.random(SEED, 100);
        Files.writeString(folder.resolve("coil-nets.txt"), CoilNetDeck.write(coilNets));
        Files.writeString(folder.resolve("coil-nets-printed.txt"), Ngspice.run(coilNets.stream().map(CoilNetDeck::deck).toList()));
        Files.write(folder.resolve("acoustic-printed.txt.gz"), zipped(Ngspice.run(AcousticDecks.all())));
    }

    private void write(Path root, List<NetworkText.Named> all) throws IOException, InterruptedException {
        Path target = root.resolve(folder);
        Files.createDirectories(target);
        String version = Ngspice.version().orElseThrow(() -> new IOException("ngspice is not installed"));
        StringBuilder networks = new StringBuilder();
        List<SpiceDeck> decks = new ArrayList<>();
        for (NetworkText.Named named : all) {
            networks.append(NetworkText.write(named));
            decks.addAll(SpiceDeck.of(named));
        }
        Files.writeString(target.resolve("version.txt"), version + "\n");
        Files.writeString(target.resolve("networks.txt"), networks);
        Files.write(target.resolve("decks.txt.gz"), zipped(SpiceDeck.write(decks)));
        Files.write(target.resolve("printed.txt.gz"), zipped(Ngspice.run(decks)));
    }

    private static byte[] zipped(String text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream stream = new GZIPOutputStream(bytes)) {
            stream.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return bytes.toByteArray();
    }
}
