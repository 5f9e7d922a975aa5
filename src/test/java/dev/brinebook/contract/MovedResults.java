// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.AnswerHead;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.AnswerValues;
import dev.brinebook.api.AnswerValues.Value;
import dev.brinebook.api.Dependencies;
import dev.brinebook.api.Dependencies.Row;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.http.RandomRequests;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.model.Model;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Which results of an operation move when an input of its request does: pointers to inputs by pointer to the result, both with
 * {@code *} for any element of a list.
 */
final class MovedResults {

    /** They write results in other words, and move none. */
    private static final String UNITS = "/units";
    private static final int REPAIRS = 12;
    /** Other values of a number tried at most, and how many of them that moved something are enough. */
    private static final int MOST_CHANGES = 3;
    private static final int ENOUGH = 2;
    private static final int MOST_CHOICES = 8;
    private static final int FEW_REPAIRS = 4;

    private final JsonReader reader = new JsonReader();
    private final Operation<?, ?> operation;
    private final boolean thorough;
    private final List<String> possible;
    private final Map<String, Set<String>> inputs = new TreeMap<>();
    private int answers;

    /**
     * None yet.
     *
     * @param thorough whether inputs that are absent are given too, and several other values are tried for each
     */
    MovedResults(Operation<?, ?> operation, boolean thorough) {
        this.operation = operation;
        this.thorough = thorough;
        this.possible = InputChanges.possible(operation.requestType());
    }

    Map<String, Set<String>> inputs() {
        return inputs;
    }

    /** Adds what was seen before, of results and inputs that are still there. */
    void addKnown(List<Row> rows) {
        rows.stream().filter(row -> Assumed.find(operation.answerType(), row.pointer()).isPresent()).forEach(row -> row.inputs().stream()
                .filter(input -> Assumed.find(operation.requestType(), input).isPresent())
                .forEach(input -> inputs.computeIfAbsent(row.pointer(), pointer -> new TreeSet<>()).addAll(parts(input))));
    }

    /** The single inputs at, below or around a pointer. */
    private List<String> parts(String pointer) {
        List<String> parts = possible.stream().filter(input -> input.startsWith(pointer + "/") || pointer.startsWith(input + "/")).toList();
        return parts.isEmpty() ? List.of(Dependencies.input(pointer)) : parts;
    }

    /** How many answers were compared so far. */
    int answers() {
        return answers;
    }

    /** Changes every input that a random request gives or that its answer assumes. */
    void addRandom(long seed) {
        RandomRequests drawn = new RandomRequests(seed);
        ObjectNode request = drawn.request(operation.requestType());
        for (int i = 0; i < REPAIRS; i++) {
            try {
                add(request);
                return;
            } catch (InvalidRequest invalid) {
                if (invalid.violations().stream().allMatch(violation -> violation.code() == Code.IMPOSSIBLE)) {
                    return;
                }
                drawn.repair(request, operation.requestType(), invalid.violations());
            }
        }
    }

    /** Changes every input that the request gives or could give; its units stay, whatever the country. */
    void add(ObjectNode request) {
        if (Assumed.find(operation.requestType(), UNITS).isPresent() && !request.has(UNITS.substring(1))) {
            request.put(UNITS.substring(1), WireNames.of(AnswerUnits.US));
        }
        Record answer = answer(operation, request);
        Map<String, Value> before = AnswerValues.of(answer);
        InputChanges inputsOf = new InputChanges(request, operation.requestType());
        Map<String, Resolved> assumed = new LinkedHashMap<>();
        AnswerHead.of(answer).assumptions().stream().filter(one -> one.pointer() != null).forEach(one -> assumed.put(one.pointer(), one));
        Stream<String> absent = possible.stream().filter(pointer -> thorough && request.at(pointer).isMissingNode());
        Stream.of(inputsOf.given().stream(), assumed.keySet().stream(), absent).flatMap(pointers -> pointers).distinct()
                .filter(pointer -> !pointer.equals(UNITS))
                .forEach(pointer -> change(pointer, request.at(pointer).isMissingNode() && !assumed.containsKey(pointer),
                        inputsOf.at(pointer, assumed.get(pointer)), before));
    }

    /** Every choice, but numbers only until they moved something enough. */
    private void change(String input, boolean absent, List<ObjectNode> others, Map<String, Value> before) {
        int tried = 0;
        int moving = 0;
        int most = !thorough ? 1 : others.stream().allMatch(other -> other.at(input).isTextual()) ? MOST_CHOICES : MOST_CHANGES;
        for (int i = 0; i < others.size() && tried < most && (moving < ENOUGH || most == MOST_CHOICES); i++) {
            Optional<Record> after = thorough && (absent || most == MOST_CHOICES) ? repaired(input, others.get(i))
                    : answered(others.get(i));
            tried += after.isPresent() ? 1 : 0;
            moving += after.isPresent() && compare(input, before, AnswerValues.of(after.get())) ? 1 : 0;
        }
    }

    /** The answer to a request after what cannot go with a new input left its part of the request, and what it needs came. */
    private Optional<Record> repaired(String input, ObjectNode request) {
        String part = input.split("/")[1];
        RandomRequests drawn = new RandomRequests(1);
        for (int i = 0; i < FEW_REPAIRS; i++) {
            try {
                return Optional.of(answer(operation, request));
            } catch (InvalidRequest invalid) {
                if (invalid.violations().stream().anyMatch(violation -> !violation.pointer().startsWith("/" + part))) {
                    return Optional.empty();
                }
                drawn.repair(request, operation.requestType(), invalid.violations());
            }
        }
        return Optional.empty();
    }

    private boolean compare(String input, Map<String, Value> before, Map<String, Value> after) {
        List<Value> moved = before.entrySet().stream().filter(entry -> after.containsKey(entry.getKey())
                && !entry.getValue().isSameAs(after.get(entry.getKey()))).map(Map.Entry::getValue)
                .filter(value -> !value.pointer().startsWith("/cautions")).toList();
        moved.forEach(value -> inputs.computeIfAbsent(pattern(value.pointer()), pointer -> new TreeSet<>()).addAll(parts(input)));
        return !moved.isEmpty();
    }

    /** Whether an operation answers a request. */
    static boolean isAnswered(Operation<?, ?> operation, ObjectNode request) {
        MovedResults any = new MovedResults(operation, false);
        return any.answered(request).isPresent();
    }

    static String pattern(String pointer) {
        return pointer.replaceAll("/\\d+(?=/|$)", "/*");
    }

    private Optional<Record> answered(ObjectNode request) {
        try {
            return Optional.of(answer(operation, request));
        } catch (InvalidRequest invalid) {
            return Optional.empty();
        }
    }

    private <Q extends Record> Record answer(Operation<Q, ?> asked, ObjectNode request) {
        answers++;
        Q read = reader.read(request.toString().getBytes(StandardCharsets.UTF_8), asked.requestType());
        return asked.answer(read, Model.CURRENT, AnswerParts.standard(asked.answerType()));
    }
}
