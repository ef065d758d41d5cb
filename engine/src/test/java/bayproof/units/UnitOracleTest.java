package bayproof.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bayproof.support.Tally;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.measure.IncommensurableException;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;

/** Every unit that is read, against the factors of an independent units library (Indriya with its common systems). */
class UnitOracleTest {
    private static final Unit<?> METRE = tech.units.indriya.unit.Units.METRE;
    private static final Unit<?> OHM = tech.units.indriya.unit.Units.OHM;
    private static final Unit<?> SECOND = tech.units.indriya.unit.Units.SECOND;
    private static final Unit<?> HOUR = tech.units.indriya.unit.Units.HOUR;
    private static final Unit<?> AMPERE = tech.units.indriya.unit.Units.AMPERE;
    private static final Unit<?> LITRE = tech.units.indriya.unit.Units.LITRE;
    private static final Unit<?> WATT = tech.units.indriya.unit.Units.WATT;
    private static final Unit<?> VOLT = tech.units.indriya.unit.Units.VOLT;
    private static final Unit<?> HERTZ = tech.units.indriya.unit.Units.HERTZ;
    private static final Unit<?> NEWTON = tech.units.indriya.unit.Units.NEWTON;

    private static Map<Dimension, Unit<?>> kept() {
        return Map.ofEntries(
                Map.entry(Dimension.LENGTH, METRE),
                Map.entry(Dimension.AREA, METRE.pow(2)),
                Map.entry(Dimension.VOLUME, METRE.pow(3)),
                Map.entry(Dimension.MASS, tech.units.indriya.unit.Units.KILOGRAM),
                Map.entry(Dimension.TIME, SECOND),
                Map.entry(Dimension.FREQUENCY, HERTZ),
                Map.entry(Dimension.CURRENT, AMPERE),
                Map.entry(Dimension.VOLTAGE, VOLT),
                Map.entry(Dimension.RESISTANCE, OHM),
                Map.entry(Dimension.POWER, WATT),
                Map.entry(Dimension.CAPACITANCE, tech.units.indriya.unit.Units.FARAD),
                Map.entry(Dimension.INDUCTANCE, tech.units.indriya.unit.Units.HENRY),
                // The oracle knows no decibels; they are kept as they are written.
                Map.entry(Dimension.LEVEL, tech.units.indriya.AbstractUnit.ONE),
                Map.entry(Dimension.CHARGE, tech.units.indriya.unit.Units.COULOMB),
                Map.entry(Dimension.SPEED, METRE.divide(SECOND)),
                Map.entry(Dimension.FORCE, NEWTON),
                Map.entry(Dimension.TORQUE, NEWTON.multiply(METRE)),
                Map.entry(Dimension.TEMPERATURE, tech.units.indriya.unit.Units.CELSIUS),
                Map.entry(Dimension.RATIO, tech.units.indriya.AbstractUnit.ONE));
    }

