package bayproof.judge;

import bayproof.demand.Gate;
import bayproof.demand.Judge;
import bayproof.demand.Weight;
import bayproof.vocabulary.Fact;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.KiePackage;
import org.kie.api.definition.rule.Rule;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.AgendaFilter;

/**
 * The rules, compiled when the program was built and loaded without a rule compiler. Immutable and shared; every
 * evaluation has a session of its own.
 */
public final class RuleBase {
    private static final String MODEL = "META-INF/kie/bayproof/bayproof-rules/drools-model";
    private static final String PACKAGE = "bayproof.rules.";

    private static final class Built {
        static final RuleBase BASE = load();
    }

    private final KieBase base;
    private final Map<String, RuleInfo> rules;

    private RuleBase(KieBase base, Map<String, RuleInfo> rules) {
        this.base = base;
        this.rules = Collections.unmodifiableMap(rules);
    }

    /** The built-in rules. */
    public static RuleBase built() {
        return Built.BASE;
    }

    /** Ids of the built-in rules. */
    public static Collection<String> ids() {
        return built().rules().keySet();
    }

    private static RuleBase load() {
        Collection<Model> models = new ArrayList<>();
        try {
            Enumeration<URL> files = RuleBase.class.getClassLoader().getResources(MODEL);
            while (files.hasMoreElements()) {
                for (String name : lines(files.nextElement())) {
                    if (!name.startsWith("Drools-Model-Version")) {
                        models.add((Model) Class.forName(name).getDeclaredConstructor().newInstance());
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ClassNotFoundException | NoSuchMethodException | InstantiationException | IllegalAccessException
                 | InvocationTargetException e) {
            throw new RuleFault("the compiled rules cannot be loaded; build the program anew", e);
        }
        if (models.isEmpty()) {
            throw new RuleFault("no compiled rules are in this build");
        }
        KieBase base = KieBaseBuilder.createKieBaseFromModel(models);
        Map<String, RuleInfo> rules = new TreeMap<>();
        for (KiePackage one : base.getKiePackages()) {
            for (Rule rule : one.getRules()) {
                RuleInfo info = info(rule);
                if (rules.put(info.id(), info) != null) {
                    throw new RuleFault("two rules are named " + info.id());
                }
            }
        }
        return new RuleBase(base, rules);
    }

    private static List<String> lines(URL file) throws IOException {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(file.openStream(), StandardCharsets.UTF_8))) {
            return in.lines().filter(line -> !line.isBlank()).toList();
        }
    }

    private static RuleInfo info(Rule rule) {
        String topic = rule.getPackageName().startsWith(PACKAGE) ? rule.getPackageName().substring(PACKAGE.length()) : "";
        Map<String, Object> data = rule.getMetaData();
        try {
            return new RuleInfo(rule.getName(), topic, Weight.of(data.get("weight").toString()),
                    Gate.of(data.get("gate").toString()), data.get("about").toString());
        } catch (RuntimeException e) {
            throw new RuleFault("rules/" + topic + "/" + rule.getName() + ".drl does not say its @weight, @gate and @about", e);
        }
    }

    /** All rules by id. */
    public Map<String, RuleInfo> rules() {
        return rules;
    }

    /** Lets every rule speak about the facts; what they ask for is returned in no particular order. */
    List<bayproof.demand.Demand> demands(Collection<Fact> facts, RuleTimes times) {
        return demands(facts, times, null);
    }

    /** Lets one rule alone speak about a fact. */
    List<bayproof.demand.Demand> demands(String rule, Fact fact) {
        return demands(List.of(fact), new RuleTimes(), match -> match.getRule().getName().equals(rule));
    }

    private List<bayproof.demand.Demand> demands(Collection<Fact> facts, RuleTimes times, AgendaFilter speaks) {
        Judge judge = new Judge();
        KieSession session = base.newKieSession();
        String[] speaking = {""};
        try {
            session.addEventListener(new DefaultAgendaEventListener() {
                @Override
                public void beforeMatchFired(BeforeMatchFiredEvent event) {
                    speaking[0] = event.getMatch().getRule().getName();
                    times.begin(speaking[0]);
                }

                @Override
                public void afterMatchFired(AfterMatchFiredEvent event) {
                    times.end();
                }
            });
            session.setGlobal("judge", judge);
            facts.forEach(session::insert);
            session.fireAllRules(speaks);
        } catch (RuntimeException e) {
            RuleInfo rule = rules.get(speaking[0]);
            throw new RuleFault(rule == null ? "the rules cannot be run" : "the rule in " + rule.file() + " failed: "
                    + (e.getCause() == null ? e.getMessage() : e.getCause().getMessage()), e);
        } finally {
            session.dispose();
        }
        return judge.demands();
    }
}
