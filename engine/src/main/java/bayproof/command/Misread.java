package bayproof.command;

import java.util.Collection;
import java.util.Set;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in our own words what is wrong with a command line. */
final class Misread {
    private Misread() {
    }

    /** What is wrong, with a suggestion where something is near. */
    static String words(ParameterException e) {
        if (e instanceof UnmatchedArgumentException unmatched) {
            String word = unmatched.getUnmatched().get(0);
            boolean top = e.getCommandLine().getCommandName().equals("bayproof");
            if (word.startsWith("-")) {
                Set<String> known = e.getCommandLine().getCommandSpec().optionsMap().keySet();
                return "\"" + word + "\" is not an option here. " + near(word, known);
            }
            return top ? "\"" + word + "\" is not a command. " + near(word, e.getCommandLine().getSubcommands().keySet())
                    : "\"" + word + "\" is one word too many.";
        }
        if (e instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
            var first = missing.getMissing().get(0);
            return first.isPositional() ? "Name a " + first.paramLabel().toLowerCase(java.util.Locale.ROOT) + "."
                    : ((picocli.CommandLine.Model.OptionSpec) first).longestName() + " needs a word behind it: " + first.paramLabel() + ".";
        }
        if (e instanceof OverwrittenOptionException) {
            return "An option stands there twice.";
        }
        return e.getMessage();
    }

    private static String near(String word, Collection<String> known) {
        return Nearest.suggestion(word, known, "Known: " + String.join(", ", known) + ".");
    }
}
