package bayproof.report;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates as a job sheet shows them. */
public final class Days {
    private static final Pattern ISO = Pattern.compile("([0-9]{4})-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])(?:T.*)?");
    private static final List<String> MONTHS = List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

    private Days() {
    }

    /**
     * A date as day and month, with its year unless it lies in the same year as another date.
     *
     * @param date ISO 8601; anything else is returned as it stands
     */
    public static String day(String date, String other) {
        Matcher iso = ISO.matcher(date);
        if (!iso.matches()) {
            return date;
        }
        String day = Integer.parseInt(iso.group(3)) + " " + MONTHS.get(Integer.parseInt(iso.group(2)) - 1);
        return other.startsWith(iso.group(1) + "-") ? day : day + " " + iso.group(1);
    }
}
