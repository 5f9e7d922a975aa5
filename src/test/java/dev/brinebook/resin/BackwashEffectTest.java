// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.Exact;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class BackwashEffectTest {

    private static final String WORKED = "/resin/worked-backwash-effect.csv";
    private static final ResinBed CUBIC_FOOT = new ResinBed(Exact.CUBIC_FOOT_LITRES, 10 * Exact.INCH_METRES);

    @ParameterizedTest
    @CsvFileSource(resources = WORKED, useHeadersInDisplayName = true)
    void standsToBandAndTank(double gallonsPerMinute, double celsius, String velocity, boolean withinBand, boolean weak,
            boolean losesResin, String tolerance) {
        BackwashEffect effect = BackwashEffect.of(CUBIC_FOOT, 44 * Exact.INCH_METRES,
                gallonsPerMinute * Exact.US_GALLON_LITRES, celsius);
        Printed.assertAgrees(velocity, tolerance, effect.velocityMetresPerHour());
        assertEquals(withinBand, effect.isWithinGuide());
        assertEquals(weak, effect.isWeak());
        assertEquals(losesResin, effect.losesResin());
        assertTrue(effect.hasGuideFreeboard());
    }

    @Test
    void readsEveryRow() {
        assertEquals(6, Rows.in(WORKED));
    }

    /** Davis, Water and Wastewater Engineering, table 8-2: its low end, 12 m/h, is where the assumption comes from. */
    @Test
    void theLowEndOfTheBandIsTheWeakExpansion() {
        double at20 = Backwash.expansionShare(ResinBead.DEFAULT, 12, 20).value();
        double at25 = Backwash.expansionShare(ResinBead.DEFAULT, 12, 25).value();
        assertTrue(at20 > BackwashEffect.ASSUMED_WEAK_EXPANSION_SHARE, at20 + "");
        assertTrue(at25 < BackwashEffect.ASSUMED_WEAK_EXPANSION_SHARE, at25 + "");
    }

    @RepeatedTest(100)
    void theMostFlowFillsTheTankAndNoMore(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        ResinBed bed = new ResinBed(10 + 90 * random.nextDouble(), 0.2 + 0.3 * random.nextDouble());
        double freeboard = 0.02 + 1.9 * random.nextDouble();
        double height = bed.depthMetres() * (1 + freeboard);
        double celsius = 1 + 34 * random.nextDouble();
        double most = bed.flowLitresPerMinute(BackwashEffect.of(bed, height, 1, celsius).mostVelocityMetresPerHour());
        assertFalse(BackwashEffect.of(bed, height, 0.999 * most, celsius).losesResin(), "seed " + seed);
        assertTrue(BackwashEffect.of(bed, height, 1.001 * most, celsius).losesResin(), "seed " + seed);
        assertEquals(freeboard >= 0.5, BackwashEffect.of(bed, height, most, celsius).hasGuideFreeboard(), "seed " + seed);
    }

    @Test
    void refusesATankLowerThanTheBed() {
        assertThrows(IllegalArgumentException.class, () -> BackwashEffect.of(CUBIC_FOOT, 0.5, 10, 15));
    }
}
