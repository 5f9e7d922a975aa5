// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.quantity.SaltEfficiencyUnit;
import dev.brinebook.resin.Brining.Direction;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class EfficientDoseTest {

    private static final String POINTS = "/resin/worked-efficient-dose.csv";

    /** A point of a table is where its own efficiency is crossed. */
    @ParameterizedTest
    @CsvFileSource(resources = POINTS, useHeadersInDisplayName = true)
    void aPublishedPointIsTheHighestDoseOfItsEfficiency(CapacityTable table, double grainsPerPound, String expected,
            String tolerance) {
        OptionalResult dose = EfficientDose.highestGramsPerLitre(table, Salt.SODIUM_CHLORIDE, efficiency(grainsPerPound));
        Printed.assertAgrees(expected, tolerance, SaltDoseUnit.POUND_PER_CUBIC_FOOT.fromBase(dose.value()));
    }

    @Test
    void readsEveryRow() {
        assertEquals(8, Rows.in(POINTS));
    }

    /** Whatever the model, the dose returned reaches the line, and none that is higher by 0.02 lb/ft³ or more does. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void noHigherDoseReachesTheEfficiency(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 4; i++) {
            ColumnCapacity column = column(100 + 500 * random.nextDouble(), 25 * random.nextDouble());
            for (CapacityModel model : new CapacityModel[] {CapacityTable.WORKING, CapacityTable.NEW_RESIN, column}) {
                Salt salt = Salt.values()[random.nextInt(2)];
                double line = efficiency(1_500 + 2_500 * random.nextDouble());
                OptionalResult highest = EfficientDose.highestGramsPerLitre(model, salt, line);
                double from = highest.exists() ? highest.value() : CapacityTable.minSaltDoseGramsPerLitre(salt);
                String what = model + " " + salt + " " + line + " seed " + seed;
                assertTrue(!highest.exists() || model.holdsEndPoint(salt, from)
                        && model.saltEfficiencyGramsPerGram(salt, from) >= line * (1 - 1e-9), what);
                for (double dose = from + 0.3; dose <= CapacityTable.maxSaltDoseGramsPerLitre(salt); dose += 7) {
                    assertTrue(!model.holdsEndPoint(salt, dose)
                            || model.saltEfficiencyGramsPerGram(salt, dose) < line, what + " at " + dose + " g/L");
                }
            }
        }
    }

    /** 20 lb/ft³ give 35/32 of 30 kgr/ft³ (WQP 2009), 1,641 gr/lb: every dose reaches 1,600. */
    @ParameterizedTest
    @EnumSource
    void theHighestDoseOfAllMayReachIt(Salt salt) {
        double line = efficiency(1_600) * salt.ceilingGramsPerGram() / Salt.SODIUM_CHLORIDE.ceilingGramsPerGram();
        assertEquals(CapacityTable.maxSaltDoseGramsPerLitre(salt),
                EfficientDose.highestGramsPerLitre(CapacityTable.WORKING, salt, line).value());
    }

    /** 5,994 gr/lb is the chemistry's own ceiling (CIAAW): no dose comes near it in a table. */
    @Test
    void saysWhyNoDoseDoes() {
        assertEquals(NoResultReason.EFFICIENCY_NOT_REACHED, EfficientDose.highestGramsPerLitre(CapacityTable.WORKING,
                Salt.SODIUM_CHLORIDE, efficiency(5_990)).reason());
        assertEquals(NoResultReason.NO_DOSE_HOLDS_END_POINT, EfficientDose.highestGramsPerLitre(column(300, 500),
                Salt.SODIUM_CHLORIDE, efficiency(3_350)).reason());
        assertEquals(NoResultReason.EFFICIENCY_NOT_REACHED, EfficientDose.highestGramsPerLitre(column(300, 20),
                Salt.SODIUM_CHLORIDE, efficiency(4_000)).reason());
        assertThrows(IllegalArgumentException.class, () -> EfficientDose.highestGramsPerLitre(CapacityTable.WORKING,
                Salt.SODIUM_CHLORIDE, 0));
    }

    private static ColumnCapacity column(double hardnessMgPerL, double sodiumMeqPerL) {
        double hardness = hardnessMgPerL / FeedWater.MG_PER_EQUIVALENT;
        return new ColumnCapacity(Resin.STANDARD, new FeedWater(hardness * 2 / 3, hardness / 3, sodiumMeqPerL / 1000, 0),
                Direction.CO_CURRENT, ResinEfficiency.WORKING, CyclicColumn.DEFAULT_END_POINT_MG_PER_L, Columns.CALCULATED);
    }

    private static double efficiency(double grainsPerPound) {
        return SaltEfficiencyUnit.GRAIN_PER_POUND.toBase(grainsPerPound);
    }
}
