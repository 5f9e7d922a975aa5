// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.household.Days;
import dev.brinebook.household.HouseholdFit;
import dev.brinebook.household.MeteredDays;
import dev.brinebook.household.RealHome;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Predictions and replays on 45 real homes of open data, [DAIAD], CC BY-SA 4.0: first against an independent program's numbers for
 * each home ({@code cross-backtest.csv}), then against what the homes did.
 *
 * <p>In litres a bed of capacity B grams in water of 1,000 mg/L is B litres, so that hardness does not matter.
 */
class RealHomesTest {

    private static final String CHECKED = "/regeneration/cross-backtest.csv";
    private static final double HARDNESS = 1_000;
    private static final int OVERRIDE_DAYS = 14;
    private static final int CLOCK_DAYS = 5;
    private static final Map<String, RealHome> HOMES = RealHome.all().stream().collect(Collectors.toMap(RealHome::name,
            Function.identity()));

    /** A half of a home's days that a model is fitted to, and the other half that tries what it advised. */
    private record Half(MeteredDays fitted, MeteredDays tried) {

        int triedDays() {
            return tried.known().length;
        }
    }

    private static List<Half> halves() {
        return HOMES.values().stream().flatMap(home -> Stream.of(new Half(home.firstHalf(), home.secondHalf()),
                new Half(home.secondHalf(), home.firstHalf()))).toList();
    }

    private static Regeneration bed(double litres) {
        return new Regeneration(litres, 1, 1, 80);
    }

    @Test
    void noHomeIsMissing() {
        assertEquals(45, HOMES.size());
        assertEquals(45, Rows.in(CHECKED));
        assertEquals(17_243, Rows.in(RealHome.TABLE));
    }

    static List<CSVRecord> checked() {
        return RealHome.rows(CHECKED);
    }

    @ParameterizedTest
    @MethodSource("checked")
    void fitsAHomeAsTheOtherProgramDoes(CSVRecord row) {
        RealHome home = HOMES.get(row.get("home"));
        HalfYearFit fit = HalfYearFit.of(home.firstHalf(), home.absenceLitres());
        assertEquals(Integer.parseInt(row.get("days")), home.days().known().length);
        assertEquals(Integer.parseInt(row.get("trainDays")), home.firstHalf().known().length);
        agrees(row, "meanOccupied", fit.meanLitres());
        agrees(row, "cvWithinWeekday", fit.cv());
        agrees(row, "leave", fit.leave());
        agrees(row, "return", fit.comeBack());
        List<String> weekdays = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
        for (int weekday = 0; weekday < weekdays.size(); weekday++) {
            agrees(row, weekdays.get(weekday), fit.weekdays()[weekday]);
        }
        agrees(row, "V", 7 * fit.meanLitres());
        agrees(row, "reserveQ90Busiest", new Reserve.PercentileDay(0.9).litres(7 * fit.meanLitres(), fit.model().means(), fit.cv()));
    }

    private static void agrees(CSVRecord row, String column, double actual) {
        Printed.assertAgrees(row.get(column), "6e-5", actual);
    }

    /** 0.1 % of the regenerations and 0.05 hard days: what two programs that count in lattices of their own may differ by. */
    @ParameterizedTest
    @MethodSource("checked")
    void predictsAHomeAsTheOtherProgramDoes(CSVRecord row) {
        RealHome home = HOMES.get(row.get("home"));
        HalfYearFit fit = HalfYearFit.of(home.firstHalf(), home.absenceLitres());
        LongRun longRun = LongRun.of(fit.model());
        double meterLitres = 7 * fit.meanLitres();
        for (String rule : List.of("Q90", "Std1")) {
            YearlyTotals year = longRun.year(meter(meterLitres, reserve(row, rule)), HARDNESS, bed(meterLitres));
            Printed.assertAgrees(row.get("predHard" + rule), "0.05", year.hardDays());
            Printed.assertAgrees(row.get("predRegens" + rule), "0.1 %", year.regenerations());
        }
        Printed.assertAgrees(row.get("clockPred5"), "0.05",
                longRun.hardDaysPerYear(new ClockEveryDays(CLOCK_DAYS), HARDNESS, bed(number(row, "clockBed5"))));
    }

