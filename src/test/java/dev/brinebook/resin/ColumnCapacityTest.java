// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.resin.Brining.Direction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColumnCapacityTest {

    private static final Salt SALT = Salt.SODIUM_CHLORIDE;

    /** Common practice: 24 and 30 kgr/ft³ at 8 and 15 lb/ft³, of an ordinary water. */
    @Test
    void givesTheWorkingTableInOrdinaryWater() {
        ColumnCapacity column = column(300, 1, ResinEfficiency.WORKING);
        for (double pounds : new double[] {6, 8, 10, 15}) {
            assertEquals(1, column.capacityGramsPerLitre(SALT, dose(pounds))
                    / CapacityTable.WORKING.capacityGramsPerLitre(SALT, dose(pounds)), 0.03, pounds + " lb/ft3");
        }
    }

    @Test
    void aDoseForACapacityGivesThatCapacityBack() {
        ColumnCapacity column = column(300, 1, ResinEfficiency.WORKING);
        for (double pounds : new double[] {5, 7.3, 11, 18}) {
            double capacity = column.capacityGramsPerLitre(SALT, dose(pounds));
            double back = column.saltDoseGramsPerLitre(SALT, capacity).value();
            assertEquals(capacity, column.capacityGramsPerLitre(SALT, back), 1e-3 * capacity);
        }
        assertEquals(NoResultReason.CAPACITY_ABOVE_TABLE, column.saltDoseGramsPerLitre(SALT, 90).reason());
        assertEquals(NoResultReason.CAPACITY_BELOW_TABLE, column.saltDoseGramsPerLitre(SALT, 10).reason());
    }

    /** Independent stage model: with 300 mg/L and 20 meq/L of sodium 6 lb/ft³ cannot hold 17.1 mg/L, 8 lb/ft³ can. */
    @Test
    void findsTheLeastDoseThatHoldsTheEndPoint() {
        ColumnCapacity column = column(300, 20, ResinEfficiency.WORKING);
        assertFalse(column.holdsEndPoint(SALT, dose(6)));
        assertTrue(column.holdsEndPoint(SALT, dose(8)));
        double least = column.leastSaltDoseGramsPerLitre(SALT).value();
        assertTrue(least > dose(6) && least < dose(8), SaltDoseUnit.POUND_PER_CUBIC_FOOT.fromBase(least) + " lb/ft3");
        assertTrue(column.holdsEndPoint(SALT, least));
        assertFalse(column.holdsEndPoint(SALT, least - 0.02));
        assertEquals(NoResultReason.CAPACITY_BELOW_TABLE, column.saltDoseGramsPerLitre(SALT, 5).reason());
    }

    @Test
    void aDoseThatDoesNotHoldTheEndPointIsCountedUpToALooserOne() {
        ColumnCapacity column = column(300, 20, ResinEfficiency.WORKING);
        ColumnResult.Settled cycle = column.cycle(SALT, dose(6)).orElseThrow();
        assertEquals(CyclicColumn.DEFAULT_END_POINT_MG_PER_L * 1.5, cycle.endLeakageMgPerL(), 0.01);
        assertTrue(cycle.startLeakageMgPerL() > CyclicColumn.DEFAULT_END_POINT_MG_PER_L);
        assertTrue(column.isKnownAt(SALT, dose(6)));
        assertEquals(ResinEfficiency.WORKING * cycle.capacityGramsPerLitre(), column.capacityGramsPerLitre(SALT, dose(6)), 1e-12);
    }

    /** 200 mg/L given in another unit may come out above it by a rounding, and is taken. */
    @Test
    void theHighestEndPointIsHeldWhenARoundingPutsItHigher() {
        double above = CyclicColumn.MAX_END_POINT_MG_PER_L * (1 + Guard.ROUNDING / 2);
        ColumnCapacity column = new ColumnCapacity(Resin.STANDARD, water(1000, 1), Direction.CO_CURRENT,
                ResinEfficiency.WORKING, above, Columns.CALCULATED);
        assertTrue(column.holdsEndPoint(SALT, dose(10)));
        assertEquals(above, column.cycle(SALT, dose(10)).orElseThrow().endLeakageMgPerL(), 0.01);
    }

    @Test
    void waterAsSaltyAsTheSeaIsHeldByNoDose() {
        ColumnCapacity column = column(300, 500, ResinEfficiency.WORKING);
        assertEquals(NoResultReason.NO_DOSE_HOLDS_END_POINT, column.leastSaltDoseGramsPerLitre(SALT).reason());
        assertEquals(NoResultReason.NO_DOSE_HOLDS_END_POINT, column.saltDoseGramsPerLitre(SALT, 50).reason());
        assertFalse(column.isKnownAt(SALT, dose(3)));
        assertThrows(IllegalArgumentException.class, () -> column.capacityGramsPerLitre(SALT, dose(3)));
    }

    /** UFC 3-240-13FN: 1 to 5 % of the sites a year. Low doses lose less, because there the salt is what is short. */
    @ParameterizedTest
    @EnumSource
    void ageTakesCapacityAndMostAtHighDoses(Direction direction) {
        Resin old = Resin.STANDARD.withSitesLeft(ResinEfficiency.remainingShare(10, 0.03));
        double last = 1.0;
        for (double pounds : new double[] {5, 8, 12, 20}) {
            double share = with(old, direction).capacityGramsPerLitre(SALT, dose(pounds))
                    / with(Resin.STANDARD, direction).capacityGramsPerLitre(SALT, dose(pounds));
            assertTrue(share < last && share > 0.737 * 0.95, share + " at " + pounds + " lb/ft3");
            last = share;
        }
    }

    @Test
    void neverWorksOutACaseTwiceThatItsSourceRemembers() {
        List<CurveCase> asked = new ArrayList<>();
        Map<CurveCase, CapacityCurve> remembered = new HashMap<>();
        Columns columns = new Columns() {
            @Override
            public ColumnResult of(ColumnCase column) {
                return column.result();
            }

            @Override
            public CapacityCurve of(CurveCase curve) {
                return remembered.computeIfAbsent(curve, unknown -> {
                    asked.add(unknown);
                    return unknown.curve();
                });
            }
        };
        for (int i = 0; i < 2; i++) {
            new ColumnCapacity(Resin.STANDARD, water(300, 1), Direction.CO_CURRENT, 0.74, 17.118, columns)
                    .capacityGramsPerLitre(SALT, dose(8));
        }
        assertEquals(1, asked.size());
    }

    @Test
    void theTableKnowsNeitherLeakageNorEndPoint() {
        CapacityModel table = CapacityTable.WORKING;
        assertTrue(table.cycle(SALT, dose(8)).isEmpty());
        assertTrue(table.holdsEndPoint(SALT, dose(3)));
        assertFalse(table.isKnownAt(SALT, dose(21)));
        assertEquals(dose(3), table.leastSaltDoseGramsPerLitre(SALT).value(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.29, 1.01, Double.NaN})
    void refusesEfficienciesOutOfRange(double efficiency) {
        assertThrows(IllegalArgumentException.class, () -> column(300, 1, efficiency));
    }

    @Test
    void needsWaterTwiceAsHardAsTheEndPoint() {
        assertTrue(ColumnCapacity.isFor(water(35, 1), 17.118));
        assertFalse(ColumnCapacity.isFor(water(34, 1), 17.118));
    }

    private static ColumnCapacity with(Resin resin, Direction direction) {
        return new ColumnCapacity(resin, water(300, 1), direction, 0.74, 17.118, Columns.CALCULATED);
    }

    private static ColumnCapacity column(double hardnessMgPerL, double sodiumMeqPerL, double efficiency) {
        return new ColumnCapacity(Resin.STANDARD, water(hardnessMgPerL, sodiumMeqPerL), Direction.CO_CURRENT, efficiency,
                CyclicColumn.DEFAULT_END_POINT_MG_PER_L, Columns.CALCULATED);
    }

    private static FeedWater water(double hardnessMgPerL, double sodiumMeqPerL) {
        double hardness = hardnessMgPerL / FeedWater.MG_PER_EQUIVALENT;
        return new FeedWater(hardness * 2 / 3, hardness / 3, sodiumMeqPerL / 1000, 0);
    }

    private static double dose(double poundsPerCubicFoot) {
        return poundsPerCubicFoot * 1000 * Exact.POUND_KILOGRAMS / Exact.CUBIC_FOOT_LITRES;
    }
}
