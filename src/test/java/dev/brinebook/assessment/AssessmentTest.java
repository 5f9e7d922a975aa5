// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Demand;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.Prices;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.Fit;
import dev.brinebook.softener.Readiness;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Terms;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.WaterAnalysis;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** An invented house: 20 gpg, 240 gallons every day, 1.5 cubic feet that a clock regenerates every 4 days with 15 lb/ft3. */
class AssessmentTest {

    private static final Prices PRICES = new Prices(0.5, 2, 3, 100, 0, 0.05);
    private static final double DOSE = SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(15);
    private static final double RESIN_LITRES = 1.5 * Exact.CUBIC_FOOT_LITRES;
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private final Assessment asFound = assess(NONE, new ClockEveryDays(4));

    private static Assessment assess(OptionalDouble drainGpm, Policy policy) {
        CycleFlows flows = new CycleFlows(drainGpm.isPresent()
                ? OptionalDouble.of(drainGpm.getAsDouble() * Exact.US_GALLON_LITRES) : NONE, NONE, NONE, NONE);
        Softener softener = new Softener(new ResinBed(RESIN_LITRES, 10 * Exact.INCH_METRES), 54 * Exact.INCH_METRES,
                Salt.SODIUM_CHLORIDE, CapacityTable.WORKING, flows);
        ExistingSoftener found = new ExistingSoftener(new SoftenerSettings(softener, DOSE, Map.of(), policy, 2), DOSE,
                new ExistingSoftener.Meter(NONE, NONE, policy.meterVolumeLitres()));
        return Assessment.of(found, duty(), new Terms(PRICES, 10, Map.of()));
    }

    private static Readiness.Site site(double drainLitresPerMinute) {
        Optional<Boolean> yes = Optional.of(true);
        return new Readiness.Site(yes, OptionalDouble.of(drainLitresPerMinute), yes, OptionalDouble.of(0.025), yes, yes, yes, yes, yes,
                OptionalDouble.of(5));
    }

    private static DesignConditions duty() {
        WaterAnalysis water = WaterAnalysis.ofHardness(HardnessUnit.GPG.toBase(20)).ironMgPerL(0).bacteriaTested(true).build();
        Demand demand = new Demand(WeekdayMeans.everyDay(240 * Exact.US_GALLON_LITRES), DayVariation.ofCv(0),
                Optional.empty(), 20, 8);
        return new DesignConditions(water, water.compensated(CompensationFactors.STANDARD), demand,
                demand.days(LocalDate.of(2026, 1, 1), 365, 1), ServiceStandard.USUAL, 3, 0);
    }

    /**
     * By hand on constant use: the clock runs 365 / 4 times. 15 lb/ft3 give 45,000 gr in 1.5 ft3, 2,250 gallons of this water,
     * 9.4 days; 0.95 of that at 1.1 times the use are 8.1 days, and so that no more than three days in a stressed year are
     * hard the meter must run after eight of those: more than eight days as they are, so after nine.
     */
    @Test
    void triesTheClockAndTheMeterOnTheSameDays() {
        assertEquals(365 / 4.0, ConvertedYears.use(asFound.years().asFound()).regenerationsPerYear(), 1e-9);
        assertEquals(365 / 4.0 * DOSE * RESIN_LITRES / 1000, ConvertedYears.use(asFound.years().asFound()).saltKilograms(), 1e-9);
        assertEquals(365 / 9.0, ConvertedYears.use(asFound.years().metered()).regenerationsPerYear(), 1e-9);
        assertEquals(ConvertedYears.use(asFound.years().metered()).regenerationsPerYear() * DOSE * RESIN_LITRES / 1000,
                ConvertedYears.use(asFound.years().metered()).saltKilograms(), 1e-9);
    }

