package bayproof.report.refit;

import bayproof.demand.Gate;
import bayproof.demand.Outcome;
import bayproof.judge.Verdict;
import bayproof.read.Address;
import bayproof.read.Vehicle;
import bayproof.refit.Fate;
import bayproof.refit.Reason;
import bayproof.refit.Refit;
import bayproof.refit.Row;
import bayproof.report.Plain;
import bayproof.report.worksheet.Block;
import bayproof.review.Body;
import bayproof.review.OpenFact;
import bayproof.review.Question;
import bayproof.review.Questions;
import bayproof.vocabulary.Need;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What to ask and to measure before the old vehicle is opened: one look a line, the one that holds up most rows first. */
final class AskList {
    private static final String CHOICES = "choices.";

    /**
     * One look.
     *
     * @param where   where the body must be
     * @param thing   what to look at
     * @param says    what to find out there
     * @param paths   where the answers are written
     * @param instead what does where it cannot be known; null where nothing is known
     * @param rows    rows that wait for it
     */
    record Ask(String where, String thing, List<String> says, List<String> paths, String instead, Set<String> rows) {
    }

    private final Refit refit;
    private final Map<String, Question> questions = new LinkedHashMap<>();
    private final List<Ask> all = new ArrayList<>();

    AskList(Refit refit) {
        this.refit = refit;
        List<Verdict> due = refit.after().judgment().of(Outcome.UNSHOWN).stream().filter(verdict -> verdict.rule().gate().compareTo(Gate.BEFORE_TEARDOWN) <= 0).toList();
        Questions.of(refit.after(), due).all().forEach(question -> question.facts().forEach(fact -> questions.putIfAbsent(fact.need().path(), question)));
        Map<String, List<Need>> needs = new LinkedHashMap<>();
        Map<String, Set<String>> rows = new LinkedHashMap<>();
        for (Row row : refit.of(Fate.OPEN)) {
            for (Reason reason : row.decisive()) {
                String thing = thing(reason.need().path());
                needs.computeIfAbsent(thing, any -> new ArrayList<>()).add(reason.need());
                rows.computeIfAbsent(thing, any -> new LinkedHashSet<>()).add(row.key());
            }
        }
        needs.forEach((thing, some) -> all.add(ask(thing, some, rows.get(thing))));
        all.sort(Comparator.<Ask>comparingInt(ask -> -ask.rows().size()));
    }

    /** The group that a value stands in, and of a group of names the named one: one look answers what stands below. */
    private static String thing(String path) {
        String[] keys = path.split("\\.");
        return keys.length <= 2 ? keys[0] : keys.length > 3 && keys[0].equals("supply") || path.startsWith(CHOICES) || keys[0].equals("settings")
                ? keys[0] + "." + keys[1] + "." + keys[2] : keys[0].equals("supply") ? "supply" : keys[0] + "." + keys[1];
    }

    private Ask ask(String thing, List<Need> needs, Set<String> rows) {
        List<String> says = needs.stream().map(Need::ask).distinct().toList();
        List<String> paths = needs.stream().map(Need::path).distinct().toList();
        Question question = paths.stream().map(questions::get).filter(one -> one != null).findFirst().orElse(null);
        String instead = question == null ? null : question.facts().stream().filter(fact -> paths.contains(fact.need().path())).map(OpenFact::instead)
                .filter(one -> one != null).findFirst().orElse(null);
        String where = thing.startsWith(CHOICES) ? Body.DESK.heading() : thing.startsWith("places.") ? body(thing.substring(7)).heading()
                : question == null ? Body.VEHICLE.heading() : question.thing().body().heading();
        return new Ask(where, thing.startsWith(CHOICES) ? "choices: " + thing.substring(CHOICES.length()) : thing, says, paths, instead, rows);
    }

    private Body body(String place) {
        Vehicle.Place known = refit.after().job().vehicle().places().get(place);
        Vehicle.Zone zone = known == null ? null : refit.after().job().vehicle().zones().get(known.zone().orElse(""));
        return Body.ofZone(zone == null ? "" : zone.kind().orElse(""));
    }

    /** Where the body must be to find out what rows wait for. */
    String where(List<Row> rows) {
        Set<String> keys = new LinkedHashSet<>();
        rows.forEach(row -> keys.add(row.key()));
        return String.join(", ", new LinkedHashSet<>(all.stream().filter(ask -> ask.rows().stream().anyMatch(keys::contains)).map(Ask::where).toList()));
    }

    List<Ask> all() {
        return all;
    }

    /** The units or words an answer may have; empty where any words will do. */
    String unit(String path) {
        Address address = path.startsWith(CHOICES) ? null : Address.of(refit.after().files(), path);
        return address == null ? "" : address.unit().isEmpty() ? String.join(", ", address.words()) : address.unit();
    }

    /** One line each for the first screen. */
    List<Block> lines() {
        List<Block> lines = new ArrayList<>();
        int number = 1;
        for (Ask ask : all) {
            String count = "  " + Plain.count(ask.rows().size(), "row");
            String label = (number < 10 ? " " : "") + number++;
            int room = 80 - 4 - Plain.length(count);
            lines.add(new Block.Words(label, Plain.padded(Plain.clause(Plain.text(ask.thing() + ": " + String.join(", ", ask.says())), room), room) + count));
        }
        return lines;
    }
}