    private static Map<String, Unit<?>> oracle() {
        Map<String, Unit<?>> units = new LinkedHashMap<>();
        units.put("mm", METRE.prefix(MetricPrefix.MILLI));
        units.put("cm", METRE.prefix(MetricPrefix.CENTI));
        units.put("m", METRE);
        units.put("m/s", METRE.divide(SECOND));
        units.put("ft/s", USCustomary.FOOT.divide(SECOND));
        units.put("in", USCustomary.INCH);
        units.put("ft", USCustomary.FOOT);
        units.put("mm2", METRE.prefix(MetricPrefix.MILLI).pow(2));
        units.put("cm2", METRE.prefix(MetricPrefix.CENTI).pow(2));
        units.put("m2", METRE.pow(2));
        units.put("in2", USCustomary.INCH.pow(2));
        units.put("ft2", USCustomary.SQUARE_FOOT);
        units.put("L", LITRE);
        units.put("mL", LITRE.prefix(MetricPrefix.MILLI));
        units.put("m3", METRE.pow(3));
        units.put("in3", USCustomary.CUBIC_INCH);
        units.put("ft3", USCustomary.CUBIC_FOOT);
        units.put("kg", tech.units.indriya.unit.Units.KILOGRAM);
        units.put("g", tech.units.indriya.unit.Units.GRAM);
        units.put("lb", USCustomary.POUND);
        units.put("oz", USCustomary.OUNCE);
        units.put("ms", SECOND.prefix(MetricPrefix.MILLI));
        units.put("s", SECOND);
        units.put("min", tech.units.indriya.unit.Units.MINUTE);
        units.put("h", HOUR);
        units.put("d", tech.units.indriya.unit.Units.DAY);
        units.put("Hz", HERTZ);
        units.put("kHz", HERTZ.prefix(MetricPrefix.KILO));
        units.put("MHz", HERTZ.prefix(MetricPrefix.MEGA));
        units.put("A", AMPERE);
        units.put("mA", AMPERE.prefix(MetricPrefix.MILLI));
        units.put("V", VOLT);
        units.put("mV", VOLT.prefix(MetricPrefix.MILLI));
        units.put("ohm", OHM);
        units.put("mohm", OHM.prefix(MetricPrefix.MILLI));
        units.put("kohm", OHM.prefix(MetricPrefix.KILO));
        units.put("W", WATT);
        units.put("mW", WATT.prefix(MetricPrefix.MILLI));
        units.put("kW", WATT.prefix(MetricPrefix.KILO));
        units.put("uF", tech.units.indriya.unit.Units.FARAD.prefix(MetricPrefix.MICRO));
        units.put("nF", tech.units.indriya.unit.Units.FARAD.prefix(MetricPrefix.NANO));
        units.put("mH", tech.units.indriya.unit.Units.HENRY.prefix(MetricPrefix.MILLI));
        units.put("uH", tech.units.indriya.unit.Units.HENRY.prefix(MetricPrefix.MICRO));
        units.put("dB", tech.units.indriya.AbstractUnit.ONE);
        units.put("Ah", AMPERE.multiply(HOUR));
        units.put("mAh", AMPERE.prefix(MetricPrefix.MILLI).multiply(HOUR));
        units.put("N", NEWTON);
        units.put("kN", NEWTON.prefix(MetricPrefix.KILO));
        units.put("N m", NEWTON.multiply(METRE));
        units.put("in-lb", Imperial.POUND_FORCE.multiply(USCustomary.INCH));
        units.put("ft-lb", Imperial.POUND_FORCE.multiply(USCustomary.FOOT));
        units.put("°C", tech.units.indriya.unit.Units.CELSIUS);
        units.put("°F", USCustomary.FAHRENHEIT);
        units.put("%", tech.units.indriya.unit.Units.PERCENT);
        return units;
    }

    @Test
    void everyUnitHasAnOracle() {
        Set<String> symbols = UnitTable.spellings().stream().map(spelling -> UnitTable.find(spelling).symbol())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(oracle().keySet()), symbols);
    }

    /** Relative tolerance 1e-12: both sides are doubles; the factors themselves are exact by definition. */
    @Test
    void everyUnitConvertsAsTheOracleDoes() throws UnitException, IncommensurableException {
        double[] numbers = {1, 0.001, 12.6, 18, 457.2, 99999.75};
        int compared = 0;
        for (Map.Entry<String, Unit<?>> entry : oracle().entrySet()) {
            for (double number : numbers) {
                Quantity ours = Units.parse(java.math.BigDecimal.valueOf(number).toPlainString() + " " + entry.getKey());
                double theirs = entry.getValue().getConverterToAny(kept().get(ours.dimension())).convert(number);
                assertEquals(theirs, ours.si(), Math.max(Math.abs(theirs), 1e-6) * 1e-12, number + " " + entry.getKey());
                compared++;
            }
        }
        assertEquals(oracle().size() * numbers.length, compared);
        Tally.count("outside checks", compared);
    }
}
