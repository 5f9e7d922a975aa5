package dev.brinebook.household;

import static dev.brinebook.household.MeteredDaysTest.days;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a measured series says of how the days of a household come about; the arithmetic is beside each. */
class UseModelFitTest {

    private static final LocalDate MONDAY = LocalDate.of(2025, 1, 6);
    private static final int YEAR = 364;

    private static UseModelFit fit(MeteredDays days) {
        return UseModelFit.of(days, DayVariation.UNKNOWN_PERSONS);
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
        UseModelFit fit = fit(repeated(YEAR, litres));
        for (DayOfWeek day : DayOfWeek.values()) {
            assertEquals(litres[day.ordinal()], fit.model().means().litres(day), 1e-9, home + " on " + day);
        }
        assertEquals(0, fit.cv(), 1e-12, home);
        assertSame(Occupancy.ALWAYS, fit.model().occupancy(), home);
    }

    /**
     * Mondays of 50 and 150 in turn, other days of 100: each Monday stands half its mean from it, so the sum of squares is
     * 8 x 0.25 = 2 over 56 - 7 degrees of freedom.
     */
    @Test
    void scatterIsWithinTheWeekday() {
        double[] litres = IntStream.range(0, 56).mapToDouble(i -> i % 14 == 0 ? 50 : i % 14 == 7 ? 150 : 100).toArray();
        UseModelFit fit = fit(days(MONDAY, litres));
        assertEquals(Math.sqrt(2.0 / 49), fit.cv(), 1e-12);
        assertEquals(56, fit.occupiedDays());
        assertEquals(49, fit.degreesOfFreedom());
    }

    /** 10 of 70 days away, in two spells: the days at home are as they were, left 2 times in 60 and returned to 2 in 10. */
    @Test
    void absencesAreNoScatter() {
        double[] litres = IntStream.range(0, 70).mapToDouble(i -> i % 35 >= 10 && i % 35 < 15 ? 0 : 400).toArray();
        UseModelFit fit = fit(days(MONDAY, litres));
        assertEquals(0, fit.cv(), 1e-12);
        assertEquals(WeekdayMeans.everyDay(400), fit.model().means());
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
        UseModelFit fit = fit(days(MONDAY, litres));
        double known = IntStream.range(0, size).filter(i -> !Double.isNaN(litres[i])).count();
        assertEquals(1 - away / known, fit.model().occupancy().occupiedShare(MONDAY, 365), 1e-12, home);
    }

    /** Every other day away is a chain that always changes; a gap between the two kinds tells nothing of how they change. */
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

    /** A Sunday of nine litres in ten weeks is no Sunday at home: its mean of all Sundays stands, as often as one is home. */
    @Test
    void aWeekdayOfHardlyAnyUseKeepsItsMean() {
        double[] litres = IntStream.range(0, 70).mapToDouble(i -> i % 7 == 6 ? (i == 6 ? 90 : 0) : i / 7 == 3 ? 0 : 800)
                .toArray();
        UseModelFit fit = fit(days(MONDAY, litres));
        assertEquals(9 / 0.9, fit.model().means().litres(DayOfWeek.SUNDAY), 1e-9);
        assertEquals(800, fit.model().means().litres(DayOfWeek.TUESDAY), 1e-9);
    }

    /** Three days say nothing of weekdays, and one nothing of scatter. */
    @Test
    void aShortSeriesIsPooled() {
        UseModelFit three = fit(days(MONDAY, 100, 200, 300));
        assertEquals(WeekdayMeans.everyDay(200), three.model().means());
        assertEquals(0.5, three.cv(), 1e-12, "deviation 100 of 200, as the sample deviation over the mean");
        assertEquals(2, three.degreesOfFreedom());
        UseModelFit one = fit(days(MONDAY, 300));
        assertEquals(0.45, one.cv(), "DAIAD: the usual scatter, since one day has none");
        assertEquals(0, one.degreesOfFreedom());
    }

    @Test
    void aScatterThatNoModelTakesIsHeld() {
        double[] litres = IntStream.range(0, 60).mapToDouble(i -> i % 30 == 0 ? 20_000 : 100).toArray();
        UseModelFit fit = fit(days(MONDAY, litres));
        assertTrue(fit.cv() > DayVariation.MAX_CV);
        assertEquals(DayVariation.MAX_CV, fit.model().cv());
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
            DrawnYear drawn = new DrawnYear(truth, MONDAY, Days.MAX_DAYS, seed).draw(0);
            UseModelFit fit = fit(days(MONDAY, drawn.litres()));
            String home = "seed " + seed;
            double n = fit.occupiedDays();
            assertEquals(cv, fit.cv(), 4 * cv * Math.sqrt((0.5 + cv * cv) / n), home);
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
