// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.guard.CalculationCancelled;
import dev.brinebook.guard.CancellationToken;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is calculated once and read for many rules against the same calculated by itself; the seed is the repetition. */
class SharedSumsTest {

    private static final double[][] WEEKS = {{1, 1, 1, 1, 1, 1, 1}, {1, 1, 1, 1, 1, 1.2, 1.2}, {0.9, 1, 0.8, 1.1, 1, 1.3, 1.2},
        {0, 0, 0, 0, 1, 1.7, 1.3}, {1, 1, 1, 1, 1, 0, 0}};
    private static final int SIZE = 60;

    /** Source: [DAIAD] gamma days, by the incomplete gamma function of hipparchus; 1e-5 is what a cubic leaves at h/8. */
    @RepeatedTest(30)
    void aDayIsReadFromItsTableAsByTheGammaFunction(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        double mean = 50 + random.nextInt(1500);
        double cv = 0.25 + 0.65 * random.nextDouble();
        double step = mean / 10;
        LatticeDay day = new LatticeDay(mean, cv, step);
        double litres = 30 * step * random.nextDouble() + (random.nextInt(4) == 0 ? 40 * mean : 0);
        double[] shares = new double[SIZE];
        double[] means = new double[SIZE];
        day.below(litres, shares, SIZE);
        day.excess(litres, means, SIZE);
        for (int k = 0; k < SIZE; k++) {
            double left = litres - k * step;
            String what = "mean " + mean + " cv " + cv + " litres " + left;
            double share = left <= 0 ? 0 : Gamma.regularizedGammaP(1 / (cv * cv), left / (mean * cv * cv));
            assertEquals(share, shares[k], 1e-5, what);
            assertEquals(GammaDay.excessLitres(mean, cv, left), means[k], 1e-5 * mean, what);
        }
    }

    /** Source: uses add up in any order. */
    @RepeatedTest(10)
    void weekdaysThatAreAlikeHaveTheSameRow(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        double[] means = Arrays.stream(WEEKS[random.nextInt(WEEKS.length)]).map(share -> share * 300).toArray();
        double leave = random.nextBoolean() ? 0.1 * random.nextDouble() : 0;
        RenewalRows rows = new RenewalRows(means, 0.5, leave, 0.4, 10);
        rows.reach(400);
        for (int n = 1; n <= 20; n++) {
            for (int weekday = 0; weekday < rows.weekdays(); weekday++) {
                int like = rows.firstLike(weekday, n);
                assertEquals(rows.classOf(weekday, n), rows.classOf(like, n));
                LatticeRow own = rows.row(weekday, n);
                LatticeRow other = rows.row(like, n);
                assertEquals(own.first(), other.first());
                assertArrayEquals(own.values(), other.values(), 1e-15, "weekday " + weekday + " night " + n);
            }
        }
    }

    /** Source: by definition; the order of summation leaves some roundings of 1e-16. */
    @RepeatedTest(10)
    void productsInFourPartsAreTheSameSum(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        double[] one = random.doubles(SIZE).toArray();
        double[] other = random.doubles(SIZE).toArray();
        int from = random.nextInt(20);
        int start = random.nextInt(20);
        int count = random.nextInt(SIZE - 20);
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += one[from + i] * other[start + i];
        }
        assertEquals(sum, LatticeRow.dot(one, from, other, start, count), 1e-13);
    }

    /** Source: by definition; rows reach further after some questions than after others, which leaves roundings. */
    @Test
    void anAnswerDoesNotDependOnWhatWasAskedBefore() {
        UseModel model = new UseModel(WeekdayMeans.ofWeek(700, 1.2), DayVariation.FOUR_OR_MORE_PERSONS);
        List<Policy> policies = new ArrayList<>(List.of(new MeteredDelayed(3500, 900, 14), new MeteredDelayed(9000, 0, 0),
                new ClockEveryDays(3), new ClockOnWeekdays(Set.of(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), 0),
                new MeteredImmediate(3000, 14)));
        Regeneration regeneration = new Regeneration(1200, 4000, 200, 80);
        LongRun forwards = LongRun.of(model);
        List<YearlyTotals> years = policies.stream().map(policy -> forwards.year(policy, 300, regeneration)).toList();
        Collections.reverse(policies);
        LongRun backwards = LongRun.of(model);
        for (int i = 0; i < policies.size(); i++) {
            YearlyTotals year = years.get(policies.size() - 1 - i);
            backwards.hardDaysPerYear(policies.get(i), 330, regeneration);
            YearlyTotals other = backwards.year(policies.get(i), 300, regeneration);
            assertEquals(year.regenerations(), other.regenerations(), 1e-11 * year.regenerations());
            assertEquals(year.hardDays(), other.hardDays(), 1e-9 * year.hardDays() + 1e-12);
            assertEquals(other, backwards.year(policies.get(i), 300, regeneration));
            assertEquals(LongRun.of(model).year(policies.get(i), 300, regeneration).saltGrams(), other.saltGrams(),
                    1e-11 * other.saltGrams());
        }
    }

    /** Source: the calendar, night by night. */
    @Test
    void aClockByWeekdaysWaitsForItsNextDate() {
        for (int chosen = 1; chosen < 128; chosen++) {
            int set = chosen;
            Set<DayOfWeek> weekdays = Set.copyOf(Arrays.stream(DayOfWeek.values()).filter(day -> (set >> day.ordinal() & 1) == 1).toList());
            for (DayOfWeek date : DayOfWeek.values()) {
                int nights = 1;
                while (!weekdays.contains(date.plus(nights))) {
                    nights++;
                }
                assertEquals(nights, new ClockOnWeekdays(weekdays, 0).clockNightsAfter(date), weekdays + " after " + date);
            }
        }
    }

    /** Rows of a year take seconds where days scatter and people leave for long: each day is one look at the sign. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.006})
    void endsWithinItsRows(double leave) {
        RenewalRows rows = new RenewalRows(new double[] {1, 2, 3, 4, 5, 6, 7}, 1.5, leave, 0.0005, 10);
        rows.reach(1_000);
        AtomicInteger looks = new AtomicInteger();
        assertThrows(CalculationCancelled.class,
                () -> CancellationToken.obeying(() -> looks.incrementAndGet() > 3, () -> rows.row(0, 300)));
        assertEquals(4, looks.get());
        assertTrue(rows.row(0, 5).values().length > 1, "what there is can be used");
    }
}
