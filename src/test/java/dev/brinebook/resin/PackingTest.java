// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.water.WaterProperties;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class PackingTest {

    private static final String WORKED = "/resin/worked-crushed-bed.csv";

    @ParameterizedTest
    @CsvFileSource(resources = WORKED, useHeadersInDisplayName = true)
    void agreesWithHandArithmetic(double diameterMillimetres, double voidShare, double crushedShare,
            double velocityMetresPerHour, String meanDiameter, String crushedVoids, String pascalsPerMetre) {
        Packing packing = Packing.of(new ResinBead(diameterMillimetres, voidShare, 1280), crushedShare);
        Printed.assertAgrees(meanDiameter, null, packing.diameterMillimetres());
        Printed.assertAgrees(crushedVoids, null, packing.voidShare());
        Printed.assertAgrees(pascalsPerMetre, null, PressureDrop.pascalsPerMetre(packing, velocityMetresPerHour,
                new WaterProperties(1000, 0.001)));
    }

    @Test
    void readsEveryRow() {
        assertEquals(6, Rows.in(WORKED));
    }

    @RepeatedTest(200)
    void finesAlwaysRaiseTheDropAndLowerTheFlow(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        ResinBed bed = new ResinBed(10 + 90 * random.nextDouble(), 0.2 + 0.3 * random.nextDouble(),
                new ResinBead(0.4 + 0.8 * random.nextDouble(), 0.3 + 0.2 * random.nextDouble(), 1280));
        double flow = 1 + 60 * random.nextDouble();
        double celsius = 60 * random.nextDouble();
        double crushed = 0.49 * random.nextDouble();
        double drop = PressureDrop.pascals(bed, crushed, flow, celsius);
        assertTrue(drop > PressureDrop.pascals(bed, flow, celsius), "seed " + seed);
        assertTrue(PressureDrop.pascals(bed, crushed + 0.01, flow, celsius) > drop, "seed " + seed);
        assertEquals(flow, PressureDrop.flowLitresPerMinute(bed, crushed, drop, celsius), 1e-9 * flow, "seed " + seed);
        double bound = ServiceFlow.continuousBounds(bed, crushed, celsius).get(0).flowLitresPerMinute();
        assertTrue(bound <= ServiceFlow.continuousBounds(bed, celsius).get(0).flowLitresPerMinute(), "seed " + seed);
        assertTrue(ServiceFlow.peakBounds(bed, crushed, celsius).get(0).flowLitresPerMinute()
                <= ServiceFlow.peakBounds(bed, celsius).get(0).flowLitresPerMinute(), "seed " + seed);
    }

    @Test
    void everyBeadAllowedMayBeCrushed() {
        assertEquals(0.27, Packing.of(new ResinBead(0.4, 0.3, 1150), 0.5).voidShare(), 1e-12);
        assertEquals(1.2, Packing.of(new ResinBead(1.2, 0.5, 1350), 0).diameterMillimetres(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 0.51, Double.NaN})
    void refusesOtherShares(double crushedShare) {
        assertThrows(IllegalArgumentException.class, () -> Packing.of(ResinBead.DEFAULT, crushedShare));
    }
}
