package bayproof.signoff;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The record of a job: one entry a line, each in canonical JSON and chained to the one before. An entry is added by
 * writing the whole record beside the old one, forcing it to the disk, and moving it into the old one's place: at every
 * moment one of the two is there, whole.
 */
public final class SignOffRecord {
    /** Name of the file, beside the plan. */
    public static final String FILE = "sign-off.jsonl";
    /** It stays: a lock file that is taken away lets two people in. */
    private static final String LOCK = ".sign-off.lock";
    private static final String PART = "." + FILE + ".part";
    /** No job is signed so often. */
    private static final long MOST_BYTES = 256L * 1024 * 1024;

    /** Somebody else is signing at this moment. */
    public static final class Busy extends Exception {
        private static final long serialVersionUID = 1L;
    }

    /** The record is damaged; nothing may be put on top of it. */
    public static final class Damaged extends Exception {
        private static final long serialVersionUID = 1L;

        Damaged(String what) {
            super(what);
        }
    }

    private SignOffRecord() {
    }

    /** What to sign, made while nobody else can. */
    @FunctionalInterface
    public interface Signing<E extends Exception> {
        Map<String, Object> content() throws E;
    }

    /**
     * Adds an entry. When this returns, it is on the disk.
     *
     * @param folder  the job's folder
     * @param signing makes what is signed, once the record is locked
     * @throws Busy    when another process or thread is signing; nothing was written
     * @throws Damaged when the record does not fit together; nothing was written
     */
    public static <E extends Exception> Entry append(Path folder, Signing<E> signing) throws IOException, Busy, Damaged, E {
        try (FileChannel lockFile = FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
             FileLock lock = lock(lockFile)) {
            Chain chain = Chain.read(folder);
            if (!chain.faults().isEmpty()) {
                throw new Damaged(chain.faults().get(0));
            }
            Entry entry = Entry.after(chain.last(), signing.content());
            List<String> lines = new ArrayList<>(chain.entries().stream().map(Entry::line).toList());
            lines.add(entry.line());
            replace(folder, String.join("\n", lines) + "\n");
            return entry;
        }
    }

    private static FileLock lock(FileChannel file) throws IOException, Busy {
        try {
            FileLock lock = file.tryLock();
            if (lock == null) {
                throw new Busy();
            }
            return lock;
        } catch (OverlappingFileLockException e) {
            throw new Busy();
        }
    }

    private static void replace(Path folder, String text) throws IOException {
        Path part = folder.resolve(PART);
        try (FileChannel out = FileChannel.open(part, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                out.write(bytes);
            }
            out.force(true);
        }
        FileMode.keep(folder.resolve(FILE), part);
        Files.move(part, folder.resolve(FILE), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        force(folder);
    }

    /** A new name is on the disk once its folder is; systems that cannot open a folder keep names safe by themselves. */
    private static void force(Path folder) throws IOException {
        FileChannel names;
        try {
            names = FileChannel.open(folder, StandardOpenOption.READ);
        } catch (IOException e) {
            return;
        }
        try (names) {
            names.force(true);
        }
    }

    /** The bytes of the record; empty where there is none. */
    static byte[] bytes(Path folder) throws IOException {
        Path file = folder.resolve(FILE);
        if (!Files.isRegularFile(file)) {
            return new byte[0];
        }
        if (Files.size(file) > MOST_BYTES) {
            throw new IOException("the record is larger than any job's");
        }
        return Files.readAllBytes(file);
    }
}
