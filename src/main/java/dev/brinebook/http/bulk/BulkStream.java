// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.http.exchange.Problems;
import dev.brinebook.http.exchange.RequestId;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.http.limit.ConcurrencyLimiter;
import dev.brinebook.http.limit.Deadline;
import dev.brinebook.http.limit.HeapPlan;
import dev.brinebook.http.limit.RequestMetrics;
import dev.brinebook.http.limit.StreamSlots;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.model.Model;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * One stream of lines and their answers. It ends with the last line; if the lines break off, with a line that reports it;
 * where the answers are not read, with the connection, without the end mark that a whole answer has.
 *
 * @param operation what is calculated
 * @param toJson the body of a single call for a line
 * @param answers how the answers are written
 * @param caller whose stream it is
 * @param slot the place that the stream holds
 * @param requestId id of the request that the stream is
 * @param model the model to calculate with
 * @param language what people are answered in
 */
record BulkStream<Q extends Record, A extends Record>(Operation<Q, A> operation, UnaryOperator<byte[]> toJson,
        AnswerLines answers, JsonReader reader, JsonWriter writer, Problems problems, ConcurrencyLimiter limiter,
        String caller, StreamSlots.Slot slot, RequestMetrics metrics, String requestId, Model model, Language language) {

    static final Message TOO_LONG = Message.of("bulkStream.lineMoreThanBytes", HeapPlan.MAX_LINE_BYTES);

    private static final Message TAKEN = Message.of("bulkStream.streamEndsHereBecause");
    private static final Logger LOG = LoggerFactory.getLogger(BulkStream.class);
    private static final int OUT_BUFFER_BYTES = 16_384;

    /**
     * Answers every line.
     *
     * @throws IOException when the answers are not read
     */
    void run(BoundedLines lines, OutputStream response) throws IOException {
        OutputStream out = new BufferedOutputStream(response, OUT_BUFFER_BYTES);
        out.write(answers.start());
        for (BoundedLines.Line line = next(lines, out); line != null; line = next(lines, out)) {
            slot.moved();
            if (!line.isBlank()) {
                out.write(answer(line));
            }
        }
        out.flush();
    }

    /** The next line, or none when the caller ends, pauses too long, or breaks off. Answers are sent first. */
    private BoundedLines.Line next(BoundedLines lines, OutputStream out) throws IOException {
        if (waits(lines)) {
            out.flush();
        }
        try {
            if (!slot.isTaken()) {
                return lines.next();
            }
            throw new IOException("another stream needed the slot");
        } catch (IOException broken) {
            LOG.atInfo().addKeyValue(RequestId.ATTRIBUTE, requestId).log("line {} did not arrive complete", lines.number() + 1);
            out.write(slot.isTaken() ? problem(lines.number() + 1, ProblemType.OVERLOADED, TAKEN)
                    : problem(lines.number() + 1, ProblemType.ofBroken(broken),
                    Message.of("problem.http.lineDidArriveComplete")));
            return null;
        }
    }

    private static boolean waits(BoundedLines lines) {
        try {
            return lines.waits();
        } catch (IOException reportedByTheRead) {
            return true;
        }
    }

    private byte[] answer(BoundedLines.Line line) {
        try {
            if (line.bytes() == null) {
                throw new ProblemException(ProblemType.BODY_TOO_LARGE, TOO_LONG);
            }
            byte[] answer = limiter.callInBulk(caller, HeapPlan.ofJson(line.bytes().length), () -> Deadline.calculate(() -> {
                Q request = reader.read(toJson.apply(line.bytes()), operation.requestType());
                Deadline.enter(Deadline.Part.CALCULATING);
                A result = Objects.requireNonNull(operation.answer(request, model, AnswerParts.ALL), "the calculation gave no answer");
                Deadline.enter(Deadline.Part.WRITING);
                return writer.write(result, language);
            }));
            metrics.countLine(true);
            return answers.answer(line.number(), answer);
        } catch (InvalidRequest invalid) {
            metrics.countLine(false);
            return answers.problem(line.number(), ProblemType.INVALID_REQUEST.status(),
                    problems.document(invalid.violations(), operation.path(), requestId, language));
        } catch (ProblemException problem) {
            return problem(line.number(), problem.type(), problem.detail());
        } catch (RuntimeException fault) {
            LOG.atError().addKeyValue(RequestId.ATTRIBUTE, requestId).setCause(fault).log("line {} failed", line.number());
            return problem(line.number(), ProblemType.INTERNAL_ERROR, ProblemType.INTERNAL_ERROR.explanation());
        }
    }

    private byte[] problem(long line, ProblemType type, Message detail) {
        metrics.countLine(false);
        return answers.problem(line, type.status(), problems.document(type, detail, operation.path(), requestId, language));
    }
}
