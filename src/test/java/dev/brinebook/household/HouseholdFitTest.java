// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static dev.brinebook.household.MeteredDaysTest.days;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a measured series says of how the days of a household come about; the arithmetic is beside each. */
class HouseholdFitTest {

    private static final LocalDate MONDAY = LocalDate.of(2025, 1, 6);
    private static final int YEAR = 364;

    private static HouseholdFit fit(MeteredDays days) {
        return HouseholdFit.of(days, OptionalDouble.empty());
    }

    private static MeteredDays repeated(int size, double... week) {
        return days(MONDAY, IntStream.range(0, size).mapToDouble(i -> week[i % week.length]).toArray());
    }

    /** The pattern of the week is in its means: it is no scatter, and idle weekdays are no absences. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"weekdays only, 1000 1000 1000 1000 1000 0 0", "weekends only, 0 0 0 0 0 700 900",
        "a dripping weekend, 1000 1000 1000 1000 1000 4 4", "every day another, 100 200 300 400 500 600 700",
        "one laundry day, 90 90 90 90 90 90 900", "no pattern, 300 300 300 300 300 300 300", "nothing at all, 0 0 0 0 0 0 0"})
    void anEvenWeekIsItsOwnMeans(String home, String week) {
        double[] litres = IntStream.range(0, 7).mapToDouble(i -> Double.parseDouble(week.split(" ")[i])).toArray();
        HouseholdFit fit = fit(repeated(YEAR, litres));
        for (DayOfWeek day : DayOfWeek.values()) {
            assertEquals(litres[day.ordinal()], fit.model().means().litres(day), 1e-9, home + " on " + day);
        }
        assertEquals(0, fit.cv(), home);
        assertSame(Occupancy.ALWAYS, fit.model().occupancy(), home);
    }

    /**
     * Mondays of 50 and 150 in turn, other days of 100: each Monday is half its mean from it, so the sum of squares is
     * 8 x 0.25 = 2 over 56 - 7 degrees of freedom; what is left of the usual week, 4 % at most, moves it by less than 0.01.
     */
    @Test
    void scatterIsWithinTheWeekday() {
        double[] litres = IntStream.range(0, 56).mapToDouble(i -> i % 14 == 0 ? 50 : i % 14 == 7 ? 150 : 100).toArray();
        HouseholdFit fit = fit(days(MONDAY, litres));
        assertEquals(Math.sqrt(2.0 / 49), fit.ownCv(), 0.01);
        assertEquals(56, fit.presence().occupiedDays());
    }

    /** 10 of 70 days away, in two spells: the days at home are as they were, left 2 times in 60 and returned to 2 in 10. */
    @Test
    void absencesAreNoScatter() {
        double[] litres = IntStream.range(0, 70).mapToDouble(i -> i % 35 >= 10 && i % 35 < 15 ? 0 : 400).toArray();
        HouseholdFit fit = fit(days(MONDAY, litres));
        assertEquals(0, fit.ownCv(), 1e-3, "little is left of the usual week");
        assertEquals(0.02, fit.cv(), 0.002, "0.404 exp(-0.237² x 53): sixty days alike are no proof that all are");
        for (DayOfWeek day : DayOfWeek.values()) {
            assertEquals(400, fit.model().means().litres(day), 0.1);
        }
        Occupancy.Chain chain = (Occupancy.Chain) fit.model().occupancy();
        assertEquals(2.0 / 60, chain.leavePerDay(), 1e-12);
        assertEquals(2.0 / 10, chain.returnPerDay(), 1e-12);
    }

    /** Whatever is missing or idle, the model is at home as often as the known days are. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"one empty day of three years, 1096, 1, 5, 0", "away at the end, 100, 30, 70, 0", "away at first, 100, 30, 0, 0",
        "away for half of a year and a half, 98, 49, 0, 3"})
    void theChainIsAtHomeAsOftenAsTheDays(String home, int size, int away, int from, int gapEvery) {
        double[] litres = IntStream.range(0, size).mapToDouble(i -> i >= from && i < from + away ? 0
                : gapEvery > 0 && i % gapEvery == 0 ? Double.NaN : 500).toArray();
        HouseholdFit fit = fit(days(MONDAY, litres));
        double known = IntStream.range(0, size).filter(i -> !Double.isNaN(litres[i])).count();
        assertEquals(1 - away / known, fit.model().occupancy().occupiedShare(MONDAY, 365), 1e-12, home);
    }

    /** Every other day away is a chain that always changes; a gap between the two kinds says nothing of how they change. */
    @Test
    void theChainKeepsItsProbabilities() {
        assertEquals(new Occupancy.Chain(1, 1), fit(repeated(20, 500, 0)).model().occupancy());
        Occupancy.Chain independent = (Occupancy.Chain) fit(days(MONDAY, 500, Double.NaN, 0)).model().occupancy();
        assertEquals(0.5, independent.occupiedShare(MONDAY, 1), 1e-12);
    }

