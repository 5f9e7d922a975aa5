// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.fuzz;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.brinebook.api.Operation;
import dev.brinebook.contract.ContractSchemas;
import dev.brinebook.http.server.InMemory.Reply;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;

/** What holds of every answer, whatever was sent: no fault of ours, a schema of the contract, numbers that are numbers. */
final class Promises {

    private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|Infinity)\\b");
    private static final Pattern BLANK = Pattern.compile("[ \\t\\r]*");
    private static final int SERVER_FAULTS = 500;
    private static final int OK = 200;

    private final ContractSchemas schemas;
    private final ObjectMapper json = JsonMapper.builder(JsonFactory.builder().streamReadConstraints(
            StreamReadConstraints.builder().maxNumberLength(1_000).build()).build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();

    Promises(byte[] contract) {
        this.schemas = new ContractSchemas(contract);
    }

    /** The promise that an answer breaks, null when it keeps them all. */
    String broken(Operation<?, ?> operation, Way way, Call call, Reply reply) {
        String written = new String(reply.body(), StandardCharsets.UTF_8);
        // One reported as too long for a request may be as slow as it is; it breaks nothing else.
        if (reply.status() >= SERVER_FAULTS && !written.contains("\"/problems/calculation-too-long\"")) {
            return "status " + reply.status();
        }
        try {
            return switch (reply.type()) {
                case "application/json", "application/problem+json" -> one(operation, way, call, reply);
                case "application/x-ndjson" -> lines(operation, call, reply);
                default -> reply.status() == OK && operation.answerMediaTypes().contains(reply.type()) && reply.body().length > 0
                        ? noNumber(written, call)
                        : "status " + reply.status() + " with " + reply.type();
            };
        } catch (JsonProcessingException e) {
            return "no JSON: " + e.getOriginalMessage();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String one(Operation<?, ?> operation, Way way, Call call, Reply reply) throws IOException {
        JsonNode tree = json.readTree(reply.body());
        boolean answered = reply.type().equals(Operation.JSON);
        if (answered != (reply.status() == OK)) {
            return "status " + reply.status() + " with " + reply.type();
        }
        if (!answered && tree.path("status").asInt() != reply.status()) {
            return "status " + reply.status() + ", reported as " + tree.path("status");
        }
        if (way == Way.RECORD && reply.status() != OK && reply.status() < SERVER_FAULTS && reply.status() != 422) {
            return "status " + reply.status() + " for a request that fits the records";
        }
        return body(operation, answered, call, tree);
    }

    private String lines(Operation<?, ?> operation, Call call, Reply reply) throws IOException {
        String[] answers = reply.body().length == 0 ? new String[0] : new String(reply.body(), StandardCharsets.UTF_8).split("\n");
        String[] asked = new String(call.body(), StandardCharsets.ISO_8859_1).split("\n");
        long wanted = List.of(asked).stream().filter(line -> !BLANK.matcher(line).matches()).count();
        boolean table = new String(call.head(), StandardCharsets.ISO_8859_1).contains("text/csv");
        if (answers.length != wanted && !table) {
            return answers.length + " answers to " + wanted + " lines";
        }
        for (String answer : answers) {
            JsonNode line = json.readTree(answer);
            int status = line.path("status").asInt();
            boolean answered = status == OK;
            if (status >= SERVER_FAULTS || !line.has(answered ? "answer" : "problem") || line.size() != 3) {
                return "a line with status " + status + " and " + line.size() + " properties";
            }
            String broken = body(operation, answered, call, line.get(answered ? "answer" : "problem"));
            if (broken != null) {
                return "a line: " + broken;
            }
        }
        return null;
    }

    private String body(Operation<?, ?> operation, boolean answered, Call call, JsonNode tree) {
        List<?> faults = schemas.faults(answered ? operation.answerType().getSimpleName() : "Problem", tree);
        return faults.isEmpty() ? noNumber(tree, call) : "not as the contract says: " + faults.get(0);
    }

    private static String noNumber(JsonNode value, Call call) {
        if (value.isContainerNode()) {
            for (JsonNode part : value) {
                String broken = noNumber(part, call);
                if (broken != null) {
                    return broken;
                }
            }
            return null;
        }
        if (value.isNumber()) {
            return Double.isFinite(value.doubleValue()) ? null : "a number beyond all measure: " + value;
        }
        return value.isTextual() ? noNumber(value.textValue(), call) : null;
    }

    /** Says nothing when the caller wrote so, perhaps by escapes, since texts of the caller come back in answers. */
    private static String noNumber(String text, Call call) {
        if (!text.contains("NaN") && !text.contains("Infinity") || !NO_NUMBER.matcher(text).find()) {
            return null;
        }
        String sent = new String(call.wire(), StandardCharsets.ISO_8859_1);
        return NO_NUMBER.matcher(sent).find() || sent.contains("\\u") || sent.contains("%") ? null : "no number: " + text;
    }
}
