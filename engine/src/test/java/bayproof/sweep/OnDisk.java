package bayproof.sweep;

import bayproof.read.JobFiles;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.UnusableInput;
import bayproof.support.Jobs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A copy of a job in a folder of its own: what the head of a file says takes effect only when the file is read again. */
final class OnDisk {
    private final Path folder;
    private final String job;
    private final JobFiles files;

    /**
     * Copies a job.
     *
     * @param empty folder to copy it into
     */
    OnDisk(Path empty, String job, JobFiles files) {
        this.folder = empty;
        this.job = job;
        this.files = files;
        copy(Jobs.CASES.resolve(job), folder.resolve("cases").resolve(job));
        copy(Jobs.CASES.resolveSibling("seeds"), folder.resolve("seeds"));
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path one : (Iterable<Path>) all::iterator) {
                Path target = to.resolve(from.relativize(one).toString());
                if (Files.isDirectory(one)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(one, target);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The job as read when one of its files is written anew. */
    synchronized JobFiles reread(String kind, MapTree changed) throws UnusableInput {
        Path plan = folder.resolve("cases").resolve(job).resolve("plan.yaml");
        Path file = kind.equals("plan") ? plan : plan.resolveSibling(((ScalarTree) files.tree("plan").get(kind)).text());
        try {
            byte[] before = Files.readAllBytes(file);
            Files.writeString(file, TreeWriter.write(changed));
            try {
                return JobFiles.read(plan, null);
            } finally {
                Files.write(file, before);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