    /** Five days of a week at home but for one week: a work week away is one absence of a calendar week. */
    @Test
    void idleWeekdaysLengthenAbsences() {
        double[] litres = IntStream.range(0, 70).mapToDouble(i -> i % 7 > 4 || i / 7 == 4 ? 0 : 800).toArray();
        Occupancy.Chain chain = (Occupancy.Chain) fit(days(MONDAY, litres)).model().occupancy();
        double kept = Math.pow(1 - 1.0 / 45 - 1.0 / 5, 5.0 / 7);
        assertEquals(0.1, chain.leavePerDay() / (chain.leavePerDay() + chain.returnPerDay()), 1e-12, "5 of 50 days");
        assertEquals(kept, 1 - chain.leavePerDay() - chain.returnPerDay(), 1e-12);
    }

    /** A Sunday of nine litres in ten weeks is no Sunday at home: its mean of all Sundays is kept, as often as one is home. */
    @Test
    void aWeekdayOfHardlyAnyUseKeepsItsMean() {
        double[] litres = IntStream.range(0, 70).mapToDouble(i -> i % 7 == 6 ? (i == 6 ? 90 : 0) : i / 7 == 3 ? 0 : 800)
                .toArray();
        HouseholdFit fit = fit(days(MONDAY, litres));
        assertEquals(9 / 0.9, fit.model().means().litres(DayOfWeek.SUNDAY), 1e-9, "an idle weekday is not shrunk");
        assertEquals(800, fit.model().means().litres(DayOfWeek.TUESDAY), 0.5);
    }

    /** One day has no scatter, three have one that counts little; both lean on the usual week. */
    @Test
    void aShortSeriesStaysNearTheUsualValues() {
        HouseholdFit one = fit(days(MONDAY, 300));
        double monday = 1.002 * 7 / (1.002 + 0.983 + 0.968 + 0.988 + 0.969 + 1.035 + 1.040);
        assertEquals(300 / monday, one.meanLitres(), 300 * 0.001, "a Monday is the usual part of a week, nearly");
        assertEquals(0.416 * Math.pow(one.ownMeanLitres() / 270, -0.074), one.cv(), 1e-12, "usual scatter of such a home");
        assertEquals(0, one.weightOfOwnCv());
        assertEquals(Math.sqrt(1.27 * one.cv() * one.cv() + 0.030 + 0.015 * 60 / 61), one.model().change().levelSpread(), 1e-12);
        assertEquals(0.237, one.model().change().scatterSpread(), 1e-12);
        HouseholdFit three = fit(days(MONDAY, 100, 200, 300));
        assertEquals(200, three.meanLitres(), 8);
        assertEquals(0.5, three.ownCv(), 0.05, "deviation 100 of 200, as the sample deviation over the mean");
        assertEquals(0.237 * 0.237 / (0.237 * 0.237 + 2.93 / 3), three.weightOfOwnCv(), 1e-12);
        HouseholdFit alike = fit(days(MONDAY, 300, 300, 300, 300));
        assertEquals(0.41, alike.cv(), 0.08, "four days alike, as a coarse register has them, are no proof of even use");
    }

    /** Watering every tenth day for three years is no accident: it counts in full, and no model takes such a scatter. */
    @Test
    void aScatterThatNoModelTakesIsHeld() {
        double[] litres = IntStream.range(0, 1000).mapToDouble(i -> i % 10 == 0 ? 20_000 : 100).toArray();
        HouseholdFit fit = fit(days(MONDAY, litres));
        assertEquals(List.of(), fit.highDays());
        assertEquals(100, fit.daysAboveCap());
        assertEquals(2_090, fit.meanLitres(), 20);
        assertTrue(fit.cv() > DayVariation.MAX_CV);
        assertEquals(DayVariation.MAX_CV, fit.model().cv());
    }

