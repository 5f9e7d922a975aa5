// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.guard.NoResultReason;
import dev.brinebook.household.FixtureCount.Known;
import dev.brinebook.quantity.FlowUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FixtureScheduleTest {

    /** IPC tables, linear: 2 x 3.6 + 3 x 1.4 = 11.4 units are 15.64 gpm. */
    @Test
    void sumsTheUnitsOfAHouse() {
        FixtureSchedule house = FixtureSchedule.ofBathrooms(2);
        assertEquals(2 * 3.6 + 3 * 1.4, house.fixtureUnits().value(), 1e-12);
        assertEquals(DemandCurve.FLUSH_TANK, house.curve());
        assertEquals(15.64, FlowUnit.GPM.fromBase(house.curve().litresPerMinute(house.fixtureUnits().value()).value()), 1e-9);
        assertEquals(2, house.bathroomGroups());
    }

    /** Shower and lavatory with cold and hot, closet with cold: 2 x 0.15 + 2 x 0.07 + 0.13; DIN 1988-300, from memory. */
    @Test
    void sumsTheDesignFlowsOfBothSidesOfATap() {
        assertEquals(0.57, schedule(FixtureCount.of(Fixture.BATHROOM_GROUP, 1)).designLitresPerSecond().value(), 1e-12);
        assertEquals(2 * 0.57 + 0.14 + 0.15 + 0.07, FixtureSchedule.ofBathrooms(2).designLitresPerSecond().value(), 1e-12);
    }

    /** A group counts 3.6, its parts singly 1.4 + 0.7 + 2.2 = 4.3: International Plumbing Code, table E103.3(2). */
    @Test
    void countsAGroupAsAGroupAndItsPartsSinglyButDrawsTheSame() {
        FixtureSchedule group = schedule(FixtureCount.of(Fixture.BATHROOM_GROUP, 1));
        FixtureSchedule singly = schedule(FixtureCount.of(Fixture.SHOWER, 1), FixtureCount.of(Fixture.LAVATORY, 1),
                FixtureCount.of(Fixture.WATER_CLOSET_TANK, 1));
        assertEquals(3.6, group.fixtureUnits().value(), 1e-12);
        assertEquals(4.3, singly.fixtureUnits().value(), 1e-12);
        assertEquals(group.draws(), singly.draws());
    }

    @Test
    void takesTheCurveOfFlushometersForOneValve() {
        FixtureSchedule mixed = schedule(FixtureCount.of(Fixture.BATHROOM_GROUP, 3),
                FixtureCount.of(Fixture.WATER_CLOSET_FLUSHOMETER, 1));
        assertEquals(DemandCurve.FLUSHOMETER, mixed.curve());
        assertEquals(Optional.empty(), mixed.draws());
        assertEquals(Optional.empty(), SizingFlow.of(mixed, 0.99));
    }

    @Test
    void saysWhatATableDoesNotHave() {
        FixtureSchedule urinal = schedule(FixtureCount.of(Fixture.URINAL_TANK, 1));
        assertEquals(NoResultReason.NO_FIXTURE_UNITS, urinal.fixtureUnits().reason());
        assertEquals(NoResultReason.NO_DESIGN_FLOW, urinal.designLitresPerSecond().reason());
        assertTrue(Fixture.SHOWER.busyProbability(FixtureUse.PUBLIC).isEmpty(), "measured in homes only");
    }

    @Test
    void prefersGivenValues() {
        FixtureSchedule urinal = schedule(new FixtureCount(Fixture.URINAL_TANK, 2, FixtureUse.PRIVATE, new Known(
                OptionalDouble.of(6), OptionalDouble.of(0.5), OptionalDouble.of(3), OptionalDouble.of(0.1))));
        assertEquals(6, urinal.fixtureUnits().value());
        assertEquals(0.2, urinal.designLitresPerSecond().value(), 1e-12);
        assertEquals(List.of(new PeakFlow.Fixtures(2, 0.5, 6)), urinal.draws().orElseThrow());
    }

    @ParameterizedTest
    @EnumSource(Fixture.class)
    void everyFixtureHasUnitsInOneUseAtLeast(Fixture fixture) {
        assertTrue(fixture.fixtureUnits(FixtureUse.PRIVATE).isPresent() || fixture.fixtureUnits(FixtureUse.PUBLIC)
                .isPresent());
    }

    /** Common practice: of two showers one runs for long, of three two; a tub with a shower is treated as a shower of 2 gpm. */
    @Test
    void lastsAsEverySecondShower() {
        assertEquals(2, lastingGpm(FixtureCount.of(Fixture.SHOWER, 2)), 1e-12);
        assertEquals(4, lastingGpm(FixtureCount.of(Fixture.SHOWER, 2), FixtureCount.of(Fixture.TUB_SHOWER, 1)), 1e-12);
        assertEquals(5.5, lastingGpm(FixtureCount.of(Fixture.BATHTUB, 1), FixtureCount.of(Fixture.LAVATORY, 1)), 1e-12);
        assertEquals(12, lastingGpm(FixtureCount.of(Fixture.SHOWER, 100)), 1e-12);
        assertEquals(0.045 * 1000 * 2, lastingGpm(FixtureCount.of(Fixture.SHOWER, 1000)), 1e-9);
        assertEquals(3, FlowUnit.GPM.fromBase(lasting(schedule(FixtureCount.of(Fixture.SHOWER, 1), new FixtureCount(
                Fixture.SHOWER, 1, FixtureUse.PRIVATE, new Known(OptionalDouble.of(FlowUnit.GPM.toBase(3)),
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()))))), 1e-12);
    }

    @Test
    void lastsInAllHousesAsTheirBathroomsDo() {
        for (int bathrooms = 1; bathrooms <= PeakFlow.MAX_BATHROOMS; bathrooms++) {
            assertEquals(PeakFlow.assumedContinuousLitresPerMinute(bathrooms), lasting(FixtureSchedule.ofBathrooms(bathrooms)),
                    1e-9);
        }
    }

    @Test
    void sizesByTheExactPercentileThenByTheFitAndNeverBelowWhatLasts() {
        SizingFlow house = SizingFlow.of(schedule(FixtureCount.of(Fixture.SHOWER, 2), FixtureCount.of(Fixture.LAVATORY, 3),
                FixtureCount.of(Fixture.KITCHEN_SINK, 1), FixtureCount.of(Fixture.WATER_CLOSET_TANK, 2),
                FixtureCount.of(Fixture.CLOTHES_WASHER, 1), FixtureCount.of(Fixture.DISHWASHER, 1)), 0.99).orElseThrow();
        assertEquals(5.7, FlowUnit.GPM.fromBase(house.peakLitresPerMinute()), 1e-9, "all states summed, Python fractions");
        assertEquals(SizingFlow.Method.EXACT, house.method());
        SizingFlow large = SizingFlow.of(schedule(FixtureCount.of(Fixture.SHOWER, 400)), 0.99).orElseThrow();
        assertEquals(SizingFlow.Method.MODIFIED_WISTORT, large.method());
        SizingFlow twelve = SizingFlow.of(schedule(FixtureCount.of(Fixture.SHOWER, 12)), 0.99).orElseThrow();
        assertEquals(SizingFlow.Method.CONTINUOUS_FLOW, twelve.method());
        assertEquals(twelve.continuousLitresPerMinute(), twelve.peakLitresPerMinute());
    }

    /** Four showers: 4 x 1.4 = 5.6 fixture units, and 4 x 2 x 0.15 = 1.2 L/s of design flow. */
    @Test
    void estimatesByEveryMethodThatKnowsTheFixtures() {
        FixtureSchedule showers = schedule(FixtureCount.of(Fixture.SHOWER, 4));
        PeakFlowEstimate estimate = new PeakFlowEstimate(showers, DemandCurve.FLUSH_TANK, BuildingType.DWELLING, 0.99);
        assertEquals(DemandCurve.FLUSH_TANK.litresPerMinute(5.6).value(), estimate.codeLitresPerMinute().value(), 1e-9);
        assertEquals(35.53, estimate.designLitresPerMinute().value(), 0.005, "60 (1.48 x 1.2^0.19 - 0.94): DIN 1988-300");
        assertEquals(PeakFlow.percentile99LitresPerMinute(showers.draws().orElseThrow()),
                estimate.fittedLitresPerMinute().value(), 1e-9);
        assertEquals(estimate.distribution().orElseThrow().busyPercentileLitresPerMinute(0.99),
                estimate.exactLitresPerMinute().value());
        assertEquals(estimate.exactLitresPerMinute().value(), estimate.sizing().orElseThrow().peakLitresPerMinute());
        PeakFlowEstimate urinal = new PeakFlowEstimate(schedule(FixtureCount.of(Fixture.URINAL_TANK, 1)),
                DemandCurve.FLUSH_TANK, BuildingType.DWELLING, 0.99);
        assertEquals(NoResultReason.NO_FIXTURE_UNITS, urinal.codeLitresPerMinute().reason());
        assertEquals(NoResultReason.NO_DESIGN_FLOW, urinal.designLitresPerMinute().reason());
        assertEquals(NoResultReason.NO_BUSY_PROBABILITY, urinal.fittedLitresPerMinute().reason());
        assertEquals(NoResultReason.NO_BUSY_PROBABILITY, urinal.exactLitresPerMinute().reason());
        assertEquals(NoResultReason.TOO_MANY_FIXTURES, new PeakFlowEstimate(schedule(FixtureCount.of(Fixture.SHOWER, 201)),
                DemandCurve.FLUSH_TANK, BuildingType.DWELLING, 0.99).exactLitresPerMinute().reason());
    }

    @Test
    void refusesInvalidSchedules() {
        assertThrows(IllegalArgumentException.class, () -> schedule());
        assertThrows(IllegalArgumentException.class, () -> FixtureCount.of(Fixture.SHOWER, 0));
        assertThrows(IllegalArgumentException.class, () -> FixtureSchedule.ofBathrooms(13));
        assertThrows(IllegalArgumentException.class, () -> new FixtureCount(Fixture.BATHROOM_GROUP, 1, FixtureUse.PRIVATE,
                new Known(OptionalDouble.of(9), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty())));
        assertThrows(IllegalArgumentException.class, () -> new Known(OptionalDouble.empty(), OptionalDouble.of(1.1),
                OptionalDouble.empty(), OptionalDouble.empty()));
    }

    private static FixtureSchedule schedule(FixtureCount... fixtures) {
        return new FixtureSchedule(List.of(fixtures));
    }

    private static double lasting(FixtureSchedule schedule) {
        return schedule.continuousLitresPerMinute(schedule.draws().orElseThrow());
    }

    private static double lastingGpm(FixtureCount... fixtures) {
        return FlowUnit.GPM.fromBase(lasting(schedule(fixtures)));
    }
}
