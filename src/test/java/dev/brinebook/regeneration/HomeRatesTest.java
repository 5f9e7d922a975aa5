// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

/** What is read between lattice points of a home as it changes, against the sum over the states that it may have. */
class HomeRatesTest {

    private static final int RULES = 60;

    @RepeatedTest(30)
    void metersAreAsSummedOverTheStates(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        double litres = 50 + random.nextInt(1500);
        boolean absences = random.nextInt(3) == 0;
        double share = 0.8 + 0.4 * random.nextDouble();
        List<Double> months = random.nextInt(4) > 0 ? UseModel.EVEN_MONTHS
                : Collections.nCopies(UseModel.MONTHS / 2, List.of(share, 2 - share)).stream().flatMap(List::stream).toList();
        UseChange change = new UseChange(0.4 * random.nextDouble(), 0.1 + 0.2 * random.nextDouble(), 0.12);
        UseModel model = new UseModel(random.nextBoolean() ? WeekdayMeans.everyDay(litres)
                : new WeekdayMeans(litres, litres, litres, 0.7 * litres, litres, 1.5 * litres, 1.3 * litres),
                DayVariation.ofCv(0.3 + 0.6 * random.nextDouble()), months, absences ? Occupancy.Chain.USUAL : Occupancy.ALWAYS, change);
        int override = 3 + random.nextInt(12);
        WorkingMemory.during(() -> {
            LongRun home = LongRun.of(model).times(0.5 + random.nextDouble());
            int worse = 0;
            for (int i = 0; i < RULES; i++) {
                double mean = home.meanLitres();
                double call = mean * (HomeRates.LEAST_CALL_DAYS + 20 * Math.pow(random.nextDouble(), 3));
                call = i % 10 == 0 ? 0 : i % 10 < 4 ? mean * (HomeRates.LEAST_CALL_DAYS + 0.4 * Math.pow(random.nextDouble(), 3)) : call;
                double bed = call + mean * (call == 0 ? HomeRates.LEAST_BED_DAYS
                        : call < HomeRates.LEAST_CALL_DAYS_OF_SMALL_BEDS * mean ? HomeRates.SMALL_BED_DAYS : 0)
                        + mean * 5 * Math.pow(random.nextDouble(), 2);
                worse += assertAsSummed(home, call, bed, override, model.toString()) > 2e-3 ? 1 : 0;
            }
            assertTrue(worse <= 3, worse + " of " + RULES + " rules worse than 0.2 %, " + model);
            return home;
        });
    }

    /** By what share the hard days differ. */
    private static double assertAsSummed(LongRun home, double call, double bed, int override, String model) {
        double mean = home.meanLitres();
        String what = "call " + call / mean + " spare " + (bed - call) / mean + " override " + override + " " + model;
        Regeneration regeneration = new Regeneration(bed / 1000 * 300, 4_000, 200, 80);
        Policy meter = new MeteredDelayed(bed, bed - call, override);
        YearlyTotals summed = home.summedYear(meter, 300, regeneration);
        YearlyTotals read = home.year(meter, 300, regeneration);
        assertEquals(summed.regenerations(), read.regenerations(), 1e-3 * summed.regenerations(), "regenerations " + what);
        assertEquals(summed.overrides(), read.overrides(), 5e-3 * summed.regenerations(), "overrides " + what);
        assertEquals(summed.hardDays(), read.hardDays(), 1e-4 + 2e-2 * summed.hardDays(), "hard days " + what);
        assertEquals(summed.hardLitres(), read.hardLitres(), mean * (1e-4 + 2e-2 * summed.hardLitres() / mean), "hard litres " + what);
        assertEquals(read.hardDays(), home.delayedHardDays(bed, call, bed, override), 1e-5, what);
        assertEquals(summed.saltGrams(), read.saltGrams(), 1e-3 * summed.saltGrams(), what);
        assertEquals(summed.throughBedLitres(), read.throughBedLitres(), 1e-9 * summed.throughBedLitres(), what);
        assertEquals(summed.removedGrams(), read.removedGrams(), 3e-3 * summed.removedGrams(), what);
        return (Math.abs(summed.hardDays() - read.hardDays()) - 1e-4) / summed.hardDays();
    }
}
