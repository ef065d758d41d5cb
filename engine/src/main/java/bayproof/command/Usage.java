package bayproof.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Explains the command line: help pages, and what is wrong with a line. */
final class Usage {
    private static final int WIDTH = 80;

    private final CommandLine top;

    Usage() {
        CommandSpec spec = spec("bayproof", "Checks a planned vehicle audio or 12-volt installation before anything is ordered, "
                + "opened, powered or handed over.");
        spec.addOption(OptionSpec.builder("-V", "--version").type(boolean.class).arity("0")
                .description("Name the tool and its rule base with its date.").build());
        for (Command command : Command.values()) {
            spec.addSubcommand(command.word(), spec(command));
        }
        spec.usageMessage().synopsisSubcommandLabel("COMMAND").footer("",
                "Where to start:",
                "  bayproof new my-job --from=one-amplifier        a job of your own to change",
                "  bayproof review my-job/plan.yaml                what is wrong or still open",
                "  bayproof review --help                          how to read the answer",
                "  bayproof why                                    what the rules ask for",
                "  bayproof handover my-job                        may the vehicle go back?",
                "  bayproof refit my-job/plan.yaml --into=new.yaml what carries over?",
                "  bayproof completion --help                      words by the Tab key",
                "",
                "A plan of ten lines (battery, main fuse and its distance, cable size and",
                "length, amplifier, speakers, ground) is enough for a useful \"no\".");
        top = new CommandLine(spec);
        top.setUsageHelpWidth(WIDTH);
    }

    /** The help page of a command. */
    String help(Command command) {
        return help(top.getSubcommands().get(command.word()));
    }

    /**
     * Reads a command line.
     *
     * @return an order, or a reply where help or the version was asked for
     * @throws WrongUse when it cannot be understood
     */
    Object read(String[] arguments) throws WrongUse {
        if (arguments.length == 0) {
            return new Reply(Reply.UNUSABLE, "", help(top));
        }
        ParseResult line;
        try {
            line = top.parseArgs(arguments);
        } catch (ParameterException e) {
            String command = e.getCommandLine().getCommandName();
            String help = "See " + (command.equals("bayproof") ? "" : "bayproof ") + command + " --help.";
            Misread misread = Misread.of(e);
            throw new WrongUse(misread.what(), (misread.near() + " " + help).strip());
        }
        if (line.isUsageHelpRequested()) {
            return Reply.answer(help(top));
        }
        if (line.hasMatchedOption("--version")) {
            return Reply.answer(Main.version());
        }
        if (!line.hasSubcommand()) {
            throw new WrongUse("No command is named.", "See bayproof --help.");
        }
        ParseResult command = line.subcommand();
        return command.isUsageHelpRequested() ? Reply.answer(help(command.commandSpec().commandLine())) : order(command);
    }

    /** A script for bash that completes every command and option. */
    String completionScript() {
        return AutoComplete.bash(top.getCommandName(), top);
    }

    private static Order order(ParseResult line) {
        Command command = Command.of(line.commandSpec().name());
        Map<String, List<String>> options = new TreeMap<>();
        for (Option option : command.options()) {
            if (line.hasMatchedOption(option.name())) {
                options.put(option.name(), option.many() ? line.matchedOptionValue(option.name(), List.of())
                        : List.of(option.takesWord() ? line.matchedOptionValue(option.name(), "") : ""));
            }
        }
        return new Order(command, line.matchedPositionalValue(0, (String) null), line.matchedPositionalValue(1, List.<String>of()), options);
    }

