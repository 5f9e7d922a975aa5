// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.server.BrinebookServer;
import io.restassured.RestAssured;
import io.restassured.builder.RequestSpecBuilder;
import io.restassured.config.DecoderConfig;
import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/** The real server on free ports, one for all tests that leave it as it is. */
public final class Served {

    public static final String CONVERSION = "/v1/hardness-conversion";
    public static final String SMALLEST = "{\"hardness\": {\"value\": 18.5, \"unit\": \"gpg\"}}";
    public static final int MAX_BODY_BYTES = 262_144;

    public static final BrinebookServer SERVER = Main.server(
            new Settings(0, 0, "127.0.0.1", MAX_BODY_BYTES, 10, 0, Set.of())).start();

    private Served() {
    }

    public static BrinebookServer start(List<Operation<?, ?>> operations, int drainSeconds, Set<String> corsOrigins) {
        return new BrinebookServer(new Settings(0, 0, "127.0.0.1", MAX_BODY_BYTES, 10, drainSeconds, corsOrigins), operations)
                .start();
    }

    /** A server that limits its callers: requests a minute, or 0; a file of keys, or an empty text. */
    public static BrinebookServer guarded(int ratePerMinute, String apiKeysFile) {
        return new BrinebookServer(new Settings(0, 0, "127.0.0.1", MAX_BODY_BYTES, 10, 0, Set.of("https://shop.example"), 10, 2_000,
                ratePerMinute, apiKeysFile, 10_000), Main.OPERATIONS).start();
    }

    /** A server that gives a head or a body one second to come. */
    public static BrinebookServer impatient() {
        return new BrinebookServer(new Settings(0, 0, "127.0.0.1", MAX_BODY_BYTES, 10, 0, Set.of(), 1, 2_000, 0, "", 10_000),
                Main.OPERATIONS).start();
    }

    /** A server that gives no calculation longer than this. */
    public static BrinebookServer hasty(int calculationMilliseconds) {
        return new BrinebookServer(new Settings(0, 0, "127.0.0.1", MAX_BODY_BYTES, 10, 0, Set.of(), 10, 2_000, 0, "",
                calculationMilliseconds), Main.OPERATIONS).start();
    }

    /** The metrics once they {@code hold}, or after ten seconds: a request is counted after its answer was sent. */
    public static String metrics(BrinebookServer server, Predicate<String> hold) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(10);
        String text;
        do {
            text = given(server.metricsPort()).get("/metrics").then().statusCode(200)
                    .contentType("text/plain; version=0.0.4; charset=utf-8").extract().asString();
        } while (!hold.test(text) && System.nanoTime() < end);
        return text;
    }

    /** A request to the shared server that sends exactly the given bytes. */
    public static RequestSpecification given() {
        return given(SERVER.port());
    }

    public static RequestSpecification given(int port) {
        RestAssuredConfig exact = RestAssuredConfig.config()
                .decoderConfig(DecoderConfig.decoderConfig().noContentDecoders()).encoderConfig(EncoderConfig.encoderConfig()
                .appendDefaultContentCharsetToContentTypeIfUndefined(false));
        return RestAssured.given(new RequestSpecBuilder().setConfig(exact).setBaseUri("http://127.0.0.1").setPort(port)
                .setUrlEncodingEnabled(false).build());
    }

    /** A POST of JSON to the smallest operation. */
    public static RequestSpecification posting(String body) {
        return given().contentType("application/json").body(body.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
}
