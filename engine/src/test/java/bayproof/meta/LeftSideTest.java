package bayproof.meta;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** No rule tests on its left side what can be missing. */
class LeftSideTest {
    static TreeSet<String> rules() {
        return RuleFiles.rules();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void noRuleTouchesAMissingValueOnItsLeftSide(String name) {
        assertEquals(List.of(), LeftSide.mistakes(RuleFiles.drl(name)));
    }

    private static String rule(String left) {
        return """
                package bayproof.rules.trial
                import bayproof.vocabulary.HoleEdge
                import bayproof.vocabulary.SourceKind
                import bayproof.vocabulary.SourceRun
                rule "trial" when %s then end
                """.formatted(left);
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "$r : SourceRun( fused == null )",
        "$r : SourceRun( fused.isGiven() )",
        "$r : SourceRun( fused().isGiven() )",
        "$r : SourceRun( this.fused != null )",
        "$r : SourceRun( kind == SourceKind.BATTERY && sheathed.needs().isEmpty() )",
        "$r : SourceRun( kind == SourceKind.BATTERY, lengthToFuseMetres.orElse(0.0) < 1 )",
        "$r : SourceRun( $f : fused )",
        "$r : SourceRun() HoleEdge( edge == $r.fused )",
        "$r : SourceRun() HoleEdge( subject == $r.fused().toString() )",
        "not SourceRun( fused.isGiven() )",
        "exists( SourceRun( fused.isGiven() ) )",
        "( SourceRun( fused.isGiven() ) or HoleEdge() )",
        "$r : SourceRun() $x : Object() from $r.fused",
        "$n : Number() from accumulate( $r : SourceRun(), count( $r.fused ) )",
        "$n : Number() from accumulate( $r : SourceRun( sheathed != null ), count( $r ) )",
        "accumulate( $r : SourceRun(); $n : max( $r.lengthToFuseMetres() ) )",
        "$r : SourceRun() eval( $r.fused().isGiven() )",
        "$r : NoSuchFact()"})
    void aLeftSideThatTouchesOneIsFound(String left) {
        assertFalse(LeftSide.mistakes(rule(left)).isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "$r : SourceRun( kind == SourceKind.BATTERY )",
        "$r : SourceRun( $s : source, kind != SourceKind.CONVERTER ) SourceRun( source == $s, subject != $r.subject() )",
        "$r : SourceRun() not HoleEdge( power == true, subject == $r.subject, at.line > $r.at.line )",
        "$r : SourceRun( subject == \"fused\" )"})
    void identityKindAndPlaceMayBeTested(String left) {
        assertEquals(List.of(), LeftSide.mistakes(rule(left)));
    }
}
