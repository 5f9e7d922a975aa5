// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.Occupancy.Calendar;
import dev.brinebook.household.Occupancy.Chain;
import dev.brinebook.household.Occupancy.Spell;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UseModelTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
    private static final DayVariation CV = DayVariation.ofCv(0.45);
    private static final int YEARS = 10_000;

    /** A sum of n days is gamma with CV/√n: its mean n u, its variance n u² CV². Gamma theory, from memory. */
    @ParameterizedTest
    @ValueSource(ints = {1, 7, 30, 365})
    void sumsOfDaysHaveTheMeanAndVarianceOfTheory(int days) {
        SampledYear drawn = new SampledYear(new UseModel(WeekdayMeans.everyDay(500), CV), FIRST, days, 21);
        double sum = 0;
        double squares = 0;
        double fourth = 0;
        double mean = days * 500.0;
        for (int year = 0; year < YEARS; year++) {
            drawn.draw(year);
            double deviation = IntStream.range(0, days).mapToDouble(drawn::useLitres).sum() - mean;
            sum += deviation;
            squares += deviation * deviation;
            fourth += deviation * deviation * deviation * deviation;
        }
        double variance = days * 500.0 * 500 * 0.45 * 0.45;
        assertEquals(0, sum / YEARS, 3 * Math.sqrt(variance / YEARS));
        double errorOfVariance = Math.sqrt((fourth / YEARS - variance * variance) / YEARS);
        assertEquals(variance, squares / YEARS, 3 * errorOfVariance);
    }

    /** Stationary share of a two-state chain: leave / (leave + return) of the days are vacant. */
    @Test
    void theChainIsVacantAsOftenAsItsStationaryShareSays() {
        for (Chain chain : List.of(Chain.USUAL, Chain.ASSUMED_HOLIDAY_HOME)) {
            SampledYear drawn = new SampledYear(new UseModel(WeekdayMeans.everyDay(500), CV, UseModel.EVEN_MONTHS, chain), FIRST,
                    365, 4);
            double[] shares = new double[2_000];
            for (int year = 0; year < shares.length; year++) {
                drawn.draw(year);
                shares[year] = IntStream.range(0, 365).filter(day -> drawn.useLitres(day) == 0).count() / 365.0;
            }
            double mean = java.util.Arrays.stream(shares).average().orElseThrow();
            double error = Math.sqrt(java.util.Arrays.stream(shares).map(share -> (share - mean) * (share - mean)).sum()
                    / (shares.length - 1) / shares.length);
            double vacant = chain.leavePerDay() / (chain.leavePerDay() + chain.returnPerDay());
            assertEquals(vacant, mean, 3 * error, chain.toString());
            assertEquals(1 - vacant, chain.occupiedShare(FIRST, 365), 1e-12);
        }
        // DAIAD: 6 % of days vacant; 21 absences of three days in three years are 7 a year.
        assertEquals(0.06, 1 - Chain.USUAL.occupiedShare(FIRST, 365), 0.005);
        assertEquals(0.30, Chain.ASSUMED_HOLIDAY_HOME.occupiedShare(FIRST, 365), 1e-12);
    }

    @Test
    void weekdaysMonthsAndSpellsShapeTheYear() {
        WeekdayMeans means = WeekdayMeans.ofWeek(500, 1.09);
        List<Double> months = List.of(0.8, 0.8, 0.9, 1.0, 1.1, 1.3, 1.4, 1.3, 1.0, 0.9, 0.8, 0.7);
        Calendar away = new Calendar(List.of(new Spell(LocalDate.of(2026, 7, 1), LocalDate.of(2026, 7, 14))), true);
        SampledYear drawn = new SampledYear(new UseModel(means, DayVariation.ofCv(0), months, away), FIRST, 365, 4).draw(3);
        for (int day = 0; day < 365; day++) {
            LocalDate date = FIRST.plusDays(day);
            boolean absent = date.getMonthValue() == 7 && date.getDayOfMonth() <= 14;
            double expected = absent ? 0 : means.litres(date.getDayOfWeek()) * months.get(date.getMonthValue() - 1);
            assertEquals(expected, drawn.useLitres(day), 1e-9, date.toString());
        }
        assertEquals(1 - 14 / 365.0, away.occupiedShare(FIRST, 365), 1e-12);
    }

    @Test
    void aCalendarOfStaysIsTheOtherWayRound() {
        Calendar stays = new Calendar(List.of(new Spell(LocalDate.of(2026, 12, 24), LocalDate.of(2027, 1, 2))), false);
        SampledYear drawn = new SampledYear(new UseModel(WeekdayMeans.everyDay(300), CV, UseModel.EVEN_MONTHS, stays), FIRST, 365,
                1).draw(0);
        assertEquals(8, IntStream.range(0, 365).filter(day -> drawn.useLitres(day) > 0).count());
    }

    /** A typical year of the same model: vacant days are empty, and the rest sums to its means. */
    @Test
    void aTypicalYearKeepsTheSpellsAndSumsToItsMeans() {
        List<Double> months = List.of(0.8, 0.8, 0.9, 1.0, 1.1, 1.3, 1.4, 1.3, 1.0, 0.9, 0.8, 0.7);
        Calendar away = new Calendar(List.of(new Spell(FIRST, FIRST.plusDays(9))), true);
        UseModel model = new UseModel(WeekdayMeans.everyDay(500), CV, months, away);
        Days days = model.typicalDays(FIRST, 365, 1);
        double expected = 0;
        for (int day = 0; day < 365; day++) {
            expected += day < 10 ? 0 : 500 * months.get(FIRST.plusDays(day).getMonthValue() - 1);
            assertEquals(day < 10, days.useLitres(day) == 0, "day " + day);
        }
        assertEquals(expected, days.sumLitres(), 1e-6);
        assertEquals(700, model.busiestMonthMeans().litres(DayOfWeek.MONDAY), 1e-9);
    }

    @Test
    void anyYearCanBeSimulatedAtAnyTime() {
        UseModel model = new UseModel(WeekdayMeans.everyDay(500), CV, UseModel.EVEN_MONTHS, Chain.USUAL);
        Days seventh = kept(new SampledYear(model, FIRST, 365, 9).draw(7));
        SampledYear again = new SampledYear(model, FIRST, 365, 9);
        again.draw(3);
        assertEquals(seventh, kept(again.draw(7)));
        assertNotEquals(seventh, kept(again.draw(8)));
        assertNotEquals(seventh, kept(new SampledYear(model, FIRST, 365, 10).draw(7)));
        SampledYears years = new SampledYears(model, FIRST, 8, 9);
        DailyUse last = years.year(7);
        years.year(0);
        assertEquals(seventh, kept(last), "one that is kept stays when another is simulated");
        assertEquals(seventh, kept(years.year(7)));
        assertEquals(8, years.count());
    }

    private static Days kept(DailyUse drawn) {
        return Days.series(drawn.firstDate(), IntStream.range(0, drawn.size()).mapToDouble(drawn::useLitres).toArray());
    }

    @Test
    void refusesWhatMakesNoSense() {
        assertThrows(IllegalArgumentException.class, () -> new Chain(0, 0.3));
        assertThrows(IllegalArgumentException.class, () -> new Chain(0.1, 1.1));
        assertThrows(IllegalArgumentException.class, () -> new Spell(FIRST, FIRST.minusDays(1)));
        assertThrows(IllegalArgumentException.class, () -> new UseModel(WeekdayMeans.everyDay(1), CV, List.of(1.0),
                Occupancy.ALWAYS));
        assertThrows(IllegalArgumentException.class, () -> new UseModel(WeekdayMeans.everyDay(1), CV,
                java.util.Collections.nCopies(12, -1.0), Occupancy.ALWAYS));
        assertThrows(IllegalArgumentException.class, () -> new SampledYear(new UseModel(WeekdayMeans.everyDay(1), CV), FIRST, 0,
                1));
        assertTrue(Occupancy.ALWAYS.first(FIRST, null));
    }
}
