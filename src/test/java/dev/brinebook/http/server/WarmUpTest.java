// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is calculated before the first caller comes. */
class WarmUpTest {

    @Test
    void calculatesAnExampleOfEveryOperationTheLastFirstWhileThereIsTime() {
        List<String> calculated = new ArrayList<>();
        List<Operation<?, ?>> watched = Main.OPERATIONS.stream().<Operation<?, ?>>map(each -> watched(each, calculated)).toList();
        new WarmUp(new JsonReader(), new JsonWriter()).run(watched, Duration.ZERO);
        assertEquals(List.of(), calculated);
        new WarmUp(new JsonReader(), new JsonWriter()).run(watched, Duration.ofMinutes(1));
        List<String> lastFirst = new ArrayList<>(Main.OPERATIONS.stream().map(Operation::id).toList());
        Collections.reverse(lastFirst);
        assertEquals(lastFirst, calculated);
    }

    private static <Q extends Record, A extends Record> Operation<Q, A> watched(Operation<Q, A> operation, List<String> calculated) {
        return new Operation<>(operation.id(), operation.path(), operation.summary(), operation.description(),
                operation.requestType(), operation.answerType(), request -> {
            calculated.add(operation.id());
            return operation.answer(request);
        }, operation.query(), operation.examples());
    }
}
