package bayproof.audit;

import bayproof.demand.Gate;
import bayproof.demand.Weight;
import bayproof.support.Jobs;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes an archive of invented jobs, the tour van with some of its figures moved by up to a fifth, each with a vehicle sheet of
 * its own, and audits it. After the build, in the folder {@code engine}:
 *
 * <pre>
 * java -Xmx96m -cp "target/test-classes:target/classes:target/lib/*" bayproof.audit.VariedJobs archive 2000
 * </pre>
 */
final class VariedJobs {
    private static final Pattern QUANTITY = Pattern.compile("(?<![\\w.-])([0-9]+(?:\\.[0-9]+)?) (m|mm|W|kg|mohm|A)(?![\\w2])");
    private static final double SHARE_MOVED = 0.3;
    private static final double MOST = 0.2;
    private static final int MEASURED_EVERY = 250;
    private static final double MIB = 1 << 20;

    private VariedJobs() {
    }

    public static void main(String[] arguments) throws Exception {
        Path root = Path.of(arguments[0]);
        int jobs = Integer.parseInt(arguments[1]);
        if (!Files.exists(root)) {
            write(root, jobs, 1);
        }
        JobAudit audit = new JobAudit(root, null, Gate.HANDOVER, Weight.ADVISE, LocalDate.of(2026, 11, 30));
        List<Path> plans = Audit.plans(root);
        // Once over the first of them, so that the measured time is that of a warm program.
        Audit.of(audit, plans.subList(0, Math.min(100, plans.size())), new AtomicBoolean(), (done, of, held) -> { });
        long start = System.nanoTime();
        long cpu = processorNanos();
        Audit result = Audit.of(audit, plans, new AtomicBoolean(), (done, of, held) -> {
            if (done % MEASURED_EVERY == 0) {
                System.out.printf(Locale.ROOT, "%d jobs, %.1f ms of processor time a job so far%n", done, (processorNanos() - cpu) / 1e6 / done);
                System.gc();
                System.out.printf(Locale.ROOT, "%d jobs, %.1f MiB in use after a collection%n", done, (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) / MIB);
            }
        });
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf(Locale.ROOT, "%.1f ms of processor time a job, collections and compiler included%n", (processorNanos() - cpu) / 1e6 / result.jobs().size());
        System.out.printf(Locale.ROOT, "%d jobs in %.1f s: %.1f jobs/s on %d processors; %d may go, %d may not, %d cannot be read%n", result.jobs().size(), seconds,
                result.jobs().size() / seconds, Runtime.getRuntime().availableProcessors(), result.count(JobResult.State.MAY_GO), result.count(JobResult.State.MAY_NOT_GO),
                result.count(JobResult.State.UNREADABLE));
    }

    /** What other programs take from the processors does not count in it. */
    private static long processorNanos() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    /** Writes jobs below a folder, with the parts book they share. */
    static void write(Path root, int jobs, long seed) throws IOException {
        Path van = Jobs.plan("tour-van").getParent();
        Files.createDirectories(root.resolve("seeds"));
        Files.copy(van.resolve("..").resolve("..").resolve("seeds").resolve("parts.yaml"), root.resolve("seeds").resolve("parts.yaml"));
        String plan = Files.readString(van.resolve("plan.yaml"));
        String vehicle = Files.readString(van.resolve("vehicle.yaml"));
        Random random = new Random(seed);
        for (int i = 1; i <= jobs; i++) {
            Path job = Files.createDirectories(root.resolve("year-" + (i % 5 + 2022)).resolve(String.format(Locale.ROOT, "job-%05d", i)));
            LocalDate date = LocalDate.of(2026, 11, 20).minusDays(random.nextInt(500));
            Files.writeString(job.resolve("plan.yaml"), varied(plan, random).replaceFirst("tag: T-1187", String.format(Locale.ROOT, "tag: T-%05d, promised: %s", i, date.plusDays(10)))
                    .replaceFirst("(job: \\{.*date: )2026-11-20", "$1" + date));
            Files.writeString(job.resolve("vehicle.yaml"), varied(vehicle, random).replace("T-1187", String.format(Locale.ROOT, "T-%05d", i)));
            for (String file : List.of("pins.csv", "inspections.csv", "readings.yaml")) {
                Files.copy(van.resolve(file), job.resolve(file));
            }
        }
    }

    private static String varied(String text, Random random) {
        return QUANTITY.matcher(text).replaceAll(found -> {
            if (random.nextDouble() > SHARE_MOVED) {
                return Matcher.quoteReplacement(found.group());
            }
            double factor = 1 + MOST * (2 * random.nextDouble() - 1);
            return new BigDecimal(found.group(1)).multiply(BigDecimal.valueOf(factor)).round(new MathContext(3)).stripTrailingZeros().toPlainString() + " " + found.group(2);
        });
    }
}
