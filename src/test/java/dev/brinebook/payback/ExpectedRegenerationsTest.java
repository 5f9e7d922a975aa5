package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.Exact;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ExpectedRegenerationsTest {

    private static final double GRAIN_GRAMS = Exact.GRAIN_MILLIGRAMS / 1_000;
    private static final double POUND = Exact.POUND_KILOGRAMS;
    private static final double GALLON = Exact.US_GALLON_LITRES;

    @ParameterizedTest
    @CsvFileSource(resources = "/payback/worked-clock-against-meter.csv", useHeadersInDisplayName = true)
    void agreesWithTheWorkedCase(String measure, String expected, String tolerance) {
        YearlyUse clock = new PerRegeneration(10 * POUND, 50 * GALLON).inOneYear(ExpectedRegenerations.byClock(4), 0);
        YearlyUse meter = new PerRegeneration(6 * POUND, 50 * GALLON).inOneYear(ExpectedRegenerations.byMeter(
                3_000 * GRAIN_GRAMS, 20_000 * GRAIN_GRAMS, 3_000 * GRAIN_GRAMS), 0);
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

    @ParameterizedTest
    @CsvFileSource(resources = "/payback/published-run-length.csv", useHeadersInDisplayName = true)
    void agreesWithPublishedRunLengths(double dailyLoadGrains, double capacityGrains, String expectedDays,
            String tolerance) {
        double perYear = ExpectedRegenerations.byMeter(dailyLoadGrains * GRAIN_GRAMS, capacityGrains * GRAIN_GRAMS, 0);
        Printed.assertAgrees(expectedDays, tolerance, 365 / perYear);
    }

    @Test
    void readsEveryRow() {
        assertEquals(8, Rows.in("/payback/worked-clock-against-meter.csv"));
        assertEquals(1, Rows.in("/payback/published-run-length.csv"));
    }

    @Test
    void regeneratesNeverWithoutALoadAndDailyAtMostByClock() {
        assertEquals(0, ExpectedRegenerations.byMeter(0, 1_000, 100));
        assertEquals(365, ExpectedRegenerations.byClock(1));
        assertEquals(1, ExpectedRegenerations.byClock(365));
    }

    @Test
    void refusesWhatLiesOutsideItsRange() {
        assertThrows(IllegalArgumentException.class, () -> ExpectedRegenerations.byClock(0.9));
        assertThrows(IllegalArgumentException.class, () -> ExpectedRegenerations.byMeter(-1, 1_000, 0));
        assertThrows(IllegalArgumentException.class, () -> ExpectedRegenerations.byMeter(1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> ExpectedRegenerations.byMeter(1, 1_000, 1_000));
        assertThrows(IllegalArgumentException.class, () -> ExpectedRegenerations.byMeter(1, 1_000, -1));
        assertThrows(IllegalArgumentException.class, () -> new PerRegeneration(-1, 0));
        assertThrows(IllegalArgumentException.class, () -> new PerRegeneration(0, Double.NaN));
    }
}
