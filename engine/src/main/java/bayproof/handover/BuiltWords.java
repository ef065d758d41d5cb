package bayproof.handover;

import bayproof.read.CoilNet;
import bayproof.read.Inspection;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Listening;
import bayproof.read.Plan;
import bayproof.read.Setting;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;

/** Rows of planned against built that are words: polarity of each speaker, fault codes, warning lamps, what was heard. */
final class BuiltWords {
    /** The look that answers for polarity. */
    private static final String POLARITY = "speaker-polarity-right";
    private static final String NONE = "none";
    private static final String AS_PLANNED = "as planned";
    private static final String REVERSED = "reversed";

    private final Plan plan;
    private final List<Built> rows = new ArrayList<>();

    private BuiltWords(Job job) {
        this.plan = job.plan();
    }

    static List<Built> of(Job job) {
        BuiltWords words = new BuiltWords(job);
        job.itemsOf(Item.Speaker.class).forEach(words::polarity);
        words.before("fault codes", words.plan.checkIn().faultCodes(), words.plan.delivered().faultCodes());
        words.before("warning lamps", words.plan.checkIn().lamps(), words.plan.delivered().lamps());
        words.plan.listening().all().forEach(words::heard);
        return words.rows;
    }

    private void add(String what, String planned, String built, String difference, String how) {
        rows.add(new Built(what, planned, built, difference, "", 0, how));
    }

    // polarity

    /** Which way the cone moves on a pulse with a plus sign, and whether somebody saw it. */
    private void polarity(Item.Speaker speaker) {
        Inspection look = plan.inspections().get(POLARITY);
        String way = inverted(speaker.id()) ? "in" : "out";
        String planned = "moves " + way + " on a plus pulse";
        if (look == null || !look.faults().isGiven() || names(look.leftOut(), speaker.id())) {
            add(speaker.path() + ", polarity", planned, "not tried", "not known", "");
            return;
        }
        boolean wrong = names(look.faults(), speaker.id());
        add(speaker.path() + ", polarity", planned, "moves " + (way.equals("in") == wrong ? "out" : "in"), wrong ? "the other way" : AS_PLANNED,
                look.word().map(BuiltWords::said).orElse(""));
    }

    private static boolean names(Shown<List<String>> written, String speaker) {
        return written.orElse(List.of()).stream().anyMatch(name -> name.equals(speaker) || name.startsWith(speaker + "."));
    }

    /** Whether output and leads together are to turn it round. */
    private boolean inverted(String speaker) {
        for (Plan.Wiring wiring : plan.speakerWiring().values()) {
            if (wiring.net().map(net -> CoilNet.parse(net).coils().stream().anyMatch(coil -> coil.startsWith(speaker + "."))).orElse(false)) {
                Setting setting = plan.settings().get(wiring.id());
                boolean set = setting != null && setting.inverted().orElse(false);
                return set != REVERSED.equals(wiring.polarity().orElse(""));
            }
        }
        return false;
    }

    // faults and sounds

    private void before(String what, Shown<List<String>> before, Shown<List<String>> after) {
        if (before.isGiven() && after.isGiven()) {
            List<String> fresh = after.orElse(List.of()).stream().filter(one -> !before.orElse(List.of()).contains(one)).toList();
            add(what, list(before), list(after), fresh.isEmpty() ? "none new" : "new: " + String.join(", ", fresh), "before and after the job");
        }
    }

    private static String list(Shown<List<String>> words) {
        return words.orElse(List.of()).isEmpty() ? NONE : String.join(", ", words.orElse(List.of()));
    }

    private void heard(Listening.Heard heard) {
        String result = heard.result().orElse("");
        if (!result.isEmpty()) {
            add(heard.path(), "not heard", result.replace('-', ' '), result.equals("not-heard") ? AS_PLANNED : "heard", heard.word().map(BuiltWords::said).orElse(""));
        }
    }

    private static String said(Attestation word) {
        return word.evidence() + ", " + word.who() + ", " + word.when();
    }
}
