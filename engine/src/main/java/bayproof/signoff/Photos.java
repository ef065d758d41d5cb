package bayproof.signoff;

import bayproof.read.Job;
import bayproof.read.Problem;
import bayproof.read.Taken;
import bayproof.read.UnusableInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The photos of a job: those in one folder beside the plan, and those that a reading names by their file. */
public final class Photos {
    private static final String FOLDER = "photos";

    private final Path folder;
    private final List<Path> lying;

    /** @param folder the folder of the plan */
    public Photos(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
        this.lying = lying(this.folder.resolve(FOLDER));
    }

    /** Photos are looked for in one folder; links in it lead nowhere. */
    private static List<Path> lying(Path photos) {
        if (!Files.isDirectory(photos)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(photos)) {
            return all.filter(path -> Files.isRegularFile(path) && !Files.isSymbolicLink(path)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException("the photos cannot be read: " + e.getMessage(), e);
        }
    }

    /** Those in the folder of the photos. */
    List<Path> lying() {
        return lying;
    }

    /** Those in the folder of the photos, and those that a reading of the job names. */
    List<Path> of(Job job) {
        TreeSet<Path> all = new TreeSet<>(lying);
        job.taken().values().stream().map(this::file).filter(file -> file != null).forEach(all::add);
        return List.copyOf(all);
    }

    /**
     * Holds the hash that a reading gives of its photo against the file; what lies elsewhere is believed.
     *
     * @throws UnusableInput naming each reading whose photo is another one
     */
    public void check(Job job) throws UnusableInput {
        List<Problem> problems = new ArrayList<>();
        for (Taken taken : job.taken().values()) {
            Path file = taken.photoHash().isGiven() ? file(taken) : null;
            if (file != null && !hash(file).equals(taken.photoHash().orElse("").toLowerCase(Locale.ROOT))) {
                problems.add(new Problem(taken.photoHash().atOr(taken.at()), file.getFileName() + " is another photo than the reading says: its SHA-256 is "
                        + hash(file) + ".", "Find the photo that was taken, or take the reading again."));
            }
        }
        if (!problems.isEmpty()) {
            throw new UnusableInput(problems);
        }
    }

    private static String hash(Path file) {
        try {
            return Digest.of(file);
        } catch (IOException e) {
            throw new UncheckedIOException("a photo cannot be read: " + e.getMessage(), e);
        }
    }

    /** The file of a reading's photo, named by its path or by its number; null where there is none below the job's folder. */
    private Path file(Taken taken) {
        String name = taken.photo().orElse("");
        if (name.isEmpty()) {
            return null;
        }
        List<Path> numbered = lying.stream().filter(file -> file.getFileName().toString().replaceFirst("\\.[^.]*$", "").equals(name)).toList();
        if (numbered.size() == 1) {
            return numbered.get(0);
        }
        for (Path from : List.of(folder, folder.resolve(FOLDER))) {
            Path file = below(from, name);
            if (file != null) {
                return file;
            }
        }
        return null;
    }

    /** A file outside of the job, and one that a link stands for, is none of its photos. */
    private Path below(Path from, String name) {
        try {
            Path file = from.resolve(name).normalize();
            return file.startsWith(folder) && Files.isRegularFile(file) && !Files.isSymbolicLink(file) ? file : null;
        } catch (InvalidPathException e) {
            return null;
        }
    }
}
