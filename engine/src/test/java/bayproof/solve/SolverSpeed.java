package bayproof.solve;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Measures the solver: build and solve times of networks of growing size, warm, and against an ngspice process on the
 * stored networks. After the build, in the folder {@code engine}:
 *
 * <pre>
 * java -cp "target/test-classes:target/classes:target/lib/*" bayproof.solve.SolverSpeed
 * </pre>
 */
final class SolverSpeed {
    private static final int ROUNDS = 9;

    private SolverSpeed() {
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        for (int loads : new int[] {10, 20, 40, 80}) {
            Network network = system(loads, 15);
            System.out.printf(Locale.ROOT, "%d nodes, %d loads, 2 sources: build %.1f us, solve charging %.1f us",
                    network.nodes().size(), loads, micros(() -> system(loads, 15)),
                    micros(() -> Solver.solve(network)));
            System.out.printf(Locale.ROOT, ", on battery %.1f us, no solution %.1f us%n",
                    micros(() -> Solver.solve(onBattery(network))),
                    micros(() -> Solver.solve(RandomNetworks.scaled(network, 1000))));
        }
        List<NetworkText.Named> networks = StoredDecks.PLAIN.networks();
        double ours = micros(() -> networks.stream().map(named -> Solver.solve(named.network())).toList())
                / networks.size();
        double theirs = ngspiceMicros(SpiceDeck.of(networks.get(0)).get(1));
        System.out.printf(Locale.ROOT, "stored networks: solve %.1f us on average; one ngspice process, one deck:"
                + " %.0f us, ratio %.0f%n", ours, theirs, theirs / ours);
    }

    /** A block for every five loads, each load behind a fuse and a run of three pieces, grounds on the body. */
    private static Network system(int loads, double watts) {
        Network.Builder builder = new Network.Builder("minus")
                .battery("battery", "plus", "minus", 12.6, 0.01, 20)
                .regulated("alternator", "charge", "engine", 14.4, 120)
                .branch("charge", "charge", "plus", 0.004)
                .branch("strap", "minus", "engine", 0.001)
                .branch("body-1", "minus", "ground0", 0.001)
                .branch("body-2", "ground0", "ground1", 0.001)
                .branch("body-3", "ground1", "ground2", 0.001)
                .branch("body-4", "ground2", "minus", 0.001);
        for (int load = 0; load < loads; load++) {
            int block = load / 5;
            if (load % 5 == 0) {
                builder.branch("main-fuse-" + block, "plus", "main-" + block, 0.001)
                        .branch("feed-" + block, "main-" + block, "block-" + block, 0.004);
            }
            builder.branch("fuse-" + load, "block-" + block, "fused-" + load, 0.003)
                    .branch("run-" + load, "fused-" + load, "joint-" + load, 0.01)
                    .branch("tail-" + load, "joint-" + load, "positive-" + load, 0.002)
                    .branch("return-" + load, "negative-" + load, "ground" + load % 3, 0.004)
                    .constantPower("load-" + load, "positive-" + load, "negative-" + load, watts, 10.5);
        }
        return builder.build();
    }

    private static Network onBattery(Network network) {
        return network.withSources(List.of(new Source.Regulated("alternator", "charge", "engine", 1, 120)));
    }

    /** The median of rounds of at least 0.3 s, after one such round to warm up. */
    private static double micros(Supplier<?> work) {
        return IntStream.rangeClosed(0, ROUNDS).mapToDouble(round -> {
            long start = System.nanoTime();
            int calls = 0;
            do {
                if (work.get() == null) {
                    throw new IllegalStateException("nothing was worked out");
                }
                calls++;
            } while (System.nanoTime() - start < 300_000_000L);
            return (System.nanoTime() - start) / 1000.0 / calls;
        }).skip(1).sorted().skip(ROUNDS / 2).findFirst().orElseThrow();
    }

    private static double ngspiceMicros(SpiceDeck deck) throws IOException, InterruptedException {
        Path file = Files.createTempFile("deck", ".cir");
        Files.writeString(file, deck.circuit().replace(".end\n", ".op\n.end\n"));
        double[] micros = new double[21];
        for (int i = 0; i < micros.length; i++) {
            long start = System.nanoTime();
            new ProcessBuilder("ngspice", "-n", "-b", file.toString()).redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
            micros[i] = (System.nanoTime() - start) / 1000.0;
        }
        Files.delete(file);
        Arrays.sort(micros);
        return micros[micros.length / 2];
    }
}
