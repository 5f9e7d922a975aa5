// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Demand;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.quantity.Exact;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.LongRun;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.WaterAnalysis;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The advice, given back as input, yields itself, in homes generated at random; each seed is beside its test. */
class ClosedLoopTest {

    /** More are asked for with -Dhomes=500. */
    private static final int HOMES = Integer.getInteger("homes", 120);
    private static final RunningCost COST = new RunningCost(0.45, 2.9);
    /** Coefficients that tables exist for, so that each is calculated once. */
    private static final List<DayVariation> VARIATIONS = List.of(DayVariation.ONE_PERSON, DayVariation.TWO_OR_THREE_PERSONS,
            DayVariation.FOUR_OR_MORE_PERSONS, DayVariation.UNKNOWN_PERSONS);

    /** A home and a softener. */
    record Home(double gpg, double litresPerDay, DayVariation variation, double weekendRatio, Occupancy occupancy,
            double cubicFeet, double ironMgPerL, ControllerTerms controller) {

        static Home drawn(Random random) {
            double persons = 1 + random.nextInt(6);
            return new Home(5 + 30 * random.nextDouble(), persons * (120 + 140 * random.nextDouble()),
                    VARIATIONS.get(random.nextInt(VARIATIONS.size())), 0.7 + random.nextDouble(),
                    random.nextInt(10) == 0 ? Occupancy.Chain.USUAL : Occupancy.ALWAYS, 0.75 + 0.25 * random.nextInt(8),
                    random.nextInt(4) == 0 ? 0.6 : 0, ControllerTerms.US);
        }

        Home times(double hardness, double use) {
            return new Home(hardness * gpg, use * litresPerDay, variation, weekendRatio, occupancy, cubicFeet, ironMgPerL,
                    controller);
        }

        Home inStepsOf(double litres) {
            return new Home(gpg, litresPerDay, variation, weekendRatio, occupancy, cubicFeet, ironMgPerL,
                    new ControllerTerms(controller.hardness(), controller.capacityUnit(), controller.capacityStep(),
                            controller.saltStep(), controller.newBedSaltStep(), controller.volumeUnit(), new ReserveStep.Volume(litres)));
        }

        Softener softener() {
            return new Softener(new ResinBed(cubicFeet * Exact.CUBIC_FOOT_LITRES, 12 * Exact.INCH_METRES), 2.5,
                    Salt.SODIUM_CHLORIDE, CapacityTable.WORKING, CycleFlows.UNKNOWN);
        }

        DesignConditions duty() {
            WaterAnalysis water = Softeners.water(gpg, ironMgPerL, 300);
            UseModel model = new UseModel(WeekdayMeans.ofWeek(litresPerDay, weekendRatio), variation, UseModel.EVEN_MONTHS, occupancy);
            Demand demand = new Demand(model, Optional.empty(), 20, 8);
            return new DesignConditions(water, water.compensated(CompensationFactors.STANDARD), demand, demand.days(Softeners.START, 1, 1),
                    LongRun.of(model), ServiceStandard.USUAL, controller, 3, 0, Practice.USUAL);
        }
    }

    @Test
    void ownSettingsReviewedGiveNoFindingOfTheMeter() {
        Random random = new Random(1);
        int served = 0;
        for (int i = 0; i < HOMES; i++) {
            Home home = Home.drawn(random);
            DesignConditions duty = home.duty();
            DoseChoice.Option best = DoseSearch.cheapest(home.softener(), duty, COST).best();
            MeterSettings settings = best.settings();
            SoftenerSettings setup = new SoftenerSettings(home.softener(), best.dosed().saltDoseGramsPerLitre(), Map.of(),
                    settings.policy(),
                    MeterSettings.REGENERATION_HOUR);
            ExistingSoftener found = new ExistingSoftener(setup, setup.saltDoseGramsPerLitre(),
                    new ExistingSoftener.Meter(OptionalDouble.of(duty.settingMgPerL()),
                    OptionalDouble.of(settings.capacityGrams()), settings.meterLitres()));
            List<Finding> findings = Review.of(found, duty, COST).findings();
            assertEquals(List.of(), findings.stream().map(Finding::code).toList(), "seed 1, home " + i + ": " + home);
            served += settings.keepsStandard() ? 1 : 0;
        }
        assertTrue(served > HOMES / 2, served + " of the homes can be served");
    }

