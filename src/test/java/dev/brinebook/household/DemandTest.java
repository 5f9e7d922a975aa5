// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.Rows;
import dev.brinebook.household.SoftenedShare.Branch;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class DemandTest {

    private static final String SHARES = "/household/worked-softened-share.csv";
    private static final LocalDate THURSDAY = LocalDate.of(2026, 1, 1);

    @ParameterizedTest
    @CsvFileSource(resources = SHARES, useHeadersInDisplayName = true)
    void softensAllBranchesNotLeftHard(String leftHard, double numerator, double denominator) {
        Set<Branch> branches = leftHard.equals("NONE") ? Set.of()
                : Arrays.stream(leftHard.split(" ")).map(Branch::valueOf).collect(Collectors.toSet());
        assertEquals(numerator / denominator, SoftenedShare.of(branches), 1e-12);
    }

    @Test
    void endUsesAddUpToThePublishedSum() {
        assertEquals(138, SoftenedShare.allGallons(), 1e-9, "Residential End Uses of Water v2: 138 gal");
        assertEquals(6, Rows.in(SHARES));
    }

    @Test
    void loadsFivePeopleAsThePublishedCase() {
        double gallonsPerDay = 5 * 75;
        Demand demand = new Demand(WeekdayMeans.everyDay(gallonsPerDay * 3.785411784), DayVariation.UNKNOWN_PERSONS,
                Optional.empty(), 30, 10);
        double grains = demand.dailyLoadGrams(20 * 17.1181) / 0.06479891;
        assertEquals(7500, grains, 1, "WQP magazine, Sizing Softeners, 2009: 5 x 75 gal at 20 gpg");
        assertEquals(32_000 / 7500.0, 32_000 / grains, 0.01, "the same: 4.27 days");
    }

    @Test
    void takesMeasuredDaysAsTheyAre() {
        Days days = Days.series(THURSDAY, 100, 200, 300, 400);
        Demand demand = new Demand(WeekdayMeans.everyDay(300), DayVariation.UNKNOWN_PERSONS, Optional.of(days), 1, 1);
        assertEquals(250, demand.meanLitres());
        assertSame(days, demand.days(LocalDate.of(2030, 1, 1), 365, 5));
    }

    /** A weekend twice the rest, mean (5 x 350 + 2 x 700) / 7 = 450, at home 0.32 / 0.341 of the days: DAIAD. */
    @Test
    void theMeanDayToExpectCountsAbsences() {
        UseModel model = new UseModel(WeekdayMeans.ofWeek(450, 2), DayVariation.UNKNOWN_PERSONS, UseModel.EVEN_MONTHS,
                Occupancy.Chain.USUAL);
        assertEquals(450 * 0.32 / 0.341, model.meanLitres(), 1e-9);
    }

    @Test
    void makesTypicalDaysOtherwise() {
        Demand demand = new Demand(WeekdayMeans.everyDay(300), DayVariation.ofCv(0), Optional.empty(), 1, 1);
        Days days = demand.days(THURSDAY, 30, 1);
        assertEquals(30, days.size());
        assertEquals(0, demand.variation().cv());
        assertEquals(300, days.maxLitres(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"100 100 100, 0", "1 3, 0.7071068", "1 2 3, 0.5", "0 0, 0", "5, 0"})
    void measuresScatterAsSampleDeviationOverMean(String litres, double expected) {
        double[] use = Arrays.stream(litres.split(" ")).mapToDouble(Double::parseDouble).toArray();
        assertEquals(expected, Demand.coefficientOfVariation(Days.series(THURSDAY, use)), 1e-6);
    }

    @Test
    void refusesFlowsThatAreNone() {
        assertThrows(IllegalArgumentException.class, () -> new Demand(WeekdayMeans.everyDay(1),
                DayVariation.UNKNOWN_PERSONS, Optional.empty(), Double.NaN, 1));
    }

    @ParameterizedTest
    @CsvSource({"2, 120, 0.28, the hours 2 and 3", "0, 1440, 24.00, the whole day", "23, 120, 1.51, through midnight",
        "7, 30, 0.685, half an hour in proportion", "5, 0, 0, no time"})
    void spreadsADayOverItsHours(int hour, double minutes, double multipliers, String why) {
        double all = 24.00;
        assertEquals(multipliers / all, HourlyProfile.share(hour, minutes), 2e-3 * Math.max(0.1, multipliers / all),
                "DAIAD hourly multipliers (CC BY-SA 4.0, computed): " + why);
    }

    @Test
    void hoursTwoToFourCarryLittle() {
        assertEquals(0.015, HourlyProfile.share(2, 180), 0.0005, "DAIAD: hours 2 to 4 carry 1.5 % of the day");
        assertThrows(IllegalArgumentException.class, () -> HourlyProfile.share(24, 1));
        assertThrows(IllegalArgumentException.class, () -> HourlyProfile.share(1, 1441));
    }
}
