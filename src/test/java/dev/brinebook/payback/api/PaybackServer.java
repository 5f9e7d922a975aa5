package dev.brinebook.payback.api;

import static io.restassured.config.JsonConfig.jsonConfig;

import dev.brinebook.Main;
import dev.brinebook.http.BrinebookServer;
import dev.brinebook.http.Settings;
import io.restassured.RestAssured;
import io.restassured.config.RestAssuredConfig;
import io.restassured.path.json.JsonPath;
import io.restassured.path.json.config.JsonPathConfig;
import io.restassured.response.Response;
import java.util.Set;

/** The real server on a free port, asked for paybacks. */
final class PaybackServer implements AutoCloseable {

    private static final RestAssuredConfig EXACT = RestAssuredConfig.config()
            .jsonConfig(jsonConfig().numberReturnType(JsonPathConfig.NumberReturnType.BIG_DECIMAL));

    private final BrinebookServer server = new BrinebookServer(
            new Settings(0, 0, "127.0.0.1", 262_144, 1, 0, Set.of()), Main.OPERATIONS).start();

    Response post(String body) {
        return RestAssured.given().config(EXACT).baseUri("http://127.0.0.1").port(server.port())
                .header("Connection", "close").contentType("application/json").body(body).post("/v1/conversion-payback");
    }

    /** The answer to a request that has one. */
    JsonPath answer(String body) {
        return post(body).then().statusCode(200).extract().jsonPath();
    }

    @Override
    public void close() {
        server.close();
    }
}
