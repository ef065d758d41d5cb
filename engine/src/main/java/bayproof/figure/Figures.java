package bayproof.figure;

import bayproof.judge.RuleBase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Everything that can be worked out by hand. */
public final class Figures {
    private static final List<NumberFigure> NUMBERS = numbersByName();
    private static final List<RuleFigure> RULES = rulesByName();
    /** Rules with a number in them that values on a command line cannot answer, with the reason. */
    private static final Map<String, String> NOT_BY_HAND = Map.of("pin-proved-first",
            "somebody has to vouch for the reading (who, when, with which instrument), and function and color are held against the vehicle sheet");

    private Figures() {
    }

    private static List<NumberFigure> numbersByName() {
        List<NumberFigure> all = new ArrayList<>(ConductorNumbers.all());
        all.addAll(SupplyNumbers.all());
        all.addAll(SoundNumbers.all());
        all.sort(Comparator.comparing(NumberFigure::name));
        return List.copyOf(all);
    }

    private static List<RuleFigure> rulesByName() {
        List<RuleFigure> all = new ArrayList<>(ProtectionRules.all());
        all.addAll(SupplyRules.all());
        all.addAll(SoundRules.all());
        all.addAll(BodyRules.all());
        all.addAll(AcousticRules.all());
        all.addAll(ProvingRules.all());
        all.addAll(MeasuredLooks.all());
        all.sort(Comparator.comparing(RuleFigure::name));
        return List.copyOf(all);
    }

    /** The numbers, by name. */
    public static List<NumberFigure> numbers() {
        return NUMBERS;
    }

    /** The rules that can be asked, by id. */
    public static List<RuleFigure> rules() {
        return RULES;
    }

    /** Rules with a number in them that cannot be asked by hand, with the reason why, a clause. */
    public static Map<String, String> notByHand() {
        return NOT_BY_HAND;
    }

    /**
     * The figure of a name.
     *
     * @throws FigureMistake when there is none; it says why where a rule of that name exists
     */
    public static Figure named(String name) throws FigureMistake {
        for (NumberFigure number : NUMBERS) {
            if (number.name().equals(name)) {
                return number;
            }
        }
        for (RuleFigure rule : RULES) {
            if (rule.name().equals(name)) {
                return rule;
            }
        }
        if (NOT_BY_HAND.containsKey(name)) {
            throw FigureMistake.of("The rule " + name + " cannot be asked by hand: " + NOT_BY_HAND.get(name) + ".", "On a plan: bayproof why " + name + " --in PLAN.");
        }
        if (RuleBase.built().rules().containsKey(name)) {
            throw FigureMistake.of("The rule " + name + " holds no number against a limit, so there is nothing to work out.", "What it asks for: bayproof why " + name + ".");
        }
        List<String> known = new ArrayList<>();
        NUMBERS.forEach(number -> known.add(number.name()));
        RULES.forEach(rule -> known.add(rule.name()));
        throw FigureMistake.unknown("There is no figure and no rule \"" + name + "\".", name, known, "bayproof figure lists what can be asked.");
    }
}
