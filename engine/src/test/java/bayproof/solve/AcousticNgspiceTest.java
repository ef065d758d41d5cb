package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.solve.acoustic.Air;
import bayproof.solve.acoustic.ClosedBox;
import bayproof.solve.acoustic.Driver;
import bayproof.solve.acoustic.Enclosure;
import bayproof.solve.acoustic.Filter;
import bayproof.solve.acoustic.PlayedBand;
import bayproof.solve.acoustic.Port;
import bayproof.solve.acoustic.VentedBox;
import bayproof.support.Tally;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Filters and driven boxes against ngspice at twelve points an octave: responses within 0.01 dB, port speed within 1 %. */
class AcousticNgspiceTest {
    private static final double DECIBELS = 0.01;
    private static final double PORT_SPEED = 0.01;
    private static Map<String, Map<String, Double>> printed;

    @BeforeAll
    static void read() throws IOException {
        printed = StoredDecks.acousticPrinted();
    }

    private static double value(String title, String quantity, int point) {
        return printed.get(title).get("mag(" + quantity + "[" + point + "])");
    }

    private static double hertz(boolean box, int point) {
        return (box ? AcousticDecks.BOX_FROM : AcousticDecks.FILTER_FROM) * Math.pow(2, (double) point / AcousticDecks.PER_OCTAVE);
    }

    private static double decibels(double ratio) {
        return 20 * Math.log10(ratio);
    }

    @Test
    void filtersOfEveryOrderAgree() {
        int filters = 0;
        for (SpiceDeck deck : AcousticDecks.all()) {
            if (!deck.title().startsWith("box ")) {
                Filter filter = AcousticDecks.filter(deck.title());
                for (int i = 0; i < AcousticDecks.points(false); i++) {
                    double theirs = decibels(printed.get(deck.title()).get(deck.quantities().get(i)));
                    assertEquals(theirs, filter.at(hertz(false, i)).decibels(), DECIBELS, deck.title() + " at " + hertz(false, i));
                }
                filters++;
                Tally.count("outside checks", 1);
            }
        }
        assertEquals(34, filters);
    }

    private static Enclosure enclosure(AcousticDecks.Box box) {
        // From what a deck has, mass, compliance and force factor (textbook), to what a data sheet has.
        double omega = 1 / Math.sqrt(box.kilograms() * box.metresPerNewton());
        double volume = Air.ROOM.density() * Math.pow(Air.ROOM.speed() * box.square(), 2) * box.metresPerNewton();
        Driver driver = new Driver(omega / (2 * Math.PI), omega * box.kilograms() / box.losses(), box.coilOhms() * omega * box.kilograms() / Math.pow(box.force(), 2),
                volume, box.square(), box.coilOhms())
                .several(box.count(), box.coilOhms() / box.count()).withSeries(box.series());
        return box.ports() == 0 ? new ClosedBox(driver, box.cubic())
                : new VentedBox(driver, box.cubic(), new Port(box.ports(), Port.roundArea(box.portDiameter()), box.portLength()), box.leakage());
    }

    @Test
    void drivenBoxesAgree() {
        for (AcousticDecks.Box box : AcousticDecks.BOXES) {
            Enclosure enclosure = enclosure(box);
            String title = "box " + box.name();
            double farUp = box.force() * box.square() / ((box.coilOhms() / box.count() + box.series()) * box.kilograms());
            for (int i = 0; i < AcousticDecks.points(true); i++) {
                double hertz = hertz(true, i);
                double omega = 2 * Math.PI * hertz;
                assertEquals(decibels(omega * value(title, "i(vair)", i) / farUp), enclosure.responseDecibels(hertz), DECIBELS, title + " at " + hertz);
                double travel = value(title, "i(vcone)", i) / omega * Math.sqrt(2);
                assertEquals(travel, enclosure.travelMetres(hertz, 1), travel * 0.001, title + " at " + hertz);
                double ohms = 1 / value(title, "i(vin)", i);
                assertEquals(ohms, enclosure.impedanceOhms(hertz), ohms * 0.001, title + " at " + hertz);
                if (enclosure instanceof VentedBox vented) {
                    double speed = value(title, "i(vport)", i) * Math.sqrt(2) / vented.port().allSquareMetres();
                    assertEquals(speed, vented.portMetresPerSecond(hertz, 1), speed * PORT_SPEED, title + " at " + hertz);
                }
            }
            Tally.count("outside checks", 1);
        }
    }

    @Test
    void theFastestAirBehindTheHighPassAgrees() {
        PlayedBand band = new PlayedBand(10, 320, AcousticDecks.VOLTS,
                List.of(new Filter(Filter.Shape.BUTTERWORTH, 4, Filter.Pass.HIGH, AcousticDecks.HIGH_PASS_HERTZ)));
        int vented = 0;
        for (AcousticDecks.Box box : AcousticDecks.BOXES) {
            String title = "box " + box.name() + " behind-a-high-pass";
            if (enclosure(box) instanceof VentedBox one) {
                double fastest = 0;
                for (int i = 0; i < AcousticDecks.points(true); i++) {
                    fastest = Math.max(fastest, value(title, "i(vport)", i) * Math.sqrt(2) / one.port().allSquareMetres());
                }
                assertEquals(fastest, band.portMetresPerSecond(one).value(), fastest * PORT_SPEED, title);
                vented++;
                Tally.count("outside checks", 1);
            }
        }
        assertTrue(vented >= 4);
    }

    @Test
    void ngspiceReproducesTheStoredValues() throws IOException, InterruptedException {
        StoredDecks.assertReproduced("the stored filters and boxes", AcousticDecks.all(), printed);
    }
}
