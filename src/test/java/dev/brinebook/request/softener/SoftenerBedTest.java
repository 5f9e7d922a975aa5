// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bed of a softener by its resin, its nameplate or its tank, whichever is known. */
class SoftenerBedTest {

    private static ValidatableResponse bed(String softener) {
        return TestServer.post("/v1/bed-hydraulics?detail=full", "{\"softener\": {" + softener.replace('\'', '"') + "}}");
    }

    /** Common practice: nameplates and standard tanks with the resin that they go with. */
    @ParameterizedTest(name = "{0}: {1} ft3")
    @CsvSource(delimiter = '|', value = {
        "'nameplateCapacity': {'value': 24000, 'unit': 'gr'} | 0.75 | usual with this name plate",
        "'nameplateCapacity': {'value': 32000, 'unit': 'gr'} | 1 | usual with this name plate",
        "'nameplateCapacity': {'value': 48, 'unit': 'kgr'} | 1.5 | usual with this name plate",
        "'tankDiameter': {'value': 10, 'unit': 'in'}, 'tankHeight': {'value': 54, 'unit': 'in'}        | 1.5   | standard tank of this size",
        "'tankDiameter': {'value': 0.257, 'unit': 'm'}, 'tankHeight': {'value': 1.375, 'unit': 'm'}    | 1.5   | standard tank of this size",
        "'tankDiameter': {'value': 8, 'unit': 'in'}, 'tankHeight': {'value': 35, 'unit': 'in'}         | 0.597 | nearest standard tank"})
    void knowsTheResinByNameplateOrTank(String softener, double cubicFeet, String words) {
        bed(softener).statusCode(200).body("bed.resinVolume.value", near(cubicFeet, 0.001, "common practice"))
                .body("assumptions.find { it.pointer == '/softener/resinVolume' }.note", containsString(words))
                .body("assumptions.find { it.pointer == '/softener/resinVolume' }.value", near(cubicFeet, 0.001, "common practice"))
                .body("assumptions.find { it.pointer == '/softener/resinVolume' }.unit", equalTo("ft3"))
                .body("assumptions.find { it.pointer == '/softener/resinVolume' }.origin", equalTo("estimated"))
                .body("cautions.code", not(hasItem("resinSizesDisagree")));
    }

    @ParameterizedTest(name = "{0} ft3, {1} gr, {2} x {3} in: {4} ft3, {5}")
    @CsvSource({
        "1,   32000, 9,  48, 1,   false",
        "1,   41900, 9,  48, 1,   false",
        "1,   45000, 9,  48, 1,   true",
        "1,   20000, 9,  48, 1,   true",
        "1,   32000, 13, 54, 1,   true",
        "1,   32000, 12, 52, 1,   false",
        "'',  32000, 10, 54, 1,   true",
        "'',  48000, 12, 52, 1.5, false"})
    void asksWhichIsRightWhereTheyContradictEachOther(String resin, int grains, int diameter, int height, double cubicFeet,
            boolean asked) {
        ValidatableResponse answer = bed((resin.isEmpty() ? "" : "'resinVolume': {'value': " + resin + ", 'unit': 'ft3'}, ")
                + "'nameplateCapacity': {'value': " + grains + ", 'unit': 'gr'}, 'tankDiameter': {'value': " + diameter
                + ", 'unit': 'in'}, 'tankHeight': {'value': " + height + ", 'unit': 'in'}").statusCode(200)
                .body("bed.resinVolume.value", near(cubicFeet, 1e-6, "given, or common practice"))
                .body("cautions.code", asked ? hasItem("resinSizesDisagree") : not(hasItem("resinSizesDisagree")));
        if (!resin.isEmpty()) {
            answer.body("assumptions.find { it.pointer == '/softener/nameplateCapacity' }.note",
                    containsString("the given resin volume is used instead"));
        }
    }

    @Test
    void reportsMissingAndTooLargeValues() {
        bed("'tankDiameter': {'value': 10, 'unit': 'in'}").statusCode(422)
                .body("errors.pointer", contains("/softener/resinVolume"))
                .body("errors[0].message", containsString("`tankDiameter` and `tankHeight`"));
        bed("'tankDiameter': {'value': 1, 'unit': 'm'}, 'tankHeight': {'value': 3, 'unit': 'm'}").statusCode(422)
                .body("errors.pointer", contains("/softener/tankHeight"))
                .body("errors[0].message", containsString("Allowed: 1 to 600\u00a0L."));
        bed("'tankDiameter': {'value': 0.1, 'unit': 'm'}, 'tankHeight': {'value': 0.2, 'unit': 'm'}").statusCode(422)
                .body("errors.pointer", contains("/softener/tankHeight"));
        bed("'resinVolume': {'value': 1.5, 'unit': 'ft3'}, 'tankDiameter': {'value': 8, 'unit': 'in'}, 'tankHeight': {'value': 44,"
                + " 'unit': 'in'}").statusCode(422).body("errors.pointer", contains("/softener/tankHeight"));
    }
}
