package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.contrastsecurity.sarif.Result;
import com.contrastsecurity.sarif.SarifSchema210;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What other programs read, held against the standard's schema and a parser that is not ours. */
class MachineFormsTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    /** A fuse too far away that is waived, a length nobody knows, a title that wants escaping. */
    private String job() throws IOException {
        String plan = Jobs.changed(folder, "main-fuse.in, size: 4 AWG, length: 0.30 m", "main-fuse.in, size: 4 AWG, length: 1.20 m", "parked: 240 h", "parked: unknown",
                "readings: readings.yaml", "readings: readings.yaml\nwaivers: waivers.yaml", "tag: T-1042", "tag: \"T-1042 <&\\\"'> \\u0007\"");
        Path waivers = Path.of(plan).resolveSibling("waivers.yaml");
        Files.writeString(waivers, "bayproof: 1\nkind: waivers\n");
        String page = Main.run("why", "fuse-near-battery", "--in", plan).out();
        String facts = page.replaceAll("(?s).*facts: (\"[0-9a-f]+\").*", "$1");
        Files.writeString(waivers, "bayproof: 1\nkind: waivers\nwaivers:\n  w: { rule: fuse-near-battery, subject: runs.feed-1, measured: 1.20 m, limit: 1.02 m, facts: " + facts
                + ", reason: no nearer <place> & \"tray\", by: { initials: AB, role: lead }, second: { initials: CD, role: owner }, date: 2026-11-20, until: 2026-12-05 }\n");
        return plan;
    }

    private static JsonSchema schema() throws IOException {
        // The schema of the OASIS standard, as a library of its classes carries it.
        try (InputStream in = SarifSchema210.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
            return JsonSchemaFactory.getInstance(VersionFlag.V7).getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void theLogIsValidByTheSchemaOfTheStandard() throws IOException {
        String plan = job();
        JsonSchema schema = schema();
        for (String command : List.of("review", "handover")) {
            String log = Main.run(command, plan, "--as", "sarif", "--today", "2026-11-30").out();
            assertEquals(Set.of(), schema.validate(JSON.readTree(log)));
            assertEquals(Set.of(), schema.validate(JSON.readTree(Main.run(command, Jobs.CLEAN.toString(), "--as", "sarif").out())));
        }
        JsonNode wrong = JSON.readTree(Main.run("review", plan, "--as", "sarif").out().replace("\"kind\" : \"open\"", "\"kind\" : \"unshown\""));
        assertFalse(schema.validate(wrong).isEmpty(), "the schema refuses a word that is not the standard's");
    }

    @Test
    void anotherProgramsClassesReadWhatStandsAgainstTheJob() throws IOException {
        String plan = job();
        SarifSchema210 log = JSON.readValue(Main.run("handover", plan, "--as", "sarif", "--today", "2026-11-30").out(), SarifSchema210.class);
        List<Result> results = log.getRuns().get(0).getResults();
        Set<Object> prints = new TreeSet<>();
        boolean waived = false;
        boolean open = false;
        for (Result result : results) {
            prints.add(result.getFingerprints().getAdditionalProperties().get("ruleAndSubject/v1"));
            assertEquals(result.getRuleId(), List.copyOf(log.getRuns().get(0).getTool().getDriver().getRules()).get(result.getRuleIndex()).getId());
            if (result.getRuleId().equals("fuse-near-battery")) {
                waived = true;
                assertEquals("fail", result.getKind().value());
                assertEquals("error", result.getLevel().value());
                assertTrue(result.getSuppressions().iterator().next().getJustification().contains("no nearer <place>"));
            } else {
                assertTrue(result.getSuppressions() == null || result.getSuppressions().isEmpty());
            }
            if (result.getKind().value().equals("open")) {
                open = true;
                assertEquals("none", result.getLevel().value());
            }
        }
        assertTrue(waived && open);
        assertEquals(results.size(), prints.size(), "each rule and subject has a print of its own");
    }

    @Test
    void printsStayTheSameWhenLinesMove() throws IOException {
        String plan = job();
        String before = prints(plan);
        Files.writeString(Path.of(plan), "# a line more\n" + Files.readString(Path.of(plan)));
        assertEquals(before, prints(plan));
    }

    private static String prints(String plan) throws IOException {
        StringBuilder prints = new StringBuilder();
        JSON.readTree(Main.run("review", plan, "--as", "sarif", "--today", "2026-11-30").out()).at("/runs/0/results")
                .forEach(result -> prints.append(result.at("/fingerprints/ruleAndSubject~1v1").asText()).append('\n'));
        assertFalse(prints.isEmpty());
        return prints.toString();
    }

    @Test
    void buildServersSeeTheSameCountsWhateverTheTextHolds() throws Exception {
        String plan = job();
        Reply reply = Main.run("handover", plan, "--as", "junit", "--today", "2026-11-30");
        assertEquals(Reply.COUNTS, reply.status());
        Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(reply.out().getBytes(StandardCharsets.UTF_8)));
        Element suite = (Element) document.getElementsByTagName("testsuite").item(0);
        assertTrue(suite.getAttribute("name").contains("T-1042 <&\"'>"), suite.getAttribute("name"));
        NodeList failures = document.getElementsByTagName("failure");
        assertTrue(failures.getLength() > 0);
        assertEquals(failures.getLength(), Integer.parseInt(suite.getAttribute("failures")));
        assertEquals(document.getElementsByTagName("testcase").getLength(), Integer.parseInt(suite.getAttribute("tests")));
        assertEquals(1, document.getElementsByTagName("skipped").getLength());
        assertTrue(((Element) document.getElementsByTagName("skipped").item(0)).getAttribute("message").contains("no nearer <place> & \"tray\""));
        assertEquals(Reply.UNUSABLE, Main.run("review", plan, "--as", "junit", "--ask").status());
    }
}
