package dev.brinebook.http;

import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Language;
import dev.brinebook.api.Operation;
import io.javalin.http.Context;
import dev.brinebook.wording.Message;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Semaphore;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Answers a calculation line by line: a request on each line in, an answer on each line out, in the same order, as they come.
 * Nothing but the line at hand is held; a caller that reads slowly is written to slowly, and so read from slowly.
 */
final class BulkHandler {

    static final String MEDIA_TYPE = "application/x-ndjson";
    static final int MAX_LINE_BYTES = 65_536;
    /** A stream holds a thread of the server as long as it runs, so only a part of them may. */
    static final int MOST_AT_ONCE = 32;

    private static final Logger LOG = LoggerFactory.getLogger(BulkHandler.class);
    private static final int OUT_BUFFER_BYTES = 16_384;
    private static final byte[] END = "}\n".getBytes(StandardCharsets.US_ASCII);

    private final Map<String, Operation<?, ?>> operations = new LinkedHashMap<>();
    private final JsonReader reader;
    private final JsonWriter writer;
    private final Problems problems;
    private final Turns turns;
    private final Semaphore streams = new Semaphore(MOST_AT_ONCE);

    BulkHandler(List<Operation<?, ?>> operations, JsonReader reader, JsonWriter writer, Problems problems, Turns turns) {
        operations.forEach(operation -> this.operations.put(operation.id(), operation));
        this.reader = reader;
        this.writer = writer;
        this.problems = problems;
        this.turns = turns;
    }

    void post(Context context) throws IOException {
        Operation<?, ?> operation = operations.get(context.pathParam("calculator"));
        if (operation == null) {
            throw new ProblemException(ProblemType.NOT_FOUND, Message.of("There is no such calculator: take one of {0}.",
                    String.join(", ", operations.keySet())));
        }
        BodyType.of(context, List.of(MEDIA_TYPE));
        Acceptance.choose(context, List.of(MEDIA_TYPE));
        if (!streams.tryAcquire()) {
            throw new ProblemException(ProblemType.OVERLOADED, Message.of("As many streams run as may at once."));
        }
        try {
            stream(context, operation);
        } finally {
            streams.release();
        }
    }

    private void stream(Context context, Operation<?, ?> operation) throws IOException {
        AnswerLanguage.of(context);
        context.status(200).contentType(MEDIA_TYPE).header("Cache-Control", "no-store");
        NdjsonLines lines = new NdjsonLines(context.req().getInputStream(), MAX_LINE_BYTES);
        OutputStream out = new BufferedOutputStream(context.res().getOutputStream(), OUT_BUFFER_BYTES);
        for (NdjsonLines.Line line = lines.next(); line != null; line = lines.next()) {
            if (!line.isBlank()) {
                write(line, operation, context, out);
            }
            if (lines.waits()) {
                out.flush();
            }
        }
        out.flush();
    }

    private <Q extends Record, A extends Record> void write(NdjsonLines.Line line, Operation<Q, A> operation,
            Context context, OutputStream out) throws IOException {
        String path = operation.path();
        String id = RequestId.of(context);
        Language language = Language.of(context.header(AnswerLanguage.ACCEPT));
        try {
            if (line.bytes() == null) {
                throw new ProblemException(ProblemType.BODY_TOO_LARGE, Message.of("The line has more than {0} bytes.",
                        MAX_LINE_BYTES));
            }
            Q request = reader.read(line.bytes(), operation.requestType());
            byte[] answer = turns.take(() -> writer.write(Objects.requireNonNull(operation.calculate().apply(request),
                    "the calculation gave no answer"), language));
            write(line, 200, "answer", answer, out);
        } catch (InvalidRequest invalid) {
            write(line, ProblemType.INVALID_REQUEST.status(), "problem", problems.document(invalid.violations(), path, id, language), out);
        } catch (ProblemException problem) {
            write(line, problem.type().status(), "problem", problems.document(problem.type(), problem.detail(), path, id, language),
                    out);
        } catch (RuntimeException fault) {
            LOG.error("request {} line {} failed", id, line.number(), fault);
            write(line, ProblemType.INTERNAL_ERROR.status(), "problem", problems.document(ProblemType.INTERNAL_ERROR,
                    ProblemType.INTERNAL_ERROR.explanation(), path, id, language), out);
        }
    }

    private static void write(NdjsonLines.Line line, int status, String name, byte[] json, OutputStream out)
            throws IOException {
        out.write(("{\"line\":" + line.number() + ",\"status\":" + status + ",\"" + name + "\":")
                .getBytes(StandardCharsets.US_ASCII));
        out.write(json);
        out.write(END);
    }
}
