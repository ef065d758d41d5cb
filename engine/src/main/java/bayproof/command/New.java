package bayproof.command;

import bayproof.read.UnusableInput;

/** The command that begins a job. What it does depends on its options; each has a class of its own. */
final class New {
    private New() {
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
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
}
