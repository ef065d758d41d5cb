package bayproof.command;

import java.util.List;

/** The command that prints a completion script. */
final class Completion {
    private static final List<String> SHELLS = List.of("bash", "zsh");

    private Completion() {
    }

    static Reply run(Order order) throws WrongUse {
        Review.oneOf("SHELL", order.subject() == null ? "bash" : order.subject(), SHELLS);
        // zsh reads the script of bash once its bashcompinit is loaded; the script looks for that itself.
        return Reply.answer(new Usage().completionScript());
    }
}
