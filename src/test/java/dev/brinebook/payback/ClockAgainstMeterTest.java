package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.household.Days;
import dev.brinebook.quantity.Exact;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.ExpectedInterval;
import dev.brinebook.regeneration.MeteredImmediate;
import dev.brinebook.regeneration.Policy;
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
        YearlyUse clock = yearly(ExpectedInterval.days(new ClockEveryDays(4), DAILY_LITRES, 0), 10);
        YearlyUse meter = yearly(ExpectedInterval.days(new MeteredImmediate(17 * DAILY_LITRES / 3, Policy.NO_OVERRIDE),
                DAILY_LITRES, 0), 6);
        ConversionPayback payback = ConversionPayback.of(new Conversion(clock, meter, 350, 0, 10),
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

    private static YearlyUse yearly(double intervalDays, double saltPounds) {
        double regenerations = Days.PER_YEAR / intervalDays;
        return new YearlyUse(regenerations, regenerations * saltPounds * POUND, regenerations * 50 * GALLON, 0);
    }

    @Test
    void readsEveryRow() {
        assertEquals(8, Rows.in("/payback/worked-clock-against-meter.csv"));
    }
}
