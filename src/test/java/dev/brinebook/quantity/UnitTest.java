// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class UnitTest {

    private static final String FACTORS = "/quantity/published-unit-factors.csv";

    private static final Map<String, Unit[]> KINDS = new TreeMap<>(Map.ofEntries(
            Map.entry("Hardness", HardnessUnit.values()), Map.entry("Concentration", ConcentrationUnit.values()),
            Map.entry("Volume", VolumeUnit.values()), Map.entry("Flow", FlowUnit.values()),
            Map.entry("Mass", MassUnit.values()), Map.entry("SaltDose", SaltDoseUnit.values()),
            Map.entry("SaltPerVolume", SaltPerVolumeUnit.values()),
            Map.entry("Capacity", CapacityUnit.values()), Map.entry("Pressure", PressureUnit.values()),
            Map.entry("Length", LengthUnit.values()), Map.entry("Area", AreaUnit.values()),
            Map.entry("SaltEfficiency", SaltEfficiencyUnit.values()),
            Map.entry("WaterPerCapacity", WaterPerCapacityUnit.values()),
            Map.entry("SurfaceFlow", SurfaceFlowUnit.values()), Map.entry("BedFlow", BedFlowUnit.values()),
            Map.entry("BedCapacity", BedCapacityUnit.values())));

    @ParameterizedTest
    @CsvFileSource(resources = FACTORS, useHeadersInDisplayName = true)
    void ownsItsFactor(String kind, String symbol, String expected, String tolerance, String source) {
        Unit unit = Arrays.stream(KINDS.get(kind)).filter(u -> u.symbol().equals(symbol)).findFirst().orElseThrow();
        Printed.assertAgrees(expected, tolerance, unit.toBase(1));
    }

    /** NIST SP 811, appendix B.8, marks the exact factors; those of the imperial gallon and the atomic weights by their own definitions. */
    @ParameterizedTest
    @CsvSource({"Area, ft2, 0.09290304", "Volume, gal, 3.785411784", "Volume, gal-imperial, 4.54609", "Volume, ft3, 28.316846592",
        "Mass, lb, 0.45359237", "Length, in, 0.0254", "Length, mm, 0.001", "Capacity, gr, 0.06479891", "Capacity, kgr, 64.79891",
        "Concentration, ug/L, 0.001", "Flow, L/s, 60", "Hardness, mmol/L, 100.086", "Hardness, meq/L, 50.043"})
    void statesItsFactorExactly(String kind, String symbol, BigDecimal exact) {
        Unit unit = Arrays.stream(KINDS.get(kind)).filter(u -> u.symbol().equals(symbol)).findFirst().orElseThrow();
        assertEquals(0, exact.compareTo(unit.definition().exact().exact()), unit.definition().exact() + "");
    }

    /** Five binary operations at most, each right to half a unit of the last place (IEEE 754). */
    @ParameterizedTest
    @MethodSource("everyUnit")
    void calculatesByWhatItStates(Unit unit) {
        double stated = unit.definition().exact().exact().doubleValue();
        assertEquals(stated, unit.definition().factor(), 3 * Math.ulp(stated));
    }

    @Test
    void tableHoldsEveryUnitButTheTwoTemperatures() {
        assertEquals(KINDS.values().stream().mapToInt(units -> units.length).sum(), Rows.in(FACTORS));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/quantity/published-temperatures.csv", useHeadersInDisplayName = true)
    void convertsTemperatures(double fahrenheit, String celsius, String tolerance, String source) {
        Printed.assertAgrees(celsius, tolerance, TemperatureUnit.FAHRENHEIT.toBase(fahrenheit));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/quantity/published-salt-per-year.csv", useHeadersInDisplayName = true)
    void countsTheSaltOfAYearAsPublished(double grainsPerPound, String expectedPounds, String tolerance) {
        double litres = VolumeUnit.US_GALLON.toBase(120_000);
        double loadGrams = litres * HardnessUnit.GPG.toBase(20) / 1000;
        assertEquals(2_400_000, CapacityUnit.GRAIN.fromBase(loadGrams), 1e-6, "Michaud 2015");
        double saltGrams = loadGrams / SaltEfficiencyUnit.GRAIN_PER_POUND.toBase(grainsPerPound);
        Printed.assertAgrees(expectedPounds, tolerance, MassUnit.POUND.fromBase(saltGrams / 1000));
    }

    /** WC&P, Defining ion exchange capacity (2011): 1 eq/L is 21.87 kgr/ft³. */
    @Test
    void anEquivalentPerLitreIsAsManyKilograinsAsPublished() {
        Printed.assertAgrees("21.87", "", BedCapacityUnit.KILOGRAIN_PER_CUBIC_FOOT.fromBase(
                BedCapacityUnit.EQUIVALENT_PER_LITRE.toBase(1)));
    }

    private record Measured(BigDecimal value, HardnessUnit unit) implements Quantity<HardnessUnit> {
    }

    /** UF/IFAS 2019: 1 gpg is 17.118 mg/L. */
    @Test
    void givesAQuantityInTheBaseUnit() {
        Printed.assertAgrees("17.118", "", new Measured(BigDecimal.ONE, HardnessUnit.GPG).inBase());
    }

    static Stream<Unit> everyUnit() {
        return Stream.concat(KINDS.values().stream().flatMap(Arrays::stream), Arrays.stream(TemperatureUnit.values()));
    }

    @ParameterizedTest
    @MethodSource("everyUnit")
    void roundTrips(Unit unit) {
        long seed = 20_260_101;
        Random random = new Random(seed);
        for (int i = 0; i < 1_000; i++) {
            double value = random.nextDouble() * 1e4;
            assertEquals(value, unit.fromBase(unit.toBase(value)), 1e-12 * Math.max(1, value), "seed " + seed);
        }
    }

    @Test
    void writesEachSymbolOnceWithinAKind() {
        for (Unit[] units : KINDS.values()) {
            List<String> symbols = Arrays.stream(units).map(Unit::symbol).toList();
            assertEquals(symbols.size(), symbols.stream().distinct().count());
        }
        assertTrue(everyUnit().allMatch(unit -> !unit.definition().meaning().isBlank() && unit.definition().ucum() != null));
    }
}
