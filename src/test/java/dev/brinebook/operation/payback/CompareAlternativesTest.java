// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import static dev.brinebook.http.Near.exactly;
import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class CompareAlternativesTest {

    private static final String WELL = TestServer.example("compareAlternatives.well-family");
    private static final String APARTMENT = TestServer.example("compareAlternatives.apartment");

    @Test
    void holdsEveryWayAgainstTheBaseline() {
        compare(WELL).statusCode(200).body("summary", containsString("Over 10 years, \u201cmetered controller\u201d costs least: "))
                .body("baseline", equalTo("as it is"))
                .body("cheapest", not(equalTo("no softening"))).body("alternatives", hasSize(6))
                .body("alternatives[0].worth", nullValue()).body("alternatives[0].breakEven", empty())
                .body("alternatives[0].clockDays", exactly(3))
                .body("alternatives[2].worth.investment.value", near(370, 1e-9, "420 less the rebate of 50"))
                .body("alternatives[3].worth.investment.value", near(1150, 1e-9, "the whole purchase, however it is paid"))
                .body("alternatives[2].breakEven.of", hasItem("clockInterval"))
                .body("alternatives[2].uncertain.drivers", hasSize(6)).body("alternatives[5].saltDose", nullValue())
                .body("alternatives[5].discharge.salt.value", exactly(0))
                .body("alternatives[0].discharge.chloride.value", near(2725.78 * 35.45 / 58.44, 1,
                        "CIAAW 2021: the chloride in 2,726\u00a0lb"))
                .body("alternatives[0].discharge.saltSaved", nullValue())
                .body("assumptions.name", hasItem("hardDays")).body("cautions.code", hasItem("settingsBeforeParts"));
        compare(WELL.replaceFirst("\"people\": 5", "\"people\": 1")).statusCode(200)
                .body("alternatives[2].breakEven[1].sentence", containsString("You use 60\u00a0gal."));
    }

    @Test
    void reportsTheDischargeThatEachAlternativeSaves() {
        JsonPath path = compare(WELL).extract().jsonPath();
        for (int i = 1; i < 6; i++) {
            for (String what : new String[] {"salt", "chloride", "water"}) {
                String of = "alternatives[%d].discharge.%s";
                assertEquals(path.getDouble(of.formatted(0, what) + ".value") - path.getDouble(of.formatted(i, what) + ".value"),
                        path.getDouble(of.formatted(i, what + "Saved") + ".value"), 0.1, what);
            }
        }
    }

    /** NIST Handbook 135: the annual equivalent is the life-cycle cost times d / (1 - (1 + d)^-N). */
    @Test
    void theAnnualEquivalentIsTheUniformCapitalRecovery() {
        JsonPath path = compare(WELL).extract().jsonPath();
        double factor = 0.05575 / (1 - Math.pow(1.05575, -10));
        for (int i = 0; i < 5; i++) {
            assertEquals(path.getDouble("alternatives[%d].lifeCycleCost.value".formatted(i)) * factor,
                    path.getDouble("alternatives[%d].annualEquivalent.value".formatted(i)), 0.01);
        }
        for (int i = 1; i < 6; i++) {
            assertEquals(path.getDouble("alternatives[0].lifeCycleCost.value")
                    - path.getDouble("alternatives[%d].lifeCycleCost.value".formatted(i)),
                    path.getDouble("alternatives[%d].worth.netPresentValue.value".formatted(i)), 0.011);
        }
    }

    @Test
    void takesBlocksBagsAndAnEnoughOfDraws() {
        compare(APARTMENT).statusCode(200).body("alternatives[1].uncertain.draws", exactly(1000))
                .body("alternatives[1].uncertain.standardError.unit", equalTo("EUR"));
        JsonPath bags = compare(APARTMENT).extract().jsonPath();
        double kilograms = bags.getDouble("alternatives[0].year.salt.value");
        double bought = Math.ceil(10 * kilograms / 50) * 50 / 10;
        assertEquals(bought * 12.50 / 25, bags.getDouble("alternatives[0].bills.salt.value"), 0.01);
        assertTrue(bought >= kilograms);
    }

    @Test
    void reportsTheValuesThatItUsed() {
        JsonPath well = compare(WELL).statusCode(200).extract().jsonPath();
        JsonPath apartment = compare(APARTMENT).statusCode(200).extract().jsonPath();
        assertUsed(well, "/horizonYears", "value: 10, unit: years, origin: caller");
        assertUsed(apartment, "/horizonYears", "value: 10, unit: years, origin: default, source: OWN-ASSUMPTION");
        assertUsed(apartment, "/bagsPerTrip", "value: 2, origin: caller");
        assertUsed(apartment, "/uncertainty/inputs", "code: saltPrice, dailyUse, firstCost, origin: caller");
        assertUsed(well, "/uncertainty/inputs", "code: saltPrice, waterPrice, sewerPrice, hardness, dailyUse, firstCost, origin: default, "
                + "source: OWN-ASSUMPTION, note: prices normal by 15\u00a0%, hardness and daily use by 10\u00a0%, "
                        + "first cost triangular from 0.9 to "
                + "1.25");
        assertUsed(apartment, "/uncertainty/draws", "value: 2000, origin: caller");
        assertUsed(apartment, "/uncertainty/paybackYears", "value: 5, unit: years, origin: default, source: OWN-ASSUMPTION");
    }

    private static void assertUsed(JsonPath answer, String pointer, String expected) {
        Map<String, Object> used = answer.getMap("assumptions.find { it.pointer == '" + pointer + "' }");
        assertEquals("pointer: " + pointer + ", " + expected, used.entrySet().stream()
                .map(entry -> entry.getKey() + ": " + entry.getValue()).collect(Collectors.joining(", ")));
    }

    @Test
    void theSameSeedGivesTheSameBytes() {
        assertEquals(compare(WELL).extract().asString(), compare(WELL).extract().asString());
    }

    @Test
    void reportsTheFaultsOfARequest() {
        compare(WELL.replace("\"clock, tuned\"", "\"as it is\"").replace("\"the clock, tuned\"", "\"as it is\"")).statusCode(422)
                .body("errors[0].pointer", equalTo("/alternatives/1/name"));
        compare(WELL.replaceFirst("\\{", "{\"baseline\": \"another\",")).statusCode(422)
                .body("errors[0].pointer", equalTo("/baseline"));
        compare(WELL.replace("\"value\": 50,", "\"value\": 500,")).statusCode(422)
                .body("errors[0].pointer", equalTo("/alternatives/2/rebate"));
        compare(APARTMENT.replace("\"least\": 0.8", "\"least\": 1.2")).statusCode(422)
                .body("errors[0].pointer", equalTo("/uncertainty/inputs/0/likeliest"));
        compare(APARTMENT.replace("\"value\": 90,", "\"value\": 30,")).statusCode(422)
                .body("errors[0].pointer", equalTo("/waterBlocks/1/upTo"));
    }

    private static ValidatableResponse compare(String request) {
        return TestServer.post("/v1/alternatives?detail=full", request);
    }
}
