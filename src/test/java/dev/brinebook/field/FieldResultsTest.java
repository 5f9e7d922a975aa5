// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.measurement.Instrument;
import dev.brinebook.measurement.Measured;
import dev.brinebook.measurement.Reading;
import dev.brinebook.measurement.Readings;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.randomness.RandomStream;
import dev.brinebook.resin.Salt;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldResultsTest {

    private static final double GALLON = Exact.US_GALLON_LITRES;
    private static final double POUND = Exact.POUND_KILOGRAMS;
    private static final double INCH = Exact.INCH_METRES;
    private static final double GPG = HardnessUnit.GPG.toBase(1);
    private static final FieldSetup SETUP = new FieldSetup(TankBottom.ELLIPTICAL, BrineTankShape.ROUND, Salt.SODIUM_CHLORIDE);

    /** An invented softener: 10 by 54 in, 1.5 ft³, 3 gal of refill, 18 in brine tank, in water of 20 gpg. */
    static Map<ReadingCode, Reading> invented() {
        Map<ReadingCode, Reading> readings = new EnumMap<>(ReadingCode.class);
        bucket(readings, ReadingCode.DRAIN_VOLUME, ReadingCode.DRAIN_SECONDS, 5, 120);
        bucket(readings, ReadingCode.REFILL_VOLUME, ReadingCode.REFILL_SECONDS, 1, 120);
        bucket(readings, ReadingCode.BRINE_DRAW_VOLUME, ReadingCode.BRINE_DRAW_SECONDS, 1, 180);
        readings.put(ReadingCode.WATER_FOR_BRINE, Reading.within(1.1, 0.055));
        bucket(readings, ReadingCode.SERVICE_VOLUME, ReadingCode.SERVICE_SECONDS, 5, 50);
        readings.put(ReadingCode.REFILL_MINUTES, Reading.within(6, 2 / 60.0));
        readings.put(ReadingCode.METER_CHECK_VOLUME, Reading.within(30 * GALLON, 0.9 * GALLON));
        readings.put(ReadingCode.METER_CHECK_COUNT, Reading.difference(30 * GALLON, GALLON / 2));
        readings.put(ReadingCode.TANK_DIAMETER, Reading.within(9.6 * INCH, 0.1 * INCH));
        readings.put(ReadingCode.TANK_HEIGHT, Reading.within(54 * INCH, 0.5 * INCH));
        readings.put(ReadingCode.FREEBOARD, Reading.within(17.4 * INCH, 0.5 * INCH));
        readings.put(ReadingCode.GRAVEL_DEPTH, Reading.within(0, 1e-18));
        readings.put(ReadingCode.BRINE_WELL_WIDTH, Reading.within(0, 1e-18));
        readings.put(ReadingCode.BRINE_TANK_WIDTH, Reading.within(18 * INCH, 0.25 * INCH));
        readings.put(ReadingCode.BRINE_LEVEL_FALL, Reading.difference(7.3 * INCH, 0.25 * INCH));
        readings.put(ReadingCode.VOID_SHARE, Reading.within(0.42, 0.04));
        readings.put(ReadingCode.SALT_SLUMP, Reading.within(1, 0.08));
        readings.put(ReadingCode.BRINE_DEGREES, Reading.within(100, 1));
        readings.put(ReadingCode.BRINE_TEMPERATURE, Reading.within(15.56, 1));
        readings.put(ReadingCode.WATER_TEMPERATURE, Reading.within(12, 1));
        readings.put(ReadingCode.RAW_HARDNESS, Reading.toStep(20 * GPG, GPG));
        readings.put(ReadingCode.OUTLET_HARDNESS, Reading.toStep(0.5 * GPG, GPG));
        readings.put(ReadingCode.TAP_HARDNESS, Reading.toStep(5 * GPG, GPG));
        readings.put(ReadingCode.RUN_VOLUME, Reading.within(1600 * GALLON, 12.5 * GALLON));
        readings.put(ReadingCode.SALT_BOUGHT, Reading.difference(240 * POUND, 20 * POUND));
        readings.put(ReadingCode.REGENERATIONS, Reading.difference(26, 0.5));
        readings.put(ReadingCode.NAMEPLATE_RESIN, Reading.within(1.5 * Exact.CUBIC_FOOT_LITRES, 7));
        readings.put(ReadingCode.CAPACITY_TABLE, Reading.within(1, 0.08));
        readings.put(ReadingCode.PRESSURE_DROP, Reading.normal(41, 8));
        return readings;
    }

    private static void bucket(Map<ReadingCode, Reading> to, ReadingCode volume, ReadingCode seconds, double gallons, double time) {
        to.put(volume, Reading.within(gallons * GALLON, Instrument.MARKED_BUCKET.halfWidth(gallons * GALLON)));
        to.put(seconds, Reading.difference(time, Instrument.STOPWATCH.halfWidth(time)));
    }

    static FieldResults results(Map<ReadingCode, Reading> readings) {
        return FieldResults.of(new Readings<>(ReadingCode.class, readings), SETUP, 1);
    }

    @ParameterizedTest
    @CsvSource({
            // quantity, value, U in % (or u for a share), unit of the value, by hand
            "DRAIN_FLOW, 2.5, 3.5, gpm: 5 gal in 120 s",
            "SALT_BY_REFILL, 8.97, 6.0, 'lb: 3.00 · 2.990; √(2.9² + 0.3² + 0.8²) = 3.0 %'",
            "SALT_BY_BOOKS, 9.23, 14.0, 'lb: 240/26; √((16.33/240)² + (0.408/26)²) = 7.0 %'",
            "SALT_BY_DRAW, 8.95, 16.1, 'lb: 7.3 · 0.463 · 2.648; √(2.8² + 5.5² + 4.6² + 1.6² …) = 8.0 %'",
            "RESIN_BY_GEOMETRY, 1.50, 3.0, ft3: 36.6 in deep in 9.6 in"})
    void agreesWithHandArithmetic(FieldQuantity quantity, double value, double percent, String by) {
        Measured<ReadingCode> found = results(invented()).of(quantity).orElseThrow();
        double unit = by.startsWith("gpm") ? GALLON : by.startsWith("lb") ? POUND : Exact.CUBIC_FOOT_LITRES;
        assertEquals(value, found.value() / unit, 0.006);
        assertEquals(percent, 200 * found.relativeUncertainty(), quantity == FieldQuantity.RESIN_BY_GEOMETRY ? 0.5 : 0.3);
    }

    @Test
    void sharesOfRawWaterAreAsInTheCase() {
        Measured<ReadingCode> share = results(invented()).of(FieldQuantity.RAW_SHARE).orElseThrow();
        assertEquals(0.231, share.value(), 5e-4);
        assertEquals(0.019, share.standardUncertainty(), 5e-4);
    }

    @Test
    void witnessesOfTheDoseAgree() {
        Witnesses salt = results(invented()).salt().orElseThrow();
        assertTrue(salt.combination().agrees());
        assertEquals(3, salt.quantities().size());
        assertEquals(9.0 * POUND, salt.mean().orElseThrow().value(), 0.1 * POUND);
        assertTrue(salt.mean().orElseThrow().standardUncertainty() < 0.27 * POUND, "better than the best of them alone");
    }

    /** Raw hardness 20, end at 700 gallons of 19.5 gpg with 8 lb in 1 ft³: 0.57 of the 24,000 gr of the table. */
    @Test
    void findsWornResin() {
        Map<ReadingCode, Reading> readings = invented();
        readings.keySet().removeIf(code -> code.name().matches("SALT_SLUMP|BRINE_LEVEL.*|REFILL.*|METER_CHECK.*"));
        readings.put(ReadingCode.METER_ERROR, Reading.within(1, 0.05));
        readings.put(ReadingCode.SALT_BOUGHT, Reading.within(208 * POUND, POUND));
        readings.put(ReadingCode.FREEBOARD, Reading.within((54 - 0.8 - 1728 / (Math.PI / 4 * 9.6 * 9.6)) * INCH, 0.2 * INCH));
        readings.put(ReadingCode.NAMEPLATE_RESIN, Reading.within(Exact.CUBIC_FOOT_LITRES, 4));
        readings.put(ReadingCode.RUN_VOLUME, Reading.within(700 * GALLON, 12.5 * GALLON));
        FieldResults results = results(readings);
        assertEquals(700 * 19.5 / 24_000, results.capacityLeft().orElseThrow().value(), 0.01);
        assertTrue(results.capacityLeft().orElseThrow().agrees());
    }

    @Test
    void everyQuantityAgreesWithItsSimulation() {
        FieldResults results = results(invented());
        assertEquals(FieldQuantity.values().length - 1, results.measured().size(), "all but the capacity by an unchecked meter");
        results.measured().forEach((quantity, measured) -> assertTrue(measured.agrees(), quantity + " " + measured));
        assertTrue(results.capacityLeft().orElseThrow().agrees());
        assertTrue(results.resin().orElseThrow().mean().isPresent());
    }

    /** A softener is invented, its readings simulated with noise, and reduced: the truth lies within 95 of 100 intervals. */
    @Test
    void intervalsHoldTheTruth() {
        Map<ReadingCode, Reading> truth = invented();
        FieldResults exact = results(truth);
        RandomStream random = new RandomStream(7, 3);
        Map<String, Integer> held = new java.util.TreeMap<>();
        int trials = 200;
        for (int trial = 0; trial < trials; trial++) {
            Map<ReadingCode, Reading> noisy = new EnumMap<>(ReadingCode.class);
            truth.forEach((code, reading) -> noisy.put(code, reading.shiftedTo(
                    reading.distribution().quantile(Math.max(1e-9, random.nextDouble())))));
            FieldResults found = results(noisy);
            for (FieldQuantity quantity : FieldQuantity.values()) {
                exact.of(quantity).ifPresent(known -> count(held, quantity.name(), known.value(), found.of(quantity).orElseThrow()));
            }
            found.salt().orElseThrow().mean().ifPresent(mean -> count(held, "SALT", trueDose(exact), mean));
        }
        double all = held.values().stream().mapToInt(Integer::intValue).sum() / (double) (trials * held.size());
        assertTrue(all >= 0.94 && all <= 0.96, all + " in " + held);
        double chance = 3.3 * Math.sqrt(0.95 * 0.05 * trials);
        held.forEach((quantity, times) -> assertEquals(0.95 * trials, times, chance, quantity + " in " + held));
    }

    private static double trueDose(FieldResults exact) {
        return exact.salt().orElseThrow().mean().orElseThrow().value();
    }

    private static void count(Map<String, Integer> held, String name, double truth, Measured<ReadingCode> found) {
        boolean within = found.simulated().low() <= truth && truth <= found.simulated().high();
        held.merge(name, within ? 1 : 0, Integer::sum);
    }
}
