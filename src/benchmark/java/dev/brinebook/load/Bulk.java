// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;

/** Lists, tables and calls of tools, of compensated hardnesses. */
final class Bulk {

    static final String OPERATION = "compensateHardness";
    private static final String PATH = "/v1/bulk/" + OPERATION + "?detail=numbers";
    private static final String HOUSEHOLD = "well-family";

    private Bulk() {
    }

    /** A list of as many lines, with numbers alone in the answer. */
    static Message ndjson(Requests requests, int lines, long seed) {
        String body = requests.drawn(OPERATION, HOUSEHOLD, lines, seed, Bulk::water).stream()
                .map(message -> new String(message.body(), StandardCharsets.UTF_8) + "\n").collect(Collectors.joining());
        return new Message(PATH, "application/x-ndjson", Requests.bytes(body));
    }

    /** A table of as many rows. */
    static Message csv(int rows, long seed) {
        Random random = new Random(seed);
        StringBuilder table = new StringBuilder("water.hardness.value,water.hardness.unit,water.iron.value,water.iron.unit,water.supply,"
                + "units\n");
        for (int row = 0; row < rows; row++) {
            table.append(String.format(Locale.ROOT, "%.1f,gpg,%.2f,mg/L,privateWell,us%n", 5 + 25 * random.nextDouble(),
                    1.5 * random.nextDouble()));
        }
        return new Message(PATH, "text/csv", Requests.bytes(table.toString()));
    }

    /** Calls of the tool that has an operation calculated. */
    static List<Message> agent(Requests requests, int count, long seed) {
        return requests.drawn(OPERATION, HOUSEHOLD, count, seed, Bulk::water).stream().map(message -> {
            ObjectNode call = Requests.JSON.createObjectNode().put("jsonrpc", "2.0").put("id", 1).put("method", "tools/call");
            ObjectNode arguments = call.putObject("params").put("name", "calculate").putObject("arguments").put("operation", OPERATION);
            arguments.putRawValue("arguments", new RawValue(
                    new String(message.body(), StandardCharsets.UTF_8)));
            return Message.json("/mcp", Requests.bytes(call.toString()));
        }).toList();
    }

    /** A hardness as a test tells it. */
    static void water(ObjectNode request, Random random) {
        Requests.setHardness(request.withObject("/water/hardness"), 80 + 500 * random.nextDouble(), 1);
        Requests.put(request.withObject("/water/iron"), 1.5 * random.nextDouble(), 2);
    }
}
