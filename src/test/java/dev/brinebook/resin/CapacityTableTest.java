// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.source.Source.Kind;
import dev.brinebook.source.Sources;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class CapacityTableTest {

    private static final double MIN = CapacityTable.MIN_SALT_DOSE_GRAMS_PER_LITRE;
    private static final double MAX = CapacityTable.MAX_SALT_DOSE_GRAMS_PER_LITRE;

    @ParameterizedTest
    @CsvFileSource(resources = {"/resin/published-capacity.csv", "/resin/practice-capacity.csv"}, useHeadersInDisplayName = true)
    void agreesWithPublishedCapacities(CapacityTable table, double saltDosePoundsPerCubicFoot, String expected,
            String direction, String tolerance) {
        double capacity = table.capacityGramsPerLitre(gramsPerLitre(saltDosePoundsPerCubicFoot));
        Printed.assertAgrees(expected, tolerance, kilograinsPerCubicFoot(capacity));
        if (direction.equals("both")) {
            double asked = CapacityUnit.KILOGRAIN.toBase(Double.parseDouble(expected)) / Exact.CUBIC_FOOT_LITRES;
            double dose = table.saltDoseGramsPerLitre(asked).value();
            assertEquals(saltDosePoundsPerCubicFoot, SaltDoseUnit.POUND_PER_CUBIC_FOOT.fromBase(dose), 1e-9);
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/worked-capacity.csv", useHeadersInDisplayName = true)
    void goesOnBeyondThePublishedPoints(CapacityTable table, double saltDosePoundsPerCubicFoot, String expected,
            String tolerance) {
        double dose = gramsPerLitre(saltDosePoundsPerCubicFoot);
        Printed.assertAgrees(expected, tolerance, kilograinsPerCubicFoot(table.capacityGramsPerLitre(dose)));
        assertEquals(Kind.COMPUTED, table.kindAt(dose));
    }

    @Test
    void readsEveryRow() {
        assertEquals(15, Rows.in("/resin/published-capacity.csv"));
        assertEquals(4, Rows.in("/resin/practice-capacity.csv"));
        assertEquals(2, Rows.in("/resin/worked-capacity.csv"));
    }

    @ParameterizedTest
    @EnumSource
    void distinguishesPublishedFromComputedValues(CapacityTable table) {
        Kind published = Sources.get(table.sourceKey()).kind();
        assertEquals(Kind.COMPUTED, table.kindAt(MIN));
        assertEquals(published, table.kindAt(gramsPerLitre(table == CapacityTable.WORKING ? 6 : 5)));
        assertEquals(published, table.kindAt(gramsPerLitre(9)));
        assertEquals(published, table.kindAt(gramsPerLitre(15)));
        assertEquals(Kind.COMPUTED, table.kindAt(gramsPerLitre(16)));
    }

    @ParameterizedTest
    @EnumSource
    void capacityRisesAndEfficiencyFallsWithTheDose(CapacityTable table) {
        double step = (MAX - MIN) / 2000;
        for (int i = 0; i < 2000; i++) {
            double dose = MIN + i * step;
            double more = Math.min(MAX, dose + step);
            assertTrue(table.capacityGramsPerLitre(more) > table.capacityGramsPerLitre(dose), "dose " + dose);
            assertTrue(table.saltEfficiencyGramsPerGram(Salt.SODIUM_CHLORIDE, more)
                    < table.saltEfficiencyGramsPerGram(Salt.SODIUM_CHLORIDE, dose), "dose " + dose);
            assertTrue(table.saltEfficiencyGramsPerGram(Salt.SODIUM_CHLORIDE, dose)
                    < Salt.SODIUM_CHLORIDE.ceilingGramsPerGram(), "dose " + dose);
        }
    }

    @ParameterizedTest
    @EnumSource
    void staysBetweenItsNeighbouringPoints(CapacityTable table) {
        double[] points = table == CapacityTable.WORKING ? new double[] {6, 8, 10, 15, 20}
                : new double[] {5, 7.5, 10, 15, 20};
        Random random = new Random(7);
        for (int i = 1; i < points.length; i++) {
            for (int k = 0; k < 100; k++) {
                double dose = gramsPerLitre(points[i - 1] + (points[i] - points[i - 1]) * random.nextDouble());
                double capacity = table.capacityGramsPerLitre(dose);
                assertTrue(capacity >= table.capacityGramsPerLitre(gramsPerLitre(points[i - 1])),
                        "seed 7, dose " + dose);
                assertTrue(capacity <= table.capacityGramsPerLitre(gramsPerLitre(points[i])), "seed 7, dose " + dose);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void theDoseComesBackFromItsCapacity(CapacityTable table) {
        Random random = new Random(11);
        for (int i = 0; i <= 1000; i++) {
            double sodium = i == 0 ? MIN : i == 1 ? MAX : MIN + (MAX - MIN) * random.nextDouble();
            for (Salt salt : Salt.values()) {
                double dose = salt.fromSodiumChloride(sodium);
                double capacity = table.capacityGramsPerLitre(salt, dose);
                double back = table.saltDoseGramsPerLitre(salt, capacity).value();
                assertEquals(dose, back, 1e-9 * dose, "seed 11, " + salt);
                assertEquals(capacity, table.capacityGramsPerLitre(salt, back), 1e-9 * capacity, "seed 11, " + salt);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void hasNoDoseForACapacityOutOfReach(CapacityTable table) {
        double highest = table.capacityGramsPerLitre(MAX);
        double lowest = table.capacityGramsPerLitre(MIN);
        assertEquals(NoResultReason.CAPACITY_ABOVE_TABLE, table.saltDoseGramsPerLitre(highest * 1.0001).reason());
        assertEquals(NoResultReason.CAPACITY_BELOW_TABLE, table.saltDoseGramsPerLitre(lowest * 0.9999).reason());
        assertThrows(IllegalArgumentException.class, () -> table.saltDoseGramsPerLitre(0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {2.999, 20.001, Double.NaN})
    void refusesDosesOutsideTheTable(double saltDosePoundsPerCubicFoot) {
        double dose = gramsPerLitre(saltDosePoundsPerCubicFoot);
        assertThrows(IllegalArgumentException.class, () -> CapacityTable.WORKING.capacityGramsPerLitre(dose));
        assertThrows(IllegalArgumentException.class, () -> CapacityTable.WORKING.kindAt(dose));
    }

    @Test
    void refusesATableThatPromisesMoreThanTheSaltCanExchange() {
        assertThrows(IllegalArgumentException.class, () -> CapacityKnots.read("/resin/impossible-capacity.csv"));
    }

    private static double gramsPerLitre(double poundsPerCubicFoot) {
        return SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(poundsPerCubicFoot);
    }

    private static double kilograinsPerCubicFoot(double gramsPerLitre) {
        return CapacityUnit.KILOGRAIN.fromBase(gramsPerLitre * Exact.CUBIC_FOOT_LITRES);
    }
}