    @Test
    void ownClockReviewedGivesNoFindingOfTheInterval() {
        Random random = new Random(2);
        for (int i = 0; i < 60; i++) {
            Home home = Home.drawn(random);
            DesignConditions duty = home.duty();
            TunedClock tuned = TunedClock.of(home.softener(), duty, COST);
            SoftenerSettings setup = new SoftenerSettings(home.softener(), tuned.saltDoseGramsPerLitre(), Map.of(), tuned.clock(),
                    MeterSettings.REGENERATION_HOUR);
            ExistingSoftener found = new ExistingSoftener(setup, setup.saltDoseGramsPerLitre(),
                    new ExistingSoftener.Meter(OptionalDouble.empty(),
                    OptionalDouble.empty(), 0));
            List<Finding> findings = Review.of(found, duty, COST).findings();
            assertEquals(List.of(), findings.stream().map(Finding::code).toList(), "seed 2, home " + i + ": " + home);
        }
    }

    /** Finer steps of the reserve than any controller has, so that rounding does not hide the order. */
    @Test
    void harderWaterMoreUseOrADearerBagNeverMakeTheAdviceCheaper() {
        Random random = new Random(3);
        for (int i = 0; i < HOMES; i++) {
            Home home = Home.drawn(random).inStepsOf(1);
            double factor = 1.01 + 0.3 * random.nextDouble();
            DoseChoice.Option told = best(home, COST);
            if (!told.settings().keepsStandard()) {
                continue;
            }
            String where = "seed 3, home " + i + ", factor " + factor + ": " + home;
            assertTrue(costs(home.times(factor, 1)) >= told.costPerYear() * (1 - 1e-3), "hardness, " + where);
            assertTrue(costs(home.times(1, factor)) >= told.costPerYear() * (1 - 1e-3), "use, " + where);
            assertTrue(best(home, new RunningCost(0.45 * factor, 2.9)).costPerYear() >= told.costPerYear(), "price, " + where);
        }
    }

    /** The cost of a home that cannot be served means nothing: it is treated as infinite. */
    private static double costs(Home home) {
        DoseChoice.Option best = best(home, COST);
        return best.settings().keepsStandard() ? best.costPerYear() : Double.POSITIVE_INFINITY;
    }

    private static DoseChoice.Option best(Home home, RunningCost cost) {
        return DoseSearch.cheapest(home.softener(), home.duty(), cost).best();
    }

    /** Whatever is compared keeps to the same standard, and what is set is what was looked at. */
    @Test
    void clockMeterAndTwinKeepToTheSameStandard() {
        Random random = new Random(4);
        for (int i = 0; i < 60; i++) {
            Home home = Home.drawn(random);
            DesignConditions duty = home.duty();
            DoseChoice.Option meter = DoseSearch.cheapest(home.softener(), duty, COST).best();
            if (meter.settings().keepsStandard()) {
                assertTrue(duty.isServed(meter.settings().policy(), meter.dosed().regeneration()), "seed 4, home " + i);
                assertEquals(0, Math.IEEEremainder(meter.settings().reserveLitres(),
                        duty.reserveStepLitres(meter.settings().meterLitres())), 1e-6, "a step of the controller");
            }
            TunedClock clock = TunedClock.of(home.softener(), duty, COST);
            assertEquals(clock.keepsStandard(), duty.isServed(clock.clock(), DosedSoftener.designed(home.softener(),
                    clock.saltDoseGramsPerLitre(), 12).regeneration()), "seed 4, home " + i);
            for (MeterStart start : List.of(MeterStart.TWIN, MeterStart.IMMEDIATE)) {
                DoseChoice.Option atOnce = DoseSearch.cheapest(home.softener(), duty, COST, start).best();
                assertEquals(atOnce.settings().keepsStandard(), duty.isServed(atOnce.settings().policy(),
                        atOnce.dosed().regeneration()), "seed 4, home " + i + ", " + start);
                assertEquals(0, atOnce.settings().reserveLitres(), "nothing is kept back");
            }
        }
    }

    /** Hard days fall and regenerations rise with the reserve, which the search relies on. */
    @Test
    void hardDaysFallAndRegenerationsRiseWithTheReserve() {
        Random random = new Random(5);
        for (int i = 0; i < 40; i++) {
            Home home = Home.drawn(random);
            DesignConditions duty = home.duty();
            DosedSoftener dosed = DosedSoftener.designed(home.softener(), 120, 12);
            double meter = 1000 * dosed.capacityGrams() / duty.settingMgPerL();
            double hard = Double.POSITIVE_INFINITY;
            double regenerations = 0;
            for (int step = 0; step <= 40; step++) {
                var year = duty.year(new MeteredDelayed(meter, step * meter / 40, MeterSettings.overrideDays(duty)),
                        dosed.regeneration());
                assertTrue(year.hardDays() <= hard * (1 + 1e-4) + 0.02, "seed 5, home " + i + ", step " + step + ": " + hard + " to "
                        + year.hardDays());
                assertTrue(year.regenerations() >= regenerations * (1 - 1e-5), "seed 5, home " + i + ", step " + step);
                assertTrue(year.unusedGrams() >= 0);
                hard = year.hardDays();
                regenerations = year.regenerations();
            }
        }
    }
}
