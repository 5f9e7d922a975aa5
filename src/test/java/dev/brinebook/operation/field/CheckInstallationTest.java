// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;

class CheckInstallationTest {

    private static final String SIGNS = "\"saltTank\": true, \"drainLine\": true, \"softerOutlet\": true, \"valveComesOff\": true";
    private static final String SITE = """
            "brineTankAndLine": true, "drain": true, "valveBore": {"value": 1, "unit": "in"}, "placeForMeter": true,
            "powerWithinReach": true, "surgeProtection": true, "bypass": true, "resinGood": true""";
    private static final String KNOWN = ", \"resinAgeYears\": 5, \"peakFlow\": {\"value\": 9, \"unit\": \"gpm\"}";

    @Test
    void isConvertibleWhenEverythingIsMet() {
        post(SIGNS + ", \"site\": {" + SITE + "}" + KNOWN).statusCode(200).body("outcome", equalTo("convertible"))
                .body("signs", hasSize(4)).body("checks.state.unique()", contains("met")).body("cost", nullValue())
                .body("unpriced", empty());
    }

    /** 20 gpm in a bore of 1 in run at 2.5 m/s, above 2.4; hand arithmetic 4·75.7/60000/(π·0.0254²). */
    @Test
    void addsWhatWorkCosts() {
        post(SIGNS + ", \"site\": {" + SITE.replace("\"bypass\": true", "\"bypass\": false") + """
                , "prices": {"bypass": {"value": 120, "unit": "USD"}}}, "resinAgeYears": 5,
                "peakFlow": {"value": 20, "unit": "gpm"}""").statusCode(200)
                .body("outcome", equalTo("convertibleAfterWork")).body("cost.value", equalTo(120.0)).body("unpriced", contains("valveBore"))
                .body("summary", containsString("120\u00a0USD"));
    }

    @Test
    void asksWhatNobodyChecked() {
        post("\"saltTank\": true").statusCode(200).body("outcome", equalTo("checkFirst"))
                .body("signs.find { it.sign == 'softerOutlet' }.meaning", containsString("Test the hardness"))
                .body("summary", containsString("11 questions"));
    }

    @Test
    void tellsAFilterFromASoftener() {
        post("\"saltTank\": false").statusCode(200).body("outcome", equalTo("notASoftener"))
                .body("signs[0].meaning", containsString("filter"));
    }

    @Test
    void refusesPricesOfTwoCurrencies() {
        post("\"site\": {\"prices\": {\"bypass\": {\"value\": 1, \"unit\": \"USD\"}, \"drain\": {\"value\": 1, \"unit\": \"EUR\"}}}")
                .statusCode(422).body("errors.code", contains("inconsistent"));
    }

    private static ValidatableResponse post(String parts) {
        return TestServer.post("/v1/installation-check", "{" + parts + "}");
    }
}
