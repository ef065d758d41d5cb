package bayproof.command;

import bayproof.command.Option.Use;
import java.util.Arrays;
import java.util.List;

/** What can be written on the command line. */
enum Command {
    REVIEW("review", "Judges a plan by the rule base and says what may be done today.",
            "PLAN", true, "The plan, a YAML or JSON file. It names the other files of the job. A parts book or a vehicle sheet can be named "
            + "instead: then it is read alone and what data it lacks is listed.",
            List.of(new Option("--gate", "GATE", "Judge this gate and every one before it: before-order (where none is named), "
                            + "before-teardown, before-power or handover."),
                    new Option("--at-least", "WEIGHT", "Lightest weight that counts against the plan: advise (where none is named), "
                            + "fix or stop."),
                    new Option("--limits", "FILE", "Shop limits to use in place of those the plan names."),
                    new Option("--all", null, "List what holds, with margins, and what does not apply, with reasons."),
                    new Option("--topic", "TOPIC", "Show the rules of this topic only; may stand several times.", Use.MANY),
                    new Option("--item", "ID", "Show what concerns this item, its runs, speaker wiring and pins only; may stand several times.", Use.MANY),
                    new Option("--zone", "ID", "Show what lies in or passes this zone only; may stand several times.", Use.MANY),
                    new Option("--since", "OTHER", "Another plan, such as the one before a change: show which verdicts moved, and why."),
                    Option.TODAY,
                    new Option("--ask", "all", "Print the questions as a form to fill in, at most 25 of them, or all; --as=csv prints a table.", Use.BARE),
                    new Option("--as", "FORM", "text (where none is named) or json, for other programs sarif (SARIF 2.1.0) or junit; of a form text (Markdown) or csv."),
                    Option.UNITS,
                    new Option("--color", "WHEN", "Color the weights: auto (on a terminal only, where none is named), never or always. "
                            + "Nothing is said by color alone, and JSON has none."),
                    new Option("--timing", null, "Tell on standard error where the time went."))),
    SHEET("sheet", "Prints the bench sheet of a plan: cut list, fuses, pins, first power, hours.",
            "PLAN", true, "The plan, a YAML or JSON file. It names the other files of the job.",
            List.of(new Option("--pins", null, "Print the connector form instead: an empty box for each reading, and what each function must read."),
                    new Option("--filled", "FILE", "With --pins: read a filled form, a CSV file as --pins --as csv writes it, and judge each pin."),
                    new Option("--plots", "FOLDER", "Draw into this folder, as SVG: bands and their sum, enclosures, loads, volts along the main feed."),
                    new Option("--looks", null, "Print what is looked at with eyes and hands, to be filled in; --as csv gives the table that a plan names as its inspections."),
                    new Option("--put-back", null, "Print what has to go back into the vehicle when the system comes out, with hours."),
                    new Option("--as", "FORM", "text (where none is named), markdown, csv or json."),
                    new Option("--to", "FOLDER", "Write into this folder: with --as csv one file a table, with --as markdown the sheet and its fuse labels at true size."),
                    new Option("--limits", "FILE", "Shop limits to use in place of those the plan names."),
                    Option.TODAY,
                    Option.UNITS)),
    HANDOVER("handover", "Says whether the vehicle may go back, and what stands against it.",
            "JOB", false, "The job: its plan, or its folder when the plan is called plan.yaml.",
            List.of(new Option("--check-in", null, "Print the sheet to fill in with the customer as the vehicle comes."),
                    new Option("--customer", null, "Print the page that the customer takes home; --as=markdown for paper."),
                    new Option("--gate", "GATE", "Judge everything up to this gate: before-order, before-teardown, before-power or handover (where none is named)."),
                    new Option("--at-least", "WEIGHT", "Lightest weight that counts against it: advise (where none is named), fix or stop."),
                    new Option("--ask", null, "Print what is still to be shown as a form to fill in; --as=csv prints a table."),
                    new Option("--filled", "FORM", "A filled form, Markdown or CSV: show what it changes in the job's files."),
                    new Option("--write", null, "Change them."),
                    new Option("--as", "FORM", "text (where none is named), markdown or json, for other programs sarif (SARIF 2.1.0) or junit; of a form text (Markdown) or csv."),
                    new Option("--limits", "FILE", "Shop limits to use in place of those the plan names."),
                    new Option("--sign", null, "Sign: put the answer, every verdict and the hashes of all files into the job's record, and print its head for the paper."),
                    new Option("--by", "INITIALS", "Who signs."),
                    new Option("--prove", null, "Say whether the files still are what was signed last, and whether the record is whole."),
                    new Option("--head", "HEAD", "With --prove: the head from the signed paper, which shows whether the record's end was cut off."),
                    new Option("--jobs", "FOLDER", "Audit every job below this folder instead of one job, with a summary; --as=json can be kept."),
                    new Option("--all", null, "With --jobs: list every job, also those that may go."),
                    new Option("--against", "SAVED", "With --jobs: a kept audit; say which jobs are judged differently now, and why."),
                    Option.TODAY,
                    Option.UNITS)),
    REFIT("refit", "Says what of a job carries over into another vehicle, before either is taken apart.",
            "PLAN", true, "The plan of the job in the old vehicle, a YAML or JSON file.",
            List.of(new Option("--into", "SHEET", "The vehicle sheet of the new vehicle. It must be named."),
                    new Option("--choices", "FILE", "What is decided and known already: places, spaces, routes, cable lengths, people, delivery times."),
                    new Option("--write", "FILE", "Write a plan for the new vehicle: what carries over filled in, everything else unknown."),
                    new Option("--replace", null, "With --write: put the plan in place of the one that is there."),
                    new Option("--as", "FORM", "text (where none is named), markdown or json."),
                    new Option("--limits", "FILE", "Shop limits to use in place of those the plan names; the shop's own hours stand there."),
                    Option.UNITS)),
    WHY("why", "Explains the rules: all of them, one, one on a plan, or one limit.",
            "RULE", false, "The rule to explain; without one, all are listed by topic.",
            List.of(new Option("--in", "PLAN", "Show what the rule found in this plan: facts, numbers, verdicts."),
                    new Option("--limit", "NAME", "Explain this limit: its figure, its source and what others say."),
                    new Option("--topic", "TOPIC", "List the rules, mistakes or demands of this topic only; may stand several times.", Use.MANY),
                    new Option("--source", "TEXT", "List the rules that rest on a source with this text in its name."),
                    new Option("--mistake", "TEXT", "List mistakes that the cases make, each with the rule that finds it; with TEXT, those with these words.",
                            Use.BARE),
                    new Option("--coverage", null, "List what the trade demands, each with its rule, the reason why none judges it, or that it is still open."),
                    new Option("--limits", "FILE", "Shop limits to use in place of those the plan names."),
                    Option.UNITS)),
    FIGURE("figure", "Works out one number, or asks one rule, by hand.",
            "NAME", false, "A number or a rule; without one, all that can be asked are listed with an example each.",
            "NAME=VALUE", "What it is worked out from; without any, it says what it takes.",
            List.of(new Option("--as", "FORM", "text (where none is named) or json, with every number unrounded."),
                    new Option("--limits", "FILE", "Shop limits to use in place of the usual ones."),
                    Option.UNITS)),
    NEW("new", "Begins a job: a folder with plan, vehicle sheet and parts, or the sheet of a vehicle.",
            "FOLDER", false, "The folder to write; it must not be there yet.",
            List.of(new Option("--from", "EXAMPLE", "Copy this example into the folder, with the parts it needs."),
                    new Option("--list", null, "List the examples, one a line."),
                    new Option("--wish", "NAME=WORDS", "Answer one of the seven questions to the customer; none says that nothing is wished; may stand several times.", Use.MANY),
                    new Option("--no-questions", null, "Do not ask them on the terminal."),
                    new Option("--answers", "FORM", "A filled form, as review --ask printed it, Markdown or CSV: show what it changes in the job's files."),
                    new Option("--write", null, "Change them."),
                    new Option("--vehicle", "NAME", "Print a form to fill in at this vehicle; with --survey, write NAME.yaml beside that form."),
                    new Option("--survey", "FILE", "The form, filled in."),
                    new Option("--vehicle-from", "SHEET", "Begin the job with this vehicle sheet of an earlier job; what was seen on that vehicle then counts as seen on the same variant."))),
    COMPLETION("completion", "Prints a script that completes commands and options as you type, for bash and zsh.",
            "SHELL", false, "bash (where none is named) or zsh.", List.of());

