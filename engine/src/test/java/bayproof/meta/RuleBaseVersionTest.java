package bayproof.meta;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bayproof.judge.RuleBase;
import bayproof.read.LimitsInForce;
import bayproof.report.JobsJson;
import bayproof.report.RuleBaseDate;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A rule that came, went or became heavier, and a limit that moved, judge jobs in another way: then the rule base gets a new version and a
 * new date. What the version of today judges by is kept beside the tests.
 */
class RuleBaseVersionTest {
    private static final Path KEPT = Path.of("src", "test", "resources", "rulebase", "judged-by.txt");

    @Test
    void whateverJudgesOtherwiseHasANewVersion() throws Exception {
        RuleBaseDate base = RuleBaseDate.built();
        List<String> now = new ArrayList<>(List.of("rule base " + base.version() + " of " + base.date()));
        RuleBase.built().rules().values().forEach(rule -> now.add("rule " + rule.id() + ": " + rule.weight().word() + ", " + rule.gate().word()));
        JobsJson.figures(LimitsInForce.read(null)).forEach((name, figure) -> now.add("limit " + name + ": " + figure));
        Path written = Files.writeString(Files.createDirectories(Path.of("target")).resolve("judged-by.txt"), String.join("\n", now) + "\n");
        List<String> kept = Files.readAllLines(KEPT, StandardCharsets.UTF_8);
        assertEquals(String.join("\n", kept), String.join("\n", now), "rules or limits have changed since " + kept.get(0)
                + ": raise version and date in rulebase.properties, say it in CHANGELOG.md, and put " + written + " in the place of " + KEPT);
    }
}
