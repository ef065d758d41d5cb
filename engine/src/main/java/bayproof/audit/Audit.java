package bayproof.audit;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Every job below a folder, audited by as many threads as there are processors.
 *
 * @param jobs    results in the order of the jobs' names
 * @param found   jobs that were found
 * @param stopped whether somebody stopped it before all were done
 */
public record Audit(List<JobResult> jobs, int found, boolean stopped) {
    private static final String PLAN = "plan.yaml";
    private static final int MOST_DEPTH = 12;

    /** Is told how far it has come. Called by one thread at a time. */
    @FunctionalInterface
    public interface Progress {
        void done(int jobs, int of, int held);
    }

    public Audit {
        jobs = List.copyOf(jobs);
    }

    /** Plans below a folder, by name. Hidden folders are left out and links are not followed. */
    public static List<Path> plans(Path root) throws IOException {
        List<Path> plans = new ArrayList<>();
        Files.walkFileTree(root, EnumSet.noneOf(FileVisitOption.class), MOST_DEPTH, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                boolean hidden = !folder.equals(root) && folder.getFileName().toString().startsWith(".");
                return hidden ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (file.getFileName().toString().equals(PLAN) && attributes.isRegularFile()) {
                    plans.add(file);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
                // A folder that may not be read holds jobs of somebody else.
                return FileVisitResult.CONTINUE;
            }
        });
        Collections.sort(plans);
        return plans;
    }

    /**
     * Audits jobs.
     *
     * @param stop becomes true when somebody wants what is done so far
     */
    public static Audit of(JobAudit audit, List<Path> plans, AtomicBoolean stop, Progress progress) throws InterruptedException {
        JobResult[] results = new JobResult[plans.size()];
        AtomicInteger next = new AtomicInteger();
        int[] told = new int[2];
        List<Thread> threads = new ArrayList<>();
        for (int i = 0; i < Math.min(plans.size(), Runtime.getRuntime().availableProcessors()); i++) {
            Thread thread = new Thread(() -> {
                for (int job = next.getAndIncrement(); job < results.length && !stop.get(); job = next.getAndIncrement()) {
                    results[job] = audit.audit(plans.get(job));
                    synchronized (told) {
                        told[0]++;
                        told[1] += results[job].state() == JobResult.State.MAY_GO ? 0 : 1;
                        progress.done(told[0], results.length, told[1]);
                    }
                }
            }, "audit-" + i);
            threads.add(thread);
            thread.start();
        }
        for (Thread thread : threads) {
            thread.join();
        }
        List<JobResult> done = new ArrayList<>();
        for (JobResult result : results) {
            if (result != null) {
                done.add(result);
            }
        }
        return new Audit(done, plans.size(), done.size() < plans.size());
    }

    /** The worst state of any job. */
    public JobResult.State worst() {
        return jobs.stream().map(JobResult::state).max(Comparator.naturalOrder()).orElse(JobResult.State.MAY_GO);
    }

    public int count(JobResult.State state) {
        return (int) jobs.stream().filter(job -> job.state() == state).count();
    }
}
