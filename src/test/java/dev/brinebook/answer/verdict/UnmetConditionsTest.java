// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.verdict;

import static org.hamcrest.Matchers.contains;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.http.TestServer;
import java.io.IOException;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Conditions that are not met are part of what converting costs: first cost is all costs of having a thing, [NIST-HB135]. The house
 * is invented; 420 USD less a rebate of 50.
 */
class UnmetConditionsTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String HOUSE = """
            "water": {"hardness": {"value": 20, "unit": "gpg"}}, "household": {"people": 4},
            "softener": {"resinVolume": {"value": 1.5, "unit": "ft3"}, "tankDiameter": {"value": 10, "unit": "in"},
              "tankHeight": {"value": 54, "unit": "in"}, "control": {"kind": "clock", "everyDays": 2}}""";
    private static final String CONVERSION = """
            , "retrofit": {"cost": {"value": 420, "unit": "USD"}, "rebate": {"value": 50, "unit": "USD"}}""";
    private static final String METERED = ", \"metered\": {\"kind\": \"meteredDelayed\"}";

    private static String request(String site, String more) {
        return "{" + HOUSE + CONVERSION + more + ", \"site\": " + site.replaceAll("#(\\d+\\.?\\d*)",
                "{\"value\": $1, \"unit\": \"USD\"}") + "}";
    }

    private static JsonNode answer(String path, String request) {
        try {
            return JSON.readTree(TestServer.post(path + "?detail=full", request).statusCode(200).extract().asString());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static JsonNode convert(JsonNode answer) {
        return StreamSupport.stream(answer.at("/verdict/ladder").spliterator(), false)
                .filter(rung -> rung.get("step").asText().equals("convert")).findFirst().orElseThrow();
    }

    /** By hand: 420 + prices of what is not met - 50. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {}                                                                                                | 370   | ``
            {"bypass": false, "prices": {"bypass": #60}}                                                      | 430   | ``
            {"bypass": false, "prices": {"bypass": #0}}                                                       | 370   | ``
            {"bypass": false}                                                                                 | 370   | bypass
            {"bypass": true, "prices": {"bypass": #60}}                                                       | 370   | ``
            {"prices": {"bypass": #60}}                                                                       | 370   | ``
            {"surgeProtection": false, "powerWithinReach": false, "prices": {"powerWithinReach": #180}}       | 550   | surge protector
            {"drain": true, "drainFlow": {"value": 1.5, "unit": "gpm"}, "prices": {"drain": #120.5}}          | 490.5 | ``
            {"drain": true, "drainFlow": {"value": 6, "unit": "gpm"}, "prices": {"drain": #120.5}}            | 370   | ``
            """)
    void theFirstCostHoldsThemInEveryOperation(String site, double firstCost, String lacks) {
        JsonNode assessed = answer("/v1/assessment", request(site, ""));
        JsonNode paid = answer("/v1/retrofit-payback", request(site, METERED));
        JsonNode reviewed = answer("/v1/settings-review", request(site, ""));
        for (JsonNode answer : List.of(assessed, paid, reviewed)) {
            assertEquals(firstCost, convert(answer).at("/firstCost/value").doubleValue(), 1e-9);
            assertEquals(lacks, convert(answer).at("/firstCostLacks/0").asText());
            assertEquals(convert(assessed), convert(answer));
            assertEquals(!lacks.isEmpty(), answer.at("/verdict").toString().contains("Not included in the price: " + lacks + "."));
        }
        assertEquals(firstCost, assessed.at("/retrofit/payback/investment/value").doubleValue(), 1e-9);
        assertEquals(firstCost, paid.at("/payback/investment/value").doubleValue(), 1e-9);
        assertEquals(assessed.at("/readiness"), paid.at("/readiness"));
    }

    @Test
    void namesConditionsWithoutAPrice() {
        JsonNode answer = answer("/v1/assessment", request("{\"bypass\": false, \"surgeProtection\": false,"
                + " \"prices\": {\"bypass\": #60}}", ""));
        assertEquals(60, answer.at("/readiness/6/price/value").intValue());
        assertTrue(answer.at("/readiness/6/priced").booleanValue());
        assertEquals("surgeProtection", answer.at("/readiness/5/condition").asText());
        assertTrue(answer.at("/readiness/5/price").isMissingNode() && !answer.at("/readiness/5/priced").booleanValue());
        assertTrue(answer.at("/readiness/0/priced").isMissingNode(), "nobody looked");
        assertTrue(answer.at("/assumptions").toString().contains("/site/prices/surgeProtection"));
    }

    /** The cycle is for the drain as it is, and the condition for the backwash that the bed wants. */
    @Test
    void aSmallDrainRulesTheCycleUntilItIsPaidFor() {
        JsonNode answer = answer("/v1/assessment", request("{\"drain\": true, \"drainFlow\": {\"value\": 1.5, \"unit\": \"gpm\"}}", ""));
        assertEquals("drain", answer.at("/cycle/backwash/rule").asText());
        assertEquals(1.5, answer.at("/cycle/backwash/flow/value").doubleValue(), 1e-5);
        assertEquals("notMet", answer.at("/readiness/1/state").asText());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"prices": {"bypass": {"value": 60, "unit": "EUR"}}}    | /site/prices/bypass
            {"prices": {"bypass": {"value": 60, "unit": "XQX"}}}    | /site/prices/bypass/unit
            {"prices": {"bypass": {"value": -1, "unit": "USD"}}}    | /site/prices/bypass/value
            {"prices": {"resin": {"value": 1e9, "unit": "USD"}}}    | /site/prices
            {"prices": {"roof": {"value": 1, "unit": "USD"}}}       | /site/prices/roof
            {"drainFlow": {"value": 0, "unit": "gpm"}}              | /site/drainFlow/value
            """)
    void refusesWhatCannotBeAdded(String site, String pointer) {
        TestServer.post("/v1/assessment", request(site, "")).statusCode(422).body("errors.pointer", contains(pointer));
        TestServer.post("/v1/retrofit-payback", request(site, METERED)).statusCode(422).body("errors.pointer", contains(pointer));
    }

    @Test
    void aSiteHasNoPlaceBesideYearsThatAreGiven() {
        String use = "{\"saltPerYear\": {\"value\": 9, \"unit\": \"lb\"}, \"waterPerYear\": {\"value\": 9, \"unit\": \"gal\"}}";
        TestServer.post("/v1/retrofit-payback", "{\"asFound\": " + use + ", \"converted\": " + use + CONVERSION
                + ", \"site\": {\"bypass\": false}}").statusCode(422).body("errors.pointer", contains("/site"));
    }
}
