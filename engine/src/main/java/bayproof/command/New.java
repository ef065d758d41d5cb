package bayproof.command;

import bayproof.read.UnusableInput;

/** The command that begins a job. What it does depends on its options; each has a class of its own. */
final class New {
    private New() {
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        if (order.has("--answers")) {
            return answers(order);
        }
        if (order.has("--write")) {
            throw new WrongUse("--write belongs to a filled form.", "Name it as well: --answers=FORM.");
        }
        if (order.has("--list")) {
            return NewJob.list();
        }
        if (order.has("--vehicle")) {
            return NewVehicle.run(order);
        }
        if (order.has("--survey")) {
            throw new WrongUse("--survey needs the name of the vehicle.", "Write --vehicle=NAME as well; the sheet is then called NAME.yaml.");
        }
        if (order.subject() == null && order.options().isEmpty()) {
            return new Reply(Reply.UNUSABLE, "", new Usage().help(Command.NEW));
        }
        if (order.subject() == null) {
            throw new WrongUse("Name a folder for the job.", "Such as bayproof new my-job --from=one-amplifier.");
        }
        return NewJob.run(order);
    }

    private static Reply answers(Order order) throws WrongUse, UnusableInput {
        if (order.subject() == null) {
            throw new WrongUse("Nothing says which job the form belongs to.", "Name its plan or its folder, such as bayproof new my-job --answers=form.md.");
        }
        return Answers.run(order.subject(), order.word("--answers", ""), order.has("--write"));
    }
}
