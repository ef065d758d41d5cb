package bayproof.refit;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.read.Plan;
import bayproof.vocabulary.Shown;
import bayproof.worksheet.PutBack;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The hours of both vehicles: taking the system out of the old one and restoring it, what each change causes, and the steps of the plan
 * in the new one.
 *
 * @param steps   all steps
 * @param people  people who work at once
 * @param low     the order of the work when all goes well
 * @param likely  as planned
 * @param high    when things go wrong
 * @param booked  seconds booked; missing where nobody booked any
 * @param ofOld   whether the booking is that of the old job, because nobody booked this one
 */
public record RefitHours(List<WorkStep> steps, int people, Schedule low, Schedule likely, Schedule high, Shown<Double> booked, boolean ofOld) {
    private static final List<String> OPENING = List.of("photograph", "disconnect-battery", "wait-restraints", "unplug-restraints", "teardown");
    private static final String OLD = "old: ";
    private static final String MAKE = "make";
    private static final String TEARDOWN = "teardown";

    public RefitHours {
        steps = List.copyOf(steps);
    }

    static RefitHours of(Refit refit) {
        List<WorkStep> steps = new Builder(refit).all();
        int people = refit.choices().decided().people().orElse(1);
        boolean ofOld = !refit.choices().decided().bookedSeconds().isGiven();
        Shown<Double> booked = ofOld ? refit.before().job().plan().job().bookedSeconds() : refit.choices().decided().bookedSeconds();
        return new RefitHours(steps, people, Schedule.of(steps, people, WorkStep::low), Schedule.of(steps, people, WorkStep::likely),
                Schedule.of(steps, people, WorkStep::high), booked, ofOld);
    }

    /** Makes the steps. */
    private static final class Builder {
        private final Refit refit;
        private final Limits limits;
        private final Map<String, WorkStep> steps = new LinkedHashMap<>();

        Builder(Refit refit) {
            this.refit = refit;
            this.limits = refit.after().job().limits();
        }

        List<WorkStep> all() {
            List<String> out = takeOut();
            List<String> made = changes(out);
            Map<String, Plan.Step> plan = refit.after().job().plan().steps();
            boolean opens = plan.values().stream().anyMatch(step -> TEARDOWN.equals(step.does().orElse("")));
            for (Plan.Step step : plan.values()) {
                String does = step.does().orElse("");
                List<String> after = new ArrayList<>(step.after().orElse(List.of()));
                if (opens ? TEARDOWN.equals(does) : kind(does).equals("fit") || kind(does).equals("run")) {
                    // Nothing is opened before everything is in hand.
                    after.addAll(out);
                    after.addAll(made);
                }
                add(step.id(), does, step.seconds(), after, 1);
            }
            return List.copyOf(steps.values());
        }

        /** Steps in the old vehicle; returns those after which the system is out. */
        private List<String> takeOut() {
            List<PutBack.Work> work = PutBack.of(refit.before().job()).work();
            List<String> last = new ArrayList<>();
            for (String does : OPENING) {
                for (PutBack.Work one : work) {
                    if (one.again() && does.equals(one.does().orElse(""))) {
                        add(OLD + one.step(), does, one.seconds(), last, 1);
                        last = List.of(OLD + one.step());
                    }
                }
            }
            List<String> out = new ArrayList<>();
            for (PutBack.Work one : work) {
                if (!one.again()) {
                    addKind(OLD + one.step() + " out", "take-apart", one.seconds(), last, limits.named("take-out-share").value());
                    out.add(OLD + one.step() + " out");
                }
            }
            List<String> closing = out.isEmpty() ? last : out;
            for (PutBack.Work one : work) {
                if (one.again() && !OPENING.contains(one.does().orElse(""))) {
                    add(OLD + one.step(), one.does().orElse(""), one.seconds(), closing, 1);
                    closing = List.of(OLD + one.step());
                }
            }
            return out.isEmpty() ? last : out;
        }

        /** What each change of a row causes; what has no place in the new vehicle causes nothing. Made once the old vehicle has given the parts back. */
        private List<String> changes(List<String> out) {
            List<String> made = new ArrayList<>();
            for (Row row : refit.rows()) {
                String name = row.isNowhere() ? null : row.fate() == Fate.NOT ? lost(row) : row.fate() == Fate.CHANGED ? "change" : null;
                if (name != null) {
                    Limit limit = limits.named("refit-hours-" + name);
                    String id = row.key() + (row.kind().equals("setting") ? " anew" : " made");
                    String kind = row.kind().equals("setting") ? "tune" : row.fate() == Fate.NOT ? MAKE : "fit";
                    steps.put(id, step(id, kind, limit.value(), out, from(limit), row.key()));
                    if (!row.kind().equals("setting")) {
                        made.add(id);
                    }
                }
            }
            return made;
        }

        private static String lost(Row row) {
            return switch (row.kind()) {
                case "run" -> "new-cable";
                case "enclosure" -> "new-enclosure";
                case "mount" -> "new-mount";
                case "setting" -> "new-setting";
                case "interface", "harness", "item", "bus" -> "new-item";
                default -> "change";
            };
        }

        private String kind(String does) {
            if (limits.named("waiting-work").words().contains(does)) {
                return "wait";
            }
            for (String kind : List.of("take-apart", "restore", "run", "prove")) {
                if (limits.named("refit-work-" + kind).words().contains(does)) {
                    return kind;
                }
            }
            return does.equals("tune") ? "tune" : "fit";
        }

        private void add(String id, String does, Shown<Double> seconds, List<String> after, double share) {
            addKind(id, kind(does), seconds, after, share);
        }

        private void addKind(String id, String kind, Shown<Double> seconds, List<String> after, double share) {
            Limit limit = limits.named("refit-hours-" + kind);
            steps.put(id, step(id, kind, seconds.orElse(limit.value() * share), after, seconds.isGiven() ? "the plan" : from(limit), null));
        }

        private static String from(Limit limit) {
            return limit.changed() == null ? limit.source() : "the shop: " + limit.changed().reason();
        }

        private WorkStep step(String id, String kind, double likely, List<String> after, String from, String causedBy) {
            boolean waits = kind.equals("wait");
            return new WorkStep(id, kind, waits ? likely : likely * limits.named("hours-low").value(), likely,
                    waits ? likely : likely * limits.named("hours-high").value(), after, from, causedBy);
        }
    }
}
