package bayproof.report.refit;

import bayproof.demand.Outcome;
import bayproof.judge.Verdict;
import bayproof.refit.Fate;
import bayproof.refit.Provision;
import bayproof.refit.Reason;
import bayproof.refit.Refit;
import bayproof.refit.Row;
import bayproof.report.Cautions;
import bayproof.report.Plain;
import bayproof.report.RuleBaseDate;
import bayproof.report.worksheet.Block;
import bayproof.report.worksheet.MarkdownForm;
import bayproof.report.worksheet.Page;
import bayproof.report.worksheet.TextForm;
import bayproof.review.Remedies;
import bayproof.review.Remedy;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** May the old vehicle be opened tomorrow? The answer first, then every thing of the old job with what becomes of it. */
public final class RefitPage {
    /** Lines of a screen. */
    private static final int HEIGHT = 24;
    /** Names of things that fare alike, and characters of a reason, on the first screen. */
    private static final int MOST_NAMED = 3;
    private static final int LONGEST = 130;

    private final Refit refit;
    private final RowText words;
    private final AskList asks;

    private final String written;

    /** @param written the plan that was written for the new vehicle; null where none was */
    public RefitPage(Refit refit, String written) {
        this.refit = refit;
        this.written = written;
        this.words = new RowText(remedies(refit));
        this.asks = new AskList(refit);
    }

    private static Map<String, Remedy> remedies(Refit refit) {
        List<Verdict> broken = new ArrayList<>();
        refit.rows().forEach(row -> row.reasons().stream().map(Reason::verdict).filter(verdict -> verdict != null && verdict.outcome() == Outcome.BROKEN).forEach(broken::add));
        return Remedies.of(refit.after(), broken.stream().distinct().toList());
    }

    /** As a terminal shows it, 80 columns wide; the head fills at most one screen. */
    public String text() {
        return TextForm.of(title(), head(), running(), pages());
    }

    public String markdown() {
        return MarkdownForm.of(title(), head(), running(), pages(), null);
    }

    /** What to ask and measure. */
    List<AskList.Ask> asks() {
        return asks.all();
    }

    private String running() {
        return "TAG " + refit.before().job().plan().job().tag().orElse("not given");
    }

    private String title() {
        return "REFIT  " + running() + refit.before().job().plan().job().title().map(title -> "  " + title).orElse("");
    }

    // the first screen

    /** The answer in words. */
    String answer() {
        int not = refit.count(Fate.NOT);
        int open = refit.count(Fate.OPEN);
        if (refit.counts()) {
            return "DO NOT OPEN THE OLD VEHICLE YET - " + not + (not == 1 ? " does" : " do") + " not carry over, " + open + " cannot be told yet.";
        }
        List<Provision> have = refit.provisions();
        return "THE OLD VEHICLE MAY BE OPENED as far as the rules look" + (have.isEmpty() ? "" : ", once " + Plain.count(have.size(), "thing") + " to order, make or borrow "
                + (have.size() == 1 ? "is" : "are") + " in hand (up to " + Plain.count((int) have.stream().mapToLong(Provision::days).max().orElse(0), "day") + ")")
                + ". Nothing is left behind, nothing is left open.";
    }

    /** All four kinds by name, zeros too. */
    String counts() {
        List<String> parts = new ArrayList<>();
        for (Fate fate : List.of(Fate.CARRIES, Fate.CHANGED, Fate.NOT, Fate.OPEN)) {
            parts.add(fate.says() + " " + refit.count(fate));
        }
        return Plain.count(refit.rows().size(), "row") + ": " + String.join(", ", parts) + ".";
    }

