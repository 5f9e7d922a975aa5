// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.cost;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.fuzz.Call;
import dev.brinebook.fuzz.Call.Options;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A request that may be dear, and one JSON file when it is kept.
 *
 * @param accept media type of the answer that is asked for; null for JSON
 * @param body a request in JSON, or the text that another route takes
 */
record Trial(Operation<?, ?> operation, Route route, String accept, String language, JsonNode body) {

    /** Larger ones may be sent, but what is out of proportion shows below. */
    static final int MAX_BYTES = 65_536;

    private static final Path KEPT = Path.of("src", "test", "resources", "cost");
    private static final ObjectMapper JSON = new ObjectMapper();

    Trial with(JsonNode other) {
        return new Trial(operation, route, accept, language, other);
    }

    boolean isSmallEnough() {
        return bytes() < MAX_BYTES;
    }

    int bytes() {
        return route.bytes(operation, body).length;
    }

    Call call() {
        return route.call(operation, new Options(language, accept), route.bytes(operation, body));
    }

    /** Where it belongs: an operation and what its answer is made as. */
    String aim() {
        if (accept != null) {
            return operation.id() + "." + accept.substring(accept.indexOf('/') + 1);
        }
        return operation.id() + "." + (route.isRequest() ? "json" : route.name().toLowerCase(Locale.ROOT));
    }

    /** Every request that is kept, in the order of their names. */
    static List<Trial> kept() {
        try (Stream<Path> files = Files.list(KEPT)) {
            return files.sorted().map(Trial::read).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Trial read(Path file) {
        try {
            JsonNode kept = JSON.readTree(file.toFile());
            return new Trial(operation(file.getFileName().toString().split("\\.")[0]), Route.valueOf(kept.get("route").textValue()),
                    kept.path("accept").textValue(), kept.get("language").textValue(), kept.get("body"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Operation<?, ?> operation(String id) {
        return Main.OPERATIONS.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }

    void write(Path file) {
        ObjectNode kept = JSON.createObjectNode().put("route", route.name()).put("accept", accept).put("language", language);
        kept.set("body", body);
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, kept + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return aim() + " in " + bytes() + " bytes";
    }
}
