package bayproof.command;

import bayproof.read.UnusableInput;

/** The command that hands a vehicle back. What it does depends on its options; each has a class of its own. */
final class Handover {
    private Handover() {
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        if (order.subject() == null && order.options().isEmpty()) {
            return new Reply(Reply.UNUSABLE, "", new Usage().help(Command.HANDOVER));
        }
        if (order.has("--jobs")) {
            if (order.subject() != null) {
                throw new WrongUse("--jobs audits a whole folder, and one job is named as well.", "Leave out \"" + order.subject() + "\".");
            }
            return HandoverJobs.run(order);
        }
        if (order.has("--against") || order.has("--all")) {
            throw new WrongUse((order.has("--against") ? "--against" : "--all") + " belongs to --jobs.", "Add --jobs FOLDER.");
        }
        if (order.subject() == null) {
            throw new WrongUse("Name the job: its plan or its folder.", "Such as bayproof handover my-job.");
        }
        if (order.has("--write") && !order.has("--filled")) {
            throw new WrongUse("--write belongs to a filled form.", "Name it as well: --filled=FORM.");
        }
        if (order.has("--filled")) {
            return Answers.run(order.subject(), order.word("--filled", ""), order.has("--write"));
        }
        if (order.has("--sign") && order.has("--prove")) {
            throw new WrongUse("--sign and --prove are two things.", "Ask for one of them.");
        }
        if (order.has("--by") && !order.has("--sign") || order.has("--head") && !order.has("--prove")) {
            throw new WrongUse(order.has("--by") ? "--by belongs to --sign." : "--head belongs to --prove.", "Add it.");
        }
        if (order.has("--prove")) {
            return HandoverSign.prove(order);
        }
        return order.has("--sign") ? HandoverSign.sign(order) : HandoverJob.run(order);
    }
}
