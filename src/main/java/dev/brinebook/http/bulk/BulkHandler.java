// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.CsvColumns;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.WireNames;
import dev.brinebook.http.access.AccessPolicy;
import dev.brinebook.http.exchange.Acceptance;
import dev.brinebook.http.exchange.AnswerLanguage;
import dev.brinebook.http.exchange.BodyType;
import dev.brinebook.http.exchange.ModelHeader;
import dev.brinebook.http.exchange.Problems;
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
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Answers a calculation line by line: a request on each line in, an answer on each line out, in the same order, as they come.
 * Nothing but the line at hand is held; a caller that reads slowly is written to slowly, and so read from slowly.
 */
public final class BulkHandler {

    /** A caller may do something else for so long, such as wait for its own reader, without the stream being cut. */
    public static final Duration LONGEST_PAUSE = Duration.ofMinutes(2);

    private static final String SEPARATOR_HEADER = "Table-Separator";
    private static final String PASSED_HEADER = "Passed-Columns";
    /** Characters of a header at most; the header row of the answer has all names. */
    private static final int LONGEST_HEADER = 2_000;
    private static final Logger LOG = LoggerFactory.getLogger(BulkHandler.class);

    private final Map<String, Operation<?, ?>> operations = new LinkedHashMap<>();
    private final BulkStream.Parts parts;
    private final Duration longestPause;
    private final StreamSlots slots = new StreamSlots(StreamSlots.MOST_AT_ONCE);
    private final AtomicLong onDisk = new AtomicLong();

    public BulkHandler(List<Operation<?, ?>> operations, JsonReader reader, JsonWriter writer, Problems problems,
            ConcurrencyLimiter limiter, RequestMetrics metrics, Duration longestPause) {
        operations.forEach(operation -> this.operations.put(operation.id(), operation));
        this.parts = new BulkStream.Parts(reader, writer, problems, limiter, metrics);
        this.longestPause = longestPause;
    }

    /** What is taken and given, and how. */
    private record Forms(String taken, String given, BulkOptions options) {

        boolean rowsIn() {
            return taken.equals(AnswerTable.MEDIA_TYPE);
        }

        boolean rowsOut() {
            return given.equals(AnswerTable.MEDIA_TYPE);
        }
    }

    public void post(Context context) throws IOException {
        Operation<?, ?> operation = operation(context.pathParam("calculator"));
        String taken = takenType(context, operation);
        context.res().addHeader("Vary", "Accept");
        boolean rows = taken.equals(AnswerTable.MEDIA_TYPE);
        String given = Acceptance.choose(context, rows ? List.of(AnswerTable.MEDIA_TYPE, AnswerObjects.MEDIA_TYPE)
                : List.of(AnswerObjects.MEDIA_TYPE, AnswerTable.MEDIA_TYPE));
        BulkOptions options;
        try {
            options = BulkQuery.read(context.queryString(), operation.answerType(), rows, given.equals(AnswerTable.MEDIA_TYPE));
        } catch (InvalidRequest query) {
            parts.problems().answer(context, query.violations(), BulkQuery::nameOf);
            return;
        }
        try {
            stream(context, operation, new Forms(taken, given, options));
        } catch (InvalidRequest header) {
            parts.problems().answer(context, header.violations(), BulkQuery::parameterOf);
        }
    }