    private List<Block> head() {
        List<Block> fixed = new ArrayList<>();
        String into = refit.after().job().vehicle().title().orElse("not named");
        fixed.add(new Block.Words("", Plain.cut("Into: " + into, 80)));
        fixed.add(new Block.Words("", answer()));
        fixed.add(new Block.Words("", counts()));
        if (written != null) {
            fixed.add(new Block.Words("", "Written: " + written + ". What is left to do there: bayproof review " + written));
        }
        fixed.add(new Block.Words("", "Not looked at here: " + RuleBaseDate.built().notLookedAt() + "."));
        List<Block> close = List.of(new Block.Words("Today you may:", refit.counts() ? "measure, photograph, quote, ask." : "order what is listed; then open it."),
                new Block.Words("Not yet:", refit.counts() ? "open the old vehicle, sell what stays behind, cut a cable." : "put the fuse in, hand the keys back."));
        List<Block> body = new ArrayList<>();
        List<Block> lost = RowGroup.of(refit.of(Fate.NOT), words).stream().<Block>map(this::line).toList();
        List<Block> asked = asks.lines();
        int lostShown = lost.size();
        int askedShown = asked.size();
        do {
            body.clear();
            some(body, "Does not carry over", lost, lostShown);
            some(body, "Ask or measure first, what most waits for it", asked, askedShown);
            if (lostShown > askedShown) {
                lostShown--;
            } else {
                askedShown--;
            }
        } while (height(fixed, body, close) > HEIGHT && lostShown + askedShown > 0);
        List<Block> head = new ArrayList<>(fixed);
        head.addAll(body);
        if (!body.isEmpty()) {
            head.add(new Block.Words("", ""));
        }
        head.addAll(close);
        return head;
    }

    private static void some(List<Block> body, String heading, List<Block> all, int shown) {
        if (all.isEmpty()) {
            return;
        }
        body.add(new Block.Heading(heading));
        body.addAll(all.subList(0, Math.min(shown, all.size())));
        if (shown < all.size()) {
            body.add(new Block.Words("", "and " + (all.size() - Math.max(0, shown)) + " more below."));
        }
    }

    private int height(List<Block> fixed, List<Block> body, List<Block> close) {
        List<Block> all = new ArrayList<>(fixed);
        all.addAll(body);
        all.add(new Block.Words("", ""));
        all.addAll(close);
        return TextForm.of(title(), all, "", List.of()).split("\n", -1).length - 1;
    }

    private Block line(RowGroup group) {
        return new Block.Words("NOT", group.kind() + " " + group.names(MOST_NAMED) + ": " + Plain.cut(Plain.text(group.why()), LONGEST));
    }

    // the pages

    private List<Page> pages() {
        List<Page> pages = new ArrayList<>();
        pages.add(new Page("1 WHAT BECOMES OF EACH THING", table()));
        pages.add(new BeforePage(refit, asks).page());
        pages.add(new MovedPage(refit).page());
        pages.add(new LevelPage(refit).page());
        pages.add(new HoursPage(refit).page());
        return pages;
    }

    private List<Block> table() {
        List<Block> blocks = new ArrayList<>();
        for (Fate fate : List.of(Fate.NOT, Fate.OPEN, Fate.CHANGED, Fate.CARRIES)) {
            blocks.add(new Block.Heading(fate.says().toUpperCase(Locale.ROOT) + " (" + refit.count(fate) + ")"));
            List<Row> rows = refit.of(fate);
            if (fate == Fate.CARRIES) {
                Map<String, List<String>> byKind = new LinkedHashMap<>();
                rows.forEach(row -> byKind.computeIfAbsent(row.kind(), any -> new ArrayList<>()).add(row.id() + (row.where() == null || row.where().equals(row.id()) ? "" : " > " + row.where())));
                byKind.forEach((kind, names) -> blocks.add(new Block.Words(Plain.padded(kind, 9), String.join(", ", names))));
            } else if (fate == Fate.OPEN && !rows.isEmpty()) {
                blocks.add(new Block.Grid(List.of("what", "which", "find out", "where"),
                        RowGroup.of(rows, words).stream().map(group -> List.of(group.kind(), group.names(), group.why(), asks.where(group.rows()))).toList()));
            } else if (!rows.isEmpty()) {
                blocks.add(new Block.Grid(List.of("what", "which", fate == Fate.NOT ? "why, what instead" : "change"),
                        RowGroup.of(rows, words).stream().map(group -> List.of(group.kind(), group.names(), group.why())).toList()));
            }
        }
        blocks.add(new Block.Words("CAUTION", Cautions.FIRST_COMES));
        return blocks;
    }
}
