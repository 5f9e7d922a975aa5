// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static io.restassured.config.EncoderConfig.encoderConfig;
import static io.restassured.config.JsonConfig.jsonConfig;

import dev.brinebook.http.json.JsonReader;
import io.restassured.RestAssured;
import io.restassured.config.RestAssuredConfig;
import io.restassured.http.ContentType;
import io.restassured.path.json.config.JsonPathConfig.NumberReturnType;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Asks the real service, one for all tests that leave it as it is, as a caller would. */
public final class TestServer {

    private TestServer() {
    }

    /** Posts {@code json}; decimals of the answer are read as double. */
    public static ValidatableResponse post(String path, String json) {
        return post(path, json, NumberReturnType.DOUBLE).then();
    }

    /** Posts {@code json}; decimals of the answer are read as {@code decimals}. */
    public static Response post(String path, String json, NumberReturnType decimals) {
        return RestAssured.given().config(RestAssuredConfig.config().jsonConfig(jsonConfig().numberReturnType(decimals)))
                .baseUri("http://127.0.0.1").port(Served.SERVER.port()).contentType(ContentType.JSON).body(json).post(path);
    }

    /** Posts {@code json} and asks for an answer in another form. */
    public static Response post(String path, String json, String mediaType) {
        return RestAssured.given().baseUri("http://127.0.0.1").port(Served.SERVER.port()).contentType(ContentType.JSON)
                .accept(mediaType).body(json).post(path);
    }

    /** Posts a text/csv. */
    public static ValidatableResponse postCsv(String path, String csv) {
        return postText(path, "text/csv", csv);
    }

    /** Posts a text of any type, to a path with its query unchanged. */
    public static ValidatableResponse postText(String path, String type, String text) {
        RestAssuredConfig exact = RestAssuredConfig.config().jsonConfig(jsonConfig().numberReturnType(NumberReturnType.DOUBLE))
                .encoderConfig(encoderConfig().appendDefaultContentCharsetToContentTypeIfUndefined(false));
        return RestAssured.given().config(exact).baseUri("http://127.0.0.1").port(Served.SERVER.port())
                .urlEncodingEnabled(false).header("Content-Type", type).body(text.getBytes(StandardCharsets.UTF_8))
                .post(path).then();
    }

    /** A request that the service would take, read as it reads them. */
    public static <Q extends Record> Q read(String json, Class<Q> type) {
        return new JsonReader().read(json.getBytes(StandardCharsets.UTF_8), type);
    }

    /** The request of a committed example. */
    public static String example(String name) {
        try {
            return Files.readString(Path.of("openapi", "examples", name + ".request.json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
