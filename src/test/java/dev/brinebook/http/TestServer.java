package dev.brinebook.http;

import static io.restassured.config.JsonConfig.jsonConfig;
import static io.restassured.path.json.config.JsonPathConfig.NumberReturnType.DOUBLE;

import dev.brinebook.Main;
import io.restassured.RestAssured;
import io.restassured.config.RestAssuredConfig;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.Set;

/** The real service on free ports, with all its operations. */
public final class TestServer implements AutoCloseable {

    private final BrinebookServer server = new BrinebookServer(
            new Settings(0, 0, "127.0.0.1", 262_144, 1, 0, Set.of()), Main.OPERATIONS).start();

    /** Posts {@code json}; decimals of the answer are read as double. */
    public Response post(String path, String json) {
        return RestAssured.given().config(RestAssuredConfig.config().jsonConfig(jsonConfig().numberReturnType(DOUBLE)))
                .port(server.port()).contentType(ContentType.JSON).body(json).post(path);
    }

    @Override
    public void close() {
        server.close();
    }
}
