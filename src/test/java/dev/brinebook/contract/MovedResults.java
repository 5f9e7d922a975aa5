// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.AnswerHead;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.AnswerValues;
import dev.brinebook.api.AnswerValues.Value;
import dev.brinebook.api.Dependencies;
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

    private final JsonReader reader = new JsonReader();
    private final Operation<?, ?> operation;
    private final int changes;
    private final Map<String, Set<String>> inputs = new TreeMap<>();
    private int answers;

    /**
     * None yet.
     *
     * @param changes other values tried for each input
     */
    MovedResults(Operation<?, ?> operation, int changes) {
        this.operation = operation;
        this.changes = changes;
    }

    Map<String, Set<String>> inputs() {
        return inputs;
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

    /** Changes every input that the request gives or that its answer assumes; its units stay, whatever the country. */
    void add(ObjectNode request) {
        if (Assumed.find(operation.requestType(), UNITS).isPresent() && !request.has(UNITS.substring(1))) {
            request.put(UNITS.substring(1), WireNames.of(AnswerUnits.US));
        }
        Record answer = answer(operation, request);
        Map<String, Value> before = AnswerValues.of(answer);
        InputChanges inputsOf = new InputChanges(request, operation.requestType());
        Map<String, Resolved> assumed = new LinkedHashMap<>();
        AnswerHead.of(answer).assumptions().stream().filter(one -> one.pointer() != null).forEach(one -> assumed.put(one.pointer(), one));
        Stream.concat(inputsOf.given().stream(), assumed.keySet().stream()).distinct()
                .filter(pointer -> !pointer.equals(UNITS)).forEach(pointer -> inputsOf.at(pointer, assumed.get(pointer)).stream()
                        .limit(changes).flatMap(changed -> answered(changed).stream())
                        .forEach(after -> compare(pointer, before, AnswerValues.of(after))));
    }

    private void compare(String input, Map<String, Value> before, Map<String, Value> after) {
        before.forEach((key, value) -> {
            if (after.containsKey(key) && !value.isSameAs(after.get(key)) && !value.pointer().startsWith("/cautions")) {
                inputs.computeIfAbsent(pattern(value.pointer()), pointer -> new TreeSet<>()).add(Dependencies.input(input));
            }
        });
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
