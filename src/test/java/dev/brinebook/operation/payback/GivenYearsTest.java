// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import io.restassured.path.json.JsonPath;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** A year's use before and after, as given, over HTTP. */
class GivenYearsTest {

    private static final String CLOCK_AGAINST_METER = "/payback/worked-clock-against-meter.csv";
    /** Where the answer holds the measures of the worked case. */
    private static final Map<String, String> PROPERTIES = Map.of("clockRegenerations", "asFound.regenerations",
            "meterRegenerations", "converted.regenerations", "clockSaltPounds", "asFound.salt.value", "meterSaltPounds",
            "converted.salt.value", "clockWaterGallons", "asFound.water.value", "meterWaterGallons",
            "converted.water.value", "savingPerYear", "payback.firstYearSaving.total.value", "simplePaybackYears",
            "payback.simplePaybackYears.value");
    private static final double METERED_REGENERATIONS = 365 * 3000.0 / 17_000;

    @ParameterizedTest
    @CsvFileSource(resources = CLOCK_AGAINST_METER, useHeadersInDisplayName = true)
    void agreesWithTheWorkedCase(String measure, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, decimal(workedCase(), PROPERTIES.get(measure)).doubleValue());
    }

    @Test
    void readsEveryRowOfTheWorkedCase() {
        assertEquals(PROPERTIES.size(), Rows.in(CLOCK_AGAINST_METER));
    }

    @Test
    void summarisesTheWorkedCaseInASentence() {
        JsonPath answer = workedCase();
        assertEquals("Converting saves 115\u00a0USD in the first year and pays back in 3 years.",
                answer.getString("summary"));
        assertEquals("annualAverages", answer.getString("comparedBy"));
        assertNull(answer.get("savingByChange"));
        assertNull(answer.get("asFound.hardDays"));
        assertEquals("USD", answer.getString("payback.firstYearSaving.salt.unit"));
        assertTrue(answer.getList("cautions.code").containsAll(
                List.of("sewerSaltLimits", "powerAndPressure", "localCodeDecides", "settingsBeforeParts")));
    }

    /** Source: arithmetic on the worked case, 1,341.91 gal at 0.42 and 0.58 of 14 per 1,000 gal; 526.03 lb at 0.18. */
    @Test
    void splitsTheSavingByItem() {
        JsonPath answer = workedCase();
        assertEquals(new BigDecimal("94.69"), decimal(answer, "payback.firstYearSaving.salt.value"));
        assertEquals(new BigDecimal("7.89"), decimal(answer, "payback.firstYearSaving.water.value"));
        assertEquals(new BigDecimal("10.90"), decimal(answer, "payback.firstYearSaving.sewer.value"));
        assertEquals(new BigDecimal("0.00"), decimal(answer, "payback.firstYearSaving.service.value"));
    }

    /** Source: the definition of the net present value. */
    @Test
    void endsItsTableOfYearsOnTheNetPresentValue() {
        JsonPath answer = workedCase();
        assertEquals(11, answer.getList("payback.cashFlows").size());
        assertEquals(new BigDecimal("-350.00"), decimal(answer, "payback.cashFlows[0].cashFlow.value"));
        assertEquals(new BigDecimal("113.47"), decimal(answer, "payback.cashFlows[1].cashFlow.value"));
        assertEquals(decimal(answer, "payback.netPresentValue.value"),
                decimal(answer, "payback.cashFlows[10].cumulative.value"));
    }

    /** Source: the file; published by the Region of Waterloo as paid back within 2 years. */
    @ParameterizedTest
    @CsvSource({"50, 1.79", "0, 2.38"})
    void agreesWithThePublishedRebate(String rebate, String years) {
        JsonPath answer = savingOf("84", "200", rebate, "USD");
        Printed.assertAgrees(years, null, decimal(answer, "payback.simplePaybackYears.value").doubleValue());
        assertEquals(new BigDecimal("84.00"), decimal(answer, "payback.firstYearSaving.total.value"));
    }

    /** Source: Apache POI 5.5.1, see cross-conversion.csv: 350 invested, 90 saved, 10 years, no growth, 5 %. */
    @Test
    void agreesWithASpreadsheet() {
        JsonPath answer = Paybacks.answer(body("90", "0", "400", "50", "USD").replace("\"prices\": {",
                "\"prices\": {\"growthPercentPerYear\": 0, \"discountPercentPerYear\": 5, "));
        assertEquals(new BigDecimal("344.96"), decimal(answer, "payback.netPresentValue.value"));
        Printed.assertAgrees("3.8889", null, decimal(answer, "payback.simplePaybackYears.value").doubleValue());
        Printed.assertAgrees("4.4377", null, decimal(answer, "payback.discountedPaybackYears.value").doubleValue());
        Printed.assertAgrees("22.2714", null,
                decimal(answer, "payback.internalRateOfReturnPercent.value").doubleValue());
        Printed.assertAgrees("1.98559", null, decimal(answer, "payback.savingsToInvestmentRatio.value").doubleValue());
        Printed.assertAgrees("12.4549", null,
                decimal(answer, "payback.adjustedRateOfReturnPercent.value").doubleValue());
        assertEquals(1, answer.getInt("payback.signChanges"));
        assertFalse(answer.getBoolean("payback.severalRates"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            100 | 100 | Converting saves nothing in the first year, so there is no payback.
            100 | 112 | Converting costs 12\u00a0USD more in the first year, so it does not pay.
            """)
    void hasNoPaybackWhereNothingIsSaved(String before, String after, String summary) {
        JsonPath answer = Paybacks.answer(body(before, after, "350", "0", "USD"));
        assertEquals(summary, answer.getString("summary"));
        for (String figure : List.of("simplePaybackYears", "discountedPaybackYears", "adjustedRateOfReturnPercent")) {
            assertNull(answer.get("payback." + figure + ".value"), figure);
            assertEquals("nothingSaved", answer.getString("payback." + figure + ".reason"), figure);
            assertNotNull(answer.getString("payback." + figure + ".why"), figure);
        }
        assertEquals("noSignChange", answer.getString("payback.internalRateOfReturnPercent.reason"));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "350, 350"})
    void hasNoReturnWhereNothingIsInvested(String cost, String rebate) {
        JsonPath answer = savingOf("84", cost, rebate, "USD");
        assertEquals("Converting saves 84\u00a0USD in the first year. Nothing is invested, so there is nothing to pay back.",
                answer.getString("summary"));
        for (String figure : List.of("simplePaybackYears", "discountedPaybackYears", "internalRateOfReturnPercent",
                "savingsToInvestmentRatio", "adjustedRateOfReturnPercent")) {
            assertEquals("noInvestment", answer.getString("payback." + figure + ".reason"), figure);
        }
        assertTrue(decimal(answer, "payback.netPresentValue.value").signum() > 0);
    }

    /** Ten years are the usual horizon: 500 over 50 lies on it, 550 over 50 beyond; both by the rule of the other measures. */
    @ParameterizedTest
    @CsvSource({"500, 10, ", "550, , notWithinHorizon", "2500, , notWithinHorizon", "10000, , notWithinHorizon"})
    void aSimplePaybackIsGivenUpToTheHorizon(String cost, Integer years, String reason) {
        JsonPath answer = savingOf("50", cost, "0", "USD");
        assertEquals(years, answer.get("payback.simplePaybackYears.value"), cost);
        assertEquals(reason, answer.getString("payback.simplePaybackYears.reason"), cost);
    }

    @Test
    void saysWhenASavingIsTooSmallToCount() {
        JsonPath answer = savingOf("1", "350", "0", "USD");
        assertEquals("Converting saves 1\u00a0USD in the first year. The savings do not cover the cost within 10 years.",
                answer.getString("summary"));
        assertEquals("notWithinHorizon", answer.getString("payback.simplePaybackYears.reason"));
    }

    /** Source: ISO 4217, minor units: the euro and the dinar of Kuwait have 2 and 3 decimals, the yen none. */
    @ParameterizedTest
    @CsvSource({"EUR, 84.00", "KWD, 84.000", "JPY, 84"})
    void answersInTheCurrencyOfThePrices(String currency, String saving) {
        JsonPath answer = savingOf("84", "200", "50", currency);
        assertEquals(new BigDecimal(saving), decimal(answer, "payback.firstYearSaving.total.value"));
        assertEquals(currency, answer.getString("payback.netPresentValue.unit"));
    }

    @Test
    void countsServiceVisitsAtTheirPrice() {
        String body = body("0", "0", "350", "0", "USD")
                .replaceFirst("\"unit\": \"L\"}", "\"unit\": \"L\"}, \"serviceVisitsPerYear\": 1.5");
        JsonPath answer = Paybacks.answer(body);
        assertEquals(new BigDecimal("150.00"), decimal(answer, "payback.firstYearSaving.service.value"));
        assertEquals(new BigDecimal("1.5"), decimal(answer, "difference.serviceVisits"));
        assertNull(answer.get("difference.regenerations"));
    }

    @ParameterizedTest
    @CsvSource({"0, true, false", "2, false, true"})
    void warnsOfTheDischargeThatTheSewerPriceShows(String sewer, boolean septicSystem, boolean sewerLimits) {
        List<String> codes = Paybacks.answer(body("84", "0", "200", "0", "USD").replace("\"sewer\": {\"price\": {\"value\": 0",
                "\"sewer\": {\"price\": {\"value\": " + sewer)).getList("cautions.code");
        assertEquals(septicSystem, codes.contains("septicSystem"));
        assertEquals(sewerLimits, codes.contains("sewerSaltLimits"));
    }

    private static JsonPath workedCase() {
        return Paybacks.answer(String.format(Locale.ROOT, """
                {"asFound": {"saltPerYear": {"value": 912.5, "unit": "lb"}, "waterPerYear": {"value": 4562.5, "unit": "gal"},
                  "regenerationsPerYear": 91.25},
                "converted": {"saltPerYear": {"value": %.9f, "unit": "lb"}, "waterPerYear": {"value": %.9f, "unit": "gal"},
                  "regenerationsPerYear": %.9f},
                "retrofit": {"cost": {"value": 350, "unit": "USD"}},
                "prices": {"saltBag": {"price": {"value": 7.2, "unit": "USD"}, "mass": {"value": 40, "unit": "lb"}},
                  "water": {"price": {"value": 5.88, "unit": "USD"}, "per": {"value": 1000, "unit": "gal"}},
                  "sewer": {"price": {"value": 8.12, "unit": "USD"}, "per": {"value": 1000, "unit": "gal"}}}}
                """, METERED_REGENERATIONS * 6, METERED_REGENERATIONS * 50, METERED_REGENERATIONS));
    }

    private static JsonPath savingOf(String amount, String cost, String rebate, String currency) {
        return Paybacks.answer(body(amount, "0", cost, rebate, currency));
    }

    /** Two uses of salt, at one unit of currency per kilogram. */
    private static String body(String before, String after, String cost, String rebate, String currency) {
        return """
                {"asFound": {"saltPerYear": {"value": #before, "unit": "kg"}, "waterPerYear": {"value": 0, "unit": "L"}},
                "converted": {"saltPerYear": {"value": #after, "unit": "kg"}, "waterPerYear": {"value": 0, "unit": "L"}},
                "retrofit": {"cost": {"value": #cost, "unit": "#cur"}, "rebate": {"value": #rebate, "unit": "#cur"}},
                "prices": {"saltBag": {"price": {"value": 25, "unit": "#cur"}, "mass": {"value": 25, "unit": "kg"}},
                  "water": {"price": {"value": 1, "unit": "#cur"}, "per": {"value": 1, "unit": "m3"}},
                  "sewer": {"price": {"value": 0, "unit": "#cur"}, "per": {"value": 1, "unit": "m3"}}},
                "units": "metric"}
                """.replace("#before", before).replace("#after", after).replace("#cost", cost).replace("#rebate", rebate)
                .replace("#cur", currency);
    }

    private static BigDecimal decimal(JsonPath answer, String path) {
        return new BigDecimal(answer.get(path).toString());
    }
}
