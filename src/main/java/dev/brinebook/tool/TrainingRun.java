// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.tool;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Settings;
import dev.brinebook.http.server.BrinebookServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Asks the service every committed example over HTTP, some rounds of it, and ends. The image is built with a JVM that watches
 * this run and keeps what it loaded, linked and found hot, so that a replica starts with it.
 */
public final class TrainingRun {

    /** Enough for the JVM to find the hot methods. */
    private static final int ROUNDS = 8;

    private static final List<String> PAGES = List.of("/health/ready", "/openapi.json", "/docs", "/v1/sources");

    private final HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final String address;

    private TrainingRun(int port) {
        this.address = "http://127.0.0.1:" + port;
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Settings anyPorts = Settings.from(Map.of("PORT", "0", "METRICS_PORT", "0", "HOST", "127.0.0.1"));
        try (BrinebookServer server = Main.server(anyPorts).startWarm()) {
            TrainingRun run = new TrainingRun(server.port());
            for (int round = 0; round < ROUNDS; round++) {
                run.askEverything();
            }
        }
    }

    private void askEverything() throws IOException, InterruptedException {
        for (String page : PAGES) {
            expectSuccess(HttpRequest.newBuilder(URI.create(address + page)).build());
        }
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            for (String name : operation.examples()) {
                post(operation.path(), "application/json", operation.exampleFile(name, "request"));
            }
        }
        for (Map.Entry<String, String> form : Map.of("csv", "text/csv", "ndjson", "application/x-ndjson").entrySet()) {
            post("/v1/bulk/compensateHardness", form.getValue(), "calculateInBulk.water-tests.request." + form.getKey());
        }
    }

    private void post(String path, String type, String example) throws IOException, InterruptedException {
        expectSuccess(HttpRequest.newBuilder(URI.create(address + path)).header("Content-Type", type)
                .POST(BodyPublishers.ofByteArray(read("/openapi/examples/" + example))).build());
    }

    private void expectSuccess(HttpRequest request) throws IOException, InterruptedException {
        HttpResponse<Stream<String>> answer = client.send(request, BodyHandlers.ofLines());
        long lines = answer.body().count();
        if (answer.statusCode() != 200 || lines == 0) {
            throw new IllegalStateException(request.uri() + " answered " + answer.statusCode());
        }
    }

    private static byte[] read(String resource) throws IOException {
        try (InputStream stream = TrainingRun.class.getResourceAsStream(resource)) {
            return stream.readAllBytes();
        }
    }
}
