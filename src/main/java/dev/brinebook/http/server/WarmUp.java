// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.api.Operation;
import dev.brinebook.http.Resources;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.text.Language;
import java.time.Duration;
import java.util.List;

/**
 * Calculates examples of the contract before the first caller comes: without, the first calculation takes as long as its classes
 * take to load, and requests meanwhile are answered that the service is busy.
 */
final class WarmUp {

    /** A start takes little longer for it, however slow the machine: what is left is warmed by the first callers. */
    static final Duration LONGEST = Duration.ofMillis(400);

    private final JsonReader reader;
    private final JsonWriter writer;

    /** Warms up these, which keep what they learn of each type. */
    WarmUp(JsonReader reader, JsonWriter writer) {
        this.reader = reader;
        this.writer = writer;
    }

    /**
     * Reads, calculates and writes one example of each operation, the last first, as the whole case is, which needs most of what
     * the others need; begins none once the time is over.
     */
    void run(List<Operation<?, ?>> operations, Duration longest) {
        long began = System.nanoTime();
        for (int i = operations.size() - 1; i >= 0 && System.nanoTime() - began < longest.toNanos(); i--) {
            run(operations.get(i));
        }
    }

    private <Q extends Record, A extends Record> void run(Operation<Q, A> operation) {
        String example = operation.exampleFile(operation.examples().get(0), "request");
        writer.write(operation.answer(reader.read(Resources.example(example), operation.requestType())), Language.ENGLISH);
    }
}
