// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import static dev.brinebook.http.Near.exactly;
import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What age, chlorine and a laboratory's test leave of a bed, by the table and by the column. */
class ResinWearTest {

    private static final String SOLIDS = ", 'dissolvedSolids': {'value': 450, 'unit': 'mg/L'}";
    private static final String FIFTEEN_YEARS = ", 'resinAgeYears': 15";

    private static ValidatableResponse blend(String water, String softener) {
        return TestServer.post("/v1/hardness-blending?detail=full",
                ("{'water': {'hardness': {'value': 300, 'unit': 'mg/L'}, 'freeChlorine':"
                + " {'value': 1, 'unit': 'mg/L'}" + water + "}, 'residualHardness': {'value': 5, 'unit': 'mg/L'}, 'household':"
                + " {'people': 4}, 'softener': {'resinVolume': {'value': 1.5, 'unit': 'ft3'}, 'saltDose': {'value': 10, 'unit':"
                + " 'lb/ft3'}" + softener + "}}").replace('\'', '"'));
    }

    private static double capacityGrains(String water, String softener) {
        JsonPath answer = blend(water, softener).statusCode(200).extract().jsonPath();
        return answer.getDouble("withBypass.daysBetweenRegenerations.value") * answer.getDouble("withBypass.dailyLoad.value");
    }

    /** The working table gives 27 and 35 * 30 / 32 kgr/ft3 at 10 and 20 lb/ft3 (common practice, WQP 2009). */
    @ParameterizedTest(name = "{0}: {1} gr")
    @CsvSource(delimiter = '|', value = {
        "''                                                                          | 40500 | 27 * 1.5",
        ", 'resinAgeYears': 15                                                       | 22803 | 0.95^15 of 20\u00a0lb/ft3, UFC 3-240-13FN",
        ", 'resinTest': {'percentOfNew': 66.66667}                                   | 30000 | 2/3 of 15 lb/ft3",
        ", 'resinTest': {'percentOfNew': 50}                                         | 24609 | half of 20 lb/ft3",
        ", 'resinTest': {'totalCapacity': {'value': 1, 'unit': 'eq/L'}}              | 24609 | 1 of 2 eq/L",
        ", 'resinTest': {'percentOfNew': 104}, 'resinAgeYears': 15                   | 40500 | as new, whatever the age"})
    void theTableCountsTheSitesThatAreLeft(String softener, double grains, String why) {
        assertEquals(grains, capacityGrains("", softener.equals("''") ? "" : softener), 1e-4 * grains, why);
    }

    /** Stages in exchange equilibrium are the reference: with and without dissolved solids it is the same bed. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        ", 'resinAgeYears': 0", ", 'resinAgeYears': 8", ", 'resinAgeYears': 15", ", 'resinTest': {'percentOfNew': 70}",
        ", 'resinTest': {'totalCapacity': {'value': 0.9, 'unit': 'eq/L'}}"})
    void noCapacityIsLostOnceTheSolidsAreGiven(String softener) {
        double table = capacityGrains("", softener);
        assertEquals(table, capacityGrains(SOLIDS, softener), 0.07 * table);
    }

    @Test
    void statesItsAssumptions() {
        blend("", FIFTEEN_YEARS).statusCode(200)
                .body("assumptions.find { it.pointer == '/softener/resinAgeYears' }.value", exactly(15))
                .body("assumptions.find { it.pointer == '/softener/resinAgeYears' }.unit", equalTo("years"))
                .body("assumptions.find { it.pointer == '/softener/resinAgeYears' }.note", equalTo("which leaves 46.3\u00a0% of the"
                        + " exchange sites (a laboratory test of the resin would measure it)"))
                .body("basis.formula.join('; ')", containsString("with 46.33\u00a0% of the exchange sites left"));
        blend("", ", 'resinTest': {'totalCapacity': {'value': 1.4, 'unit': 'eq/L'}}" + FIFTEEN_YEARS).statusCode(200)
                .body("assumptions.find { it.pointer == '/softener/resinTest/totalCapacity' }.value", exactly(1.4))
                .body("assumptions.find { it.pointer == '/softener/resinTest/totalCapacity' }.note",
                        equalTo("which leaves 70\u00a0% of"
                        + " the exchange sites of new resin at 2\u00a0eq/L (age and chlorine are not used)"))
                .body("assumptions.find { it.pointer == '/softener/resinTest/totalCapacity' }.origin", equalTo("caller"));
    }

    @Test
    void aCycleKnowsTheWearWithoutAWaterTest() {
        TestServer.post("/v1/regeneration-cycle", ("{'softener': {'resinVolume': {'value': 1.5, 'unit': 'ft3'}, 'saltDose': {'value':"
                + " 10, 'unit': 'lb/ft3'}, 'resinTest': {'percentOfNew': 50}}}").replace('\'', '"')).statusCode(200)
                .body("capacity.value", near(24_609, 1, "half of 20\u00a0lb/ft3, 35 * 30 / 32 kgr/ft3"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{}                                                                           | /softener/resinTest/totalCapacity",
        "{'percentOfNew': 9}                                                          | /softener/resinTest/percentOfNew",
        "{'percentOfNew': 121}                                                        | /softener/resinTest/percentOfNew",
        "{'totalCapacity': {'value': 0.1, 'unit': 'eq/L'}}                            | /softener/resinTest/totalCapacity/value",
        "{'percentOfNew': 50, 'totalCapacity': {'value': 1, 'unit': 'eq/L'}}          | /softener/resinTest/percentOfNew"})
    void refusesATestThatSaysNothingOrTwoThings(String test, String pointer) {
        blend("", ", 'resinTest': " + test).statusCode(422).body("errors.pointer", contains(pointer));
    }
}
