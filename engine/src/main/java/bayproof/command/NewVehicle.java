package bayproof.command;

import bayproof.read.SurveyReader;
import bayproof.read.Tree.MapTree;
import bayproof.read.UnusableInput;
import bayproof.report.Paper;
import bayproof.start.JobFolder;
import bayproof.start.SheetText;
import bayproof.start.SurveyForm;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** Prints the survey form of a vehicle, or writes the vehicle's sheet from it. */
final class NewVehicle {
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]*");

    private NewVehicle() {
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        String name = order.word("--vehicle", "");
        if (!NAME.matcher(name).matches()) {
            throw new WrongUse("\"" + name + "\" cannot be the name of a vehicle.", "Use letters, digits and hyphens, such as blue-van.");
        }
        if (!order.has("--survey")) {
            return Reply.answer(SurveyForm.of(name));
        }
        Path form = Review.file(order.word("--survey", ""));
        MapTree sheet = SurveyReader.read(form);
        String file = form.resolveSibling(name + ".yaml").toString();
        String text = SheetText.of(sheet, name);
        try {
            JobFolder.write(Path.of(file), text);
        } catch (FileAlreadyExistsException e) {
            throw new WrongUse(file + " is there already. Nothing was written.", "Choose another name, or move that file away.");
        } catch (IOException e) {
            throw new WrongUse(file + " cannot be written: " + e.getMessage() + ".", "Go to a folder where you may write.");
        }
        int open = text.split("\\bunknown\\b", -1).length - 2;
        return Reply.answer(new Paper().line("WRITTEN  " + file + "  " + (open == 0 ? "nothing in it is unknown" : open + " values in it are unknown"))
                .blank().line("Next: bayproof review " + file + "        what the rules miss in it")
                .line("      bayproof new FOLDER --vehicle-from=" + file).text());
    }
}
