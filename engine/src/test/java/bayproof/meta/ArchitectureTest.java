package bayproof.meta;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which part of the program may know which. */
class ArchitectureTest {
    private static final JavaClasses MAIN = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("bayproof");

    /** For each package the ones it may know beside itself. */
    private static final Map<String, Set<String>> MAY_KNOW = new TreeMap<>(Map.ofEntries(
            Map.entry("vocabulary", Set.of()),
            Map.entry("demand", Set.of("vocabulary")),
            Map.entry("rules", Set.of("vocabulary", "demand")),
            Map.entry("units", Set.of()),
            Map.entry("solve", Set.of()),
            // The reference tables are read into the solver's plain records.
            Map.entry("read", Set.of("vocabulary", "demand", "units", "solve")),
            Map.entry("graph", Set.of("vocabulary", "read")),
            Map.entry("facts", Set.of("vocabulary", "demand", "units", "read", "graph", "solve")),
            // A card is read like any other file.
            Map.entry("judge", Set.of("vocabulary", "demand", "units", "read", "facts")),
            Map.entry("review", Set.of("vocabulary", "demand", "units", "read", "facts", "judge")),
            // A figure asked by hand takes the solver's functions and the rules, and no job.
            Map.entry("figure", Set.of("vocabulary", "demand", "units", "solve", "read", "judge")),
            Map.entry("worksheet", Set.of("vocabulary", "demand", "units", "solve", "read", "graph", "facts", "judge", "review")),
            Map.entry("handover", Set.of("vocabulary", "demand", "units", "solve", "read", "graph", "facts", "judge", "review", "worksheet")),
            Map.entry("refit", Set.of("vocabulary", "demand", "units", "solve", "read", "graph", "facts", "judge", "review", "worksheet")),
            Map.entry("signoff", Set.of("vocabulary", "demand", "units", "read", "judge", "review")),
            Map.entry("audit", Set.of("vocabulary", "demand", "read", "judge", "review", "signoff")),
            Map.entry("splice", Set.of("vocabulary", "read", "review")),
            // A form is read back by the marks it is printed with.
            Map.entry("report", Set.of("vocabulary", "demand", "units", "read", "facts", "judge", "review", "figure", "worksheet", "handover", "refit", "signoff", "audit", "splice")),
            Map.entry("start", Set.of("vocabulary", "read")),
            Map.entry("command", Set.of("vocabulary", "demand", "units", "read", "facts", "judge", "review", "figure", "worksheet", "handover", "refit", "signoff", "audit", "splice", "report",
                    "start"))));

    @Test
    void eachPackageKnowsOnlyWhatLiesBeforeIt() {
        MAY_KNOW.forEach((name, known) -> {
            String[] allowed = Stream.concat(Stream.of("java..", "javax.xml..", "org..", "com..", "picocli..", ours(name)), known.stream().map(ArchitectureTest::ours))
                    .toArray(String[]::new);
            ArchRule rule = classes().that().resideInAPackage(ours(name)).should().onlyDependOnClassesThat().resideInAnyPackage(allowed).allowEmptyShould(true);
            rule.check(MAIN);
        });
    }

    private static String ours(String name) {
        return "bayproof." + name + "..";
    }

    @Test
    void everyPackageHasItsPlaceInTheOrder() {
        Set<String> found = new java.util.TreeSet<>();
        MAIN.stream().map(JavaClass::getPackageName).filter(name -> name.startsWith("bayproof.")).forEach(name -> found.add(name.split("\\.")[1]));
        assertTrue(MAY_KNOW.keySet().containsAll(found), "found " + found);
    }

    @Test
    void thereAreNoCircles() {
        slices().matching("bayproof.(*)..").should().beFreeOfCycles().check(MAIN);
    }

    @Test
    void theSolverKnowsNothingOfRulesFilesOrUnits() {
        classes().that().resideInAPackage("bayproof.solve").should().onlyDependOnClassesThat()
                .resideInAnyPackage("java..", "bayproof.solve", "org.ejml..").check(MAIN);
    }

    @Test
    void everyPublicFunctionOfTheSolverHasACaller() {
        List<JavaClass> solver = MAIN.stream().filter(type -> Set.of("bayproof.solve", "bayproof.solve.sound").contains(type.getPackageName())).toList();
        assertFalse(solver.isEmpty());
        List<String> uncalled = new ArrayList<>();
        for (JavaClass type : solver) {
            Stream.concat(type.getMethods().stream(), type.getConstructors().stream()).filter(unit -> isOffered(type, unit))
                    .filter(unit -> unit.getAccessesToSelf().stream().noneMatch(access -> !access.getOrigin().equals(unit)))
                    .forEach(unit -> uncalled.add(unit.getFullName()));
        }
        assertEquals(List.of(), uncalled);
    }

    /** Public, written by hand and not called through a type above it. */
    private static boolean isOffered(JavaClass type, JavaCodeUnit unit) {
        if (!unit.getModifiers().contains(JavaModifier.PUBLIC) || unit.getModifiers().contains(JavaModifier.SYNTHETIC)
                || !type.getModifiers().contains(JavaModifier.PUBLIC)) {
            return false;
        }
        if (unit instanceof JavaConstructor) {
            return !type.isEnum();
        }
        JavaMethod method = (JavaMethod) unit;
        boolean component = type.isRecord() && Arrays.stream(type.reflect().getRecordComponents())
                .anyMatch(one -> one.getName().equals(method.getName()) && method.getRawParameterTypes().isEmpty());
        boolean inherited = Stream.concat(type.getAllRawSuperclasses().stream(), type.getAllRawInterfaces().stream())
                .anyMatch(above -> above.tryGetMethod(method.getName(), method.getRawParameterTypes().stream().map(JavaClass::getName).toArray(String[]::new)).isPresent());
        return !component && !inherited && !(type.isEnum() && Set.of("values", "valueOf").contains(method.getName()));
    }
}
