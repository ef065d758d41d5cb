package bayproof.signoff;

import bayproof.read.Source;
import bayproof.read.UnusableInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A record held against itself, against the files of its job, and against a head from paper.
 *
 * @param chain the record
 * @param files the files of the last entry as they are now, and photos that came later
 * @param paper what the head from paper says; null where none was given
 */
public record Proof(Chain chain, List<File> files, Paper paper) {

    /** What became of a signed file. */
    public enum State {
        SAME("same bytes"), MEANS_SAME("other bytes, same meaning"), CHANGED("CHANGED: it says something else"), OTHER_BYTES("CHANGED: other bytes"),
        UNREADABLE("CHANGED: it cannot be read any more"), GONE("GONE: it is not there any more"),
        ADDED("NEW: it was not there when this was signed");

        private final String words;

        State(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** Whether the file still says what was signed. */
        public boolean matches() {
            return this == SAME || this == MEANS_SAME;
        }
    }

    /** A signed file and what became of it. */
    public record File(SignedFile signed, State state) {
    }

    /**
     * What a head from paper shows.
     *
     * @param head  the head as it was given
     * @param entry the entry it belongs to; null where the record holds none such
     */
    public record Paper(String head, Entry entry) {
    }

    public Proof {
        files = List.copyOf(files);
    }

    /**
     * Looks.
     *
     * @param folder the job's folder
     * @param head   a head from paper; null where there is none
     */
    public static Proof of(Path folder, String head) throws IOException {
        Chain chain = Chain.read(folder);
        List<File> files = new ArrayList<>();
        if (chain.last() != null) {
            for (SignedFile signed : chain.last().files()) {
                files.add(new File(signed, state(folder, signed)));
            }
            files.addAll(added(folder, chain.last()));
        }
        return new Proof(chain, files, head == null ? null : new Paper(head, chain.byHead(head)));
    }

    /** Photos that nobody signed for: who looks at the folder would take them for signed. */
    private static List<File> added(Path folder, Entry last) throws IOException {
        Set<String> signed = last.files().stream().map(SignedFile::file).collect(Collectors.toSet());
        List<File> added = new ArrayList<>();
        for (Path photo : new Photos(folder).lying()) {
            String name = SignedSource.seenFrom(folder, photo);
            if (!signed.contains(name)) {
                added.add(new File(new SignedFile(name, SignedFile.PHOTO, Digest.of(photo), null), State.ADDED));
            }
        }
        return added;
    }

    private static State state(Path folder, SignedFile signed) throws IOException {
        Path file;
        try {
            file = folder.resolve(signed.file());
        } catch (InvalidPathException e) {
            return State.GONE;
        }
        if (!Files.isRegularFile(file)) {
            return State.GONE;
        }
        if (Digest.of(file).equals(signed.sha256())) {
            return State.SAME;
        }
        if (signed.meaning() == null) {
            return State.OTHER_BYTES;
        }
        try {
            return Digest.meaning(Source.DISK.bytes(file, signed.file()), signed.file()).equals(signed.meaning()) ? State.MEANS_SAME : State.CHANGED;
        } catch (UnusableInput e) {
            return State.UNREADABLE;
        }
    }

    /** Whether everything that can be shown matches. */
    public boolean matches() {
        return chain.last() != null && chain.faults().isEmpty() && files.stream().allMatch(file -> file.state().matches())
                && (paper == null || paper.entry() != null);
    }
}
