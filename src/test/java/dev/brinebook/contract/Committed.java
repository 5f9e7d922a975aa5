// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import dev.brinebook.Main;
import dev.brinebook.http.Settings;
import dev.brinebook.http.server.BrinebookServer;
import io.restassured.RestAssured;
import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.yaml.snakeyaml.LoaderOptions;

/** The committed files that the server's answers make; rewritten only by {@code -Dcontract.write=true}. */
public final class Committed {

    static final Path CONTRACT = Path.of("openapi");
    static final Path EXAMPLES = CONTRACT.resolve("examples");
    static final boolean WRITE = Boolean.getBoolean("contract.write");

    /** Where the build puts what is served. */
    private static final Path PACKAGED = Path.of("target", "classes");

    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();
    private static final ObjectMapper YAML = YAMLMapper.builder(YAMLFactory.builder().loaderOptions(longDocuments()).build())
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();
    private static final PrettyPrinter PRETTY = pretty();

    private Committed() {
    }

    /** The committed contract, as JSON. */
    public static byte[] contract() {
        try {
            return JSON.writeValueAsBytes(YAML.readTree(CONTRACT.resolve("openapi.yaml").toFile()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static BrinebookServer server() {
        return new BrinebookServer(new Settings(0, 0, "127.0.0.1", 262_144, 1, 0, Set.of()), Main.OPERATIONS).start();
    }

    static byte[] get(BrinebookServer server, String path) {
        return RestAssured.given().baseUri("http://127.0.0.1").port(server.port()).get(path).then().statusCode(200).extract()
                .asByteArray();
    }

    static byte[] post(BrinebookServer server, String path, byte[] body) {
        return RestAssured.given().baseUri("http://127.0.0.1").port(server.port()).contentType("application/json").body(body)
                .post(path).then().statusCode(200).contentType("application/json").extract().asByteArray();
    }

    /** The answer in another form, as it is written. */
    static String post(BrinebookServer server, String path, byte[] body, String mediaType) {
        byte[] answer = RestAssured.given().baseUri("http://127.0.0.1").port(server.port()).contentType("application/json")
                .accept(mediaType).body(body).post(path).then().statusCode(200).contentType(mediaType + "; charset=utf-8")
                .extract().asByteArray();
        return new String(answer, StandardCharsets.UTF_8);
    }

    /** The answers to the example stream, under a request id that stays the same. */
    static String postLines(BrinebookServer server, byte[] lines, String type, String accept) {
        RestAssuredConfig exact = RestAssuredConfig.config().encoderConfig(EncoderConfig.encoderConfig()
                .appendDefaultContentCharsetToContentTypeIfUndefined(false));
        byte[] answer = RestAssured.given().config(exact).baseUri("http://127.0.0.1").port(server.port()).contentType(type)
                .accept(accept).header("X-Request-Id", "b1946ac92492d234").body(lines)
                .post("/v1/bulk/" + BulkPaths.EXAMPLE_CALCULATOR).then().statusCode(200).extract().asByteArray();
        return new String(answer, StandardCharsets.UTF_8);
    }

    static String getTemplate(BrinebookServer server, String accept) {
        byte[] template = RestAssured.given().baseUri("http://127.0.0.1").port(server.port()).accept(accept)
                .get("/v1/bulk/" + BulkPaths.TEMPLATE_EXAMPLE + "/template").then().statusCode(200).extract().asByteArray();
        return accept.equals("application/json") ? pretty(template) : new String(template, StandardCharsets.UTF_8);
    }

    static JsonNode tree(byte[] json) {
        try {
            return JSON.readTree(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** JSON with an indent of two spaces, numbers as they came. */
    public static String pretty(byte[] json) {
        try {
            return JSON.writer(PRETTY).writeValueAsString(tree(json)) + "\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Asserts that the file holds the text; in write mode writes what differs, and fails so that a person looks at it. */
    public static void assertHolds(Path file, String text) throws IOException {
        String committed = Files.exists(file) ? Files.readString(file) : "";
        if (!committed.equals(text)) {
            if (WRITE) {
                write(file, text);
                fail(file + " is written, look at the diff and commit");
            }
            fail(file + " is not what the service says, from line " + firstDifference(committed, text)
                    + ": write it with -Dcontract.write=true, look at the diff and commit");
        }
    }

    private static String firstDifference(String committed, String text) {
        List<String> old = committed.lines().toList();
        List<String> now = text.lines().toList();
        int line = 0;
        while (line < Math.min(old.size(), now.size()) && old.get(line).equals(now.get(line))) {
            line++;
        }
        return line + 1 + ", which was " + (line < old.size() ? old.get(line).strip() : "not there") + " and is "
                + (line < now.size() ? now.get(line).strip() : "not there");
    }

    static void write(Path file, String text) throws IOException {
        Files.writeString(file, text);
        if (file.startsWith(CONTRACT)) {
            Files.writeString(PACKAGED.resolve(file), text);
        }
    }

    /** The contract with its examples is longer than what a reader of YAML expects. */
    private static LoaderOptions longDocuments() {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(1 << 25);
        return options;
    }

    private static PrettyPrinter pretty() {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        Separators separators = Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("").withArrayEmptySeparator("");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
        printer.indentArraysWith(indent);
        printer.indentObjectsWith(indent);
        return printer;
    }
}
