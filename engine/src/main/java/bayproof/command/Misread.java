package bayproof.command;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.MaxValuesExceededException;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * What is wrong with a command line, in our own words.
 *
 * @param what what is wrong, a sentence
 * @param near what may have been meant; may be empty
 */
record Misread(String what, String near) {

    static Misread of(ParameterException e) {
        if (e instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched);
        }
        if (e instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
            ArgSpec first = missing.getMissing().get(0);
            return new Misread(first.isPositional() ? "Name a " + first.paramLabel().toLowerCase(Locale.ROOT) + "."
                    : name(first) + " needs a word behind it: " + first.paramLabel() + ".", "");
        }
        if (e instanceof OverwrittenOptionException twice) {
            return new Misread(name(twice.getOverwritten()) + " stands there twice.", "");
        }
        if (e instanceof MaxValuesExceededException) {
            return new Misread("An option has a word behind it and takes none.", "");
        }
        return e.getArgSpec() == null ? new Misread(e.getMessage(), "") : new Misread(name(e.getArgSpec()) + " takes no word behind it.", "");
    }

    private static Misread unmatched(UnmatchedArgumentException e) {
        String word = e.getUnmatched().get(0);
        boolean top = e.getCommandLine().getCommandName().equals("bayproof");
        if (!word.startsWith("-") && !top) {
            return new Misread("\"" + word + "\" is one word too many.", "");
        }
        Collection<String> options = e.getCommandLine().getCommandSpec().optionsMap().keySet();
        if (word.startsWith("-")) {
            return new Misread("\"" + word + "\" is not an option here.", near(word, options));
        }
        List<String> known = new ArrayList<>(e.getCommandLine().getSubcommands().keySet());
        known.addAll(options);
        return new Misread("\"" + word + "\" is not a command.", near(word, known));
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static String near(String word, Collection<String> known) {
        return Nearest.suggestion(word, known, "Known: " + String.join(", ", known) + ".");
    }
}
