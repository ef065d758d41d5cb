package bayproof.solve.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.solve.sound.SpeakerNet.Coil;
import bayproof.solve.sound.SpeakerNet.Parallel;
import bayproof.solve.sound.SpeakerNet.Series;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Nets of voice coils, what an ohmmeter reads across them, and what a signal does on its way. */
class SpeakerNetTest {
    private static final SpeakerNet TWO_DUAL = new Parallel(List.of(
            new Series(List.of(new Coil("a.coil-1", 4), new Coil("a.coil-2", 4))),
            new Series(List.of(new Coil("b.coil-1", 4), new Coil("b.coil-2", 4)))));

    @Test
    void twoSpeakersOfTwoCoilsInSeriesParallelShareEvenly() {
        assertEquals(4, TWO_DUAL.directOhms(), 1e-12);
        TWO_DUAL.sharesAt(1000).values().forEach(share -> assertEquals(0.25, share, 1e-12));
    }

    /** Textbook: in parallel power goes with 1/R, in series with R. */
    @Test
    void mixedCoilsShareUnevenly() {
        SpeakerNet parallel = new Parallel(List.of(new Coil("a", 4), new Coil("b", 8)));
        assertEquals(2.0 / 3, parallel.sharesAt(1000).get("a"), 1e-12);
        SpeakerNet series = new Series(List.of(new Coil("a", 4), new Coil("b", 8)));
        assertEquals(2.0 / 3, series.sharesAt(1000).get("b"), 1e-12);
    }

    @Test
    void aCapacitorFedTweeterIsNoLoadBelowAndHalfTheLoadAbove() {
        SpeakerNet net = new Parallel(List.of(new Coil("full", 4), new Coil("tweeter", 4, SpeakerLoads.cornerFarads(4, 4000))));
        assertEquals(4, net.ohmsAt(20), 0.01);
        assertTrue(net.sharesAt(100).get("tweeter") < 0.01);
        assertTrue(net.sharesAt(20_000).get("tweeter") > 0.45);
        assertTrue(SpeakerLoads.leastOhms(net) < 2.1 && SpeakerLoads.leastOhms(net) > 2);
        assertEquals(4, net.directOhms(), 1e-12);
    }

    @Test
    void coilsThatCannotBeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Coil("a", -1));
        assertThrows(IllegalArgumentException.class, () -> new Coil("a", Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Coil("a", 4, 0));
    }

    // readings

    private static MeterReading.OfFault fault(List<MeterReading.OfFault> faults, CoilFault.Kind kind, String what) {
        return faults.stream().filter(one -> one.fault().kind() == kind && one.fault().what().equals(what)).findFirst().orElseThrow();
    }

    @Test
    void faultsGiveTheReadingsOfWhatIsThenLeft() {
        List<MeterReading.OfFault> faults = MeterReading.ofFaults(TWO_DUAL, TWO_DUAL, 0, 20, 20);
        assertEquals(8, fault(faults, CoilFault.Kind.COIL_OPEN, "a.coil-1").window().low(), 1e-12);
        assertEquals(8.0 / 3, fault(faults, CoilFault.Kind.COIL_SHORTED, "b.coil-2").window().low(), 1e-12);
        assertEquals(8, fault(faults, CoilFault.Kind.SPEAKER_MISSING, "b").window().high(), 1e-12);
        assertEquals(1.6, fault(faults, CoilFault.Kind.SERIES_WIRED_PARALLEL, "a.coil-1, a.coil-2").window().low(), 1e-12);
        assertEquals(16, fault(faults, CoilFault.Kind.PARALLEL_WIRED_SERIES, "a.coil-1, a.coil-2, b.coil-1, b.coil-2").window().low(), 1e-12);
        assertEquals(4 + 4 + 2 + 3, faults.size());
    }

    @Test
    void anOpenCircuitIsAReadingOfItsOwn() {
        SpeakerNet open = new Series(List.of(new Coil("a", 4), new Coil("b", Double.POSITIVE_INFINITY)));
        MeterReading reading = MeterReading.of(open, open, 0.1, -10, 40);
        assertTrue(Double.isInfinite(reading.low()) && reading.meets(reading));
        assertFalse(reading.meets(new MeterReading(2.6, 3.8)));
        assertFalse(reading.holds(1000));
    }

    @Test
    void windowsThatTouchMeet() {
        assertTrue(new MeterReading(1, 2).meets(new MeterReading(2, 3)));
        assertFalse(new MeterReading(1, 2).meets(new MeterReading(2.1, 3)));
        assertTrue(new MeterReading(1, 2).holds(1) && new MeterReading(1, 2).holds(2));
        assertFalse(new MeterReading(1, 2).holds(2.01));
    }

    /** Copper from a chilled to a warm coil: 0.88 and 1.16 of the reading at 20 °C (temperature coefficient of copper, 0.393 %/K, from memory). */
    @Test
    void temperatureMovesTheReading() {
        assertEquals(1 - 30 * 0.00393, MeterReading.copperFactor(-10), 0.0005);
        assertEquals(1 + 40 * 0.00393, MeterReading.copperFactor(60), 0.0005);
        MeterReading reading = MeterReading.of(new Coil("a", 3), new Coil("a", 3.4), 0.2, 20, 60);
        assertEquals(3.2, reading.low(), 1e-12);
        assertEquals(3.6 * MeterReading.copperFactor(60), reading.high(), 1e-12);
    }

    // levels

    private static final SignalChain CHAIN = new SignalChain(2, List.of(
            new SignalChain.Link("processor", 4, 0, 4), new SignalChain.Link("amplifier", 4, 20, 20)));

    @Test
    void theLastStageClipsFirst() {
        SignalChain.Step amplifier = CHAIN.steps().get(1);
        assertEquals(20, amplifier.outputVolts(), 1e-9);
        assertEquals(0, amplifier.marginDecibels(), 1e-9);
        assertEquals(6.02, CHAIN.steps().get(0).marginDecibels(), 0.005);
        assertEquals("amplifier", CHAIN.clipsFirst().name());
    }

    @Test
    void aLouderSourceClipsWhereTheRoomIsLeast() {
        SignalChain tight = new SignalChain(2, List.of(new SignalChain.Link("processor", 1.5, 0, 4), new SignalChain.Link("amplifier", 4, 14, 20)));
        assertEquals("processor", tight.clipsFirst().name());
        assertTrue(tight.clipsFirst().marginDecibels() < 0, "it clips already");
    }

    @Test
    void aMeasuredOutputShowsItsShapeAndItsLimiter() {
        MeasuredTones quiet = new MeasuredTones(2, 2, 1);
        MeasuredTones loud = new MeasuredTones(4, 8, 4);
        assertEquals(2, quiet.unevenness(), 1e-12);
        assertEquals(2, quiet.bassLost(loud), 1e-12);
        assertEquals(12.04, quiet.offsetDecibels(loud), 0.005);
        assertEquals(Double.MAX_VALUE, new MeasuredTones(0, 2, 2).unevenness());
        assertEquals(1, MeasuredTones.treble(2, 2).unevenness(), 1e-12);
        assertEquals(0.003, MeasuredTones.delaySpread(List.of(0.001, 0.004)), 1e-12);
    }

    @Test
    void anUnregulatedSupplyIsAResistance() {
        double ohms = Draw.unregulatedOhms(144, 14.4);
        // 12.6 V against 14.4 V: 23 % less power (square of the ratio).
        assertEquals(0.766, 12.6 * 12.6 / ohms / 144, 0.0005);
    }
}
