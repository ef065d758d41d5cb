package bayproof.splice;

import bayproof.read.Address;
import bayproof.read.JobFiles;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree;
import bayproof.read.UnusableInput;
import bayproof.review.Evaluation;
import java.nio.file.Path;
import java.util.List;

/**
 * A job while answers are put in: the texts of its files, and what they must say.
 *
 * @param job   the texts
 * @param files what they must say when they are read
 */
record State(JobText job, JobFiles files) {
    /**
     * A job as it stands on the disk.
     *
     * @throws UnusableInput when it cannot be read
     */
    static State of(Path plan) throws UnusableInput {
        JobText job = JobText.of(plan.normalize());
        JobFiles files = job.files();
        Evaluation.bound(files);
        return new State(job, files);
    }

    /**
     * The same with an answer put into its files, and not yet read anew.
     *
     * @throws NotSpliced    when no file owns it, or it does not fit into the file's text
     * @throws UnusableInput when a file that owns it cannot be read
     */
    State with(Answer answer, FilledForm form) throws NotSpliced, UnusableInput {
        State state = this;
        for (Put put : new Owner(job, files, form).puts(answer)) {
            // What belongs to a file that this answer begins is written in any case.
            if (!job.has(put.file()) || !state.says(put)) {
                state = state.with(put);
            }
        }
        return state;
    }

    /** Whether a file says it already, such as a value that several items of one part share. */
    private boolean says(Put put) {
        Tree said = Address.at(files.tree(put.kind()), put.place());
        return said != null && Trees.same(said, put.value());
    }

    private State with(Put put) throws NotSpliced, UnusableInput {
        MapTree wanted = (MapTree) Trees.with(files.tree(put.kind()), put.place(), put.value());
        return new State(job.with(put.file(), text(put)), files.with(put.kind(), wanted));
    }

    private String text(Put put) throws NotSpliced, UnusableInput {
        String name = put.file().getFileName().toString();
        if (!job.has(put.file())) {
            return put.keys().get(0) + ": " + Style.PLAIN.written(put.value(), false, (char) 0) + "\n";
        }
        String text = job.text(put.file());
        if (JobFiles.isTable(name)) {
            return CsvText.put(text, name, put.keys(), put.value());
        }
        return put.first() == null ? YamlText.put(text, name, put.keys(), put.value())
                : YamlText.putFirst(text, name, put.keys().get(0), put.first(), put.value());
    }

    /**
     * The same as read anew.
     *
     * @throws UnusableInput when the job can no longer be used
     * @throws NotSpliced    when it says anything else than it must
     */
    State read() throws UnusableInput, NotSpliced {
        JobFiles read = job.files();
        Evaluation.bound(read);
        for (String kind : JobFiles.KINDS) {
            if (!Trees.sameInAnyOrder(files.tree(kind), read.tree(kind))) {
                throw new NotSpliced("the job would not say the same otherwise");
            }
        }
        return new State(job, read);
    }
}
