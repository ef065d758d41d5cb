package bayproof.read;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Damages files as slips of the hand, broken transfers and ill will do. */
final class Damage {
    /** Texts that mean something to one reader or another. */
    private static final List<String> ODD = List.of("null", "~", "{", "}", "[", "]", ": ", "- ", "\"", "'", "|", ">", "&a ", "*a", "!!int ", "<<: ", "---\n",
            "\t", "\u0000", "\u00A0", "\uFEFF", "\u2028", "\uD83D\uDE00", "\r", "1e999 V", "NaN", "-1 m", "0 A", "999999999999 A", "unknown", "cannot-be-seen",
            "none", ".", "..", "a.b.c", ".csv", "../../..", "\"\\0\"", "\"\\uD800\"", ",", ";", "#", "%", "@", "`");

    private final Random random;

    Damage(Random random) {
        this.random = random;
    }

    /** The bytes with one to three things wrong with them. */
    byte[] of(byte[] bytes) {
        byte[] result = bytes;
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            result = once(result);
        }
        return result;
    }

    private byte[] once(byte[] bytes) {
        if (bytes.length < 2) {
            return bytes;
        }
        int at = random.nextInt(bytes.length);
        return switch (random.nextInt(8)) {
            case 0 -> {
                byte[] flipped = bytes.clone();
                flipped[at] ^= (byte) (1 << random.nextInt(8));
                yield flipped;
            }
            case 1 -> joined(bytes, at, "", Math.min(bytes.length, at + 1 + random.nextInt(20)));
            case 2 -> joined(bytes, at, ODD.get(random.nextInt(ODD.size())), at);
            case 3 -> lines(bytes, true);
            case 4 -> lines(bytes, false);
            case 5, 6 -> swapped(bytes);
            default -> Arrays.copyOf(bytes, at);
        };
    }

    private static byte[] joined(byte[] bytes, int to, String middle, int from) {
        byte[] inserted = middle.getBytes(StandardCharsets.UTF_8);
        byte[] result = new byte[to + inserted.length + bytes.length - from];
        System.arraycopy(bytes, 0, result, 0, to);
        System.arraycopy(inserted, 0, result, to, inserted.length);
        System.arraycopy(bytes, from, result, to + inserted.length, bytes.length - from);
        return result;
    }

    /** One line written twice, or taken out. */
    private byte[] lines(byte[] bytes, boolean twice) {
        List<String> lines = new ArrayList<>(List.of(text(bytes).split("\n", -1)));
        int at = random.nextInt(lines.size());
        if (twice) {
            lines.add(random.nextInt(lines.size()), lines.get(at));
        } else {
            lines.remove(at);
        }
        return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
    }

    /** Two words of the file change places, or one of them gives way to an odd one. */
    private byte[] swapped(byte[] bytes) {
        String[] words = text(bytes).split("(?<=[^a-z0-9.-])|(?=[^a-z0-9.-])");
        int one = random.nextInt(words.length);
        int other = random.nextInt(words.length);
        String word = words[one];
        words[one] = random.nextInt(3) == 0 ? new String(ODD.get(random.nextInt(ODD.size())).getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1)
                : words[other];
        words[other] = word;
        return String.join("", words).getBytes(StandardCharsets.ISO_8859_1);
    }

    /** Bytes as characters and back without loss. */
    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
