// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.JsonStringEncoder;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/**
 * A request on each line (NDJSON), or an object that holds it as {@code request} beside an {@code id} of the caller. No request
 * has a property of either name.
 */
final class ObjectLines implements RequestLines {

    static final String ID = "id";
    static final String REQUEST = "request";
    /** What a line to correct says of itself, and nobody reads when it is sent again. */
    static final Set<String> IGNORED = Set.of("line", "status");

    private static final String PROBLEM = "problem";
    private static final String TEXT = "text";
    private static final byte[] REQUEST_MARK = mark(REQUEST);
    private static final byte[] PROBLEM_MARK = mark(PROBLEM);

    private final JsonFactory parsers = JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

    /** What was found on a line that has a request inside, or the problem of one. */
    private static final class Found {
        private final Violations violations = new Violations();
        private String id;
        private byte[] request;
        private String text;
        private boolean problem;
    }

    private static byte[] mark(String name) {
        return ('"' + name + '"').getBytes(StandardCharsets.US_ASCII);
    }

    @Override
    public BoundedLines.Line next(BoundedLines lines) throws IOException {
        return lines.next();
    }

    @Override
    public SentLine read(BoundedLines.Line line) {
        byte[] bytes = line.bytes();
        if (bytes == null) {
            return SentLine.faulty(line, new ProblemException(ProblemType.BODY_TOO_LARGE, BulkStream.TOO_LONG));
        }
        Found found = holds(bytes, REQUEST_MARK) || holds(bytes, PROBLEM_MARK) ? find(bytes) : null;
        if (found != null && found.request == null && found.problem) {
            return uncorrected(line, found);
        }
        if (found == null || found.request == null) {
            return new SentLine(line.number(), bytes, null, null, bytes, () -> JsonReader.text(bytes));
        }
        boolean whole = found.violations.isEmpty();
        return new SentLine(line.number(), bytes, Arrays.asList(found.id), null, whole ? found.request : null, request(found));
    }

    /** A line of an answer without a request: the text of the line that was none, corrected or not, or nothing. */
    private SentLine uncorrected(BoundedLines.Line line, Found found) {
        if (found.text == null) {
            return SentLine.faulty(new BoundedLines.Line(line.number(), null), new InvalidRequest(List.of(
                    new Violation("/" + REQUEST, Code.MISSING, Message.of("problem.http.missing", REQUEST)))));
        }
        return read(new BoundedLines.Line(line.number(), found.text.getBytes(StandardCharsets.UTF_8)));
    }

    private static Supplier<JsonReader.Source> request(Found found) {
        return () -> {
            if (!found.violations.isEmpty()) {
                throw new InvalidRequest(found.violations.sorted());
            }
            return JsonReader.text(found.request);
        };
    }

    /** What is on the line; null when it is no JSON object, which is for the reader of requests to say. */
    private Found find(byte[] line) {
        Found found = new Found();
        try (JsonParser parser = parsers.createParser(line)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return null;
            }
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                JsonToken value = parser.nextToken();
                if (name.equals(REQUEST)) {
                    int start = (int) parser.currentTokenLocation().getByteOffset();
                    parser.skipChildren();
                    parser.finishToken();
                    found.request = Arrays.copyOfRange(line, start, (int) parser.currentLocation().getByteOffset());
                } else if (name.equals(ID)) {
                    found.id = id(parser, value, found.violations.at(ID));
                } else if (name.equals(TEXT) && value == JsonToken.VALUE_STRING) {
                    found.text = parser.getText();
                } else if (name.equals(PROBLEM) || name.equals(TEXT)) {
                    found.problem |= name.equals(PROBLEM);
                    parser.skipChildren();
                } else if (IGNORED.contains(name)) {
                    parser.skipChildren();
                } else {
                    Violations place = found.violations.at(name);
                    place.add(Violation.unknownField(place.pointer(), name, List.of(ID, REQUEST)));
                    parser.skipChildren();
                }
            }
            return parser.nextToken() == null ? found : null;
        } catch (IOException notJson) {
            return null;
        }
    }

    private static String id(JsonParser parser, JsonToken value, Violations at) throws IOException {
        boolean scalar = value == JsonToken.VALUE_STRING || value == JsonToken.VALUE_NUMBER_INT || value == JsonToken.VALUE_NUMBER_FLOAT;
        String text = scalar ? parser.getText() : "";
        parser.skipChildren();
        if (!scalar || text.length() > JsonReader.MAX_NAME_LENGTH) {
            at.add(Code.WRONG_TYPE, Message.of("objectLines.idTextOrNumber", JsonReader.MAX_NAME_LENGTH));
            return null;
        }
        if (!JsonReader.isPlain(text)) {
            at.add(Code.UNKNOWN_VALUE, Message.of("problem.http.mustPlainTextWithout"));
            return null;
        }
        return value == JsonToken.VALUE_STRING ? '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"' : text;
    }

    private static boolean holds(byte[] line, byte[] mark) {
        for (int at = 0; at <= line.length - mark.length; at++) {
            if (line[at] == mark[0] && Arrays.equals(line, at, at + mark.length, mark, 0, mark.length)) {
                return true;
            }
        }
        return false;
    }

    @Override
    public List<String> repeats() {
        return List.of(ID);
    }

    @Override
    public List<String> columns() {
        return List.of();
    }

    @Override
    public List<String> own(SentLine line) {
        return List.of();
    }

    @Override
    public String columnOf(Violation violation) {
        return null;
    }

    @Override
    public List<Violation> explain(List<Violation> violations, SentLine line) {
        return violations;
    }
}
