// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Rows;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** The long run against two methods of an independent program. */
class LongRunTest {

    private static final String TABLE = "/regeneration/cross-expected-years.csv";
    /** Places of the columns of the table. */
    private static final int MEANS = 10;

    @ParameterizedTest
    @CsvFileSource(resources = TABLE, numLinesToSkip = 1)
    void agreesWithAMillionYearsAndWithAFinerTable(ArgumentsAccessor row) {
        LongRun longRun = LongRun.of(model(row));
        Regeneration regeneration = new Regeneration(row.getDouble(2), 1, 1, row.getDouble(9));
        Policy policy = policy(row);
        YearlyTotals year = longRun.year(policy, row.getDouble(3), regeneration);
        for (int method : new int[] {21, 31}) {
            double regenerations = row.getDouble(method);
            double hardDays = row.getDouble(method + 1);
            double hardLitres = row.getDouble(method + 2);
            double bypass = row.getDouble(method == 21 ? 24 : 34);
            assertEquals(regenerations, year.regenerations(), 1e-3 * regenerations, "regenerations");
            assertEquals(hardDays, year.hardDays(), 0.02 + 2e-3 * hardDays, "hard days");
            assertEquals(hardLitres, year.hardLitres(), 5 + 0.01 * hardLitres, "hard litres");
            assertEquals(bypass, year.bypassedLitres(), 0.01 * bypass, "bypassed litres");
        }
        assertEquals(row.getDouble(25), year.unusedGrams(), 2 + 1e-3 * regeneration.capacityGrams() * year.regenerations(),
                "unused");
        HardDays days = longRun.hardDays(policy, row.getDouble(3), regeneration);
        assertEquals(row.getDouble(26), days.percentile5(), 1, "5 %");
        assertEquals(row.getDouble(27), days.median(), 1, "50 %");
        assertEquals(row.getDouble(28), days.percentile95(), 1, "95 %");
        assertEquals(row.getDouble(29), days.yearsWithoutShare(), 0.01, "years without");
    }

    /** What is asked first must not move what is asked next: each kind of policy has fixed years of its own. */
    @Test
    void theOrderOfQuestionsMovesNoFigure() {
        UseModel model = new UseModel(WeekdayMeans.everyDay(300), DayVariation.ofCv(0.4));
        Policy byDay = new MeteredImmediate(5_000, 14);
        Policy byHistory = new MeteredByHistory(2_000, MeteredByHistory.Of.LARGEST, 500, 14);
        Regeneration bed = new Regeneration(1_500, 4_000, 200, 80);
        LongRun first = LongRun.of(model);
        LongRun second = LongRun.of(model);
        first.year(byHistory, 300, bed);
        assertEquals(second.year(byDay, 300, bed), first.year(byDay, 300, bed));
        assertEquals(LongRun.of(model).year(byHistory, 300, bed), second.year(byHistory, 300, bed));
    }

    /** Meters whose count hardly ever ends a cycle regenerate by the nights of their override, whatever is used: arithmetic. */
    @Test
    void anOverrideThatDecidesGoesByItsNightsAlone() {
        LongRun longRun = LongRun.of(new UseModel(WeekdayMeans.everyDay(300), DayVariation.ofCv(0.4)));
        for (Policy policy : List.of(new MeteredImmediate(9_000, 14), new TwinAlternating(9_000, 14), new MeteredImmediate(5_000, 4))) {
            YearlyTotals year = longRun.year(policy, 300, new Regeneration(2_700, 4_000, 200, 80));
            assertEquals(365.0 / policy.overrideDays(), year.regenerations(), 1e-3 * 365 / policy.overrideDays(), policy.toString());
            assertTrue(year.overrides() <= year.regenerations(), policy.toString());
        }
    }

    /** Whatever its reserve, a meter in a home that uses nothing regenerates by its override alone: arithmetic. */
    @ParameterizedTest
    @CsvSource({"0, 0", "0, 0.18", "900, 0.377", "2699, 0.18"})
    void aHomeWithoutUseRegeneratesByTheOverride(double reserveLitres, double levelSpread) {
        LongRun longRun = LongRun.of(new UseModel(WeekdayMeans.everyDay(0), DayVariation.ofCv(0.4)).with(
                new UseChange(levelSpread, 0, 0.12)));
        YearlyTotals year = longRun.year(new MeteredDelayed(2_700, reserveLitres, 14), 300, new Regeneration(810, 4_000, 200, 80));
        assertEquals(365.0 / 14, year.regenerations(), 1e-9);
        assertEquals(365.0 / 14, year.overrides(), 1e-9);
        assertEquals(0, year.hardDays());
    }

    @Test
    void noCaseIsMissing() {
        assertEquals(16, Rows.in(TABLE));
    }

    private static UseModel model(ArgumentsAccessor row) {
        double[] m = new double[7];
        for (int i = 0; i < 7; i++) {
            m[i] = row.getDouble(MEANS + i);
        }
        Double leave = row.getDouble(MEANS + 8);
        return new UseModel(new WeekdayMeans(m[0], m[1], m[2], m[3], m[4], m[5], m[6]),
                DayVariation.ofCv(row.getDouble(MEANS + 7)), UseModel.EVEN_MONTHS,
                leave == null ? Occupancy.ALWAYS : new Occupancy.Chain(leave, row.getDouble(MEANS + 9)));
    }

    private static Policy policy(ArgumentsAccessor row) {
        int override = row.getString(6) == null ? 0 : row.getInteger(6);
        return switch (row.getString(1)) {
            case "delayed" -> new MeteredDelayed(row.getDouble(4), row.getDouble(5), override);
            case "immediate" -> new MeteredImmediate(row.getDouble(4), override);
            case "twin" -> new TwinAlternating(row.getDouble(4), override);
            case "clock" -> new ClockEveryDays(row.getInteger(7));
            case "weekdays" -> new ClockOnWeekdays(weekdays(row.getString(8)));
            default -> throw new IllegalArgumentException(row.getString(1));
        };
    }

    private static Set<DayOfWeek> weekdays(String mondayFirst) {
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            if (mondayFirst.charAt(day.ordinal()) == '1') {
                days.add(day);
            }
        }
        return days;
    }
}
