// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.guard.WorkingMemory;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** Clocks that are read between lattice points of a home as it changes, against the sum over the states that it may have. */
class HomeClockRatesTest {

    private static final int CLOCKS = 60;

    @RepeatedTest(30)
    void clocksAreAsSummedOverTheStates(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        double litres = 50 + random.nextInt(1500);
        double share = 0.8 + 0.4 * random.nextDouble();
        List<Double> months = random.nextInt(4) > 0 ? UseModel.EVEN_MONTHS
                : Collections.nCopies(UseModel.MONTHS / 2, List.of(share, 2 - share)).stream().flatMap(List::stream).toList();
        UseModel model = new UseModel(random.nextBoolean() ? WeekdayMeans.everyDay(litres)
                : new WeekdayMeans(litres, litres, litres, 0.7 * litres, litres, 1.5 * litres, 1.3 * litres),
                DayVariation.ofCv(0.25 + 0.6 * random.nextDouble()), months,
                random.nextInt(3) == 0 ? Occupancy.Chain.USUAL : Occupancy.ALWAYS,
                new UseChange(0.4 * random.nextDouble(), 0.1 + 0.2 * random.nextDouble(), 0.12));
        WorkingMemory.during(() -> {
            LongRun home = LongRun.of(model).times(0.5 + random.nextDouble());
            for (int i = 0; i < CLOCKS; i++) {
                double mean = home.meanLitres();
                ClockEveryDays clock = new ClockEveryDays(1 + random.nextInt(i % 5 == 0 ? 30 : 8));
                double bed = mean * (HomeClockRates.LEAST_BED_DAYS + 2 * clock.days() * Math.pow(random.nextDouble(), 2));
                assertAsSummed(home, clock, bed, clock + " bed " + bed / mean + " " + model);
            }
            return home;
        });
    }

    @RepeatedTest(6)
    void soIsTheLongestInterval(RepetitionInfo repetition) {
        UseModel model = new UseModel(WeekdayMeans.everyDay(600), DayVariation.ofCv(0.4), UseModel.EVEN_MONTHS, Occupancy.ALWAYS,
                new UseChange(0.3, 0.2, 0.12));
        WorkingMemory.during(() -> {
            LongRun home = LongRun.of(model);
            double bed = home.meanLitres() * (350 + 50 * repetition.getCurrentRepetition());
            assertAsSummed(home, new ClockEveryDays(Policy.MAX_INTERVAL_DAYS), bed, "bed " + bed / home.meanLitres());
            return home;
        });
    }

    private static void assertAsSummed(LongRun home, ClockEveryDays clock, double bed, String what) {
        Regeneration regeneration = new Regeneration(bed / 1000 * 300, 4_000, 200, 80);
        YearlyTotals summed = home.summedYear(clock, 300, regeneration);
        YearlyTotals read = home.year(clock, 300, regeneration);
        double mean = home.meanLitres();
        assertEquals(summed.regenerations(), read.regenerations(), 1e-9, "regenerations " + what);
        assertEquals(summed.hardDays(), read.hardDays(), 1e-4 + 2e-3 * summed.hardDays(), "hard days " + what);
        assertEquals(summed.hardLitres(), read.hardLitres(), mean * 1e-4 + 2e-3 * summed.hardLitres(), "hard litres " + what);
        assertEquals(read.hardDays(), home.hardDaysPerYear(clock, 300, regeneration), 1e-9, what);
        assertEquals(summed.removedGrams(), read.removedGrams(), 2e-3 * summed.removedGrams(), what);
    }
}
