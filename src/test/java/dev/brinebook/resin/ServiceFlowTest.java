// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.resin.ServiceFlow.Bound;
import dev.brinebook.resin.ServiceFlow.Limit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ServiceFlowTest {

    private static final ResinBed BED = new ResinBed(Exact.CUBIC_FOOT_LITRES, 9 * Exact.INCH_METRES);

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/worked-service-flow.csv", useHeadersInDisplayName = true)
    void agreesWithHandArithmetic(double temperatureCelsius, String duty, Limit limit, String expectedGpm,
            String tolerance) {
        List<Bound> bounds = duty.equals("peak") ? ServiceFlow.peakBounds(BED, temperatureCelsius)
                : ServiceFlow.continuousBounds(BED, temperatureCelsius);
        Bound bound = bounds.stream().filter(one -> one.limit() == limit).findAny().orElseThrow();
        Printed.assertAgrees(expectedGpm, tolerance, FlowUnit.GPM.fromBase(bound.flowLitresPerMinute()));
    }

    @Test
    void readsEveryRow() {
        assertEquals(3, Rows.in("/resin/worked-service-flow.csv"));
    }

    @Test
    void theBindingLimitComesFirst() {
        assertEquals(Limit.SURFACE_VELOCITY, ServiceFlow.continuousBounds(BED, 10).get(0).limit());
        assertEquals(Limit.PEAK_FLOW_PER_RESIN, ServiceFlow.peakBounds(BED, 10).get(0).limit());
        ResinBed wide = new ResinBed(Exact.CUBIC_FOOT_LITRES, 16 * Exact.INCH_METRES);
        assertEquals(Limit.FLOW_PER_RESIN, ServiceFlow.continuousBounds(wide, 10).get(0).limit());
        ResinBed narrow = new ResinBed(Exact.CUBIC_FOOT_LITRES, 5 * Exact.INCH_METRES);
        assertEquals(Limit.PRESSURE_DROP, ServiceFlow.peakBounds(narrow, 10).get(0).limit());
    }

    @Test
    void thePressureBoundLosesJustThePressureAllowed() {
        Bound bound = ServiceFlow.peakBounds(BED, 10).get(1);
        assertEquals(ServiceFlow.GUIDE_PRESSURE_DROP_PASCALS,
                PressureDrop.pascals(BED, bound.flowLitresPerMinute(), 10), 1e-6);
        assertTrue(ServiceFlow.peakBounds(BED, 25).get(1).flowLitresPerMinute() > bound.flowLitresPerMinute());
    }

    /** Common practice: 15 psi for a household; Davis table 8-3: 20 psi for any. */
    @Test
    void theGuidesAreInOrder() {
        assertEquals(103_421, ServiceFlow.GUIDE_PRESSURE_DROP_PASCALS, 0.5);
        assertEquals(137_895, ServiceFlow.GUIDE_MAX_PRESSURE_DROP_PASCALS, 0.5);
        assertEquals(8, ServiceFlow.GUIDE_LOW_BED_VOLUMES_PER_HOUR, 0.05);
        assertEquals(40, ServiceFlow.GUIDE_HIGH_BED_VOLUMES_PER_HOUR, 0.2);
        assertEquals(14.7, ServiceFlow.GUIDE_LOW_VELOCITY_METRES_PER_HOUR, 0.05);
    }
}
