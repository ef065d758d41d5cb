package bayproof.signoff;

import bayproof.read.CsvCells;
import bayproof.read.JobFiles;
import bayproof.read.Tree;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;

/** SHA-256 of what is signed, in small hexadecimal digits. */
public final class Digest {
    private static final int SHORT = 16;
    private static final int GROUP = 4;
    private static final int BUFFER = 1 << 16;

    private Digest() {
    }

    static String of(byte[] bytes) {
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    static String of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** The hash of a file of any size. */
    static String of(Path file) throws IOException {
        MessageDigest digest = sha256();
        byte[] buffer = new byte[BUFFER];
        try (InputStream in = Files.newInputStream(file)) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                digest.update(buffer, 0, read);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /**
     * The hash of what a file of a job says: of its keys and texts as canonical JSON. Comments, blanks, quotes, the order
     * of keys and the form (YAML or JSON) are not part of it; how a quantity is spelled is.
     *
     * @throws UnusableInput when the bytes are no sound file of a job
     */
    static String meaning(byte[] bytes, String name) throws UnusableInput {
        if (JobFiles.isTable(name)) {
            return of(CanonicalJson.write(CsvCells.read(name, new String(bytes, StandardCharsets.UTF_8)).stream()
                    .map(row -> row.stream().map(CsvCells.Cell::text).toList()).toList()));
        }
        return of(CanonicalJson.write(plain(TreeReader.read(bytes, name))));
    }

    private static Object plain(Tree tree) {
        if (tree instanceof MapTree map) {
            Map<String, Object> plain = new LinkedHashMap<>();
            map.entries().values().forEach(entry -> plain.put(entry.key(), plain(entry.value())));
            return plain;
        }
        if (tree instanceof ListTree list) {
            return list.items().stream().map(Digest::plain).toList();
        }
        ScalarTree scalar = (ScalarTree) tree;
        return scalar.isEmpty() ? null : scalar.text();
    }

    /** The beginning of a hash in groups of four, to be written on paper. */
    public static String shortened(String hash) {
        return hash.substring(0, SHORT).replaceAll("(.{" + GROUP + "})(?!$)", "$1-");
    }
}
