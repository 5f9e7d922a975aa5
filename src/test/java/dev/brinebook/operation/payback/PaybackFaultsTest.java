// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.path.json.JsonPath;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faults that only the parts together show, each at its pointer. */
class PaybackFaultsTest {

    private static final String COST = "\"retrofit\": {\"cost\": {\"value\": 350, \"unit\": \"USD\"}}";
    private static final String USE = "{\"saltPerYear\": {\"value\": 9, \"unit\": \"lb\"},"
            + " \"waterPerYear\": {\"value\": 9, \"unit\": \"gal\"}}";
    private static final String YEARS = "\"asFound\": " + USE + ", \"converted\": " + USE;
    private static final String TRIAL = "\"water\": {\"hardness\": {\"value\": 20, \"unit\": \"gpg\"}},"
            + " \"household\": {\"people\": 4}, \"softener\": {\"resinVolume\": {\"value\": 1, \"unit\": \"ft3\"},"
            + " \"control\": {\"kind\": \"clock\", \"everyDays\": 4}}, \"metered\": {\"kind\": \"meteredDelayed\"}";

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {#cost}                                              | /asFound:missing
            {#years}                                             | /retrofit:missing
            {"asFound": #use, #cost}                             | /converted:missing
            {"converted": #use, #cost}                           | /asFound:missing
            {#years, "water": {"hardness": {"value": 20, "unit": "gpg"}}, #cost} | /water:inconsistent
            {#years, #trial, #cost}                              | /household:inconsistent /metered:inconsistent /softener:inconsistent /water:inconsistent
            {#years, "meteredSaltDose": {"value": 6, "unit": "lb/ft3"}, #cost} | /meteredSaltDose:inconsistent
            {"asFound": 5, "metered": {"kind": "meteredDelayed"}, #cost} | /asFound:wrongType /converted:missing /metered:inconsistent
            {"household": {"people": 4}, #cost}                  | /metered:missing /softener:missing /water:missing
            {"meteredSaltDose": {"value": 6, "unit": "lb/ft3"}, #cost} | /asFound:missing
            {#trial, "meteredSaltDose": {"value": 2.9, "unit": "lb/ft3"}, #cost} | /meteredSaltDose:outOfRange
            {#trial, "meteredSaltDose": {"value": 330, "unit": "g/L"}, #cost} | /meteredSaltDose:outOfRange
            {"asFound": {"saltPerYear": {"value": -1, "unit": "lb"}}, "converted": #use, #cost} | /asFound/saltPerYear/value:outOfRange /asFound/waterPerYear:missing
            """)
    void reportsMixedAndIncompleteRequests(String body, String faults) {
        assertFaults(body, faults);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "kind": "meteredDelayed"} | "kind": "clock", "everyDays": 5} | /metered/kind:inconsistent
            , "control": {"kind": "clock", "everyDays": 4} |             | /softener/control:missing
            "value": 20               | "value": 0.05                    | /water:impossible
            """)
    void reportsFaultsOfATrial(String part, String changed, String faults) {
        assertFaults("{" + TRIAL.replace(part, changed == null ? "" : changed) + ", " + COST + "}", faults);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"cost": {"value": 350, "unit": "EUR"}}                           | /retrofit/cost:inconsistent
            {"cost": {"value": 350, "unit": "XQX"}}                           | /retrofit/cost/unit:unknownValue
            {"cost": {"value": -1, "unit": "USD"}}                            | /retrofit/cost/value:outOfRange
            {"cost": {"value": 1e10, "unit": "USD"}}                          | /retrofit/cost/value:outOfRange
            {"cost": {"value": 1e-200, "unit": "USD"}}                        | /retrofit/cost:outOfRange
            {"cost": {"value": 9.00001, "unit": "USD"}}                       | /retrofit/cost:outOfRange
            {"cost": {"value": 9, "unit": "USD"}, "rebate": {"value": 10, "unit": "USD"}} | /retrofit/rebate:inconsistent
            {"cost": {"value": 9, "unit": "USD"}, "rebate": {"value": 1, "unit": "EUR"}} | /retrofit/rebate:inconsistent
            {"cost": {"value": 9, "unit": "USD"}, "rebate": {"value": -1, "unit": "USD"}} | /retrofit/rebate/value:outOfRange
            {"cost": {"value": 9, "unit": "USD"}, "rebate": {"unit": "USD"}}  | /retrofit/rebate/value:missing
            {"rebate": {"value": 1, "unit": "USD"}}                           | /retrofit/cost:missing
            {"cost": {"value": 9, "unit": "USD"}, "horizonYears": 0}          | /retrofit/horizonYears:outOfRange
            {"cost": {"value": 9, "unit": "USD"}, "horizonYears": 41}         | /retrofit/horizonYears:outOfRange
            """)
    void reportsFaultsOfTheCost(String retrofit, String faults) {
        assertFaults("{" + YEARS + ", \"retrofit\": " + retrofit + "}", faults);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"serviceVisit": {"value": 80, "unit": "EUR"}} | /prices:inconsistent
            {"serviceVisit": {"value": 80, "unit": "XQX"}} | /prices/serviceVisit/unit:unknownValue
            {"serviceVisit": 80}                           | /prices/serviceVisit:wrongType
            """)
    void looksAtTheCurrencyOnlyOfSoundPrices(String prices, String faults) {
        assertFaults("{" + YEARS + ", " + COST + ", \"prices\": " + prices + "}", faults);
    }

    private static void assertFaults(String template, String faults) {
        String body = template.replace("#cost", COST).replace("#years", YEARS).replace("#use", USE).replace("#trial", TRIAL);
        JsonPath problem = Paybacks.post(body).then().statusCode(422).extract().jsonPath();
        assertEquals(faults, String.join(" ", problem.getList("errors.collect {it.pointer + ':' + it.code}", String.class)));
    }
}
