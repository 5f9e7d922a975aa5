// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EstimatePeakFlowTest {

    private static final String HOUSE = """
            [{"kind": "shower", "count": 2}, {"kind": "lavatory", "count": 3}, {"kind": "kitchenSink"},
             {"kind": "waterClosetTank", "count": 2}, {"kind": "clothesWasher"}, {"kind": "dishwasher"}]""";

    /** Buchberger et al. 2017 (re-derived): 5.060 gpm by the fit; Python fractions, all states: 5.7 and 5.0 gpm. */
    @Test
    void givesTheHouseOfTenFixturesInUsUnits() {
        post("{\"fixtures\": " + HOUSE + "}").statusCode(200)
                .body("fitted.peak.flow.value", closeTo(5.060, 0.0005))
                .body("fitted.mean.value", closeTo(0.573, 1e-6))
                .body("fitted.standardDeviation.value", closeTo(Math.sqrt(1.394266), 1e-5))
                .body("fitted.idlePercent", closeTo(77.5240, 0.0001))
                .body("exact.peak.flow.value", closeTo(5.7, 1e-9))
                .body("exact.ofAllMoments.value", equalTo(5))
                .body("exact.step.value", closeTo(0.05, 1e-9))
                .body("sizing.peakFlow.value", closeTo(5.7, 1e-9))
                .body("sizing.method", equalTo("exact"))
                .body("sizing.continuousFlow.value", equalTo(2))
                .body("code.demandCurve", equalTo("flushTank"))
                .body("code.fixtureUnits", closeTo(2 * 1.4 + 3 * 0.7 + 2 * 2.2 + 3 * 1.4, 1e-9))
                .body("percentile", equalTo(99))
                .body("differences", hasSize(4))
                .body("differences[2]", startsWith("The approximation is 11\u00a0% below the exact flow"))
                .body("assumptions.pointer", hasItems("/fixtures/0", "/percentile", "/demandCurve", "/buildingType"))
                .body("assumptions.name", hasItems("fixturesAreIndependent", "bathroomGroup"))
                .body("cautions.code", hasItems("localCodeDecides", "pipesByCode"))
                .body("summary", startsWith("Size the softener for a peak flow of 5.7\u00a0gpm and a continuous flow of 2\u00a0gpm."));
    }

    /** Nothing would read as no flow at all; one fixture runs or not, so the fit is its flow. */
    @Test
    void saysThatAMethodHasNoFigureForALoneLavatory() {
        post("{\"fixtures\": [{\"kind\": \"lavatory\"}]}").statusCode(200)
                .body("summary", equalTo("Size the softener for a peak flow of 1.5\u00a0gpm and a continuous flow of 1.5\u00a0gpm."
                        + " The plumbing code for pipes "
                        + "gives no value. The exact statistics give 1.5\u00a0gpm and their approximation"
                        + " 1.5\u00a0gpm. The German standard gives no value."))
                .body("differences[2]", startsWith("The approximation agrees with the exact flow"));
    }

    /** DIN 1988-300 begins at 0.2 L/s; by NIST SP 811 that is 0.2 * 60 / 3.785411784 = 3.17 gpm. */
    @Test
    void saysWhyThereIsNoFigureInTheUnitsOfTheAnswer() {
        String lavatory = """
                {"fixtures": [{"kind": "lavatory", "designFlow": {"value": 0.14, "unit": "L/s"}}], "units": "%s"}""";
        post(lavatory.formatted("us")).body("design.peak.why", containsString("less than 3.17\u00a0gpm"));
        post(lavatory.formatted("metric")).body("design.peak.why", containsString("less than 0.2\u00a0L/s"));
    }

    /** International Plumbing Code: 11.4 fixture units are 15.64 gpm. DIN 1988-300: 1.14 L/s are 0.5773 L/s in a dwelling. */
    @Test
    void givesTheCodeAndTheStandardInMetricUnits() {
        post("""
                {"fixtures": [{"kind": "bathroomGroup", "count": 2, "designFlow": {"value": 0.4, "unit": "L/s"}},
                  {"kind": "kitchenSink", "designFlow": {"value": 0.14, "unit": "L/s"}},
                  {"kind": "dishwasher", "designFlow": {"value": 0.1, "unit": "L/s"}},
                  {"kind": "clothesWasher", "designFlow": {"value": 0.1, "unit": "L/s"}}], "units": "metric"}""")
                .statusCode(200)
                .body("code.fixtureUnits", closeTo(11.4, 1e-9))
                .body("code.peak.flow.value", closeTo(15.64 * 3.785411784, 0.001))
                .body("code.peak.flow.unit", equalTo("L/min"))
                .body("design.designFlow.value", closeTo(60 * 1.14, 1e-3))
                .body("design.peak.flow.value", closeTo(60 * 0.5773, 60 * 0.00005));
    }

    @Test
    void saysWhyAMethodHasNoFlow() {
        post("{\"fixtures\": [{\"kind\": \"urinalFlushometer\", \"use\": \"public\", \"count\": 2}, {\"kind\":"
                + " \"drinkingFountain\", \"use\": \"public\"}], \"buildingType\": \"schoolOrOffice\"}").statusCode(200)
                .body("code.demandCurve", equalTo("flushometer"))
                .body("code.peak.flow.value", closeTo(27 + 0.25 * 0.8, 1e-9))
                .body("exact.peak.flow", nullValue())
                .body("exact.peak.reason", equalTo("noBusyProbability"))
                .body("fitted.peak.reason", equalTo("noBusyProbability"))
                .body("design.peak.reason", equalTo("noDesignFlow"))
                .body("sizing.peakFlow", nullValue())
                .body("summary", startsWith("No flow to size a softener for can be recommended. How often"));
        post("{\"fixtures\": [{\"kind\": \"lavatory\"}]}").statusCode(200)
                .body("code.peak.reason", equalTo("belowDemandCurve"))
                .body("code.peak.why", containsString("begins at 1"))
                .body("design.peak.reason", equalTo("belowDesignFlows"))
                .body("sizing.peakFlow.value", closeTo(1.5, 1e-9));
        post("{\"fixtures\": [{\"kind\": \"shower\", \"count\": 1000, \"fixtureUnits\": 6, \"designFlow\":"
                + " {\"value\": 1, \"unit\": \"L/s\"}}]}").statusCode(200)
                .body("code.peak.reason", equalTo("aboveDemandCurve"))
                .body("exact.peak.reason", equalTo("tooManyFixtures"))
                .body("design.peak.reason", equalTo("aboveDesignFlows"))
                .body("sizing.method", equalTo("modifiedWistort"))
                .body("differences[2]", startsWith("With this number of fixtures, only the approximation"));
    }

    @ParameterizedTest(name = "{1} {2}")
    @CsvSource(delimiter = '|', value = {
        "{} | /fixtures | missing",
        "{\"fixtures\": []} | /fixtures | wrongCount",
        "{\"fixtures\": [{\"count\": 2}]} | /fixtures/0/kind | missing",
        "{\"fixtures\": [{\"kind\": \"fountain\"}]} | /fixtures/0/kind | unknownValue",
        "{\"fixtures\": [{\"kind\": \"shower\", \"busyProbability\": 1.1}]} | /fixtures/0/busyProbability | outOfRange",
        "{\"fixtures\": [{\"kind\": \"bathroomGroup\", \"flow\": {\"value\": 3, \"unit\": \"gpm\"}}]}"
            + " | /fixtures/0/flow | inconsistent",
        "{\"fixtures\": [{\"kind\": \"bathroomGroup\", \"busyProbability\": 0.1}]}"
            + " | /fixtures/0/busyProbability | inconsistent",
        "{\"fixtures\": [{\"kind\": \"shower\"}], \"percentile\": 50} | /percentile | outOfRange"})
    void refusesUnknownFixtures(String request, String pointer, String code) {
        post(request).statusCode(422).body("errors.pointer", hasItem(pointer)).body("errors.code", hasItem(code));
    }

    private static ValidatableResponse post(String body) {
        return TestServer.post("/v1/peak-flow?detail=full", body);
    }
}