    /**
     * Spreads by hand. 28 days, CV 0.4, people known: v = 1.27 x 0.16 / 28 + 0.030 + 0.015 x 60 / 88 = 0.047484,
     * w = 0.142129 / 0.189613 = 0.749572, √(w v) = 0.188661; k = 0.056169 / (0.056169 + 2.93 / 28) = 0.349284,
     * 0.237 √(1 - k) = 0.191181. One day, CV 1.5: v = 2.902254, past what a home is taken to change by.
     */
    @ParameterizedTest(name = "{0} days, CV {1}, people {2}")
    @CsvSource({"0, 0.4, true, 0.377, 0.237", "0, 0.4, false, 0.6, 0.237", "28, 0.4, true, 0.188661, 0.191181",
        "28, 0.4, false, 0.217909, 0.191181", "1, 1.5, false, 0.6, 0.234760"})
    void reportsTheUncertaintyAfterANumberOfDays(int days, double cv, boolean people, double level, double scatter) {
        UseChange change = HouseholdFit.afterDays(days, cv, people);
        assertEquals(level, change.levelSpread(), 5e-7);
        assertEquals(scatter, change.scatterSpread(), 5e-7);
        assertEquals(0.12, change.dayCorrelation());
    }

    @Test
    void moreDaysMakeItSurer() {
        for (double cv : new double[] {0, 0.2, 0.45, 1.5}) {
            for (boolean people : new boolean[] {true, false}) {
                for (int n = 1; n <= Days.MAX_DAYS; n++) {
                    UseChange before = HouseholdFit.afterDays(n - 1, cv, people);
                    UseChange now = HouseholdFit.afterDays(n, cv, people);
                    assertTrue(now.levelSpread() <= before.levelSpread(), "level after " + n);
                    assertTrue(now.scatterSpread() < before.scatterSpread(), "scatter after " + n);
                    assertTrue(now.levelSpread() <= HouseholdFit.afterDays(n, cv, false).levelSpread(), "people help");
                }
            }
        }
    }

    /** 28 even days of 300 L; people say 500 L: ln m lies between, by the weight. */
    @Test
    void peopleAndDaysMakeTheMeanTogether() {
        double[] litres = IntStream.range(0, 28).mapToDouble(i -> i % 2 == 0 ? 200 : 400).toArray();
        HouseholdFit fit = HouseholdFit.of(days(MONDAY, litres), OptionalDouble.of(500));
        double v = 1.27 * fit.cv() * fit.cv() / 28 + 0.030 + 0.015 * 60 / 88;
        double weight = 0.377 * 0.377 / (0.377 * 0.377 + v);
        assertEquals(weight, fit.weightOfOwnMean(), 1e-12);
        assertEquals(weight * Math.log(300) + (1 - weight) * Math.log(500), Math.log(fit.meanLitres()), 0.002);
        assertEquals(Math.sqrt(weight * v), fit.model().change().levelSpread(), 1e-12);
        assertEquals(fit.meanLitres(), fit.model().means().meanLitres(), 1e-9);
        assertEquals(fit.model().change(), HouseholdFit.afterDays(28, fit.cv(), true));
    }

    /**
     * A farm of two people: the more the meter shows above what people say, the less these are believed, and the mean is never
     * further than a quarter off the days. The more below, the more they may have been away: the weight stays 0.75.
     */
    @ParameterizedTest(name = "{0} times what people say")
    @CsvSource({"1, 0.377", "2.3, 0.377", "3, 0.504219", "10, 1.130475", "0.1, 0.377"})
    void peopleOfAMeterThatShowsFarMoreAreBelievedLess(double ratio, double spread) {
        assertEquals(spread, HouseholdFit.spreadOfPeople(Math.log(ratio), 0.0475), 5e-7, "√(ln² / 4 - 0.0475), 0.377 at least");
        double[] litres = IntStream.range(0, 28).mapToDouble(i -> i % 2 == 0 ? 200 : 400).toArray();
        HouseholdFit fit = HouseholdFit.of(days(MONDAY, litres), OptionalDouble.of(300 / ratio));
        double pull = Math.log(300 / fit.meanLitres());
        assertTrue(ratio < 1 ? Math.abs(pull - 0.25 * Math.log(ratio)) < 0.03 : pull > -0.003 && pull < 0.24, "pulled by " + pull);
    }

    /** Without a day with somebody there people alone speak; without people there is no use. */
    @Test
    void anEmptyHouseIsItsPeople() {
        HouseholdFit people = HouseholdFit.of(days(MONDAY, 0, 0, 0), OptionalDouble.of(500));
        assertEquals(500, people.model().means().meanLitres(), 1e-9);
        assertEquals(new UseChange(0.377, 0.237, 0.12), people.model().change());
        assertEquals(0, people.weightOfOwnMean());
        assertEquals(WeekdayMeans.everyDay(0), fit(days(MONDAY, 0, 0, 0)).model().means());
    }