    private static CommandSpec spec(Command command) {
        CommandSpec spec = spec(command.word(), command.says());
        spec.addPositional(PositionalParamSpec.builder().paramLabel(command.subject()).index("0").type(String.class)
                .arity(command.subjectNeeded() ? "1" : "0..1").required(command.subjectNeeded()).description(command.subjectSays()).build());
        if (command.further() != null) {
            spec.addPositional(PositionalParamSpec.builder().paramLabel(command.further()).index("1..*").type(List.class).auxiliaryTypes(String.class).arity("0..*")
                    .description(command.furtherSays()).build());
        }
        for (Option option : command.options()) {
            OptionSpec.Builder builder = OptionSpec.builder(option.name()).description(option.says());
            if (option.many()) {
                spec.addOption(builder.paramLabel(option.label()).type(List.class).auxiliaryTypes(String.class).arity("1").build());
                continue;
            }
            if (option.takesWord() && !option.wordNeeded()) {
                builder.fallbackValue("");
            }
            spec.addOption(option.takesWord() ? builder.paramLabel(option.label()).type(String.class).arity(option.wordNeeded() ? "1" : "0..1").build()
                    : builder.type(boolean.class).arity("0").build());
        }
        Map<String, String> status = new LinkedHashMap<>();
        status.put(" " + Reply.CLEAR, switch (command) {
            case REVIEW -> "Nothing that is due counts against the plan.";
            case WHY -> "The question was answered.";
            case FIGURE -> "Worked out or listed; a rule that was asked holds.";
            case NEW -> "Written, listed or shown.";
            case COMPLETION -> "The script was printed.";
            case REFIT -> "Everything carries over, as it is or after a change.";
            case HANDOVER -> "The vehicle may go; of a form: printed, or all answers go in. With --prove: everything matches.";
            case SHEET -> "Printed, and no STOP stands open. With --filled: every pin that the plan joins fits.";
        });
        if (command == Command.SHEET) {
            status.put(" " + Reply.COUNTS, "Printed, and a STOP stands open. With --filled: a pin does not fit, or one that the plan joins is not shown.");
        }
        if (command == Command.HANDOVER) {
            status.put(" " + Reply.COUNTS, "It may not go yet: something that is due is broken or not shown, at or above the weight asked for. "
                    + "Of a filled form some answers are wrong or have to be entered by hand. With --prove: something does not match. With --jobs: the worst of all jobs.");
        }
        if (command == Command.REFIT) {
            status.put(" " + Reply.COUNTS, "Something does not carry over, or cannot be told yet.");
        }
        if (command == Command.REVIEW) {
            status.put(" " + Reply.COUNTS, "Something does: broken or not shown, of the gates judged, at or above the weight asked for. "
                    + "Of a parts book or vehicle sheet alone: data is missing.");
        }
        if (command == Command.FIGURE) {
            status.put(" " + Reply.COUNTS, "The rule that was asked is broken.");
        }
        if (command == Command.NEW) {
            status.put(" " + Reply.COUNTS, "Of a filled form some answers are wrong or have to be entered by hand; they are listed.");
        }
        status.put(" " + Reply.UNUSABLE, "Wrong usage, input that cannot be used, or nothing to judge.");
        status.put(" " + Reply.FAULT, "A fault of ours.");
        spec.usageMessage().exitCodeListHeading("%nExit status:%n").exitCodeList(status).footer(footer(command));
        return spec;
    }