    private final String word;
    private final String says;
    private final String subject;
    private final boolean subjectNeeded;
    private final String subjectSays;
    private final String further;
    private final String furtherSays;
    private final List<Option> options;

    Command(String word, String says, String subject, boolean subjectNeeded, String subjectSays, List<Option> options) {
        this(word, says, subject, subjectNeeded, subjectSays, null, null, options);
    }

    Command(String word, String says, String subject, boolean subjectNeeded, String subjectSays, String further, String furtherSays, List<Option> options) {
        this.word = word;
        this.says = says;
        this.subject = subject;
        this.subjectNeeded = subjectNeeded;
        this.subjectSays = subjectSays;
        this.further = further;
        this.furtherSays = furtherSays;
        this.options = options;
    }

    String word() {
        return word;
    }

    /** What it does, one sentence. */
    String says() {
        return says;
    }

    /** What the one word without an option name stands for, for the help page. */
    String subject() {
        return subject;
    }

    boolean subjectNeeded() {
        return subjectNeeded;
    }

    String subjectSays() {
        return subjectSays;
    }

    /** What further words without an option name stand for; null where none may stand there. */
    String further() {
        return further;
    }

    String furtherSays() {
        return furtherSays;
    }

    List<Option> options() {
        return options;
    }

    /** The option of a name, or null. */
    Option option(String name) {
        return options.stream().filter(option -> option.name().equals(name)).findFirst().orElse(null);
    }

    /** The command of a word, or null. */
    static Command of(String word) {
        return Arrays.stream(values()).filter(command -> command.word.equals(word)).findFirst().orElse(null);
    }
}
