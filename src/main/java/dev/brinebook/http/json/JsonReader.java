// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.brinebook.api.Checker;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.guard.CalculationCancelled;
import dev.brinebook.guard.CancellationToken;
import dev.brinebook.http.limit.Deadline;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The one parser: bytes to a request record without violations, or all errors at once. */
public final class JsonReader {

    static final int MAX_DEPTH = Operation.MAX_DEPTH;
    public static final int MAX_NAME_LENGTH = 128;
    public static final int MAX_STRING_LENGTH = 4_096;
    public static final int MAX_NUMBER_LENGTH = 64;
    private static final char REPLACEMENT = '\uFFFD';

    /** What a request is read from. */
    @FunctionalInterface
    public interface Source {
        JsonParser parser(ObjectMapper mapper) throws IOException;
    }

    private final ObjectMapper mapper;
    private final Map<Class<?>, ObjectReader> readers = new ConcurrentHashMap<>();

    public JsonReader() {
        JsonFactory factory = JsonFactory.builder()
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(MAX_DEPTH)
                        .maxNameLength(MAX_NAME_LENGTH).maxStringLength(MAX_STRING_LENGTH)
                        .maxNumberLength(MAX_NUMBER_LENGTH).build())
                .build();
        this.mapper = JsonMapper.builder(factory)
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                .disable(DeserializationFeature.WRAP_EXCEPTIONS)
                .disable(MapperFeature.AUTO_DETECT_CREATORS, MapperFeature.AUTO_DETECT_FIELDS,
                        MapperFeature.AUTO_DETECT_SETTERS)
                .addModule(StrictScalars.module())
                .addHandler(new FaultCollector())
                .build();
    }

    /**
     * The request in {@code body}.
     *
     * @throws ProblemException when the body is not one JSON value
     * @throws InvalidRequest with every error, up to {@link Violations#MAX_FAULTS}, when it is JSON but not a request
     * @throws CalculationCancelled when the {@link CancellationToken} of this thread says so
     */
    public <Q extends Record> Q read(byte[] body, Class<Q> type) {
        return read(text(body), type);
    }

    /** The same from what is not a text alone. */
    public <Q extends Record> Q read(Source source, Class<Q> type) {
        Violations violations = new Violations();
        Q request = parse(source, type, violations);
        if (request != null) {
            Deadline.enter(Deadline.Part.CHECKING);
            Checker.check(request, violations);
        }
        if (!violations.isEmpty()) {
            throw new InvalidRequest(violations.sorted());
        }
        return request;
    }

    /**
     * A body as it was sent.
     *
     * @throws ProblemException when it is not in UTF-8
     */
    public static Source text(byte[] body) {
        String text = decode(body);
        return mapper -> mapper.createParser(text);
    }

    /** What is no text yet. */
    public static Source tree(JsonNode tree) {
        return mapper -> mapper.treeAsTokens(tree);
    }

    private <Q> Q parse(Source source, Class<Q> type, Violations violations) {
        try (JsonParser parser = new NullWatchingParser(source.parser(mapper), violations)) {
            try {
                return parse(parser, type, violations);
            } catch (JsonProcessingException e) {
                JsonLocation at = e.getLocation() == null ? parser.currentTokenLocation() : e.getLocation();
                throw malformed(fault(e), at);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private <Q> Q parse(JsonParser parser, Class<Q> type, Violations violations) throws IOException {
        if (parser.nextToken() == null) {
            throw malformed(Message.of("problem.http.bodyEmptyMustJson"), parser.currentLocation());
        }
        Q request = readers.computeIfAbsent(type, mapper::readerFor).readValue(parser);
        if (parser.nextToken() != null) {
            throw malformed(Message.of("problem.http.thereTextAfterEnd"), parser.currentTokenLocation());
        }
        if (request == null && violations.isEmpty()) {
            violations.add(Code.WRONG_TYPE, Message.of("problem.http.mustJsonObject"));
        }
        return request;
    }

    /** Says it in our words: the library's own may quote the body. */
    private static Message fault(JsonProcessingException e) {
        if (e instanceof StreamConstraintsException) {
            return Message.of("jsonReader.bodyExceedsLimitNesting", MAX_DEPTH,
                    MAX_NAME_LENGTH, MAX_STRING_LENGTH, MAX_NUMBER_LENGTH);
        }
        if (e instanceof JsonEOFException) {
            return Message.of("jsonReader.jsonEndsTooEarly");
        }
        boolean twice = e.getOriginalMessage() != null && e.getOriginalMessage().startsWith("Duplicate");
        return twice ? Message.of("jsonReader.objectDuplicateKey") : Message.of("jsonReader.bodyJson");
    }

    /** The text of a body, whatever its form. */
    public static String decode(byte[] body) {
        String text = new String(body, StandardCharsets.UTF_8);
        if (text.indexOf(REPLACEMENT) >= 0) {
            refuseOtherThanUtf8(body);
        }
        if (text.startsWith("\uFEFF")) {
            throw malformed(Message.of("problem.http.bodyStartsByteOrder"), 1, 1);
        }
        return text;
    }

    /** Finds the place, or finds that the replacement character was sent as such. */
    private static void refuseOtherThanUtf8(byte[] body) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer text = CharBuffer.allocate(body.length);
        if (decoder.decode(ByteBuffer.wrap(body), text, true).isError()) {
            String before = text.flip().toString();
            int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
            throw malformed(Message.of("problem.http.bodyUtf8"), line, before.length() - before.lastIndexOf('\n'));
        }
    }

    static ProblemException malformed(Message what, JsonLocation at) {
        return malformed(what, at.getLineNr(), at.getColumnNr());
    }

    private static ProblemException malformed(Message what, int line, int column) {
        return new ProblemException(ProblemType.MALFORMED_BODY, Message.of("jsonReader.lineColumn", what, line, column));
    }

    /** Whether a reader sees every character of a text, where it stands. */
    public static boolean isPlain(String text) {
        return text.codePoints().noneMatch(StrictScalars::isInvisible);
    }
}
