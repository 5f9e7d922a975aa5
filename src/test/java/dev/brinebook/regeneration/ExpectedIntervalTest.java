package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Days;
import dev.brinebook.household.WeekdayMeans;
import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ExpectedIntervalTest {

    private static final String ROWS = "/regeneration/cross-expected-interval.csv";
    private static final String RUN_LENGTHS = "/regeneration/published-run-length.csv";

    @ParameterizedTest
    @CsvFileSource(resources = ROWS, useHeadersInDisplayName = true)
    void agreesWithAnIndependentProgram(double countedLitres, double meanLitres, double cv, int overrideDays,
            String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, ExpectedInterval.days(countedLitres, meanLitres, cv, overrideDays));
    }

    /** What a meter counts down from is capacity over hardness, and the use of a day is its load over hardness. */
    @ParameterizedTest
    @CsvFileSource(resources = RUN_LENGTHS, useHeadersInDisplayName = true)
    void agreesWithPublishedRunLengths(double dailyLoadGrains, double capacityGrains, String expectedDays,
            String tolerance) {
        Policy meter = new MeteredImmediate(capacityGrains, Policy.NO_OVERRIDE);
        Printed.assertAgrees(expectedDays, tolerance, ExpectedInterval.days(meter, dailyLoadGrains, 0));
    }

    @Test
    void readsEveryRow() {
        assertEquals(1, Rows.in(RUN_LENGTHS));
        assertEquals(10, Rows.in(ROWS));
    }

    /** The simulated meter is another way to the same number: three years of days part by the luck of their order. */
    @Test
    void isTheMeanOfSimulatedYears() {
        double litres = 0;
        for (int seed = 1; seed <= 20; seed++) {
            Days days = DayVariation.ofCv(0.45).typicalDays(LocalDate.of(2026, 1, 1), 1095, WeekdayMeans.everyDay(1000), seed);
            Outcome outcome = Simulation.simulate(new Trial(days, 300, new Regeneration(3000, 5000, 250, 90)),
                    new MeteredDelayed(9000, 1600, 14));
            litres += outcome.meanIntervalDays().value() / 20;
        }
        assertEquals(ExpectedInterval.days(7400, 1000, 0.45, 14), litres, 0.05);
    }

    @Test
    void growsWithWhatIsCountedAndShrinksWithUse() {
        Random random = new Random(7);
        for (int n = 0; n < 200; n++) {
            double counted = 20_000 * random.nextDouble();
            double use = 50 + 2000 * random.nextDouble();
            double cv = 0.02 + random.nextDouble();
            double days = ExpectedInterval.days(counted, use, cv, 30);
            assertTrue(days >= 1 && days <= 30, "seed 7, case " + n);
            assertTrue(ExpectedInterval.days(counted * 1.1, use, cv, 30) >= days, "seed 7, case " + n);
            assertTrue(ExpectedInterval.days(counted, use * 1.1, cv, 30) <= days, "seed 7, case " + n);
        }
    }

    @Test
    void refusesWhatMakesNoSense() {
        assertThrows(IllegalArgumentException.class, () -> ExpectedInterval.days(-1, 1, 0.4, 14));
        assertThrows(IllegalArgumentException.class, () -> ExpectedInterval.days(1, Double.NaN, 0.4, 14));
        assertThrows(IllegalArgumentException.class, () -> ExpectedInterval.days(1, 1, 0.4, 0));
    }
}
