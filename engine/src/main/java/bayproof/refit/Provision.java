package bayproof.refit;

import bayproof.demand.Limits;
import bayproof.read.Choices;
import bayproof.read.Plan;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Something to have in hand before the old vehicle is opened.
 *
 * @param how      order, make or borrow
 * @param row      row that needs it; for a tool its name
 * @param what     what to have
 * @param days     days until it is there
 * @param asked    whether somebody asked for that time, and it is not a default
 * @param latest   last day to order or begin it; null where nobody said when the vehicle is opened
 */
public record Provision(String how, String row, String what, long days, boolean asked, LocalDate latest) {
    private static final double SECONDS_PER_DAY = 86400;
    private static final String ORDER = "order";
    private static final String MAKE = "make";
    private static final String BORROW = "borrow";

    static List<Provision> of(Refit refit) {
        List<Provision> all = new ArrayList<>();
        for (Row row : refit.rows()) {
            if (row.fate() == Fate.NOT && !row.isNowhere()) {
                lost(refit, row, all);
            } else if (row.fate() == Fate.CHANGED) {
                changed(refit, row, all);
            }
        }
        tools(refit, all);
        return List.copyOf(all);
    }

    private static void lost(Refit refit, Row row, List<Provision> all) {
        String instead = row.decisive().stream().map(Reason::instead).filter(one -> one != null).findFirst().orElse("another " + row.kind());
        switch (row.kind()) {
            case "interface", "harness", "item", "bus" -> all.add(provision(refit, ORDER, row, instead + ", in place of " + row.id()));
            case "enclosure", "mount", "run" -> all.add(provision(refit, MAKE, row, instead + ", in place of " + row.id()));
            default -> { }
        }
    }

    private static void changed(Refit refit, Row row, List<Provision> all) {
        List<String> topics = refit.after().job().limits().named("refit-small-part-topics").words();
        row.decisive().stream().filter(reason -> reason.verdict() != null && topics.contains(reason.verdict().rule().topic())).findFirst()
                .ifPresent(reason -> all.add(provision(refit, ORDER, row, "the small part that " + reason.fact() + " asks for on " + row.id())));
    }

    private static void tools(Refit refit, List<Provision> all) {
        Shown<List<String>> shop = refit.after().job().plan().shopTools();
        Set<String> lacking = new TreeSet<>();
        refit.after().job().plan().steps().values().stream().map(Plan.Step::tools).forEach(tools -> lacking.addAll(tools.orElse(List.of())));
        if (shop.isGiven()) {
            lacking.removeAll(shop.orElse(List.of()));
            lacking.forEach(tool -> all.add(provision(refit, BORROW, tool, tool, "the tool " + tool)));
        }
    }

    private static Provision provision(Refit refit, String how, Row row, String what) {
        return provision(refit, how, row.key(), row.id(), what);
    }

    private static Provision provision(Refit refit, String how, String row, String id, String what) {
        Choices.Decided choices = refit.choices().decided();
        Limits limits = refit.after().job().limits();
        Shown<Double> said = choices.delivery().getOrDefault(id, Shown.missing(new Need("choices.delivery." + id, "how long it takes", Trees.NEW)));
        double seconds = said.orElse(limits.named("refit-delivery-" + how).value());
        long days = (long) Math.ceil(seconds / SECONDS_PER_DAY);
        LocalDate opens = opens(choices);
        return new Provision(how, row, what, days, said.isGiven(), opens == null ? null : opens.minusDays(days));
    }

    /** Day on which the old vehicle is to be opened; null where nobody said, or said no day. */
    public static LocalDate opens(Choices.Decided choices) {
        try {
            return choices.opens().map(LocalDate::parse).orElse(null);
        } catch (DateTimeException e) {
            return null;
        }
    }
}