    /** Any series has a fit: finite, weights in 0 to 1, the mean between the days and the people, leaks above the cap. */
    @ParameterizedTest(name = "{0} days")
    @ValueSource(ints = {1, 2, 3, 7, 8, 14, 28, 100, 365, 1095})
    void anySeriesHasAFit(int size) {
        for (long seed = 1; seed <= 60; seed++) {
            Random random = new Random(seed);
            double level = Math.pow(10, 5 * random.nextDouble() - 1);
            double scatter = random.nextInt(4) == 0 ? 0 : 2 * random.nextDouble();
            int idle = random.nextInt(3) == 0 ? random.nextInt(7) : 0;
            double[] litres = IntStream.range(0, size).mapToDouble(i -> i % 7 < idle || random.nextInt(9) == 0 ? 0
                    : random.nextInt(30) == 0 ? Double.NaN : Math.min(45_000, random.nextInt(60) == 0 ? 30 * level
                    : level * Math.exp(scatter * random.nextGaussian()))).toArray();
            litres[random.nextInt(size)] = random.nextInt(5) == 0 ? 0 : level;
            OptionalDouble people = random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(100 + 900 * random.nextDouble());
            HouseholdFit fit = HouseholdFit.of(days(MONDAY, litres), people);
            String home = "seed " + seed;
            assertTrue(fit.weightOfOwnMean() >= 0 && fit.weightOfOwnMean() <= 1, home);
            assertTrue(fit.weightOfOwnCv() >= 0 && fit.weightOfOwnCv() < 1, home);
            assertTrue(fit.cv() >= 0 && Double.isFinite(fit.cv()) && Double.isFinite(fit.model().means().meanLitres()), home);
            if (fit.presence().occupiedDays() > 0) {
                double other = people.orElse(fit.ownMeanLitres());
                assertTrue(fit.meanLitres() >= Math.min(fit.ownMeanLitres(), other) * (1 - 1e-12)
                        && fit.meanLitres() <= Math.max(fit.ownMeanLitres(), other) * (1 + 1e-12), home);
                assertTrue(people.isPresent() || fit.weightOfOwnMean() == 1, home);
            }
            fit.highDays().forEach(day -> assertTrue(day.aboveLitres() > 0 && day.capLitres() > 0, home));
        }
    }

    /**
     * Random homes whose truth is known: three years of each give weekday means, scatter and absences back within their
     * sampling errors, four of them wide. Standard error of a mean CV / √n, of a share of transitions the binomial one, and
     * of the CV about CV √((1/2 + CV²) / n) for gamma days.
     */
    @Test
    void randomHomesGiveTheirOwnNumbersBack() {
        for (long seed = 1; seed <= 100; seed++) {
            Random random = new Random(seed);
            double cv = 0.1 + 0.5 * random.nextDouble();
            double leave = 0.01 + 0.05 * random.nextDouble();
            double comeBack = 0.2 + 0.5 * random.nextDouble();
            WeekdayMeans means = WeekdayMeans.ofWeek(200 + 800 * random.nextDouble(), 0.5 + random.nextDouble());
            UseModel truth = new UseModel(means, DayVariation.ofCv(cv), UseModel.EVEN_MONTHS,
                    new Occupancy.Chain(leave, comeBack));
            SampledYear drawn = new SampledYear(truth, MONDAY, Days.MAX_DAYS, seed).draw(0);
            HouseholdFit fit = fit(days(MONDAY, drawn.litres()));
            String home = "seed " + seed;
            double n = fit.presence().occupiedDays();
            double shrunk = (1 - fit.weightOfOwnCv()) * Math.abs(Math.log(0.4 / cv));
            assertEquals(cv, fit.cv(), cv * (shrunk + 4 * Math.sqrt((0.5 + cv * cv) / n)), home);
            for (DayOfWeek day : DayOfWeek.values()) {
                assertEquals(1, fit.model().means().litres(day) / means.litres(day), 4 * cv / Math.sqrt(n / 7), home);
            }
            Occupancy.Chain chain = (Occupancy.Chain) fit.model().occupancy();
            assertEquals(leave, chain.leavePerDay(), 4 * Math.sqrt(leave * (1 - leave) / n), home);
            assertEquals(comeBack, chain.returnPerDay(), 4 * Math.sqrt(0.25 / (Days.MAX_DAYS - n)), home);
            assertEquals(n / Days.MAX_DAYS, chain.occupiedShare(), 1e-12, home);
        }
    }
}
