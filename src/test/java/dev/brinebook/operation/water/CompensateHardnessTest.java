package dev.brinebook.operation.water;

import static dev.brinebook.http.Near.exactly;
import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;

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
                .body("summary", equalTo("Set 34 gpg: 25 gpg tested, 8 gpg for iron and 1 gpg for manganese make 34 gpg."));
    }

    @Test
    void neverCallsUntestedIronNoIron() {
        compensate("").body("summary", containsString("none for iron, which was not tested"))
                .body("cautions.code", hasItem("ironNotTested"));
    }

    @Test
    void tellsWhyTheSettingIsAboveTheSum() {
        compensate(", \"hardnessUncertainty\": {\"value\": 1, \"unit\": \"gpg\"}")
                .body("hardness.controllerSetting.value", exactly(26))
                .body("summary", containsString("covers the uncertainty of the test"));
    }
}
