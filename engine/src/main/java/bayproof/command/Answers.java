package bayproof.command;

import bayproof.read.UnusableInput;
import bayproof.report.DiffPage;
import bayproof.report.Paper;
import bayproof.report.Plain;
import bayproof.signoff.FileMode;
import bayproof.splice.Filling;
import bayproof.splice.FilledForm;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a filled form back into the files of a job. */
final class Answers {
    private Answers() {
    }

    /**
     * Shows what a form changes, or changes it.
     *
     * @param job   the job's plan or folder, as written on the command line
     * @param form  the filled form
     * @param write whether the files are to be changed
     */
    static Reply run(String job, String form, boolean write) throws WrongUse, UnusableInput {
        Path plan = plan(job);
        Path file = Review.file(form);
        if (!Files.isRegularFile(file)) {
            throw new WrongUse("The form " + form + " is not there.", "Print one with bayproof review " + job + " --ask, and fill it in.");
        }
        FilledForm filled = read(file, form);
        Filling filling = Filling.of(filled, plan);
        Paper page = new Paper();
        Map<Path, String> before = new LinkedHashMap<>();
        for (Map.Entry<Path, String> changed : filling.changed().entrySet()) {
            String was = Files.isRegularFile(changed.getKey()) ? text(changed.getKey()) : "";
            before.put(changed.getKey(), was);
            DiffPage.add(page, changed.getKey().getFileName().toString(), was, changed.getValue());
        }
        left(page, filling);
        if (write) {
            write(filling.changed(), before, plan);
        }
        total(page, filling, filled, write);
        return new Reply(filling.left().isEmpty() ? Reply.CLEAR : Reply.COUNTS, page.text(), "");
    }

    /** The plan of a job that is named by its plan or its folder. */
    static Path plan(String job) throws WrongUse {
        Path path = Review.path(job);
        Path plan = Files.isDirectory(path) ? path.resolve("plan.yaml") : Review.file(job);
        if (!Files.isRegularFile(plan)) {
            throw new WrongUse("There is no plan " + plan + ".", "Name a job's plan, or its folder when the plan is called plan.yaml.");
        }
        return plan;
    }

    private static FilledForm read(Path file, String name) throws UnusableInput {
        try {
            return FilledForm.read(Files.readAllBytes(file), name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void left(Paper page, Filling filling) {
        list(page, "WRONG, nothing written", filling.left().stream().filter(Filling.Left::wrong).toList());
        list(page, "TO ENTER BY HAND", filling.left().stream().filter(left -> !left.wrong()).toList());
    }

    private static void list(Paper page, String heading, List<Filling.Left> left) {
        if (left.isEmpty()) {
            return;
        }
        page.blank().line(heading);
        for (Filling.Left one : left) {
            page.hanging("  ", 4, Plain.text(one.answer().at().file()) + ":" + one.answer().at().line() + ": " + one.answer().path() + ": "
                    + Plain.cut(Plain.text(one.answer().text()), 200));
            page.hanging("    ", Plain.capital(one.why()) + (one.fix().isEmpty() ? "" : " " + one.fix()));
        }
    }

    private static void total(Paper page, Filling filling, FilledForm form, boolean write) {
        List<String> parts = new ArrayList<>();
        int done = filling.done();
        parts.add(Plain.count(done, "answer") + (write ? " written" : " would be written"));
        if (!filling.left().isEmpty()) {
            parts.add(filling.left().size() + " not");
        }
        if (filling.unknown() > 0) {
            parts.add(filling.unknown() + " unknown");
        }
        if (form.blank() > 0) {
            parts.add(form.blank() + " left blank");
        }
        page.blank().line(String.join(", ", parts) + "." + (!write && done > 0 ? " Nothing is changed yet: add --write." : ""));
    }

    // writing

    /** New files come first and the plan last, so that no file ever names one that is not there. */
    private static void write(Map<Path, String> changed, Map<Path, String> before, Path plan) {
        Comparator<Path> order = Comparator.<Path>comparingInt(file -> file.equals(plan.normalize()) ? 1 : 0).thenComparing(file -> !before.get(file).isEmpty())
                .thenComparing(file -> file);
        Map<Path, Path> ready = new LinkedHashMap<>();
        try {
            for (Path file : changed.keySet().stream().sorted(order).toList()) {
                // A link stays a link: what it leads to is replaced.
                Path target = Files.exists(file) ? file.toRealPath() : file;
                Path part = target.resolveSibling("." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
                ready.put(target, part);
                Files.writeString(part, changed.get(file), StandardCharsets.UTF_8);
            }
            for (Map.Entry<Path, Path> one : ready.entrySet()) {
                move(one.getValue(), one.getKey());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the files of the job cannot be written: " + e.getMessage(), e);
        } finally {
            ready.values().forEach(Answers::remove);
        }
    }

    private static void move(Path part, Path target) throws IOException {
        FileMode.keep(target, part);
        Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** What was moved is gone already; what was not must not lie about. */
    private static void remove(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
