package bayproof.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A command with what was written behind it.
 *
 * @param command the command
 * @param subject the word without an option name; null where there is none
 * @param values  further words without an option name, of commands that take any
 * @param options words by name of their option, in the order they were written; an option that takes none has an empty word
 */
record Order(Command command, String subject, List<String> values, Map<String, List<String>> options) {

    /**
     * Reads a command line that is written as it should be. Everything else (a slip, a call for help) is left to
     * {@link Usage}, whose library knows how to explain it but takes a quarter of a start to load.
     *
     * @return the order, or null where the line is anything but plainly right
     */
    static Order plain(String[] arguments) {
        Command command = arguments.length == 0 ? null : Command.of(arguments[0]);
        if (command == null) {
            return null;
        }
        String subject = null;
        List<String> values = new ArrayList<>();
        Map<String, List<String>> options = new TreeMap<>();
        for (int i = 1; i < arguments.length; i++) {
            String argument = arguments[i];
            if (!argument.startsWith("-")) {
                if (subject != null && command.further() == null || argument.isEmpty()) {
                    return null;
                }
                if (subject == null) {
                    subject = argument;
                } else {
                    values.add(argument);
                }
                continue;
            }
            int equals = argument.indexOf('=');
            Option option = command.option(equals < 0 ? argument : argument.substring(0, equals));
            if (option == null || !option.takesWord() && equals >= 0) {
                return null;
            }
            String word = "";
            if (option.takesWord()) {
                boolean bare = equals < 0 && (i + 1 == arguments.length || arguments[i + 1].startsWith("-") || !option.wordNeeded() && !option.fits(arguments[i + 1]));
                if (bare && option.wordNeeded()) {
                    return null;
                }
                word = bare ? "" : equals < 0 ? arguments[++i] : argument.substring(equals + 1);
            }
            List<String> words = options.computeIfAbsent(option.name(), any -> new ArrayList<>());
            words.add(word);
            if (words.size() > 1 && !option.many()) {
                return null;
            }
        }
        return subject == null && command.subjectNeeded() ? null : new Order(command, subject, List.copyOf(values), options);
    }

    /** The word behind an option, or {@code otherwise}. */
    String word(String option, String otherwise) {
        return options.containsKey(option) ? options.get(option).get(0) : otherwise;
    }

    /** All words behind an option that may stand several times. */
    List<String> words(String option) {
        return options.getOrDefault(option, List.of());
    }

    boolean has(String option) {
        return options.containsKey(option);
    }
}
