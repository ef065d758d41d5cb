package bayproof.facts;

import bayproof.vocabulary.At;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** Days as files write them: year-month-day, with or without a time behind it. */
final class Days {
    private static final int LENGTH_OF_DAY = "2026-11-20".length();

    private Days() {
    }

    /** Whether one time comes after another, as far as both of them say it: a day without a time is not after a time of the same day. */
    static boolean isAfter(String one, String other) {
        int length = Math.min(one.length(), other.length());
        return one.substring(0, length).compareTo(other.substring(0, length)) > 0;
    }

    /** The day that a text names; missing where it names none. */
    static Shown<LocalDate> day(Shown<String> text, String path, At at) {
        return text.then(written -> {
            try {
                return Shown.of(LocalDate.parse(written.substring(0, Math.min(LENGTH_OF_DAY, written.length()))));
            } catch (DateTimeParseException e) {
                return Shown.missing(new Need(path, "a day, written year-month-day", text.atOr(at)));
            }
        });
    }
}
