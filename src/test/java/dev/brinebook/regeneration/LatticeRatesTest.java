// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.regeneration.RenewalTable.Detail;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** What is read between lattice points against the same rule summed up by itself. */
class LatticeRatesTest {

    private static final int RULES = 40;
    private static final double[][] WEEKS = {{1, 1, 1, 1, 1, 1, 1}, {1, 1, 1, 1, 1, 1.2, 1.2}, {0.9, 1, 0.8, 1.1, 1, 1.3, 1.2},
        {0, 0, 0, 0, 1, 1.7, 1.3}, {1, 1, 1, 1, 1, 0, 0}};

    @RepeatedTest(30)
    void metersAreAsSummedUpByThemselves(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        double mean = 50 + random.nextInt(1500);
        double[] means = Arrays.stream(WEEKS[random.nextInt(WEEKS.length)]).map(share -> share * mean).toArray();
        double cv = MeterRates.LEAST_CV + (MeterRates.LARGEST_CV - MeterRates.LEAST_CV) * random.nextDouble();
        boolean absences = random.nextInt(3) == 0;
        double leave = absences ? 0.005 + 0.1 * random.nextDouble() : 0;
        double comeBack = absences ? 0.1 + 0.8 * random.nextDouble() : 1;
        int[] overrides = absences ? new int[] {4, 7, 14, 30} : new int[] {0, 4, 7, 14, 30};
        int override = overrides[random.nextInt(overrides.length)];
        double average = Arrays.stream(means).average().orElseThrow();
        double busiest = Arrays.stream(means).max().orElseThrow();
        RenewalTable summed = new RenewalTable(means, cv, leave, comeBack, 10);
        MeterRates read = new MeterRates(new RenewalRows(means, cv, leave, comeBack, 10), cv, average, override);
        for (int i = 0; i < RULES; i++) {
            double call = busiest * MeterRates.LEAST_CALL_DAYS + average * (Math.pow(random.nextDouble(), 2) * 25);
            double bed = call + average * 3 * random.nextDouble();
            double accuracy = call < busiest ? 0.02 : 5e-3;
            String what = "mean " + mean + " cv " + cv + " leave " + leave + " return " + comeBack + " override " + override + " call "
                    + call / average + " spare " + (bed - call) / average + " week " + Arrays.toString(means);
            Cycles.Rates expected = summed.cycles(WaitingRule.delayed(bed, call, bed, override), Detail.HARD_LITRES).rates();
            Cycles.Rates rates = read.of(call, bed - call, true);
            assertEquals(expected.regenerations(), rates.regenerations(), 1e-3 * expected.regenerations(), "regenerations " + what);
            assertEquals(expected.overrides(), rates.overrides(), 1e-3 * expected.regenerations(), "overrides " + what);
            assertEquals(365 * expected.hardDays(), 365 * rates.hardDays(),
                    1e-3 + accuracy * 365 * expected.hardDays(), "hard days " + what);
            assertEquals(365 * expected.hardLitres(), 365 * rates.hardLitres(), 0.05 + accuracy * 365 * expected.hardLitres(),
                    "hard litres " + what);
            double least = busiest * MeterRates.LEAST_BED_DAYS;
            double early = least + random.nextDouble() * Math.max(0, call - least);
            if (early < call) {
                double hard = 365 * summed.cycles(WaitingRule.delayed(bed, call, early, override), Detail.HARD_DAYS).rates().hardDays();
                assertEquals(hard, 365 * read.hardDays(call, early - call), 1e-3 + 0.01 * hard,
                        "hard days of a bed of " + early / average + " " + what);
            }
        }
    }

    @RepeatedTest(30)
    void clocksAreAsSummedUpByThemselves(RepetitionInfo repetition) {
        Random random = new Random(100 + repetition.getCurrentRepetition());
        double mean = 50 + random.nextInt(1500);
        double[] means = Arrays.stream(WEEKS[random.nextInt(WEEKS.length)]).map(share -> share * mean).toArray();
        double cv = MeterRates.LEAST_CV + (ClockRates.LARGEST_CV - MeterRates.LEAST_CV) * random.nextDouble();
        int steps = cv > MeterRates.LARGEST_CV ? 20 : 10;
        boolean absences = random.nextInt(3) == 0;
        double leave = absences ? 0.005 + 0.1 * random.nextDouble() : 0;
        double comeBack = absences ? 0.1 + 0.8 * random.nextDouble() : 1;
        double average = Arrays.stream(means).average().orElseThrow();
        double busiest = Arrays.stream(means).max().orElseThrow();
        RenewalTable summed = new RenewalTable(means, cv, leave, comeBack, steps);
        ClockRates clock = new ClockRates(new RenewalRows(means, cv, leave, comeBack, steps), comeBack / (leave + comeBack));
        for (int i = 0; i < RULES; i++) {
            double bed = busiest * MeterRates.LEAST_CALL_DAYS + average * (Math.pow(random.nextDouble(), 2) * 25);
            int days = 1 + random.nextInt(14);
            String what = "clock of " + days + " mean " + mean + " cv " + cv + " leave " + leave + " return " + comeBack + " bed "
                    + bed / average + " week " + Arrays.toString(means);
            Cycles.Rates expected = summed.cycles(WaitingRule.of(new ClockEveryDays(days), 1, bed / 1000), Detail.HARD_LITRES).rates();
            assertEquals(365 * expected.hardDays(), 365 * clock.hardDays(days, bed), 1e-3 + 5e-3 * 365 * expected.hardDays(), what);
            assertEquals(365 * expected.hardLitres(), 365 * clock.hardLitres(days, bed),
                    0.05 + 5e-3 * 365 * expected.hardLitres(), "hard litres " + what);
        }
    }
}
