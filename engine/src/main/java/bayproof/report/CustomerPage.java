package bayproof.report;

import bayproof.demand.Gate;
import bayproof.demand.Limits;
import bayproof.facts.FuseStation;
import bayproof.handover.HearingNote;
import bayproof.judge.Verdict;
import bayproof.read.Delivered;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.report.worksheet.Block;
import bayproof.report.worksheet.MarkdownForm;
import bayproof.report.worksheet.Page;
import bayproof.report.worksheet.Say;
import bayproof.report.worksheet.TextForm;
import bayproof.review.Evaluation;
import bayproof.units.Dimension;
import bayproof.units.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the customer takes home: one plain page, without a word of rules. */
public final class CustomerPage {
    private static final double SECONDS_PER_DAY = 86400;
    private static final String WARRANTY = "In the United States the maker of a vehicle may not make its own warranty depend on parts or service of a named brand or "
            + "dealer that it does not pay for; it may refuse a defect that our work or parts caused (16 CFR 700.10; 15 U.S.C. 2302(c)). "
            + "Elsewhere other law applies. This is no legal advice.";

    private final Evaluation evaluation;
    private final Job job;
    private final List<FuseStation> fuses;
    private final List<Block> blocks = new ArrayList<>();

    private CustomerPage(Evaluation evaluation) {
        this.evaluation = evaluation;
        this.job = evaluation.job();
        this.fuses = FuseStation.of(job);
        fitted();
        fuses();
        isolate();
        changed();
        agreed();
        watch();
        hearing();
        kept();
        warranty();
    }

    /** As a terminal shows it, 80 columns wide. */
    public static String text(Evaluation evaluation) {
        CustomerPage page = new CustomerPage(evaluation);
        return TextForm.of(page.title(), List.of(), page.running(), List.of(new Page("FOR THE CUSTOMER", page.blocks)));
    }

    public static String markdown(Evaluation evaluation) {
        CustomerPage page = new CustomerPage(evaluation);
        return MarkdownForm.of(page.title(), List.of(), page.running(), List.of(new Page("For the customer", page.blocks)), null);
    }

    private String title() {
        return job.plan().job().title().orElse("Your vehicle");
    }

    private String running() {
        return "TAG " + job.plan().job().tag().orElse(Block.BLANK);
    }

    private void heading(String text) {
        blocks.add(new Block.Heading(text));
    }

    private void say(String label, String text) {
        blocks.add(new Block.Words(label, text));
    }

    private static String plain(String name) {
        return name.replace('-', ' ');
    }

    private String place(Item item) {
        return item.place().map(CustomerPage::plain).orElse(Block.BLANK);
    }

    // what, where

    private void fitted() {
        heading("WHAT WAS FITTED");
        Map<String, List<String>> kinds = new LinkedHashMap<>();
        for (Item item : job.items().values()) {
            if (!item.path().startsWith("supply.") && !(item instanceof Item.Harness) && !(item instanceof Item.GroundBar)) {
                kinds.computeIfAbsent(kind(item), any -> new ArrayList<>()).add(plain(item.id()));
            }
        }
        kinds.forEach((kind, names) -> say(Plain.capital(kind) + " (" + names.size() + "):", String.join(", ", names) + "."));
    }

    private static String kind(Item item) {
        return Item.KINDS.entrySet().stream().filter(one -> one.getValue() == item.getClass()).map(one -> plain(one.getKey())).findFirst().orElse("item");
    }

    private void fuses() {
        heading("FUSES");
        Map<Item, List<String>> holders = new LinkedHashMap<>();
        for (FuseStation fuse : fuses) {
            String name = fuse.item() instanceof Item.FuseBlock ? plain(fuse.id().substring(fuse.id().lastIndexOf('.') + 1)) + " " : "";
            holders.computeIfAbsent(fuse.item(), any -> new ArrayList<>()).add(name + Say.amount(fuse.ratingAmperes(), Dimension.CURRENT));
        }
        blocks.add(new Block.Grid(List.of("fuse", "where", "value"), holders.entrySet().stream()
                .map(one -> List.of(plain(one.getKey().id()), place(one.getKey()), String.join(", ", one.getValue()))).toList()));
        say("", "A fuse is replaced by the same value, never a larger one. One that blows twice has a reason: call us.");
    }

