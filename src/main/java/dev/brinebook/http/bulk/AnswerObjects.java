// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.http.problem.ProblemType;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** An object for each line (NDJSON), with the whole answer in it. */
final class AnswerObjects implements AnswerLines {

    static final String MEDIA_TYPE = "application/x-ndjson";

    private static final byte[] END = {'}', '\n'};

    private final RequestLines lines;
    private final BulkOptions options;
    private final JsonWriter writer;

    AnswerObjects(RequestLines lines, BulkOptions options, JsonWriter writer) {
        this.lines = lines;
        this.options = options;
        this.writer = writer;
    }

    /** A dry run as a line says it. */
    private record Summary(CheckSummary.Totals summary) {
    }

    @Override
    public byte[] start() {
        return new byte[0];
    }

    @Override
    public byte[] answer(SentLine line, byte[] answer) {
        return options.answersAll() ? object(line, 200, "answer", answer) : new byte[0];
    }

    @Override
    public byte[] problem(SentLine line, int status, byte[] problem) {
        return object(line, status, "problem", problem);
    }

    /** Of a list to correct none: a line more would be sent again. */
    @Override
    public byte[] summary(CheckSummary.Totals totals) {
        if (options.onlyFaulty() && lines.columns().isEmpty()) {
            return new byte[0];
        }
        return (new String(writer.write(new Summary(totals)), StandardCharsets.UTF_8) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private byte[] object(SentLine line, int status, String name, byte[] json) {
        StringBuilder start = new StringBuilder("{\"line\":").append(line.number()).append(",\"status\":").append(status);
        if (lines.columns().isEmpty()) {
            String id = line.repeated() == null ? null : line.repeated().get(0);
            start.append(id == null ? "" : ",\"id\":" + id);
        } else if (options.onlyFaulty() && line.cells() != null) {
            columns(start, lines.columns(), lines.own(line));
        } else if (line.repeated() != null) {
            columns(start, lines.repeats(), line.repeated());
        }
        if (options.onlyFaulty() && lines.columns().isEmpty()) {
            sent(start, line, status);
        }
        byte[] head = start.append(",\"").append(name).append("\":").toString().getBytes(StandardCharsets.UTF_8);
        byte[] whole = Arrays.copyOf(head, head.length + json.length + END.length);
        System.arraycopy(json, 0, whole, head.length, json.length);
        System.arraycopy(END, 0, whole, head.length + json.length, END.length);
        return whole;
    }

    private static void columns(StringBuilder to, List<String> names, List<String> cells) {
        for (int i = 0; i < names.size(); i++) {
            to.append(i == 0 ? ",\"columns\":{" : ",").append(quoted(names.get(i))).append(':').append(quoted(cells.get(i)));
        }
        to.append(names.isEmpty() ? "" : "}");
    }

    /** The request as it was sent; of a line that is none, its text. */
    private static void sent(StringBuilder to, SentLine line, int status) {
        if (line.bytes() == null) {
            return;
        }
        if (status == ProblemType.MALFORMED_BODY.status() || line.sent() == null) {
            to.append(",\"text\":").append(quoted(line.text()));
        } else {
            to.append(",\"request\":").append(new String(line.sent(), StandardCharsets.UTF_8).strip());
        }
    }

    private static String quoted(String text) {
        return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
    }
}
