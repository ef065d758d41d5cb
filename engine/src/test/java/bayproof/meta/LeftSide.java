package bayproof.meta;

import bayproof.vocabulary.Shown;
import java.lang.reflect.Method;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.drl.ast.descr.AccumulateDescr;
import org.drools.drl.ast.descr.AndDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.BindingDescr;
import org.drools.drl.ast.descr.ExistsDescr;
import org.drools.drl.ast.descr.ExprConstraintDescr;
import org.drools.drl.ast.descr.FromDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.OrDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsParserException;

/**
 * Reads the left side of a rule and finds what touches a value that can be missing: there "unknown" would look like
 * "not applicable". What it does not understand it refuses.
 */
final class LeftSide {
    private static final Pattern STRING = Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"");
    /** A name with what is asked of it: {@code $run.fused().isGiven()}. */
    private static final Pattern CHAIN = Pattern.compile("(?<![\\w$.])[$A-Za-z_][\\w$]*(?:\\s*\\(\\s*\\))?(?:\\s*!?\\.\\s*[A-Za-z_]\\w*(?:\\s*\\(\\s*\\))?)*");
    private static final Pattern NAME = Pattern.compile("[$A-Za-z_][\\w$]*");

    private final Map<String, Class<?>> imports = new HashMap<>();
    private final Map<String, Type> variables = new HashMap<>();
    private final List<String> mistakes = new ArrayList<>();

    private LeftSide(List<String> imported) {
        for (String name : imported) {
            try {
                Class<?> type = Class.forName(name);
                imports.put(type.getSimpleName(), type);
            } catch (ClassNotFoundException e) {
                mistakes.add("unknown type " + name);
            }
        }
    }

    static PackageDescr parse(String drl) {
        DrlParser parser = new DrlParser();
        try {
            PackageDescr file = parser.parse(false, drl);
            if (parser.hasErrors()) {
                throw new AssertionError(parser.getErrors().toString());
            }
            return file;
        } catch (DroolsParserException e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    /** What is wrong in the left sides of a file. */
    static List<String> mistakes(String drl) {
        PackageDescr file = parse(drl);
        List<String> imported = file.getImports().stream().map(one -> one.getTarget()).toList();
        return file.getRules().stream().flatMap(rule -> mistakes(rule, imported).stream()).toList();
    }

    static List<String> mistakes(RuleDescr rule, List<String> imported) {
        LeftSide side = new LeftSide(imported);
        side.read(rule.getLhs());
        return side.mistakes;
    }

    private void read(BaseDescr part) {
        if (part instanceof PatternDescr pattern) {
            pattern(pattern);
        } else if (part instanceof AndDescr and) {
            and.getDescrs().forEach(this::read);
        } else if (part instanceof OrDescr or) {
            or.getDescrs().forEach(this::read);
        } else if (part instanceof NotDescr not) {
            not.getDescrs().forEach(one -> read((BaseDescr) one));
        } else if (part instanceof ExistsDescr exists) {
            exists.getDescrs().forEach(one -> read((BaseDescr) one));
        } else {
            mistakes.add("a construct that may not stand here: " + part.getClass().getSimpleName() + " " + part);
        }
    }

    private void pattern(PatternDescr pattern) {
        Class<?> type = type(pattern.getObjectType());
        if (pattern.getSource() instanceof FromDescr from) {
            expression(from.getDataSource().toString(), null);
        } else if (pattern.getSource() instanceof AccumulateDescr accumulate) {
            read(accumulate.getInput());
            for (AccumulateDescr.AccumulateFunctionCallDescr function : accumulate.getFunctions()) {
                for (String parameter : function.getParams()) {
                    expression(parameter, null);
                }
            }
            for (String code : new String[] {accumulate.getInitCode(), accumulate.getActionCode(), accumulate.getReverseCode(), accumulate.getResultCode()}) {
                expression(code == null ? "" : code, null);
            }
        } else if (pattern.getSource() != null) {
            mistakes.add("a construct that may not stand here: " + pattern.getSource().getClass().getSimpleName());
        }
        if (pattern.getIdentifier() != null && type != null) {
            variables.put(pattern.getIdentifier(), type);
        }
        for (BaseDescr constraint : pattern.getDescrs()) {
            if (constraint instanceof BindingDescr binding) {
                expression(binding.getExpression(), type);
                variables.put(binding.getVariable(), typeOf(binding.getExpression(), type));
            } else if (constraint instanceof ExprConstraintDescr expression) {
                expression(expression.getExpression(), type);
            } else {
                mistakes.add("a constraint that is not understood: " + constraint);
            }
        }
    }

    private Class<?> type(String name) {
        if (imports.containsKey(name)) {
            return imports.get(name);
        }
        for (String home : List.of("java.lang.", "java.util.", "")) {
            try {
                return Class.forName(home + name);
            } catch (ClassNotFoundException e) {
                // Looked for in the next place.
            }
        }
        mistakes.add("unknown type " + name);
        return null;
    }

    private void expression(String expression, Class<?> pattern) {
        Matcher chains = CHAIN.matcher(STRING.matcher(expression).replaceAll("\"\""));
        while (chains.find()) {
            typeOf(chains.group(), pattern);
        }
    }

    /** Type that a chain of names ends with; null where it is not a value of ours. */
    private Type typeOf(String chain, Class<?> pattern) {
        Matcher names = NAME.matcher(chain);
        Type type = null;
        boolean first = true;
        while (names.find()) {
            String name = names.group();
            if (first) {
                type = name.equals("this") ? pattern : variables.containsKey(name) ? variables.get(name) : property(pattern, name);
                first = false;
            } else {
                type = property(type, name);
            }
            if (type == null) {
                return null;
            }
            if (type.getTypeName().contains(Shown.class.getName())) {
                mistakes.add("touches a value that can be missing: " + chain);
                return null;
            }
        }
        return type;
    }

    private static Type property(Type owner, String name) {
        if (!(owner instanceof Class<?> type)) {
            return null;
        }
        String getter = "get" + Character.toUpperCase(name.charAt(0)) + name.substring(1);
        for (Method method : type.getMethods()) {
            if (method.getParameterCount() == 0 && (method.getName().equals(name) || method.getName().equals(getter))) {
                return method.getGenericReturnType();
            }
        }
        return null;
    }
}
