package bayproof.signoff;

import bayproof.read.Job;
import bayproof.read.JobFiles;
import bayproof.read.Source;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The disk, remembering the bytes it gave: what is signed is exactly what was judged. */
public final class SignedSource implements Source {
    private final Map<Path, byte[]> given = new LinkedHashMap<>();

    @Override
    public boolean has(Path file) {
        return Source.DISK.has(file);
    }

    @Override
    public byte[] bytes(Path file, String name) throws UnusableInput {
        byte[] bytes = Source.DISK.bytes(file, name);
        given.put(file, bytes);
        return bytes;
    }

    /**
     * One hash of the bytes of all files that were read.
     *
     * @param but a file that is left out; may be null
     */
    public String mark(Path but) {
        StringBuilder hashes = new StringBuilder();
        given.forEach((file, bytes) -> hashes.append(file.equals(but) ? "" : Digest.of(bytes)));
        return Digest.of(hashes.toString());
    }

    /**
     * Every file that was read, and every photo of the job.
     *
     * @param folder the folder of the plan
     * @param job    what the files say
     * @throws UnusableInput when a file that could be judged cannot be read alone
     */
    public List<SignedFile> files(Path folder, Job job) throws UnusableInput {
        List<SignedFile> files = new ArrayList<>();
        for (Map.Entry<Path, byte[]> one : given.entrySet()) {
            String name = one.getKey().toString();
            files.add(new SignedFile(seenFrom(folder, one.getKey()), JobFiles.isTable(name) ? "table" : kind(one.getValue(), name), Digest.of(one.getValue()),
                    Digest.meaning(one.getValue(), name)));
        }
        new Photos(folder).of(job).forEach(photo -> files.add(photo(folder, photo)));
        return files;
    }

    private static String kind(byte[] bytes, String name) throws UnusableInput {
        MapTree tree = TreeReader.read(bytes, name);
        return tree.get("kind") instanceof ScalarTree kind ? kind.text() : "plan";
    }

    private static SignedFile photo(Path folder, Path photo) {
        try {
            return new SignedFile(seenFrom(folder, photo), SignedFile.PHOTO, Digest.of(photo), null);
        } catch (IOException e) {
            throw new UncheckedIOException("a photo cannot be read: " + e.getMessage(), e);
        }
    }

    /** A file of a job as its record names it. */
    static String seenFrom(Path folder, Path file) {
        Path from = folder.toAbsolutePath().normalize();
        Path to = file.toAbsolutePath().normalize();
        return (from.getRoot().equals(to.getRoot()) ? from.relativize(to) : to).toString().replace('\\', '/');
    }
}