    private void isolate() {
        heading("HOW TO CUT IT OFF");
        List<String> loom = job.plan().pins().values().stream().filter(pin -> pin.function().orElse("").endsWith("-supply")).map(pin -> pin.connectedTo().orElse(""))
                .filter(terminal -> terminal.contains(".")).map(terminal -> plain(terminal.substring(0, terminal.indexOf('.')))).distinct().toList();
        List<String> first = fuses.stream().filter(fuse -> fuse.post() != null && fuse.fusesBefore() == 0).map(fuse -> plain(fuse.item().id()) + " (" + place(fuse.item())
                + ")").distinct().toList();
        say("", first.isEmpty() ? "Ask us: no fuse at a battery is written down."
                : "Engine off, everything off. Take out: " + String.join(", ", first) + ". What we added is cut off from its batteries then"
                + (loom.isEmpty() ? ". " : "; " + String.join(", ", loom) + (loom.size() == 1 ? " hangs" : " hang") + " on the vehicle's own wiring as well and on its fuses. ")
                + "After a crash, a smell or smoke: out of the vehicle first, then call for help.");
    }

    private void changed() {
        heading("WHAT CHANGED");
        List<String> drilled = job.passThroughs().values().stream().filter(hole -> hole.origin().orElse("").equals("drilled")).map(hole -> plain(hole.id())).toList();
        List<String> changes = new ArrayList<>();
        if (!drilled.isEmpty()) {
            changes.add("holes drilled: " + String.join(", ", drilled));
        }
        int pins = job.plan().pins().size();
        if (pins > 0) {
            changes.add(Plain.count(pins, "factory wire") + " joined");
        }
        job.plan().wishes().values().stream().filter(wish -> wish.kept().orElse("").equals("changed-with-consent"))
                .forEach(wish -> changes.add("otherwise than first wished, as agreed: " + plain(wish.id())));
        job.plan().found().orElse(Map.of()).values().forEach(found -> changes.add("found in the vehicle: " + found.what().orElse(Block.BLANK) + " ("
                + plain(found.decision().orElse("not decided")) + ")"));
        say("", changes.isEmpty() ? "Nothing of the vehicle itself." : Plain.capital(String.join("; ", changes)) + ".");
    }

    /** What is not as it should be and was accepted for a time, in the words of whoever did. */
    private void agreed() {
        List<Verdict> waived = evaluation.judgment().verdicts().stream().filter(verdict -> evaluation.waiver(verdict, Gate.HANDOVER) != null).toList();
        if (!waived.isEmpty()) {
            heading("NOT AS IT SHOULD BE YET, AND ACCEPTED");
            for (Verdict verdict : waived) {
                say(Plain.capital(plain(verdict.subject().substring(verdict.subject().indexOf('.') + 1))) + ":", WaiverText.agreed(evaluation.waiver(verdict, Gate.HANDOVER)));
            }
        }
    }

    private void watch() {
        heading("WHAT TO WATCH");
        String parked = job.plan().parkedSeconds().map(seconds -> " It is made to stand " + Math.round(seconds / SECONDS_PER_DAY) + " days and still start.").orElse("");
        say("", "Anything warm, any smell, any new lamp: cut it off and call us. Keep the air around the amplifiers free." + parked
                + " Local law may limit how loud it may be heard outside.");
        List<String> unfinished = job.plan().lastVisit() == null ? List.of() : job.plan().lastVisit().unfinished().orElse(List.of());
        if (!unfinished.isEmpty()) {
            say("Next visit:", "not finished yet, dead and tagged: " + String.join(", ", unfinished.stream().map(CustomerPage::plain).toList()) + ".");
        }
    }

    private void hearing() {
        Limits limits = job.limits();
        double level = limits.named("hearing-level-health").value();
        heading("HEARING");
        List<String> times = new ArrayList<>();
        for (HearingNote.Allowed allowed : HearingNote.of(limits)) {
            times.add(Math.round(allowed.decibels()) + " dB " + Units.print(allowed.seconds(), Dimension.TIME));
        }
        say("", "Loud sound harms hearing for good. Advice for people at work: " + Math.round(level) + " dB(A) for eight hours a day, and half the time for each "
                + Math.round(limits.named("hearing-exchange-health").value()) + " dB more: " + String.join(", ", times) + ".");
    }

    private void kept() {
        heading("PARTS WE TOOK OFF");
        Map<String, Plan.KeptPart> parts = job.plan().keptParts().orElse(Map.of());
        if (!job.plan().keptParts().isGiven()) {
            say("", Block.BLANK);
            return;
        }
        Map<String, List<String>> where = parts.values().stream().collect(Collectors.groupingBy(part -> plain(part.with().orElse(Block.BLANK)) + ": "
                + part.lies().orElse(Block.BLANK), LinkedHashMap::new, Collectors.mapping(part -> plain(part.id()), Collectors.toList())));
        say("", parts.isEmpty() ? "None." : where.entrySet().stream().map(one -> String.join(", ", one.getValue()) + " (" + one.getKey() + ")")
                .collect(Collectors.joining("; ")) + ".");
    }

    private void warranty() {
        Delivered delivered = job.plan().delivered();
        heading("WARRANTY");
        say("", "Ours: " + delivered.warranty().orElse(Block.BLANK) + ".");
        say("", WARRANTY);
    }
}
