// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.quantity.Exact;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.LongRun;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.TwinAlternating;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The saving of a meter over a clock, from the number of regenerations to the payback. */
class ClockAgainstMeterTest {

    private static final double POUND = Exact.POUND_KILOGRAMS;
    private static final double GALLON = Exact.US_GALLON_LITRES;
    /** Any use: the meter counts down what is left of 20,000 gr after a reserve of 3,000 gr, at 3,000 gr a day. */
    private static final double DAILY_LITRES = 1_000;

    @ParameterizedTest
    @CsvFileSource(resources = "/payback/worked-clock-against-meter.csv", useHeadersInDisplayName = true)
    void agreesWithTheWorkedCase(String measure, String expected, String tolerance) {
        YearlyUse clock = yearly(new ClockEveryDays(4), 10);
        YearlyUse meter = yearly(new TwinAlternating(17 * DAILY_LITRES / 3, Policy.NO_OVERRIDE), 6);
        RetrofitPayback payback = RetrofitPayback.of(new Retrofit(clock, meter, 350, 0, 10),
                new Prices(0.18 / POUND, 14 * 0.42 / GALLON, 14 * 0.58 / GALLON, 0, 0, 0));
        Printed.assertAgrees(expected, tolerance, switch (measure) {
            case "clockRegenerations" -> clock.regenerationsPerYear();
            case "meterRegenerations" -> meter.regenerationsPerYear();
            case "clockSaltPounds" -> clock.saltKilograms() / POUND;
            case "meterSaltPounds" -> meter.saltKilograms() / POUND;
            case "clockWaterGallons" -> clock.waterLitres() / GALLON;
            case "meterWaterGallons" -> meter.waterLitres() / GALLON;
            case "savingPerYear" -> payback.yearlySaving().total();
            case "simplePaybackYears" -> payback.simplePaybackYears().value();
            default -> throw new IllegalArgumentException(measure);
        });
    }

    /** Pure volumes: the two beds take turns with the meter's volume over the daily use; hardness plays no part. */
    private static YearlyUse yearly(Policy policy, double saltPounds) {
        var each = new Regeneration(1, saltPounds * POUND * 1000, 50 * GALLON, 60);
        var year = LongRun.of(new UseModel(WeekdayMeans.everyDay(DAILY_LITRES), DayVariation.ofCv(0))).year(policy, 0, each);
        return new YearlyUse(year.regenerations(), year.saltGrams() / 1000, year.waterLitres(), 0);
    }

    @Test
    void readsEveryRow() {
        assertEquals(8, Rows.in("/payback/worked-clock-against-meter.csv"));
    }
}
