// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.household.Demand;
import dev.brinebook.household.Meter.Kind;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.SoftenedShare.Branch;
import dev.brinebook.household.UseModel;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.household.MeterReadingRequest;
import dev.brinebook.request.household.MeterRequest;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What readMeter forecasts is the same model as its days make when they are sent as a series, to the six digits sent. */
class ForecastTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 1, 5);
    private static final double SIX_DIGITS = 1e-5;

    /** Litres of a home of weekdays, absences and scatter, with a leak and an idle weekday now and then. */
    private static double[] litres(int size, long seed) {
        Random random = new Random(seed);
        double[] week = IntStream.range(0, 7).mapToDouble(i -> 200 + 200 * random.nextDouble()).toArray();
        week[6] *= seed % 5 == 0 ? 0 : 1;
        boolean away = false;
        double[] litres = new double[size];
        for (int i = 0; i < size; i++) {
            away = random.nextInt(100) < (away ? 70 : 4);
            litres[i] = away ? 0 : random.nextInt(80) == 0 ? 6_000 * random.nextDouble()
                    : week[i % 7] * Math.exp(0.3 * random.nextGaussian());
        }
        return litres;
    }

    private static MeterReadingsAnswer read(double[] litres, Integer people, AnswerUnits units) {
        MeterRequest meter = new MeterRequest(VolumeUnit.LITRE, null, null, 1440);
        return ReadMeter.OPERATION.answer(new MeterReadingsRequest(meter, Kind.VOLUME, IntStream.range(0, litres.length)
                .mapToObj(i -> new MeterReadingRequest(MONDAY.plusDays(i).toString(), BigDecimal.valueOf(litres[i]))).toList(), people,
                null, units));
    }

    private static UseModel model(HouseholdRequest household) {
        return household.resolved().toDomain(new Explanation()).model();
    }

    private static void assertNear(double expected, double value, String what) {
        assertEquals(expected, value, SIX_DIGITS * Math.max(expected, 1e-3), what);
    }

    private static void assertSame(MeterReadingsAnswer answer, Integer people, String home) {
        HouseholdRequest series = new HouseholdRequest(people, null, null, null, null, answer.days(), null, null, null, null,
                null, null, null, null, List.of(Branch.TOILETS), null, null, null, null, null);
        Demand demand = series.resolved().toDomain(new Explanation());
        UseModel expected = demand.model();
        HouseholdRequest f = answer.forecast();
        UseModel sent = model(new HouseholdRequest(f.people(), null, null, null, f.weeklyUse(), null, f.dayToDayVariation(),
                null, null, f.occupancy(), f.levelSpread(), f.scatterSpread(), f.dayCorrelation(), f.useUncertainty(),
                List.of(Branch.TOILETS), null, null, null, null, null));
        for (DayOfWeek day : DayOfWeek.values()) {
            assertNear(expected.means().litres(day), sent.means().litres(day), home + " on " + day);
        }
        assertNear(expected.cv(), sent.cv(), home);
        assertNear(expected.change().levelSpread(), sent.change().levelSpread(), home);
        assertNear(expected.change().scatterSpread(), sent.change().scatterSpread(), home);
        assertNear(expected.change().dayCorrelation(), sent.change().dayCorrelation(), home);
        assertEquals(expected.occupancy() == Occupancy.ALWAYS, sent.occupancy() == Occupancy.ALWAYS, home);
        assertNear(expected.occupiedShare(), sent.occupiedShare(), home);
        assertNear(series.resolved().useUncertaintyShare(demand, new Explanation()), f.useUncertainty().doubleValue(), home);
    }

    @ParameterizedTest(name = "{0} days, people {1}, {2}")
    @CsvSource({"1,,METRIC", "3,,US", "3,4,METRIC", "10,2,US", "28,3,METRIC", "28,,METRIC", "180,1,US", "365,4,METRIC", "1000,,US"})
    void isTheModelOfItsDays(int size, Integer people, AnswerUnits units) {
        for (long seed = 1; seed <= 20; seed++) {
            assertSame(read(litres(size, seed), people, units), people, "seed " + seed);
        }
    }

    /** Days before the use doubled say little of those to come, whichever way the days are sent. */
    @Test
    void countsTheDaysSinceTheLevelChanged() {
        double[] litres = new double[90];
        Random random = new Random(3);
        for (int i = 0; i < litres.length; i++) {
            litres[i] = (i < 60 ? 360 : 720) * Math.exp(0.2 * random.nextGaussian());
        }
        MeterReadingsAnswer answer = read(litres, null, AnswerUnits.METRIC);
        assertSame(answer, null, "doubled");
        assertEquals(720, model(answer.forecast()).means().meanLitres(), 60, "the new level");
    }

    /** The more days, the surer the mean; a leak among them and days exactly alike change nothing of that. */
    @Test
    void isSurerWithMoreDays() {
        double before = 1;
        for (int size : List.of(1, 3, 7, 28, 84)) {
            double[] litres = new double[size];
            Arrays.fill(litres, 350);
            litres[size / 2] = size > 7 ? 6_000 : 350;
            double share = read(litres, 3, AnswerUnits.METRIC).forecast().useUncertainty().doubleValue();
            assertTrue(share > 0.1 && share < before, size + " days: " + share);
            before = share;
        }
    }
}
