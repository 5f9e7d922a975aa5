// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.contract.Contract;
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
import java.util.List;
import java.util.Objects;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * One stream of lines and their answers. It ends with the last line; if the lines break off, with a line that reports it;
 * where the answers are not read, with the connection, without the end mark that a whole answer has.
 */
final class BulkStream<Q extends Record, A extends Record> {

    static final Message TOO_LONG = Message.of("bulkStream.lineMoreThanBytes", HeapPlan.MAX_LINE_BYTES);

    private static final Message TAKEN = Message.of("bulkStream.streamEndsHereBecause");
    private static final Logger LOG = LoggerFactory.getLogger(BulkStream.class);
    private static final int OUT_BUFFER_BYTES = 16_384;

    private final Operation<Q, A> operation;
    private final Parts parts;
    private final Call call;
    private final BulkOptions options;
    private final RequestLines requests;
    private final AnswerLines answers;
    private final CheckSummary summary;
    /** Path of the request that the stream is. */
    private final String path;

    /** What all streams share. */
    record Parts(JsonReader reader, JsonWriter writer, Problems problems, ConcurrencyLimiter limiter, RequestMetrics metrics) {
    }

    /**
     * Whose stream it is.
     *
     * @param caller who sends it
     * @param slot the place that it holds
     * @param model the model to calculate with
     * @param requestId id of the request that it is
     * @param language what people are answered in
     */
    record Call(String caller, StreamSlots.Slot slot, String requestId, Model model, Language language) {
    }

    BulkStream(Operation<Q, A> operation, Parts parts, Call call, BulkOptions options, RequestLines requests, AnswerLines answers) {
        this.operation = operation;
        this.parts = parts;
        this.call = call;
        this.options = options;
        this.requests = requests;
        this.answers = answers;
        this.path = Contract.BULK_PATH.replace("{calculator}", operation.id());
        this.summary = new CheckSummary(requests);
    }

    /**
     * Answers every line.
     *
     * @throws IOException when the answers are not read
     */
    void run(BoundedLines lines, OutputStream response) throws IOException {
        OutputStream out = new BufferedOutputStream(response, OUT_BUFFER_BYTES);
        if (options.from() == 1) {
            out.write(answers.start());
        }
        boolean whole = answer(lines, out);
        if (whole && options.from() > lines.number() + 1) {
            out.write(beyondEnd(lines));
        }
        if (whole && options.check()) {
            out.write(answers.summary(summary.totals()));
        }
        out.flush();
    }

    /** Answers lines to their end; false when they break off. */
    private boolean answer(BoundedLines lines, OutputStream out) throws IOException {
        while (true) {
            BoundedLines.Line line;
            if (waits(lines)) {
                out.flush();
            }
            try {
                if (call.slot.isTaken()) {
                    throw new IOException("another stream needed the slot");
                }
                line = requests.next(lines);
            } catch (IOException broken) {
                out.write(broken(lines, broken));
                return false;
            }
            if (line == null) {
                return true;
            }
            call.slot.moved();
            if (line.number() >= options.from() && !line.isBlank()) {
                out.write(answer(requests.read(line)));
            }
        }
    }

    /** The only line of an answer that would begin later than behind the last line: an empty one says that all are answered. */
    private byte[] beyondEnd(BoundedLines lines) {
        long last = lines.number();
        List<Violation> violations = List.of(new Violation("/from", Code.OUT_OF_RANGE, Message.of("bulkStream.beyondEnd", last, last + 1)));
        return invalid(SentLine.faulty(new BoundedLines.Line(last + 1, null), null), violations);
    }

    /** The last line of a stream whose caller pauses too long, or breaks off. */
    private byte[] broken(BoundedLines lines, IOException broken) {
        BoundedLines.Line next = new BoundedLines.Line(lines.number() + 1, null);
        LOG.atInfo().addKeyValue(RequestId.ATTRIBUTE, call.requestId).log("line {} did not arrive complete", next.number());
        return problem(SentLine.faulty(next, null), call.slot.isTaken() ? new ProblemException(ProblemType.OVERLOADED, TAKEN)
                : new ProblemException(ProblemType.ofBroken(broken), Message.of("problem.http.lineDidArriveComplete")));
    }

    private static boolean waits(BoundedLines lines) {
        try {
            return lines.waits();
        } catch (IOException reportedByTheRead) {
            return true;
        }
    }

    private byte[] answer(SentLine line) {
        long start = System.nanoTime();
        boolean answered = false;
        try {
            long bytes = HeapPlan.ofJson(line.bytes() == null ? 0 : line.bytes().length);
            byte[] answer = parts.limiter.callInBulk(call.caller, bytes, () -> Deadline.calculate(() -> calculate(line)));
            answered = true;
            summary.countReady();
            return answers.answer(line, answer);
        } catch (InvalidRequest invalid) {
            return invalid(line, requests.explain(invalid.violations(), line));
        } catch (ProblemException problem) {
            return problem(line, problem);
        } catch (RuntimeException fault) {
            LOG.atError().addKeyValue(RequestId.ATTRIBUTE, call.requestId).setCause(fault).log("line {} failed", line.number());
            return problem(line, new ProblemException(ProblemType.INTERNAL_ERROR, ProblemType.INTERNAL_ERROR.explanation()));
        } finally {
            parts.metrics.countLine(operation.id(), answered, System.nanoTime() - start);
        }
    }

    /** The answer as JSON; nothing in a dry run. */
    private byte[] calculate(SentLine line) {
        Q request = parts.reader.read(line.request().get(), operation.requestType());
        if (options.check()) {
            return new byte[0];
        }
        Deadline.enter(Deadline.Part.CALCULATING);
        A result = Objects.requireNonNull(operation.answer(request, call.model, options.parts()), "the calculation gave no answer");
        Deadline.enter(Deadline.Part.WRITING);
        return options.answersAll() ? parts.writer.write(result, call.language, options.parts()) : new byte[0];
    }

    private byte[] invalid(SentLine line, List<Violation> violations) {
        summary.countFaulty(line.number(), violations);
        return answers.problem(line, ProblemType.INVALID_REQUEST.status(), parts.problems.document(violations, requests::columnOf,
                path, call.requestId, call.language));
    }

    private byte[] problem(SentLine line, ProblemException problem) {
        summary.countFaulty(line.number(), problem.type());
        return answers.problem(line, problem.type().status(), parts.problems.document(problem.type(), problem.detail(),
                path, call.requestId, call.language));
    }
}
