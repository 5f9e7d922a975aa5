// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ResinEfficiencyTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/worked-resin-age.csv", useHeadersInDisplayName = true)
    void ageTakesAShareOfWhatIsLeft(double years, double yearlyLossShare, String expected, String tolerance) {
        double left = ResinEfficiency.remainingShare(years, yearlyLossShare);
        Printed.assertAgrees(expected, tolerance, left);
        assertEquals(2 * left, Resin.STANDARD.withSitesLeft(left).totalEquivalentsPerLitre(), 1e-12);
    }

    @Test
    void readsEveryRow() {
        assertEquals(5, Rows.in("/resin/worked-resin-age.csv"));
    }

    @Test
    void refusesWhatItHasNoSourceFor() {
        ColumnResult.Settled column = new ColumnResult.Settled(1, 200, 1, 2, 17, 0.4, 0, 3);
        // 1 eq/L is 50.043 g/L: CIAAW.
        assertEquals(39.53397, ResinEfficiency.capacityGramsPerLitre(column, ResinEfficiency.WORKING), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> ResinEfficiency.capacityGramsPerLitre(column, 1.01));
        assertThrows(IllegalArgumentException.class, () -> ResinEfficiency.capacityGramsPerLitre(column, 0.29));
        assertThrows(IllegalArgumentException.class, () -> ResinEfficiency.remainingShare(26, 0.03));
        assertThrows(IllegalArgumentException.class, () -> ResinEfficiency.remainingShare(-1, 0.03));
        assertThrows(IllegalArgumentException.class, () -> ResinEfficiency.remainingShare(1, 0.06));
        assertThrows(IllegalArgumentException.class, () -> ResinEfficiency.remainingShare(1, 0));
    }

    @Test
    void refusesResinsAndRegenerationsOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> Resin.STANDARD.withStages(0));
        assertThrows(IllegalArgumentException.class, () -> Resin.STANDARD.withSitesLeft(0.05));
        assertThrows(IllegalArgumentException.class, () -> new Resin(2, 0.6, 15, Selectivity.GEL_8_PERCENT));
        assertThrows(IllegalArgumentException.class, () -> new Selectivity(2.6, 0.4, 1.5));
        Brining usual = Brining.of(Salt.SODIUM_CHLORIDE, 160, Brining.Direction.CO_CURRENT);
        // Hand: 160/58.440 = 2.737851 eq/L; 10 % brine holds 107.07/58.440 = 1.832136 eq/L; 1.494349 bed volumes.
        assertEquals(2.737851, usual.doseEquivalentsPerLitre(), 1e-6);
        assertEquals(1.494349, usual.brineBedVolumes(), 1e-6);
        assertThrows(IllegalArgumentException.class, () -> new Brining(Salt.SODIUM_CHLORIDE, 160, 0.2,
                Brining.Direction.CO_CURRENT, 2, 2));
        assertThrows(IllegalArgumentException.class, () -> new Brining(Salt.SODIUM_CHLORIDE, 160, 1.8,
                Brining.Direction.CO_CURRENT, 0.4, 2));
        assertThrows(IllegalArgumentException.class, () -> Brining.of(Salt.SODIUM_CHLORIDE, 30,
                Brining.Direction.CO_CURRENT));
    }
}
