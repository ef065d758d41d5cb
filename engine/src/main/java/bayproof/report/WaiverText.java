package bayproof.report;

import bayproof.read.Waiver;
import bayproof.review.Waivers;

/** Waivers in words. */
public final class WaiverText {
    private WaiverText() {
    }

    /**
     * By whom and how long, then why: for one line.
     *
     * @param day a day whose year need not be said again
     */
    static String brief(Waiver waiver, String day) {
        return who(waiver, day) + ": " + text(waiver.reason().orElse(""));
    }

    /** By whom and how long. */
    static String who(Waiver waiver, String day) {
        return text("by the " + waiver.by().role().orElse("") + lasting(waiver, day));
    }

    /** Everything that was decided. */
    public static String whole(Waiver waiver) {
        String second = waiver.second().initials().isGiven() ? " with " + person(waiver.second()) : "";
        return text(waiver.reason().orElse("") + ". By " + person(waiver.by()) + second + ", " + Days.day(waiver.date().orElse(""), "") + lasting(waiver, "")
                + " (" + waiver.id() + ", " + waiver.at().file().replaceAll(".*[/\\\\]", "") + ":" + waiver.at().line() + ").");
    }

    /** Why and how long, for somebody who knows no rule. */
    static String agreed(Waiver waiver) {
        return text(Plain.sentence(waiver.reason().orElse("")) + " Accepted by the " + waiver.by().role().orElse("") + lasting(waiver, "") + ".");
    }

    private static String person(Waiver.Person person) {
        return person.initials().orElse("") + " (" + person.role().orElse("") + ")";
    }

    private static String lasting(Waiver waiver, String day) {
        String by = waiver.measuredBy().orElse("");
        return (waiver.until().isGiven() ? " until " + Days.day(waiver.until().orElse(""), day) : "")
                + (by.isEmpty() ? "" : ", will be measured by " + (Waivers.lastsTo(waiver) == null ? Days.day(by, day) : "the gate " + by));
    }

    private static String text(String words) {
        return Plain.text(words);
    }
}
