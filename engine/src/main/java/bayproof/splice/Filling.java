package bayproof.splice;

import bayproof.read.Problem;
import bayproof.read.UnusableInput;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
    private State state;
    private final List<Left> left = new ArrayList<>();
    private int unknown;

    private Filling(FilledForm form, Path plan) throws UnusableInput {
        this.form = form;
        this.state = State.of(plan);
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

    /** How many answers are in. */
    public int done() {
        return form.answers().size() - unknown - left.size();
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
        return state.job().changed();
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
        // What one answer names, another one may bring: as long as any goes in, the rest is tried again.
        Map<Answer, Left> refused = new LinkedHashMap<>();
        for (int before = -1; before != open.size() && !open.isEmpty();) {
            before = open.size();
            refused.clear();
            halved(open, refused);
            open = new ArrayList<>(refused.keySet());
        }
        left.addAll(refused.values());
    }

    /** Puts in all that go in together, else each half apart, down to the single answers that do not go in. */
    private void halved(List<Answer> answers, Map<Answer, Left> refused) {
        if (answers.size() == 1) {
            Left reason = put(answers.get(0));
            if (reason != null) {
                refused.put(answers.get(0), reason);
            }
        } else if (!answers.isEmpty() && !putAll(answers)) {
            halved(answers.subList(0, answers.size() / 2), refused);
            halved(answers.subList(answers.size() / 2, answers.size()), refused);
        }
    }

    /** Puts all answers in and reads the job anew once; where anything is wrong with it, nothing is done. */
    private boolean putAll(List<Answer> answers) {
        State begin = state;
        try {
            for (Answer answer : answers) {
                state = state.with(answer, form);
            }
            state = state.read();
            return true;
        } catch (NotSpliced | UnusableInput e) {
            state = begin;
            return false;
        }
    }

    /** Puts one answer in; null when it stays, otherwise why it does not. */
    private Left put(Answer answer) {
        State next;
        try {
            next = state.with(answer, form);
        } catch (NotSpliced e) {
            return new Left(answer, e.getMessage() + ".", "", e.isWrong());
        } catch (UnusableInput e) {
            return new Left(answer, e.problems().get(0).what(), "", false);
        }
        try {
            state = next.read();
            return null;
        } catch (NotSpliced e) {
            return new Left(answer, e.getMessage() + ".", "", e.isWrong());
        } catch (UnusableInput e) {
            Problem problem = e.problems().get(0);
            return new Left(answer, problem.what(), problem.fix(), true);
        }
    }
}
