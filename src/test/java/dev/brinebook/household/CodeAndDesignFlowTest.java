// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.quantity.FlowUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The flows of the plumbing code and of the standard of design flows. */
class CodeAndDesignFlowTest {

    private static final String CURVES = "/household/published-demand-curve.csv";
    private static final String UNITS = "/household/published-fixture-units.csv";
    private static final String PEAKS = "/household/published-design-peak.csv";

    @ParameterizedTest
    @CsvFileSource(resources = CURVES, useHeadersInDisplayName = true)
    void readsTheDemandCurves(DemandCurve curve, double fixtureUnits, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, FlowUnit.GPM.fromBase(curve.litresPerMinute(fixtureUnits).value()));
        assertEquals(12, Rows.in(CURVES));
    }

    @ParameterizedTest
    @CsvFileSource(resources = UNITS, useHeadersInDisplayName = true)
    void countsFixtureUnits(Fixture fixture, FixtureUse use, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, fixture.fixtureUnits(use).getAsDouble());
        assertEquals(10, Rows.in(UNITS));
    }

    @ParameterizedTest
    @CsvFileSource(resources = PEAKS, useHeadersInDisplayName = true)
    void followsTheFormulaOfDesignFlows(BuildingType building, double designFlow, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, building.peakLitresPerSecond(designFlow).value());
        assertEquals(6, Rows.in(PEAKS));
    }

    @ParameterizedTest
    @EnumSource(DemandCurve.class)
    void demandGrowsWithFixtureUnitsAndEndsWhereTheTableEnds(DemandCurve curve) {
        double before = 0;
        for (double units = curve.minFixtureUnits(); units <= curve.maxFixtureUnits(); units *= 1.01) {
            double flow = curve.litresPerMinute(units).value();
            assertTrue(flow > before, units + " fixture units");
            before = flow;
        }
        assertEquals(NoResultReason.BELOW_DEMAND_CURVE, curve.litresPerMinute(0.99 * curve.minFixtureUnits()).reason());
        assertEquals(NoResultReason.ABOVE_DEMAND_CURVE, curve.litresPerMinute(1.01 * curve.maxFixtureUnits()).reason());
        assertThrows(IllegalArgumentException.class, () -> curve.litresPerMinute(Double.NaN));
    }

    @Test
    void flushometersDrawNoLessThanTanks() {
        for (double units = 5; units <= 5000; units *= 1.01) {
            assertTrue(DemandCurve.FLUSHOMETER.litresPerMinute(units).value()
                    >= DemandCurve.FLUSH_TANK.litresPerMinute(units).value(), units + " fixture units");
        }
    }

    @ParameterizedTest
    @EnumSource(BuildingType.class)
    void peakOfDesignFlowsGrowsAndIsNeverAboveTheirSum(BuildingType building) {
        double before = 0;
        for (double sum = 0.2; sum <= 500; sum *= 1.01) {
            double peak = building.peakLitresPerSecond(sum).value();
            assertTrue(peak > before && peak <= sum, sum + " L/s");
            before = peak;
        }
        assertEquals(NoResultReason.BELOW_DESIGN_FLOWS, building.peakLitresPerSecond(0.19).reason());
        assertEquals(NoResultReason.ABOVE_DESIGN_FLOWS, building.peakLitresPerSecond(501).reason());
    }
}
