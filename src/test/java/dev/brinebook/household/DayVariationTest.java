// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class DayVariationTest {

    private static final LocalDate FIRST = LocalDate.of(2025, 1, 1);

    @ParameterizedTest
    @CsvFileSource(resources = "/household/published-day-to-day.csv", useHeadersInDisplayName = true)
    void agreesWithTheStudy(String quantity, double argument, Double probability, String expected, String tolerance,
                            String source, String why) {
        Printed.assertAgrees(expected, tolerance, switch (quantity) {
            case "quantile" -> DayVariation.gammaQuantile(argument, probability);
            case "weekend" -> WeekdayMeans.weekendFactor(argument);
            case "weekday" -> WeekdayMeans.weekdayFactor(argument);
            default -> throw new IllegalArgumentException(quantity);
        });
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/household/published-gamma-quantiles.csv", useHeadersInDisplayName = true)
    void agreesWithTheChiSquareTable(int degreesOfFreedom, double probability, String chiSquare, String tolerance,
                                     String source, String why) {
        double quantile = DayVariation.gammaQuantile(Math.sqrt(2.0 / degreesOfFreedom), probability);
        Printed.assertAgrees(chiSquare, tolerance, quantile * degreesOfFreedom);
        assertEquals(probability, DayVariation.shareOfDaysBelow(Math.sqrt(2.0 / degreesOfFreedom),
                Double.parseDouble(chiSquare) / degreesOfFreedom), 1e-4, "the resolution of the digits of the table");
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/household/cross-gamma-quantiles.csv", useHeadersInDisplayName = true)
    void agreesWithAnotherLibrary(double cv, double probability, String quantile, String tolerance, String source,
                                  String why) {
        Printed.assertAgrees(quantile, tolerance, DayVariation.gammaQuantile(cv, probability));
    }

    @Test
    void theTablesAreWhole() {
        assertEquals(14, Rows.in("/household/published-day-to-day.csv"));
        assertEquals(10, Rows.in("/household/published-gamma-quantiles.csv"));
        assertEquals(78, Rows.in("/household/cross-gamma-quantiles.csv"));
    }

    @Test
    void noScatterIsTheMean() {
        assertEquals(1, DayVariation.gammaQuantile(0, 0.99));
        assertEquals(0, DayVariation.shareOfDaysBelow(0, 0.999));
        assertEquals(1, DayVariation.shareOfDaysBelow(0, 1.001));
        WeekdayMeans means = WeekdayMeans.ofWeek(400, 1.09);
        assertEquals(Days.weekly(FIRST, 365, means), DayVariation.ofCv(0).typicalDays(FIRST, 365, means, 1));
    }

    /** Any household, any length, any seed: each year and the whole sum to the means, and nothing falls out of range. */
    @Test
    void typicalDaysSumToTheirMeans() {
        DayVariation[] variations = {DayVariation.ONE_PERSON, DayVariation.UNKNOWN_PERSONS,
            DayVariation.ofCv(DayVariation.MAX_CV)};
        for (long seed = 1; seed <= 300; seed++) {
            Random random = new Random(seed);
            double mean = random.nextInt(10) == 0 ? WeekdayMeans.MAX_MEAN_LITRES : 2000 * random.nextDouble();
            double ratio = random.nextInt(10) == 0 ? WeekdayMeans.MAX_WEEKEND_RATIO : 0.5 + random.nextDouble();
            WeekdayMeans means = WeekdayMeans.ofWeek(mean, ratio);
            int size = 1 + random.nextInt(Days.MAX_DAYS);
            Days days = variations[random.nextInt(3)].typicalDays(FIRST, size, means, seed);
            double wanted = Days.weekly(FIRST, size, means).sumLitres();
            assertEquals(wanted, days.sumLitres(), 1e-9 * wanted, "seed " + seed);
            assertEquals(size, days.size(), "seed " + seed);
        }
    }

    @Test
    void aYearHoldsTheSameDaysWhateverTheSeed() {
        WeekdayMeans means = WeekdayMeans.everyDay(500);
        double[] one = uses(DayVariation.UNKNOWN_PERSONS.typicalDays(FIRST, 730, means, 1));
        double[] two = uses(DayVariation.UNKNOWN_PERSONS.typicalDays(FIRST, 730, means, 2));
        assertNotEquals(Arrays.toString(one), Arrays.toString(two));
        double[] secondYear = Arrays.copyOfRange(one, 365, 730);
        double[] firstYear = Arrays.copyOf(two, 365);
        Arrays.sort(secondYear);
        Arrays.sort(firstYear);
        for (int i = 0; i < 365; i++) {
            assertEquals(firstYear[i], secondYear[i], 1e-9, "day of rank " + i);
        }
    }

    /** The scatter asked for is the scatter had: the midpoints of 365 strips lose only the far tails. */
    @Test
    void aYearScattersAsAsked() {
        for (double cv : new double[] {0.2, 0.45, 0.6}) {
            double[] uses = uses(DayVariation.ofCv(cv).typicalDays(FIRST, 365, WeekdayMeans.everyDay(100), 7));
            double squares = 0;
            for (double use : uses) {
                squares += (use - 100) * (use - 100);
            }
            assertEquals(cv, Math.sqrt(squares / 365) / 100, 0.01 * cv);
        }
    }

    /** A short run spreads over the whole range and not over the first quantiles it meets. */
    @Test
    void aShortRunSpreadsOverTheRange() {
        double[] uses = uses(DayVariation.UNKNOWN_PERSONS.typicalDays(FIRST, 11, WeekdayMeans.everyDay(100), 3));
        Arrays.sort(uses);
        assertTrue(uses[0] < 50 && uses[10] > 170, Arrays.toString(uses));
    }

    @Test
    void zeroUseStaysZero() {
        assertEquals(0, DayVariation.ONE_PERSON.typicalDays(FIRST, 30, WeekdayMeans.everyDay(0), 1).sumLitres());
    }

    @Test
    void defaultsFollowThePersons() {
        assertSame(DayVariation.ONE_PERSON, DayVariation.forPersons(1));
        assertEquals(0.60, DayVariation.forPersons(1).cv());
        assertSame(DayVariation.TWO_OR_THREE_PERSONS, DayVariation.forPersons(2));
        assertSame(DayVariation.TWO_OR_THREE_PERSONS, DayVariation.forPersons(3));
        assertSame(DayVariation.FOUR_OR_MORE_PERSONS, DayVariation.forPersons(4));
        assertThrows(IllegalArgumentException.class, () -> DayVariation.forPersons(0));
    }

    @Test
    void refusesValuesOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> DayVariation.ofCv(1.51));
        assertThrows(IllegalArgumentException.class, () -> DayVariation.gammaQuantile(0.4, 1));
        assertThrows(IllegalArgumentException.class, () -> DayVariation.gammaQuantile(0.4, 0));
        assertThrows(IllegalArgumentException.class, () -> DayVariation.gammaQuantile(Double.NaN, 0.5));
        assertThrows(IllegalArgumentException.class, () -> DayVariation.ONE_PERSON.typicalDays(FIRST,
                Days.MAX_DAYS + 1, WeekdayMeans.everyDay(1), 1));
    }

    private static double[] uses(Days days) {
        double[] uses = new double[days.size()];
        for (int i = 0; i < uses.length; i++) {
            uses[i] = days.useLitres(i);
        }
        return uses;
    }
}
