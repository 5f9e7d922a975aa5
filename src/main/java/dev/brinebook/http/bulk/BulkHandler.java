// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.CsvColumns;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.http.access.AccessPolicy;
import dev.brinebook.http.exchange.Acceptance;
import dev.brinebook.http.exchange.AnswerLanguage;
import dev.brinebook.http.exchange.BodyType;
import dev.brinebook.http.exchange.ModelHeader;
import dev.brinebook.http.exchange.Problems;
import dev.brinebook.http.exchange.QueryReader;
import dev.brinebook.http.exchange.RequestId;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.http.limit.ConcurrencyLimiter;
import dev.brinebook.http.limit.HeapPlan;
import dev.brinebook.http.limit.Rejection;
import dev.brinebook.http.limit.RequestMetrics;
import dev.brinebook.http.limit.StreamSlots;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.model.Model;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import io.javalin.http.Context;
import java.io.IOException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Answers a calculation line by line: a request on each line in, an answer on each line out, in the same order, as they come.
 * Nothing but the line at hand is held; a caller that reads slowly is written to slowly, and so read from slowly.
 */
public final class BulkHandler {

    /** A caller may do something else for so long, such as wait for its own reader, without the stream being cut. */
    public static final Duration LONGEST_PAUSE = Duration.ofMinutes(2);

    private static final Logger LOG = LoggerFactory.getLogger(BulkHandler.class);

    private final Map<String, Operation<?, ?>> operations = new LinkedHashMap<>();
    private final JsonReader reader;
    private final JsonWriter writer;
    private final Problems problems;
    private final ConcurrencyLimiter limiter;
    private final RequestMetrics metrics;
    private final Duration longestPause;
    private final StreamSlots slots = new StreamSlots(StreamSlots.MOST_AT_ONCE);

    public BulkHandler(List<Operation<?, ?>> operations, JsonReader reader, JsonWriter writer, Problems problems,
            ConcurrencyLimiter limiter, RequestMetrics metrics, Duration longestPause) {
        operations.forEach(operation -> this.operations.put(operation.id(), operation));
        this.reader = reader;
        this.writer = writer;
        this.problems = problems;
        this.limiter = limiter;
        this.metrics = metrics;
        this.longestPause = longestPause;
    }

    public void post(Context context) throws IOException {
        Operation<?, ?> operation = operation(context.pathParam("calculator"));
        String taken = takenType(context, operation);
        context.res().addHeader("Vary", "Accept");
        String given = Acceptance.choose(context, taken.equals(AnswerTable.MEDIA_TYPE)
                ? List.of(AnswerTable.MEDIA_TYPE, AnswerLines.Ndjson.MEDIA_TYPE)
                : List.of(AnswerLines.Ndjson.MEDIA_TYPE, AnswerTable.MEDIA_TYPE));
        if (!QueryReader.isEmpty(context, problems)) {
            return;
        }
        Model model = ModelHeader.choose(context);
        StreamConnection connection = StreamConnection.of(context, longestPause);
        String caller = AccessPolicy.identityOf(context);
        StreamSlots.Slot slot = slots.take(caller, connection::wake).orElse(null);
        if (slot == null) {
            connection.end();
            metrics.reject(Rejection.STREAMS);
            throw new ProblemException(ProblemType.OVERLOADED, Message.of("bulkHandler.tooManyBulkStreams"));
        }
        try {
            stream(context, operation, taken, given, model, caller, slot);
        } catch (IOException notRead) {
            RequestId.addTo(LOG.atInfo(), context).log(slot.isTaken() ? "the stream gave its slot to another caller"
                    : "the answers could not be sent");
            connection.cut();
        } finally {
            connection.end();
            slots.giveBack(slot);
        }
    }

    /** The operation of a name in the path. */
    public Operation<?, ?> operation(String id) {
        Operation<?, ?> operation = operations.get(id);
        if (operation == null) {
            throw new ProblemException(ProblemType.NOT_FOUND, Message.of("bulkHandler.unknownOperationMustOne",
                    String.join(", ", operations.keySet())));
        }
        return operation;
    }

    private static String takenType(Context context, Operation<?, ?> operation) {
        Optional<String> missing = CsvColumns.missing(operation.requestType());
        if (missing.isEmpty()) {
            return BodyType.of(context, List.of(AnswerLines.Ndjson.MEDIA_TYPE, AnswerTable.MEDIA_TYPE));
        }
        String type = context.header("Content-Type");
        if (type != null && type.toLowerCase(Locale.ROOT).startsWith(AnswerTable.MEDIA_TYPE)) {
            context.header("Accept-Post", AnswerLines.Ndjson.MEDIA_TYPE);
            throw new ProblemException(ProblemType.UNSUPPORTED_MEDIA_TYPE, Message.of(
                    "bulkHandler.doesAcceptCsvList", operation.id(), missing.get(),
                    AnswerLines.Ndjson.MEDIA_TYPE));
        }
        return BodyType.of(context, List.of(AnswerLines.Ndjson.MEDIA_TYPE));
    }

    private void stream(Context context, Operation<?, ?> operation, String taken, String given, Model model,
            String caller, StreamSlots.Slot slot) throws IOException {
        BoundedLines lines = new BoundedLines(context.req().getInputStream(), HeapPlan.MAX_LINE_BYTES);
        UnaryOperator<byte[]> toJson = UnaryOperator.identity();
        if (taken.equals(AnswerTable.MEDIA_TYPE)) {
            try {
                toJson = header(lines, operation)::body;
            } catch (InvalidRequest invalid) {
                problems.answer(context, invalid.violations(), violation -> null);
                return;
            }
        }
        Language language = AnswerLanguage.of(context);
        boolean table = given.equals(AnswerTable.MEDIA_TYPE);
        context.status(200).contentType(table ? given + "; charset=utf-8" : given).header("Cache-Control", "no-store");
        new BulkStream<>(operation, toJson, table ? new AnswerTable(operation.answerType()) : new AnswerLines.Ndjson(),
                reader, writer, problems, limiter, caller, slot, metrics, RequestId.of(context), model, language)
                .run(lines, context.res().getOutputStream());
    }

    private static RowReader header(BoundedLines lines, Operation<?, ?> operation) {
        BoundedLines.Line line;
        try {
            line = lines.next();
            while (line != null && line.isBlank()) {
                line = lines.next();
            }
        } catch (IOException notCome) {
            throw new ProblemException(ProblemType.ofBroken(notCome), Message.of("bulkHandler.headerRowDidArrive"));
        }
        if (line == null) {
            throw RowReader.malformed(Message.of("problem.http.bodyEmptyMustBegin"));
        }
        if (line.bytes() == null) {
            throw new ProblemException(ProblemType.BODY_TOO_LARGE, BulkStream.TOO_LONG);
        }
        return new TableHeader(operation).read(line.bytes());
    }
}
