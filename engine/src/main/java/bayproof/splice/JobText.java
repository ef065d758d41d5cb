package bayproof.splice;

import bayproof.read.JobFiles;
import bayproof.read.Source;
import bayproof.read.UnusableInput;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The texts of a job's files with some of them changed, and not yet on the disk. Immutable. */
final class JobText implements Source {
    private final Path plan;
    private final Map<Path, String> changed;

    private JobText(Path plan, Map<Path, String> changed) {
        this.plan = plan;
        this.changed = Collections.unmodifiableMap(changed);
    }

    /** @param plan the plan's file, as the user gave it */
    static JobText of(Path plan) {
        return new JobText(plan, new LinkedHashMap<>());
    }

    Path plan() {
        return plan;
    }

    /** A file beside the plan. */
    Path beside(String name) {
        return plan.resolveSibling(name).normalize();
    }

    /** Whether a file lies in the folder of the plan. */
    boolean isInFolder(Path file) {
        return beside("x").resolveSibling(file.getFileName()).equals(file.normalize());
    }

    @Override
    public boolean has(Path file) {
        return changed.containsKey(file) || Source.DISK.has(file);
    }

    @Override
    public byte[] bytes(Path file, String name) throws UnusableInput {
        return changed.containsKey(file) ? changed.get(file).getBytes(StandardCharsets.UTF_8) : Source.DISK.bytes(file, name);
    }

    String text(Path file) throws UnusableInput {
        return new String(bytes(file, file.toString()), StandardCharsets.UTF_8);
    }

    /** The same with a file changed. */
    JobText with(Path file, String text) {
        Map<Path, String> more = new LinkedHashMap<>(changed);
        more.put(file, text);
        return new JobText(plan, more);
    }

    /** The changed files. */
    Map<Path, String> changed() {
        return changed;
    }

    JobFiles files() throws UnusableInput {
        return JobFiles.read(plan, null, this);
    }
}
