// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import io.restassured.path.json.config.JsonPathConfig.NumberReturnType;
import io.restassured.response.Response;

/** Asks the real service for paybacks, whose money is read to the last cent. */
final class Paybacks {

    private Paybacks() {
    }

    static Response post(String body) {
        return TestServer.post("/v1/retrofit-payback?detail=full", body, NumberReturnType.BIG_DECIMAL);
    }

    /** The answer to a request that has one. */
    static JsonPath answer(String body) {
        return post(body).then().statusCode(200).extract().jsonPath();
    }
}
