package bayproof.command;

import bayproof.read.UnusableInput;
import bayproof.report.Paper;
import bayproof.start.Examples;
import bayproof.start.JobFolder;
import bayproof.start.JobSchemas;
import bayproof.start.SheetCopy;
import bayproof.start.WishList;
import java.io.Console;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Writes the folder of a new job. */
final class NewJob {
    private static final Map<String, String> FILES = Map.of("plan.yaml", "what will be installed: change what differs",
            "vehicle.yaml", "what is known of the vehicle: much of it is to be measured", "parts.yaml", "data of the parts in use, invented: put in your own");

    private NewJob() {
    }

    /** One example a line, its name first. */
    static Reply list() {
        Map<String, String> all = Examples.all();
        int width = all.keySet().stream().mapToInt(String::length).max().orElse(0);
        StringBuilder lines = new StringBuilder();
        all.forEach((name, says) -> lines.append(name).append(" ".repeat(width - name.length() + 2)).append(says).append('\n'));
        return Reply.answer(lines.toString());
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        Path folder = place(order.subject());
        String example = order.word("--from", null);
        String sheet = order.word("--vehicle-from", null);
        if (example == null == (sheet == null)) {
            throw new WrongUse(example == null ? "Nothing says what the job is copied from." : "An example has a vehicle sheet of its own.",
                    example == null ? "Write --from=" + String.join(", --from=", Examples.all().keySet()) + ", or --vehicle-from=SHEET for a vehicle you know."
                            : "Leave out --from or --vehicle-from.");
        }
        if (example != null && !Examples.all().containsKey(example)) {
            throw new WrongUse("There is no example \"" + example + "\".", Nearest.suggestion(example, Examples.all().keySet(),
                    "There are " + String.join(", ", Examples.all().keySet()) + "."));
        }
        Map<String, String> files = new LinkedHashMap<>(example != null ? Examples.files(example) : SheetCopy.job(Review.file(sheet)));
        WishList wishes = given(order);
        UnaryOperator<String> asker = order.has("--no-questions") || !Paint.isTerminal() ? null : asker(System.console());
        if (asker != null && !wishes.open().isEmpty()) {
            wishes.ask(asker);
            System.console().printf("%n");
        }
        files.computeIfPresent("plan.yaml", (name, plan) -> wishes.into(plan).replace("date: unknown", "date: " + LocalDate.now()));
        try {
            JobFolder.write(folder, JobSchemas.beside(files));
        } catch (FileAlreadyExistsException e) {
            throw taken(order.subject());
        } catch (IOException e) {
            throw new WrongUse(order.subject() + " cannot be written: " + e.getMessage() + ".", "Name a folder in a place where you may write.");
        }
        return Reply.answer(written(order.subject(), files, wishes, example).text());
    }

    private static Path place(String name) throws WrongUse {
        Path folder;
        try {
            folder = Path.of(name);
        } catch (InvalidPathException e) {
            throw new WrongUse("\"" + name + "\" cannot be the name of a folder.", "");
        }
        if (Files.exists(folder, java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
            throw taken(name);
        }
        Path around = folder.toAbsolutePath().normalize().getParent();
        if (around == null || !Files.isDirectory(around)) {
            throw new WrongUse("There is no folder " + around + " to put the job in.", "Make it first, or name another place.");
        }
        return folder;
    }

    private static WrongUse taken(String name) {
        return new WrongUse(name + " is there already. Nothing was written.", "Name a folder that is not there yet.");
    }

    private static WishList given(Order order) throws WrongUse {
        WishList wishes = new WishList();
        for (String wish : order.words("--wish")) {
            int equals = wish.indexOf('=');
            String name = equals < 0 ? wish : wish.substring(0, equals);
            if (!WishList.questions().containsKey(name)) {
                throw new WrongUse("There is no wish \"" + name + "\".", Nearest.suggestion(name, WishList.questions().keySet(),
                        "The wishes are " + String.join(", ", WishList.questions().keySet()) + "."));
            }
            if (equals < 0) {
                throw new WrongUse("--wish needs an answer behind the name of the wish.", "Write --wish=" + name + "=\"in the customer's words\", or "
                        + "--wish=" + name + "=none.");
            }
            wishes.answer(name, wish.substring(equals + 1));
        }
        return wishes;
    }

    private static UnaryOperator<String> asker(Console console) {
        console.printf("Seven questions to the customer. Enter alone leaves one open; none says that%nnothing is wished.%n%n");
        return question -> console.readLine("  %s%n  > ", question);
    }

    private static Paper written(String folder, Map<String, String> files, WishList wishes, String example) {
        String shown = folder.replaceAll("/+$", "");
        Paper page = new Paper().line("WRITTEN  " + shown + (example == null ? "" : "  from the example " + example));
        files.keySet().forEach(name -> page.hanging("  " + name + " ".repeat(14 - name.length()), FILES.get(name)));
        page.hanging("  " + JobSchemas.FOLDER + " ".repeat(14 - JobSchemas.FOLDER.length()), "what may stand in each file, for an editor that checks as you type");
        Map<String, String> checks = wishes.checks(files.get("plan.yaml"));
        if (!checks.isEmpty()) {
            page.blank().line("What checks each wish (change it in plan.yaml)");
            checks.forEach((wish, check) -> page.line("  " + wish + " ".repeat(Math.max(1, 15 - wish.length())) + check));
        }
        List<String> open = wishes.open();
        if (!open.isEmpty()) {
            page.blank().hanging("Nobody will check this yet: ", 2, String.join(", ", open) + ". Ask the customer, and write it under wishes in plan.yaml.");
        }
        if (example == null) {
            page.blank().hanging("Seen on the other vehicle: ", 2, "where the sheet said this-car it now says same-variant. Look again at what has to be seen on this one.");
        }
        return page.blank().line("Next: bayproof review " + shown + "/plan.yaml");
    }
}
