package bayproof.splice;

import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.read.Problem;
import bayproof.read.Tree;
import bayproof.read.UnusableInput;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Puts the answers of a form into the files of a job. Each answer is put in, the job is read anew, and it stays only where
 * the job can be read and says exactly what it said before and the answer; otherwise the files stay as they were and the
 * answer is left for hand entry.
 */
public final class Filling {
    /**
     * An answer that was not put in.
     *
     * @param answer the answer
     * @param why    why, a sentence
     * @param fix    what to write instead; may be empty
     * @param wrong  whether the answer itself is wrong; otherwise it is right and has to be entered by hand
     */
    public record Left(Answer answer, String why, String fix, boolean wrong) {
    }

    private final FilledForm form;
    private JobText job;
    private JobFiles files;
    private final Map<Answer, String> done = new LinkedHashMap<>();
    private final List<Left> left = new ArrayList<>();
    private int unknown;

    private Filling(FilledForm form, Path plan) throws UnusableInput {
        this.form = form;
        this.job = JobText.of(plan.normalize());
        this.files = job.files();
        JobReader.bind(files);
    }

    /**
     * Puts in what can be put in; nothing is written to the disk.
     *
     * @throws UnusableInput when the job itself cannot be read
     */
    public static Filling of(FilledForm form, Path plan) throws UnusableInput {
        Filling filling = new Filling(form, plan);
        filling.run();
        return filling;
    }

    /** The answers that were put in, each with the file's name it went to. */
    public Map<Answer, String> done() {
        return done;
    }

    /** The answers that were not, in the order of the form. */
    public List<Left> left() {
        return left;
    }

    /** How many answers say that something is not known; they change no file, and the question stays open. */
    public int unknown() {
        return unknown;
    }

    /** The changed files with their new texts. */
    public Map<Path, String> changed() {
        return job.changed();
    }

    private void run() {
        List<Answer> open = new ArrayList<>();
        for (Answer answer : form.answers()) {
            if (answer.text().equals("unknown")) {
                unknown++;
            } else {
                open.add(answer);
            }
        }
        Map<Answer, Left> refused = new HashMap<>();
        // What one answer names, another one may bring: as long as any goes in, the rest is tried again.
        for (int before = -1; before != open.size() && !open.isEmpty();) {
            before = open.size();
            Set<Answer> in = new HashSet<>();
            for (Answer answer : open) {
                Left reason = put(answer);
                if (reason == null) {
                    in.add(answer);
                } else {
                    refused.put(answer, reason);
                }
            }
            open.removeAll(in);
        }
        open.forEach(answer -> left.add(refused.get(answer)));
    }

    /** Puts one answer in; null when it stays, otherwise why it does not. */
    private Left put(Answer answer) {
        List<Put> puts;
        JobText next = job;
        try {
            puts = new Owner(job, files, form).puts(answer);
            for (Put put : puts) {
                next = next.with(put.file(), text(next, put));
            }
        } catch (NotSpliced e) {
            return new Left(answer, e.getMessage() + ".", "", false);
        } catch (UnusableInput e) {
            return new Left(answer, e.problems().get(0).what(), "", false);
        }
        try {
            JobFiles after = next.files();
            JobReader.bind(after);
            if (!isAsWanted(after, puts)) {
                return new Left(answer, "the job would not say the same otherwise.", "", false);
            }
            job = next;
            files = after;
            done.put(answer, puts.get(puts.size() - 1).file().getFileName().toString());
            return null;
        } catch (UnusableInput e) {
            Problem problem = e.problems().get(0);
            return new Left(answer, problem.what(), problem.fix(), true);
        }
    }

    private static String text(JobText job, Put put) throws NotSpliced, UnusableInput {
        String name = put.file().getFileName().toString();
        if (!job.has(put.file())) {
            return put.keys().get(0) + ": " + new Style(false, '"', "\n", 2).written(put.value(), false, (char) 0) + "\n";
        }
        String text = job.text(put.file());
        if (name.toLowerCase(java.util.Locale.ROOT).endsWith(".csv")) {
            return CsvText.put(text, name, put.keys(), put.value());
        }
        return put.first() == null ? YamlText.put(text, name, put.keys(), put.value())
                : YamlText.putFirst(text, name, put.keys().get(0), put.first(), put.value());
    }

    /** Whether the job says what it said and the new values, and nothing else. */
    private boolean isAsWanted(JobFiles after, List<Put> puts) {
        for (String kind : JobFiles.KINDS) {
            Tree wanted = files.tree(kind);
            for (Put put : puts) {
                wanted = put.kind().equals(kind) ? Trees.with(wanted, put.place(), put.value()) : wanted;
            }
            if (!Trees.sameInAnyOrder(wanted, after.tree(kind))) {
                return false;
            }
        }
        return true;
    }
}
