// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.server.BrinebookServer;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is served beside the contract: that of each operation alone, and the examples that both refer to. */
class OperationContractTest {

    private static BrinebookServer server;
    private static JsonNode document;

    @BeforeAll
    static void start() {
        server = Committed.server();
        document = Committed.tree(Committed.contract());
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    /** Relative references resolve against the address of the document (OpenAPI 3.1.0, "Relative References in URLs"). */
    @Test
    void everyExampleByReferenceIsAFileBesideTheContractAndServed() throws IOException {
        Set<String> references = new TreeSet<>(document.findValuesAsText("externalValue"));
        Map<String, String> files = Examples.files(Main.OPERATIONS);
        for (String reference : references) {
            byte[] committed = Files.readAllBytes(Committed.CONTRACT.resolve(reference));
            Response response = RestAssured.given().port(server.port()).get("/" + reference);
            response.then().statusCode(200).header("Content-Type", startsWith(files.get(reference.substring("examples/".length()))))
                    .header("ETag", notNullValue());
            assertArrayEquals(committed, response.asByteArray(), reference);
        }
        assertTrue(references.size() > 50, "it saw some");
        RestAssured.given().port(server.port()).get("/examples/openapi.yaml").then().statusCode(404);
    }

    static Stream<String> operations() {
        return Main.OPERATIONS.stream().map(Operation::id);
    }

    /** Complete in itself, and nothing but what the operation needs. */
    @ParameterizedTest
    @MethodSource("operations")
    void oneOperationHasAContractOfItsOwn(String id) {
        JsonNode own = Committed.tree(Committed.get(server, "/openapi/" + id + ".json"));
        assertEquals(1, own.path("paths").size());
        assertEquals(id, own.path("paths").elements().next().at("/post/operationId").asText());
        Set<String> references = new TreeSet<>(own.findValuesAsText("$ref"));
        references.forEach(reference -> assertEquals(document.at(reference.substring(1)), own.at(reference.substring(1)), reference));
        own.path("components").properties().stream().filter(kind -> !kind.getKey().equals("securitySchemes")).forEach(kind ->
                kind.getValue().fieldNames().forEachRemaining(name -> assertTrue(references.contains("#/components/" + kind.getKey() + "/"
                        + name), name)));
        own.findValuesAsText("externalValue").forEach(example -> assertTrue(Files.exists(Committed.CONTRACT.resolve(
                example.substring("../".length()))), example));
    }
}
