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
import dev.brinebook.resin.Brining.Direction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class WornTableTest {

    private static final Salt SODIUM = Salt.SODIUM_CHLORIDE;
    private static final double MIN = CapacityTable.MIN_SALT_DOSE_GRAMS_PER_LITRE;
    private static final double MAX = CapacityTable.MAX_SALT_DOSE_GRAMS_PER_LITRE;

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/worked-worn-table.csv", useHeadersInDisplayName = true)
    void countsWornResinAsItsShareOfTheTablesResin(CapacityTable table, double poundsPerCubicFoot, double sitesLeft,
            String expected, String tolerance) {
        double capacity = table.withSitesLeft(sitesLeft).capacityGramsPerLitre(SODIUM, dose(poundsPerCubicFoot));
        Printed.assertAgrees(expected, tolerance, CapacityUnit.KILOGRAIN.fromBase(capacity * Exact.CUBIC_FOOT_LITRES));
    }

    @Test
    void readsEveryRow() {
        assertEquals(7, Rows.in("/resin/worked-worn-table.csv"));
    }

    /**
     * The column with a share of its sites is the reference: [HELFFERICH] stages in exchange equilibrium, 300 mg/L, Ca:Mg 2:1,
     * 1 meq/L of sodium. The yearly losses are those of [UFC-3-240-13FN].
     */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            years, yearlyLoss, tolerance
            10,    0.01,       0.05
            10,    0.03,       0.05
            10,    0.05,       0.05
            15,    0.05,       0.05
            20,    0.05,       0.05
            25,    0.05,       0.09
            """)
    void losesWhatTheColumnLoses(double years, double yearlyLoss, double tolerance) {
        double left = ResinEfficiency.remainingShare(years, yearlyLoss);
        CapacityModel worn = CapacityTable.WORKING.withSitesLeft(left);
        for (double pounds : new double[] {5, 6, 8, 10, 12, 15, 20}) {
            double byColumn = column(left).capacityGramsPerLitre(SODIUM, dose(pounds))
                    / column(1).capacityGramsPerLitre(SODIUM, dose(pounds));
            double byTable = worn.capacityGramsPerLitre(SODIUM, dose(pounds))
                    / CapacityTable.WORKING.capacityGramsPerLitre(dose(pounds));
            assertEquals(1, byTable / byColumn, tolerance, pounds + " lb/ft3, " + left + " left");
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.277, 0.5, 0.737, 0.95})
    void neverFallsWithTheDoseAndNeverPassesTheTableOrTheSaltOrTheSites(double sitesLeft) {
        for (CapacityTable table : CapacityTable.values()) {
            for (Salt salt : Salt.values()) {
                CapacityModel worn = table.withSitesLeft(sitesLeft);
                double last = 0;
                for (int i = 0; i <= 500; i++) {
                    double dose = salt.fromSodiumChloride(MIN + (MAX - MIN) * i / 500);
                    double capacity = worn.capacityGramsPerLitre(salt, dose);
                    assertTrue(capacity >= last && capacity <= table.capacityGramsPerLitre(salt, dose), "dose " + dose);
                    assertTrue(capacity <= TotalCapacity.ceilingGramsPerLitre(salt, dose,
                            sitesLeft * Resin.STANDARD.totalEquivalentsPerLitre()), "dose " + dose);
                    last = capacity;
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void theDoseComesBackFromItsCapacity(Salt salt) {
        CapacityModel worn = CapacityTable.WORKING.withSitesLeft(0.737);
        for (double pounds : new double[] {3, 5, 8, 12, 14.7}) {
            double dose = salt.fromSodiumChloride(pounds == 3 ? MIN : dose(pounds));
            double capacity = worn.capacityGramsPerLitre(salt, dose);
            assertEquals(dose, worn.saltDoseGramsPerLitre(salt, capacity).value(), 1e-9 * dose);
        }
        assertEquals(NoResultReason.CAPACITY_ABOVE_TABLE, worn.saltDoseGramsPerLitre(salt, 1.0001
                * worn.capacityGramsPerLitre(salt, CapacityTable.maxSaltDoseGramsPerLitre(salt))).reason());
        assertEquals(NoResultReason.CAPACITY_BELOW_TABLE, worn.saltDoseGramsPerLitre(salt, 0.9999
                * worn.capacityGramsPerLitre(salt, CapacityTable.minSaltDoseGramsPerLitre(salt))).reason());
    }

    @Test
    void isTheTableItselfWhileNothingIsLost() {
        assertEquals(CapacityTable.WORKING, CapacityTable.WORKING.withSitesLeft(1));
        CapacityModel worn = CapacityTable.WORKING.withSitesLeft(0.5);
        assertEquals(CapacityTable.WORKING.sourceKey(), worn.sourceKey());
        assertTrue(worn.holdsEndPoint(SODIUM, dose(3.1)) && worn.cycle(SODIUM, dose(8)).isEmpty());
        assertEquals(MIN, worn.leastSaltDoseGramsPerLitre(SODIUM).value());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1.01, Double.NaN})
    void refusesSharesOutOfRange(double sitesLeft) {
        assertThrows(IllegalArgumentException.class, () -> CapacityTable.WORKING.withSitesLeft(sitesLeft));
    }

    @Test
    void refusesDosesOutsideTheTable() {
        CapacityModel worn = CapacityTable.WORKING.withSitesLeft(0.5);
        assertThrows(IllegalArgumentException.class, () -> worn.capacityGramsPerLitre(SODIUM, dose(20.01)));
        assertThrows(IllegalArgumentException.class, () -> worn.capacityGramsPerLitre(SODIUM, dose(2.99)));
    }

    private static ColumnCapacity column(double sitesLeft) {
        double hardness = 300 / FeedWater.MG_PER_EQUIVALENT;
        return new ColumnCapacity(Resin.STANDARD.withSitesLeft(sitesLeft), new FeedWater(hardness * 2 / 3, hardness / 3, 0.001, 0),
                Direction.CO_CURRENT, ResinEfficiency.WORKING, CyclicColumn.DEFAULT_END_POINT_MG_PER_L, Columns.CALCULATED);
    }

    private static double dose(double poundsPerCubicFoot) {
        return SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(poundsPerCubicFoot);
    }
}
