// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import static dev.brinebook.http.Near.exactly;
import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Compensated hardness over HTTP. */
class CompensateHardnessTest {

    private static ValidatableResponse compensate(String water) {
        return TestServer.post("/v1/compensated-hardness", "{\"water\": {\"hardness\": {\"value\": 25, \"unit\": \"gpg\"}"
                + water + "}}").statusCode(200);
    }

    @Test
    void addsLineByLine() {
        compensate(", \"iron\": {\"value\": 2, \"unit\": \"mg/L\"}, \"manganese\": {\"value\": 0.5, \"unit\": \"mg/L\"}")
                .body("hardness.compensated.value", near(34, 1e-6, "25 + 4 x 2 + 2 x 0.5: common practice"))
                .body("hardness.real.value", near(25.2626, 1e-3, "0.1047 and 0.1064 gpg for each mg/L: CIAAW"))
                .body("hardness.controllerSetting.value", exactly(34))
                .body("summary", equalTo("Set the hardness to 34\u00a0gpg. The test gives 25\u00a0gpg. Iron adds 8\u00a0gpg and manganese "
                        + "1\u00a0gpg, which makes 34\u00a0gpg."));
    }

    @Test
    void neverCallsUntestedIronNoIron() {
        compensate("").body("summary", containsString("Iron was not tested and is not included."))
                .body("cautions.code", hasItem("ironNotTested"));
    }

    /** 25 + 2 x 0.5 gpg of manganese are a whole number, 25 + 2 x 0.4 are not. */
    @ParameterizedTest
    @CsvSource({"0.5, 26, false", "0.4, 26, true"})
    void saysRoundedUpOnlyWhereItWas(double manganeseMgPerL, int setting, boolean rounded) {
        compensate(", \"manganese\": {\"value\": " + manganeseMgPerL + ", \"unit\": \"mg/L\"}")
                .body("hardness.controllerSetting.value", exactly(setting))
                .body("summary", rounded ? containsString("rounded up") : not(containsString("rounded up")));
    }

    @Test
    void statesWhyTheSettingIsAboveTheSum() {
        compensate(", \"hardnessUncertainty\": {\"value\": 1, \"unit\": \"gpg\"}")
                .body("hardness.controllerSetting.value", exactly(26))
                .body("summary", containsString("covers the uncertainty of the test"));
    }
}
