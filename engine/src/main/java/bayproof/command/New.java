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
        if (order.subject() == null) {
            return new Reply(Reply.UNUSABLE, "", new Usage().help(Command.NEW));
        }
        return NewJob.run(order);
    }
}
