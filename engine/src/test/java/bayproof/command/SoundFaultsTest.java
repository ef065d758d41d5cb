package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Four mistakes of a sound system, each found with the number that shows it. */
class SoundFaultsTest {
    private static final double ROUNDED = 5e-4;

    @TempDir
    private Path folder;

    private double broken(String rule, String subject, String... changes) throws Exception {
        String plan = Jobs.changed(Jobs.TOUR, folder, changes);
        JsonNode review = new ObjectMapper().readTree(Main.run("review", plan, "--gate=handover", "--as=json").out());
        for (JsonNode verdict : review.get("verdicts")) {
            if (verdict.get("rule").asText().equals(rule) && verdict.get("subject").asText().equals(subject)) {
                assertEquals("broken", verdict.get("outcome").asText(), verdict.toString());
                return verdict.at("/measured/value").asDouble();
            }
        }
        throw new AssertionError("no verdict of " + rule + " on " + subject);
    }

    /**
     * By hand: 216 x 836 x 354 mm inside are 63.92 L; less 2 x 2 L of speakers, 3 L of bracing and a port of 126 mm outside and 380 mm length,
     * 4.74 L, are left 52.19 L of 60 L: 87 %.
     */
    @Test
    void anEnclosureMoreThanATenthTooSmall() throws Exception {
        assertEquals(0.8698, broken("box-volume-fits-speaker", "items.sub-box", "space: behind-partition,", "space: behind-partition, height: 252 mm, width: 872 mm,"), ROUNDED);
    }

    /** By hand: 1750 Hz over a resonance of 1200 Hz is 146 %, and 2 x 1200 Hz were wanted. */
    @Test
    void aCornerAnOctaveTooLow() throws Exception {
        assertEquals(1.4583, broken("corner-above-resonance", "items.tweeter-left",
                "name: front left tweeter, high-pass: { corner: 3.5 kHz", "name: front left tweeter, high-pass: { corner: 1.75 kHz"), ROUNDED);
    }

    /** Two bands that are equal where they meet cancel when one is reversed (lecture notes 34870, lesson 9). */
    @Test
    void aReversedSpeaker() throws Exception {
        assertTrue(broken("bands-add-up", "settings.amp-front.ch-1.band-above.amp-front.ch-3",
                "net: tweeter-left.coil-1, polarity: as-marked", "net: tweeter-left.coil-1, polarity: reversed") < -40);
    }

    /**
     * A port of half the diameter for the same tuning has a quarter of the area; what the box asks of it stays nearly the same, so the air is
     * about four times as fast (U = v S).
     */
    @Test
    void anUndersizedPort() throws Exception {
        double speed = broken("port-air-speed", "items.sub-box", "space: behind-partition,", "space: behind-partition, port-diameter: 60 mm, port-length: 70 mm,");
        assertEquals(4, speed / asPlanned("port-air-speed", "items.sub-box"), 0.6);
        assertTrue(speed > 34, speed + " m/s");
    }

    private static double asPlanned(String rule, String subject) throws Exception {
        for (JsonNode verdict : new ObjectMapper().readTree(Main.run("review", Jobs.TOUR.toString(), "--as=json").out()).get("verdicts")) {
            if (verdict.get("rule").asText().equals(rule) && verdict.get("subject").asText().equals(subject)) {
                return verdict.at("/measured/value").asDouble();
            }
        }
        throw new AssertionError("no verdict of " + rule);
    }
}
