// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.tool;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Settings;
import dev.brinebook.http.server.BrinebookServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.util.List;
import java.util.Map;

/**
 * Asks the service every committed example over HTTP, some rounds of it, and ends. The image is built with a JVM that watches
 * this run and keeps what it loaded, linked and found hot, so that a replica starts with it.
 */
public final class TrainingRun {

    /** Enough for the JVM to find the hot methods. */
    private static final int ROUNDS = 8;

    private static final List<String> PAGES = List.of("/health/ready", "/openapi.json", "/docs", "/v1/sources");

    private final String address;

    private TrainingRun(int port) {
        this.address = "http://127.0.0.1:" + port;
    }

    public static void main(String[] arguments) throws IOException {
        Settings anyPorts = Settings.from(Map.of("PORT", "0", "METRICS_PORT", "0", "HOST", "127.0.0.1"));
        try (BrinebookServer server = Main.server(anyPorts).startWarm()) {
            TrainingRun run = new TrainingRun(server.port());
            for (int round = 0; round < ROUNDS; round++) {
                run.askEverything();
            }
        }
    }

    private void askEverything() throws IOException {
        for (String page : PAGES) {
            expectSuccess(connection(page));
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

    private void post(String path, String type, String example) throws IOException {
        HttpURLConnection connection = connection(path);
        connection.setRequestProperty("Content-Type", type);
        connection.setDoOutput(true);
        try (OutputStream body = connection.getOutputStream()) {
            body.write(read("/openapi/examples/" + example));
        }
        expectSuccess(connection);
    }

    /** Not java.net.http, whose classes the service would then load at each start. */
    private HttpURLConnection connection(String path) throws IOException {
        HttpURLConnection connection = (HttpURLConnection) URI.create(address + path).toURL().openConnection();
        connection.setRequestProperty("Accept-Encoding", "gzip");
        return connection;
    }

    private static void expectSuccess(HttpURLConnection connection) throws IOException {
        if (connection.getResponseCode() != HttpURLConnection.HTTP_OK) {
            throw new IllegalStateException(connection.getURL() + " answered " + connection.getResponseCode());
        }
        try (InputStream answer = connection.getInputStream()) {
            if (answer.readAllBytes().length == 0) {
                throw new IllegalStateException(connection.getURL() + " answered nothing");
            }
        }
    }

    private static byte[] read(String resource) throws IOException {
        try (InputStream stream = TrainingRun.class.getResourceAsStream(resource)) {
            return stream.readAllBytes();
        }
    }
}
