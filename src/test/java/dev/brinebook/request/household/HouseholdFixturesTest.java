// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A household whose fixtures are given is sized for their flow. */
class HouseholdFixturesTest {

    private static final String TEN = """
            "fixtures": [{"kind": "shower", "count": 2}, {"kind": "lavatory", "count": 3}, {"kind": "kitchenSink"},
             {"kind": "waterClosetTank", "count": 2}, {"kind": "clothesWasher"}, {"kind": "dishwasher"}]""";

    /** Python fractions, all 1024 states: 5.7 gpm. */
    @Test
    void isSizedForTheExactPeakOfItsFixtures() {
        size(TEN).statusCode(200)
                .body("candidates[0].peakFlow.flow.value", closeTo(5.7, 1e-5))
                .body("candidates[0].continuousFlow.flow.value", equalTo(2))
                .body("assumptions.find { it.pointer == '/household/peakFlow' }.value", closeTo(5.7, 1e-5))
                .body("assumptions.find { it.pointer == '/household/peakFlow' }.unit", equalTo("gpm"))
                .body("assumptions.pointer.findAll { it == '/household/bathrooms' }.size()", equalTo(0));
    }

    /** A kind by its name, what is used of it in words, and the source of the first value that was left out. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        "{\"kind\": \"shower\", \"count\": 2} | shower | default | BUCHBERGER-2017 | 2 fixtures, in a home: 2\u00a0gpm, probability of use "
            + "0.045, 1.4 fixture units, design flow 4.76\u00a0gpm",
        "{\"kind\": \"bathroomGroup\"} | bathroomGroup | default | BUCHBERGER-2017 | 1 fixture, in a home: shower 2\u00a0gpm, probability of "
            + "use 0.045, lavatory 1.5\u00a0gpm",
        "{\"kind\": \"shower\", \"count\": 1, \"use\": \"private\", \"flow\": {\"value\": 2, \"unit\": \"gpm\"}, \"busyProbability\": 0.1,"
            + " \"designFlow\": {\"value\": 3, \"unit\": \"gpm\"}} | shower | default | IPC-E103 | 1 fixture, in a home",
        "{\"kind\": \"shower\", \"count\": 1, \"use\": \"private\", \"flow\": {\"value\": 2, \"unit\": \"gpm\"}, \"busyProbability\": 0.1,"
            + " \"fixtureUnits\": 1, \"designFlow\": {\"value\": 3, \"unit\": \"gpm\"}} | shower | caller | | 1 fixture, in a home"})
    void namesEachKindWithWhatIsUsedOfIt(String fixture, String code, String origin, String source, String note) {
        String assumed = "assumptions.find { it.pointer == '/household/fixtures/0' }.";
        size("\"fixtures\": [" + fixture + "]").statusCode(200).body(assumed + "code", equalTo(code))
                .body(assumed + "origin", equalTo(origin)).body(assumed + "source", equalTo(source))
                .body(assumed + "note", startsWith(note));
    }

    @Test
    void believesAFlowThatIsGivenBesideThem() {
        size(TEN + ", \"bathrooms\": 2, \"peakFlow\": {\"value\": 9, \"unit\": \"gpm\"}").statusCode(200)
                .body("candidates[0].peakFlow.flow.value", equalTo(9));
        size("\"fixtures\": [{\"kind\": \"drinkingFountain\", \"use\": \"public\"}], \"peakFlow\": {\"value\": 9, \"unit\":"
                + " \"gpm\"}, \"continuousFlow\": {\"value\": 2, \"unit\": \"gpm\"}").statusCode(200)
                .body("candidates[0].peakFlow.flow.value", equalTo(9));
    }

    @ParameterizedTest(name = "{1} {2}")
    @CsvSource(delimiter = '|', value = {
        "\"fixtures\": [{\"kind\": \"bathroomGroup\", \"count\": 3}], \"bathrooms\": 2 | /household/bathrooms | inconsistent",
        "\"fixtures\": [{\"kind\": \"shower\"}], \"peakFlow\": {\"value\": 2.1, \"unit\": \"gpm\"}"
            + " | /household/peakFlow | inconsistent",
        "\"fixtures\": [{\"kind\": \"shower\"}], \"continuousFlow\": {\"value\": 2.1, \"unit\": \"gpm\"}"
            + " | /household/continuousFlow | inconsistent",
        "\"fixtures\": [{\"kind\": \"drinkingFountain\", \"use\": \"public\", \"busyProbability\": 0.1}]"
            + " | /household/fixtures/0/flow | missing",
        "\"fixtures\": [{\"kind\": \"shower\", \"use\": \"public\"}] | /household/fixtures/0/busyProbability | missing",
        "\"fixtures\": [{\"kind\": \"bathroomGroupFlushometer\"}] | /household/fixtures/0/kind | inconsistent",
        "\"fixtures\": [{\"kind\": \"bathroomGroup\", \"use\": \"public\"}] | /household/fixtures/0/kind | inconsistent",
        "\"fixtures\": [{\"kind\": \"shower\", \"count\": 200, \"busyProbability\": 1}]"
            + " | /household/fixtures | inconsistent"})
    void refusesFixturesThatContradict(String told, String pointer, String code) {
        size(told).statusCode(422).body("errors.pointer", hasItem(pointer)).body("errors.code", hasItem(code));
    }

    private static ValidatableResponse size(String told) {
        return TestServer.post("/v1/softener-sizing?detail=full", """
                {"water": {"hardness": {"value": 20, "unit": "gpg"}}, "household": {"people": 4, %s},
                 "candidates": [{"sku": "x", "resinVolume": {"value": 1.5, "unit": "ft3"}}]}""".formatted(told));
    }
}
