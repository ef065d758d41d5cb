package bayproof.command;

import bayproof.read.UnusableInput;

/** The command that begins a job and fills it. */
final class New {
    private New() {
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        String form = order.word("--answers", null);
        if (form == null) {
            throw new WrongUse("Nothing says what to do with " + order.subject() + ".", "Name a filled form: --answers FORM.");
        }
        return Answers.run(order.subject(), form, order.has("--write"));
    }
}