    @Test
    void convertsToTheDoseThatCostsLeast() {
        assertEquals(new RunningCost(0.5, 2 + 3), asFound.cost(), "water is paid for twice, coming and going");
        assertEquals(asFound.choice().best(), asFound.recommended());
        assertTrue(asFound.choice().candidates(asFound.duty()).stream().allMatch(option ->
                asFound.recommended().costPerYear() <= option.costPerYear()), "the cheapest");
        assertEquals(asFound.recommended().year().saltGrams(), asFound.years().converted().totals().saltGrams(), 1e-6);
        assertTrue(asFound.years().converted().totals().saltGrams() < asFound.years().metered().totals().saltGrams());
    }

    /** It includes the findings on the existing settings; the recommended settings would have none. */
    @Test
    void reportsFindingsOnTheExistingSoftener() {
        List<Finding.Code> codes = asFound.findings().stream().map(Finding::code).toList();
        assertTrue(codes.contains(Finding.Code.MORE_SALT_THAN_NEEDED), codes.toString());
        assertTrue(asFound.fit().fits(), asFound.fit().shortcomings().toString());
        assertEquals(45_000.0 / 4_800, asFound.fit().fullChargeDays().value(), 1e-6);
        assertEquals(4, asFound.fit().intervalDays().value(), 1e-9, "its clock");
        assertEquals(0.4594 * HardnessUnit.GPG.toBase(20), asFound.softened().addedSodiumMgPerL(), 0.01, "CT DPH 29");
    }

    /** Published lines that ask for a start by demand are not met by a clock, and may be by a meter. */
    @Test
    void judgesAClockAsAClock() {
        Assessment meter = assess(NONE, new MeteredDelayed(8_000, 1_000, 14));
        assertNotEquals(meter.fit().lines(), asFound.fit().lines());
        assertEquals(Fit.of(meter.fit().dosed(), duty(), true, Fit.Datasheet.TANK_ALONE).lines(), meter.fit().lines());
    }

    /** 1.5 gpm hardly lifts a bed of 10 inches: Ten States Standards would have 3.3 to 4.4 gpm. */
    @Test
    void givesAWrongDrainTheFlowThatTheBedNeeds() {
        double designed = backwash(asFound);
        Assessment weak = assess(OptionalDouble.of(1.5), new ClockEveryDays(4));
        assertTrue(weak.findings().stream().anyMatch(finding -> finding.code() == Finding.Code.BACKWASH_TOO_WEAK));
        assertEquals(designed, backwash(weak), 1e-9);
        Assessment right = assess(OptionalDouble.of(3.5), new ClockEveryDays(4));
        assertEquals(3.5 * Exact.US_GALLON_LITRES, backwash(right), 1e-9, "nothing is wrong with it, so it stays");
        assertEquals(Readiness.State.MET, drain(weak, designed + 0.1));
        assertEquals(Readiness.State.NOT_MET, drain(weak, designed - 0.1),
                "the drain has to take the backwash to come, not the one there is");
    }

    private static double backwash(Assessment assessment) {
        return assessment.recommended().dosed().cycle().step(CycleStep.Kind.BACKWASH).flowLitresPerMinute();
    }

    private static Readiness.State drain(Assessment assessment, double siteDrainLitresPerMinute) {
        return Readiness.of(site(siteDrainLitresPerMinute), assessment.found(),
                duty()).stream().filter(check -> check.condition() == Readiness.Condition.DRAIN).findFirst()
                .orElseThrow().state();
    }

    @Test
    void commissionsInBothSystems() {
        for (CommissioningStep step : CommissioningStep.values()) {
            assertTrue(Message.of(step).toString().endsWith("."), step.name());
        }
        assertTrue(Message.of(CommissioningStep.TEST_SOFTENED_WATER).toString().contains("1\u00a0gpg"));
        assertTrue(Message.of(CommissioningStep.TEST_SOFTENED_WATER).inMetricUnits(true).toString().contains("17\u00a0mg/L"),
                "1\u00a0gpg is 17.1\u00a0mg/L: NIST SP 811");
        assertEquals(Message.of(CommissioningStep.FIT).toString(), Message.of(CommissioningStep.FIT).inMetricUnits(true).toString());
    }
}