    /**
     * To the last digit but twice. h10 is away for days on which a little is used from an exhausted bed: here these are hard days,
     * there a vacant day never is, which is 4 of 5 clocks times one day in 125. h44 is away so long that the override acts, and
     * here it counts the nights before the first day, there from none on.
     */
    @ParameterizedTest
    @MethodSource("checked")
    void replaysAHomeAsTheOtherProgramDoes(CSVRecord row) {
        RealHome home = HOMES.get(row.get("home"));
        double meterLitres = 7 * number(row, "meanOccupied");
        for (String rule : List.of("Q90", "Std1")) {
            YearlyTotals year = Replay.yearly(home.secondHalf(), HARDNESS, bed(meterLitres), meter(meterLitres, reserve(row, rule)));
            agrees(row, "obsHard" + rule, year.hardDays());
            Printed.assertAgrees(row.get("obsRegens" + rule), home.name().equals("h44") && rule.equals("Std1") ? "0.84" : "6e-5",
                    year.regenerations());
        }
        double hardDays = Replay.yearly(home.secondHalf(), HARDNESS, bed(number(row, "clockBed5")), new ClockEveryDays(CLOCK_DAYS))
                .hardDays();
        agrees(row, "clockObs5", hardDays - (home.name().equals("h10") ? 4 / 5.0 * 365 / 125 : 0));
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static double reserve(CSVRecord row, String rule) {
        return number(row, rule.equals("Q90") ? "reserveQ90Busiest" : "reserveStd1");
    }

    private static MeteredDelayed meter(double meterLitres, double reserveLitres) {
        return new MeteredDelayed(meterLitres, reserveLitres, OVERRIDE_DAYS);
    }

    /**
     * Where at most one hard day a year is asked for, the other half of the days has about one: 0.7 to 1.3 over all homes, whose
     * sample holds some 85 of them; a meter of 5, 7 or 9 mean days.
     */
    @Execution(ExecutionMode.CONCURRENT)
    @ParameterizedTest
    @CsvSource({"5, true", "7, true", "9, true", "5, false", "7, false", "9, false"})
    void aReserveKeepsItsPromiseOnTheOtherHalf(int meanDays, boolean asFitted) {
        double hardDays = observed(asFitted, (half, model) -> {
            double meterLitres = meanDays * model.means().meanLitres();
            LongRun longRun = LongRun.of(model);
            double reserve = smallest(meterLitres, litres ->
                    longRun.hardDaysPerYear(meter(meterLitres, litres), HARDNESS, bed(meterLitres)) <= 1);
            return Replay.yearly(half.tried(), HARDNESS, bed(meterLitres), meter(meterLitres, reserve)).hardDays();
        });
        assertTrue(hardDays > 0.7 && hardDays < 1.3, hardDays + " hard days");
    }

    /** A clock adds up days that are somewhat alike, and feels every slow change: 5.5 without level and correlation. */
    @Execution(ExecutionMode.CONCURRENT)
    @ParameterizedTest
    @CsvSource({"true", "false"})
    void aClockOfFiveDaysKeepsItsPromiseWithinTwice(boolean asFitted) {
        double hardDays = observed(asFitted, (half, model) -> {
            LongRun longRun = LongRun.of(model);
            Policy clock = new ClockEveryDays(CLOCK_DAYS);
            double bedLitres = smallest(50 * model.means().meanLitres(), litres ->
                    litres > 0 && longRun.hardDaysPerYear(clock, HARDNESS, bed(litres)) <= 1);
            return Replay.yearly(half.tried(), HARDNESS, bed(bedLitres), clock).hardDays();
        });
        assertTrue(hardDays < 2.2, hardDays + " hard days");
    }

    /**
     * A verdict that the prediction was wrong is rare where it is right: at most one half-year in ten, of the two tails that hold
     * one in ten. One level for all homes would have 8 to 10 of 90 half-years outside of the range.
     */
    @Execution(ExecutionMode.CONCURRENT)
    @ParameterizedTest
    @CsvSource({"1", "1.5", "2"})
    void fewHalfYearsAreOutsideTheUsualRange(double reserveMeanDays) {
        int outside = 0;
        for (Half half : halves()) {
            UseModel model = fit(half.fitted(), false);
            double mean = model.means().meanLitres();
            Policy policy = meter(7 * mean, reserveMeanDays * mean);
            double seen = Replay.yearly(half.tried(), HARDNESS, bed(7 * mean), policy).in(half.triedDays()).hardDays();
            outside += UsualHardDays.of(model, policy, HARDNESS, bed(7 * mean), half.triedDays()).verdict(seen)
                    == UsualHardDays.Verdict.AS_PREDICTED ? 0 : 1;
        }
        assertTrue(outside <= 9, outside + " of 90 half-years");
    }

    /**
     * What a meter saves on the bed of a clock, both set for one hard day a year, as it came to be on the other halves: between 25
     * and 50 % of the salt over a clock set once, the range of published field figures; less over one that is set again as the
     * season asks; and hardly a half-year in which the clock took less (4 % in the study that the model is from).
     */
    @Execution(ExecutionMode.CONCURRENT)
    @ParameterizedTest
    @CsvSource({"3", "4", "5", "7"})
    void aMeterSavesWhatTheFieldReports(int clockDays) {
        double clock = 0;
        double seasonal = 0;
        double meter = 0;
        int clockTookLess = 0;
        for (Half half : halves()) {
            LongRun longRun = LongRun.of(fit(half.fitted(), true));
            Policy byClock = new ClockEveryDays(clockDays);
            double bedLitres = smallest(40 * longRun.meanLitres(), litres ->
                    litres > 0 && longRun.hardDaysPerYear(byClock, HARDNESS, bed(litres)) <= 1);
            double reserve = smallest(bedLitres, litres ->
                    longRun.hardDaysPerYear(meter(bedLitres, litres), HARDNESS, bed(bedLitres)) <= 1);
            double metered = Replay.yearly(half.tried(), HARDNESS, bed(bedLitres), meter(bedLitres, reserve)).regenerations();
            double bedDays = bedLitres * half.triedDays();
            clock += bedDays * Days.PER_YEAR / clockDays;
            meter += bedDays * metered;
            clockTookLess += metered > Days.PER_YEAR / (double) clockDays ? 1 : 0;
            for (LongRun.Season season : longRun.seasons()) {
                LongRun then = longRun.ifItStays().times(season.level());
                int longest = 1;
                while (longest < OVERRIDE_DAYS && then.hardDaysPerYear(new ClockEveryDays(longest + 1), HARDNESS, bed(bedLitres)) <= 1) {
                    longest++;
                }
                seasonal += bedDays * season.share() * Days.PER_YEAR / longest;
            }
        }
        double overOnce = 1 - meter / clock;
        double overSeasonal = 1 - meter / seasonal;
        assertTrue(overOnce > 0.25 && overOnce < 0.5, overOnce + " over a clock set once");
        assertTrue(overSeasonal > 0.15 && overSeasonal < overOnce + 0.03, overSeasonal + " over one set every season");
        assertTrue(clockTookLess <= 0.04 * 90, clockTookLess + " of 90 half-years");
    }

    /** The household by its first half, as certain as its days make it or with the usual level of a measured use. */
    private static UseModel fit(MeteredDays days, boolean asFitted) {
        UseModel model = HouseholdFit.of(days, OptionalDouble.empty()).model();
        return asFitted ? model : model.with(new UseChange(UseChange.USUAL_LEVEL_SPREAD, 0, UseChange.USUAL_DAY_CORRELATION));
    }

    private static double observed(boolean asFitted, ToDoubleBiFunction<Half, UseModel> hardDaysPerYear) {
        double sum = 0;
        double days = 0;
        for (Half half : halves()) {
            sum += half.triedDays() * hardDaysPerYear.applyAsDouble(half, fit(half.fitted(), asFitted));
            days += half.triedDays();
        }
        return sum / days;
    }

    /** The smallest volume that is enough, to one part in 4,096 of the largest, which is taken where none is. */
    private static double smallest(double largest, DoublePredicate enough) {
        double low = 0;
        double high = largest;
        int halvings = enough.test(largest) ? 12 : 0;
        for (int halving = 0; halving < halvings; halving++) {
            double middle = (low + high) / 2;
            if (enough.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }
}
