package bayproof.command;

import java.io.Console;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Colors the weights that begin a line of a finished page. The words stay: nothing is said by color alone. */
final class Paint {
    private static final String PLAIN = "\u001b[0m";
    /** Bold magenta, bold, underlined: three looks that stay apart in print and for eyes that do not tell red from green. */
    private static final Map<String, String> LOOKS = Map.of("STOP", "\u001b[1;35m", "FIX", "\u001b[1m", "ADVISE", "\u001b[4m");
    private static final Pattern WEIGHT = Pattern.compile("(?m)^( *)(STOP|FIX|ADVISE)(?=  )");

    private Paint() {
    }

    /** The page with its weights colored. */
    static String over(String page) {
        return WEIGHT.matcher(page).replaceAll(found -> Matcher.quoteReplacement(found.group(1) + LOOKS.get(found.group(2)) + found.group(2) + PLAIN));
    }

    /**
     * Whether color is wanted.
     *
     * @param when        auto, never or always
     * @param environment the environment: NO_COLOR with anything in it, or TERM with dumb, is a no to auto
     * @param terminal    whether standard output is a terminal
     */
    static boolean wanted(String when, Map<String, String> environment, boolean terminal) {
        if (!when.equals("auto")) {
            return when.equals("always");
        }
        return terminal && environment.getOrDefault("NO_COLOR", "").isEmpty() && !"dumb".equals(environment.get("TERM"));
    }

    /** Whether somebody reads at a terminal. From Java 22 on there is a console without one, which says so itself. */
    static boolean isTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException e) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }
}
