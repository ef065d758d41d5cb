package bayproof.solve;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * The networks, decks and printed values kept among the test resources. {@link #main} makes them anew where ngspice is
 * installed; after the build, in the folder {@code engine}:
 *
 * <pre>
 * java -cp "target/test-classes:target/classes:target/lib/*" bayproof.solve.StoredDecks
 * </pre>
 */
final class StoredDecks {
    private static final int COUNT = 200;
    private static final int COIL_NETS = 100;
    private static final long SEED = 20261125;

    private StoredDecks() {
    }

    static List<NetworkText.Named> networks() throws IOException {
        return NetworkText.read(new String(bytes("networks.txt"), StandardCharsets.UTF_8));
    }

    static List<SpiceDeck> decks() throws IOException {
        return SpiceDeck.read(unzipped("decks.txt.gz"));
    }

    static String printed() throws IOException {
        return unzipped("printed.txt.gz");
    }

    static List<CoilNetDeck> coilNets() throws IOException {
        return CoilNetDeck.read(new String(bytes("coil-nets.txt"), StandardCharsets.UTF_8));
    }

    static String coilNetsPrinted() throws IOException {
        return new String(bytes("coil-nets-printed.txt"), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String name) throws IOException {
        try (InputStream stream = StoredDecks.class.getResourceAsStream("/ngspice/" + name)) {
            return stream.readAllBytes();
        }
    }

    private static String unzipped(String name) throws IOException {
        try (InputStream stream =
                new GZIPInputStream(StoredDecks.class.getResourceAsStream("/ngspice/" + name))) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Writes the stored files into the folder named by the first argument, or {@code src/test/resources/ngspice}. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "src/test/resources/ngspice");
        Files.createDirectories(folder);
        String version = Ngspice.version().orElseThrow(() -> new IOException("ngspice is not installed"));
        StringBuilder networks = new StringBuilder();
        List<SpiceDeck> decks = new ArrayList<>();
        for (NetworkText.Named named : new RandomNetworks(SEED).make(COUNT)) {
            networks.append(NetworkText.write(named));
            decks.addAll(SpiceDeck.of(named));
        }
        Files.writeString(folder.resolve("version.txt"), version + "\n");
        Files.writeString(folder.resolve("networks.txt"), networks);
        Files.write(folder.resolve("decks.txt.gz"), zipped(SpiceDeck.write(decks)));
        Files.write(folder.resolve("printed.txt.gz"), zipped(Ngspice.run(decks)));
        List<CoilNetDeck> coilNets = CoilNetDeck.random(SEED, COIL_NETS);
        Files.writeString(folder.resolve("coil-nets.txt"), CoilNetDeck.write(coilNets));
        Files.writeString(folder.resolve("coil-nets-printed.txt"), Ngspice.run(coilNets.stream().map(CoilNetDeck::deck).toList()));
    }

    private static byte[] zipped(String text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream stream = new GZIPOutputStream(bytes)) {
            stream.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return bytes.toByteArray();
    }
}
