package dev.brinebook.http;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.brinebook.api.Checker;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** The one parser: bytes to a request record without violations, or every fault at once. */
final class JsonReader {

    static final int MAX_DEPTH = 32;
    static final int MAX_NAME_LENGTH = 128;
    static final int MAX_STRING_LENGTH = 4_096;
    static final int MAX_NUMBER_LENGTH = 64;

    private final ObjectMapper mapper;

    JsonReader() {
        JsonFactory factory = JsonFactory.builder()
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(MAX_DEPTH)
                        .maxNameLength(MAX_NAME_LENGTH).maxStringLength(MAX_STRING_LENGTH)
                        .maxNumberLength(MAX_NUMBER_LENGTH).build())
                .build();
        this.mapper = JsonMapper.builder(factory)
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
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
     * @throws InvalidRequest with every fault, when it is JSON but not a request
     */
    <Q extends Record> Q read(byte[] body, Class<Q> type) {
        Violations violations = new Violations();
        Q request = parse(decode(body), type, violations);
        if (request != null) {
            Checker.check(request, violations);
        }
        if (!violations.isEmpty()) {
            throw new InvalidRequest(violations.sorted());
        }
        return request;
    }

    private <Q> Q parse(String text, Class<Q> type, Violations violations) {
        try (JsonParser parser = new NullWatchingParser(mapper.createParser(text), violations)) {
            if (parser.nextToken() == null) {
                throw malformed("The body is empty: a JSON object is wanted", parser.currentLocation());
            }
            Q request = mapper.readerFor(type).withAttribute(FaultCollector.VIOLATIONS, violations).readValue(parser);
            if (parser.nextToken() != null) {
                throw malformed("There is text after the end of the JSON object", parser.currentTokenLocation());
            }
            if (request == null && violations.isEmpty()) {
                violations.add(Code.WRONG_TYPE, "must be a JSON object");
            }
            return request;
        } catch (StreamConstraintsException e) {
            throw malformed("The body passes a limit: nesting " + MAX_DEPTH + ", names " + MAX_NAME_LENGTH
                    + ", texts " + MAX_STRING_LENGTH + ", numbers " + MAX_NUMBER_LENGTH + " characters", e.getLocation());
        } catch (JsonProcessingException e) {
            boolean twice = e.getOriginalMessage() != null && e.getOriginalMessage().startsWith("Duplicate");
            throw malformed(twice ? "A key stands twice in one object" : "The body is not valid JSON", e.getLocation());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String decode(byte[] body) {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(body)).toString();
            if (text.startsWith("\uFEFF")) {
                throw new ProblemException(ProblemType.MALFORMED_BODY,
                        "The body starts with a byte order mark at line 1, column 1: send UTF-8 without it.");
            }
            return text;
        } catch (CharacterCodingException e) {
            throw new ProblemException(ProblemType.MALFORMED_BODY, "The body is not UTF-8.");
        }
    }

    static ProblemException malformed(String what, JsonLocation at) {
        String where = at == null ? "" : " at line " + at.getLineNr() + ", column " + at.getColumnNr();
        return new ProblemException(ProblemType.MALFORMED_BODY, what + where + ".");
    }
}
