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
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Objects;
import java.util.Queue;
import java.util.concurrent.TimeUnit;
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
    /** What is read before it is answered: a permit for each line would cost as much as a line. */
    private static final int GATHERED_BYTES = 8_192;
    private static final int MOST_GATHERED = 64;
    /** After so long the permit goes to another stream that waits. */
    private static final long TURN_NANOS = TimeUnit.MILLISECONDS.toNanos(2);

    private final Operation<Q, A> operation;
    private final Parts parts;
    private final Call call;
    private final BulkOptions options;
    private final RequestLines requests;
    private final AnswerLines answers;
    private final CheckSummary summary;
    /** Path of the request that the stream is. */
    private final String path;
    private final Queue<BoundedLines.Line> gathered = new ArrayDeque<>();
    private final ByteArrayOutputStream turn = new ByteArrayOutputStream(OUT_BUFFER_BYTES);

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
        boolean more = true;
        IOException broken = null;
        while (more && broken == null && !call.slot.isTaken()) {
            if (waits(lines)) {
                out.flush();
            }
            try {
                more = gather(lines);
            } catch (IOException breaksOff) {
                broken = breaksOff;
            }
            answerGathered(out);
        }
        if (!more && gathered.isEmpty()) {
            return true;
        }
        out.write(broken(gathered.isEmpty() ? lines.number() + 1 : gathered.element().number(), broken));
        return false;
    }

    /** Takes what has come, or else waits for the next line, without a permit: the caller may be slow. False at the end. */
    private boolean gather(BoundedLines lines) throws IOException {
        int bytes = 0;
        do {
            BoundedLines.Line line = requests.next(lines);
            if (line == null) {
                return false;
            }
            call.slot.moved();
            if (line.number() >= options.from() && !line.isBlank()) {
                gathered.add(line);
            }
            bytes += line.bytes() == null ? 0 : line.bytes().length;
        } while (bytes < GATHERED_BYTES && gathered.size() < MOST_GATHERED && !waits(lines));
        return true;
    }

    /** Answers the lines gathered, some with each permit, and none when another stream needs the slot. */
    private void answerGathered(OutputStream out) throws IOException {
        while (!gathered.isEmpty() && !call.slot.isTaken()) {
            long asked = System.nanoTime();
            try {
                parts.limiter.runInBulk(call.caller, () -> answerSome(asked));
            } catch (ProblemException stopping) {
                turn.writeBytes(problem(requests.read(gathered.remove()), stopping));
                parts.metrics.countLine(operation.id(), false, System.nanoTime() - asked);
            }
            turn.writeTo(out);
            turn.reset();
        }
    }

    /** Answers lines until another stream should have its turn. The first began when a permit was asked for. */
    private void answerSome(long asked) {
        long entered = System.nanoTime();
        long began = asked;
        do {
            call.slot.moved();
            turn.writeBytes(answer(requests.read(gathered.remove()), began));
            began = System.nanoTime();
        } while (!gathered.isEmpty() && turn.size() < OUT_BUFFER_BYTES && began - entered < TURN_NANOS && !call.slot.isTaken());
    }

    /** The only line of an answer that would begin later than behind the last line: an empty one says that all are answered. */
    private byte[] beyondEnd(BoundedLines lines) {
        long last = lines.number();
        List<Violation> violations = List.of(new Violation("/from", Code.OUT_OF_RANGE, Message.of("bulkStream.beyondEnd", last, last + 1)));
        return invalid(SentLine.faulty(new BoundedLines.Line(last + 1, null), null), violations);
    }

    /** The last line of a stream whose caller pauses too long, or breaks off: the number of the first that has no answer. */
    private byte[] broken(long number, IOException broken) {
        LOG.atInfo().addKeyValue(RequestId.ATTRIBUTE, call.requestId).log("line {} did not arrive complete", number);
        return problem(SentLine.faulty(new BoundedLines.Line(number, null), null), call.slot.isTaken()
                ? new ProblemException(ProblemType.OVERLOADED, TAKEN)
                : new ProblemException(ProblemType.ofBroken(broken), Message.of("problem.http.lineDidArriveComplete")));
    }

    private static boolean waits(BoundedLines lines) {
        try {
            return lines.waits();
        } catch (IOException reportedByTheRead) {
            return true;
        }
    }

    private byte[] answer(SentLine line, long began) {
        boolean answered = false;
        try {
            byte[] answer = parts.limiter.deadline().run(() -> Deadline.calculate(() -> calculate(line)));
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
            parts.metrics.countLine(operation.id(), answered, System.nanoTime() - began);
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