    private static String[] footer(Command command) {
        return switch (command) {
            case REVIEW -> new String[] {"",
                "Reading the answer: STOP can hurt someone or the vehicle, FIX is to be corrected",
                "before handover, ADVISE is worth doing. What nobody wrote down is not shown, and",
                "that never passes. What is assumed is taken between two values and listed.",
                "",
                "Examples:",
                "  bayproof review plan.yaml",
                "  bayproof review plan.yaml --gate=before-power",
                "  bayproof review plan.yaml --at-least=stop --limits=our-limits.yaml",
                "  bayproof review plan.yaml --as=json",
                "  bayproof review plan.yaml --topic=protection --item=amp-front",
                "  bayproof review plan.yaml --since=before/plan.yaml   what the change moved",
                "  bayproof review parts.yaml                           what data is missing",
                "  bayproof review plan.yaml --ask > form.md            questions to fill in",
                "",
                "Narrowing (--topic, --item, --zone) changes what is shown, never the answer, the",
                "counts or the exit status: those come from everything that is due. An option",
                "given twice shows both; different options show what meets each of them."};
            case SHEET -> new String[] {"",
                "What nobody measured or wrote is a blank, never a figure. While a STOP stands",
                "open the first lines say so.",
                "",
                "Examples:",
                "  bayproof sheet plan.yaml",
                "  bayproof sheet plan.yaml --as=markdown --to=wall     sheet and fuse labels",
                "  bayproof sheet plan.yaml --as=csv --to=tables",
                "  bayproof sheet plan.yaml --pins --as=csv --to=form   a form to fill in",
                "  bayproof sheet plan.yaml --pins --filled=form/pin-form.csv",
                "  bayproof sheet plan.yaml --plots=plots               pictures",
                "  bayproof sheet plan.yaml --looks --as=csv --to=form  a list to fill in",
                "  bayproof sheet plan.yaml --put-back"};
            case HANDOVER -> new String[] {"",
                "Examples:",
                "  bayproof handover my-job --check-in > check-in.md     as the vehicle comes",
                "  bayproof handover my-job --filled=check-in.md --write read it back",
                "  bayproof handover my-job                              may it go?",
                "  bayproof handover my-job --gate=before-power",
                "  bayproof handover my-job --ask > form.md              what is to be shown",
                "  bayproof handover my-job --filled=form.md --write     read it back",
                "  bayproof handover my-job --customer                   the customer's page",
                "  bayproof handover my-job --sign --by=AB               sign it",
                "  bayproof handover --jobs=archive                      all jobs of a folder",
                "  bayproof handover --jobs=archive --as=json > saved.json",
                "  bayproof handover --jobs=archive --against=saved.json what is judged otherwise",
                "  bayproof handover my-job --prove --head=3fa9-01c2-77de-10ab",
                "",
                "A record shows that files and entries are as they were signed; only the head on",
                "paper shows that no entry was cut off its end. The record is the shop's own:",
                "nothing is sent anywhere."};
            case REFIT -> new String[] {"",
                "Each thing of the old job stands in one row: it carries over, carries over after",
                "a change, does not carry over, or cannot be told yet. A length is never invented:",
                "cables follow the measured routes of the new sheet. Where a thing could go to",
                "several places, the choices say which:",
                "",
                "  bayproof: 1",
                "  kind: choices",
                "  places: { rack-wall: left-wall }      old place: new place",
                "  runs: { feed-2: [ sill, wall ] }      run: routes of the new sheet",
                "  cables: { signal-1: 3.60 m }          as it comes out of the old vehicle",
                "  people: 2",
                "  known: { owned-by: { kind: customer, returns: false } }",
                "",
                "Examples:",
                "  bayproof refit old/plan.yaml --into=new/vehicle.yaml",
                "  bayproof refit old/plan.yaml --into=new/vehicle.yaml --choices=choices.yaml",
                "  bayproof refit old/plan.yaml --into=new/vehicle.yaml --write=new/plan.yaml",
                "  bayproof review new/plan.yaml                        what is left to do"};
            case WHY -> new String[] {"",
                "Examples:",
                "  bayproof why",
                "  bayproof why fuse-near-battery",
                "  bayproof why fuse-near-battery --in=plan.yaml",
                "  bayproof why --limit=fuse-distance-bare",
                "  bayproof why --source=\"33 CFR 183.455\"",
                "  bayproof why --mistake=grommet                what goes wrong with grommets",
                "  bayproof why --coverage --topic=grounds       what is asked, and who judges it"};
            case FIGURE -> new String[] {"",
                "Every quantity carries its unit. A value with a space in it may stand with or",
                "without quotes; | ( ) and ' need them.",
                "",
                "Examples:",
                "  bayproof figure                                   what can be asked",
                "  bayproof figure drop                              what it is worked out from",
                "  bayproof figure drop current=30 A size=4 AWG length=10 m",
                "  bayproof figure fuse-near-battery length=1.2 m sheathed=no",
                "  bayproof figure load \"net=4 ohm + 4 ohm | 4 ohm + 4 ohm\" bridged=yes",
                "  bayproof figure parked-days capacity=70 Ah standby=23 mA wished=21 d --as=json",
                "",
                "A rule that is asked like this judges the numbers given and nothing else of what",
                "it asks for; on a plan it judges all of it."};
            case NEW -> new String[] {"",
                "Begin with an example that is near your job:",
                "  bayproof new --list",
                "  bayproof new my-job --from=one-amplifier",
                "  bayproof review my-job/plan.yaml       what is wrong, and what to find out",
                "Then change plan.yaml and vehicle.yaml in my-job with any text editor and review",
                "again. What says unknown is asked for; data of your own parts goes into",
                "parts.yaml. For scripts: --no-questions, or --wish=seats=none and the like.",
                "",
                "Begin with the vehicle, on paper or on the phone:",
                "  bayproof new --vehicle=blue-van > blue-van.md",
                "  bayproof new --vehicle=blue-van --survey=blue-van.md    writes blue-van.yaml",
                "  bayproof new my-job --vehicle-from=blue-van.yaml",
                "",
                "Put the answers of a form into the files that own them (never into a parts book",
                "elsewhere); the rest of each file stays as it is, byte for byte:",
                "  bayproof review my-job/plan.yaml --ask > form.md",
                "  bayproof new my-job --answers=form.md            show what changes",
                "  bayproof new my-job --answers=form.md --write    change it"};
            case COMPLETION -> new String[] {"",
                "In bash, for this session:   source <(bayproof completion)",
                "In zsh:                     source <(bayproof completion zsh)",
                "For every session, add that line to ~/.bashrc or ~/.zshrc."};
        };
    }

    private static CommandSpec spec(String name, String says) {
        CommandSpec spec = CommandSpec.create().name(name);
        spec.usageMessage().description(says).width(WIDTH).sortOptions(false).optionListHeading("%nOptions:%n")
                .parameterListHeading("%n").commandListHeading("%nCommands:%n").descriptionHeading("%n").abbreviateSynopsis(false);
        spec.addOption(OptionSpec.builder("-h", "--help").usageHelp(true).description("Show this help.").build());
        return spec;
    }

    /** The help page of a command, without color. */
    private static String help(CommandLine command) {
        return command.getUsageMessage(Ansi.OFF).strip() + "\n";
    }
}
