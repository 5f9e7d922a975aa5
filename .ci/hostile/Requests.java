// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;

/** Requests as they go over the wire, each of a water that was not asked about before. All waters and households are invented. */
final class Requests {

    static final String JSON = "application/json";
    static final String LINES = "application/x-ndjson";
    static final String CONVERSION = "/v1/hardness-conversion";
    static final String BULK = "/v1/bulk/compensateHardness";
    static final String REVIEW = "/v1/settings-review";
    static final String BULK_REVIEW = "/v1/bulk/reviewSettings";
    private static final String ASSESSMENT = "/v1/assessment";
    private static final AtomicLong WATERS = new AtomicLong();

    private Requests() {
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    static String head(String method, String path, String... headers) {
        return method + " " + path + " HTTP/1.1\r\nHost: localhost\r\n" + String.join("\r\n", headers)
                + (headers.length == 0 ? "" : "\r\n") + "\r\n";
    }

    static byte[] post(String path, String type, String body, String... headers) {
        List<String> all = new ArrayList<>(List.of("Content-Type: " + type, "Content-Length: " + body.length()));
        all.addAll(List.of(headers));
        return bytes(head("POST", path, all.toArray(String[]::new)) + body);
    }

    /** A hardness in gpg between 1 and 40, with four decimals: the next of 390,000. */
    private static String hardness() {
        long next = WATERS.incrementAndGet() * 7_919 % 390_000;
        return String.format(Locale.ROOT, "%.4f", 1 + next / 10_000.0);
    }

    static String conversion() {
        return "{\"hardness\": {\"value\": " + hardness() + ", \"unit\": \"gpg\"}}";
    }

    static String water() {
        return "{\"water\": {\"hardness\": {\"value\": " + hardness() + ", \"unit\": \"gpg\"},"
                + " \"iron\": {\"value\": 0.4, \"unit\": \"mg/L\"}, \"supply\": \"privateWell\"}, \"units\": \"us\"}";
    }

    /** The whole case of the example, with a hardness and a number of people of its own. */
    private static Supplier<String> household() {
        String example = read(Path.of("openapi/examples/assess.well-family.request.json"));
        return () -> example.replaceFirst("\"value\":\\s*22\\b", "\"value\": " + hardness())
                .replaceFirst("\"people\":\\s*5\\b", "\"people\": " + (1 + WATERS.get() % 8));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What an ordinary caller asks for, again and again, each with the same further headers. */
    static Supplier<byte[]> ordinary(boolean lists, String... headers) {
        Supplier<String> household = household();
        AtomicLong asked = new AtomicLong();
        return () -> switch ((int) (asked.getAndIncrement() % 10)) {
            case 3 -> post(ASSESSMENT, JSON, household.get(), headers);
            case 5, 8 -> post("/v1/compensated-hardness", JSON, water(), headers);
            case 6 -> lists ? post(BULK, LINES, (water() + "\n").repeat(4), headers)
                    : post(CONVERSION, JSON, conversion(), headers);
            default -> post(CONVERSION, JSON, conversion(), headers);
        };
    }

    /** A small call with the headers that a browser sends. */
    static byte[] fromBrowser(int caller) {
        return post(CONVERSION, JSON, conversion(), "Connection: keep-alive", "Accept: application/json, text/plain, */*",
                "Accept-Language: en-GB,en;q=0.9,de;q=0.8", "Accept-Encoding: gzip, deflate, br",
                "User-Agent: Mozilla/5.0 (X11; Linux x86_64; rv:128.0) Gecko/20100101 Firefox/128.0 caller/" + caller,
                "Referer: http://localhost/bench?case=" + caller, "Sec-Fetch-Dest: empty", "Sec-Fetch-Mode: cors",
                "Sec-Fetch-Site: same-origin", "DNT: 1", "X-Request-Id: caller-" + caller + "-" + WATERS.get(),
                "traceparent: 00-" + String.format("%032x-%016x", WATERS.get() + 1, caller + 1L) + "-01");
    }

    /** Settings of a meter without override in a home of which every weekday is another: of all requests what takes the largest tables. */
    static String settingsOfUnevenWeek() {
        long next = WATERS.incrementAndGet();
        List<String> week = new ArrayList<>();
        for (int day = 0; day < 7; day++) {
            week.add(String.format(Locale.ROOT, "{\"value\": %.1f, \"unit\": \"gal\"}", 20 + (next * 37 + day * 101) % 997 / 10.0));
        }
        return "{\"water\": {\"hardness\": {\"value\": 5.2, \"unit\": \"gpg\"}}, \"household\": {\"weeklyUse\": " + week
                + "}, \"softener\": {\"resinVolume\": {\"value\": 2, \"unit\": \"ft3\"}, \"saltDose\": {\"value\": 10, \"unit\": \"lb/ft3\"},"
                + " \"control\": {\"kind\": \"meteredDelayed\", \"hardnessSetting\": {\"value\": 6, \"unit\": \"gpg\"},"
                + " \"capacitySetting\": {\"value\": 48000, \"unit\": \"gr\"}, \"dayOverride\": 0}}, \"units\": \"us\"}";
    }

    static Supplier<byte[]> sheets() {
        Supplier<String> household = household();
        return () -> post(ASSESSMENT, JSON, household.get(), "Accept: application/pdf");
    }

    /** A body with this number of unknown keys. */
    static String unknownKeys(int keys) {
        StringBuilder body = new StringBuilder("{\"hardness\": {\"value\": 18.5, \"unit\": \"gpg\"}");
        for (int key = 0; key < keys; key++) {
            body.append(",\"u").append(Integer.toString(key, 36)).append("\":0");
        }
        return body.append('}').toString();
    }

    static String padded(String body, int bytes) {
        return body.substring(0, body.length() - 1) + " ".repeat(Math.max(0, bytes - body.length())) + "}";
    }

    /** Messages to agents' tools of about this number of bytes: a batch, one of many small objects, a deep one, one of unknown keys. */
    static List<byte[]> agentMessages(int bytes) {
        String call = "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"tools/call\","
                + "\"params\":{\"name\":\"quick_assess\",\"arguments\":";
        String batch = "[" + (call + "{}}},").repeat(bytes / (call.length() + 5)) + call + "{}}}]";
        String many = call.replace("\"arguments\":", "\"of\":") + "[" + "{},".repeat(bytes / 3 - 50) + "{}]}}";
        String deep = call + "{\"hardness\":" + "[".repeat(900) + "]".repeat(900) + ",\"more\":["
                + ("[".repeat(450) + "]".repeat(450) + ",").repeat(bytes / 901 - 3) + "0]}}}";
        String unknown = call + unknownKeys(bytes / 11) + "}}";
        return List.of(batch, many, deep, unknown).stream().map(message -> post("/mcp", JSON, message,
                "Accept: application/json, text/event-stream")).toList();
    }
}