    private void stream(Context context, Operation<?, ?> operation, Forms forms) throws IOException {
        StreamConnection connection = StreamConnection.of(context, longestPause);
        String caller = AccessPolicy.identityOf(context);
        StreamSlots.Slot slot = slots.take(caller, connection::wake).orElse(null);
        if (slot == null) {
            connection.end();
            parts.metrics().reject(Rejection.STREAMS);
            throw new ProblemException(ProblemType.OVERLOADED, Message.of("bulkHandler.tooManyBulkStreams"));
        }
        try {
            answer(context, operation, forms, new BulkStream.Call(caller, slot, RequestId.of(context), ModelHeader.choose(context),
                    AnswerLanguage.of(context)));
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
            return BodyType.of(context, List.of(AnswerObjects.MEDIA_TYPE, AnswerTable.MEDIA_TYPE));
        }
        String type = context.header("Content-Type");
        if (type != null && type.toLowerCase(Locale.ROOT).startsWith(AnswerTable.MEDIA_TYPE)) {
            context.header("Accept-Post", AnswerObjects.MEDIA_TYPE);
            throw new ProblemException(ProblemType.UNSUPPORTED_MEDIA_TYPE, Message.of(
                    "bulkHandler.doesAcceptCsvList", operation.id(), missing.get(),
                    AnswerObjects.MEDIA_TYPE));
        }
        return BodyType.of(context, List.of(AnswerObjects.MEDIA_TYPE));
    }

    private void answer(Context context, Operation<?, ?> operation, Forms forms, BulkStream.Call call) throws IOException {
        InputStream upload = context.req().getInputStream();
        if (!forms.options().afterUpload()) {
            answer(context, operation, forms, call, upload);
            return;
        }
        try (UploadSpool spool = receive(upload, call.slot()); InputStream whole = spool.read()) {
            answer(context, operation, forms, call, whole);
        }
    }

    private UploadSpool receive(InputStream upload, StreamSlots.Slot slot) {
        try {
            return UploadSpool.receive(upload, onDisk, slot::moved);
        } catch (ProblemException refused) {
            throw slot.isTaken() ? new ProblemException(ProblemType.OVERLOADED, Message.of("bulkHandler.tooManyBulkStreams")) : refused;
        }
    }

    private void answer(Context context, Operation<?, ?> operation, Forms forms, BulkStream.Call call, InputStream upload)
            throws IOException {
        BoundedLines lines = new BoundedLines(upload, HeapPlan.MAX_LINE_BYTES);
        RowReader rows = forms.rowsIn() ? header(lines, operation, parts.reader(), forms.options().table()) : null;
        if (rows != null) {
            describe(context, rows);
        }
        context.status(200).contentType(forms.rowsOut() ? forms.given() + "; charset=utf-8" : forms.given())
                .header("Cache-Control", "no-store");
        RequestLines requests = rows == null ? new ObjectLines() : rows;
        BulkOptions options = forms.rowsOut() ? forms.options().inColumns(operation.answerType()) : forms.options();
        new BulkStream<>(operation, parts, call, options, requests, answers(operation, forms, requests, call.language()))
                .run(lines, context.res().getOutputStream());
    }

    private AnswerLines answers(Operation<?, ?> operation, Forms forms, RequestLines requests, Language language) {
        BulkOptions options = forms.options();
        if (!forms.rowsOut()) {
            return new AnswerObjects(requests, options, parts.writer());
        }
        if (requests instanceof RowReader rows && options.onlyFaulty()) {
            return new FaultyRows(rows);
        }
        TableForm form = requests instanceof RowReader rows ? rows.form() : options.form();
        return new AnswerTable(requests, options, form, options.columns(operation.answerType()), language);
    }

    /** How the table was read, where that was not asked for: nothing is guessed in silence. */
    private static void describe(Context context, RowReader rows) {
        context.header(SEPARATOR_HEADER, WireNames.of(TableForm.Separator.of(rows.form().separator())));
        List<String> passed = new ArrayList<>();
        int length = 0;
        for (String name : rows.repeats()) {
            String encoded = URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
            length += encoded.length() + 2;
            if (length <= LONGEST_HEADER) {
                passed.add(encoded);
            }
        }
        if (!passed.isEmpty()) {
            context.header(PASSED_HEADER, String.join(", ", passed));
        }
    }

    private static RowReader header(BoundedLines lines, Operation<?, ?> operation, JsonReader reader, TableOptions options) {
        TableHeader header = new TableHeader(operation, reader, options);
        BoundedLines.Line line;
        try {
            RowScan scan = header.scan();
            line = lines.next(scan);
            while (line != null && line.isBlank()) {
                line = lines.next(scan);
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
        return header.read(line.bytes());
    }
}
