package bayproof.report;

import java.util.List;
import java.util.Locale;

/** Looks for text the way people type it: case and spaces do not matter. */
final class Found {
    private Found() {
    }

    /** Those of the texts that hold what is looked for; all of them where that is empty. */
    static List<String> holding(List<String> texts, String wanted) {
        String plain = plain(wanted);
        return texts.stream().filter(text -> plain(text).contains(plain)).toList();
    }

    /** Whether a text holds each word of what is looked for, in any order. */
    static boolean hasWords(String text, String wanted) {
        return List.of(plain(wanted).split(" ")).stream().allMatch(plain(text)::contains);
    }

    private static String plain(String text) {
        return Plain.text(text).toLowerCase(Locale.ROOT).replaceAll(" +", " ");
    }
}
