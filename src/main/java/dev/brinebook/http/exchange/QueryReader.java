// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.WireNames;
import dev.brinebook.http.json.FaultCollector;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;
import io.javalin.http.Context;
import java.math.BigDecimal;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Turns the query of a GET form into the body that the POST form takes, strictly. */
public final class QueryReader {

    private static final Pattern BROKEN = Pattern.compile("%(?![0-9A-Fa-f]{2})");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?([eE][+-]?\\d{1,2})?");

    private static final int LONGEST = JsonReader.MAX_NAME_LENGTH;

    /** What the decoder puts in place of bytes that are no UTF-8. */
    private static final char REPLACEMENT = '\uFFFD';

    private static final QueryReader NOTHING = new QueryReader(List.of());

    private final List<QueryParameter> parameters;

    public QueryReader(List<QueryParameter> parameters) {
        this.parameters = parameters;
    }

    /** Whether there is nothing in the query, where nothing may be; answers with its errors where there is. */
    public static boolean isEmpty(Context context, Problems problems) {
        try {
            NOTHING.body(context.queryString());
            return true;
        } catch (InvalidRequest unknown) {
            problems.answer(context, unknown.violations(), NOTHING::parameterOf);
            return false;
        }
    }

    /**
     * The request body for {@code query}.
     *
     * @throws ProblemException when the query is not properly encoded
     * @throws InvalidRequest when a parameter is unknown, repeated or missing
     */
    public byte[] body(String query) {
        Violations violations = new Violations();
        Map<String, String> given = split(query == null ? "" : query, violations);
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        for (QueryParameter parameter : parameters) {
            String text = given.get(parameter.name());
            if (text != null && !parameter.isWhole()) {
                put(body, parameter, text);
            } else if (text == null && parameter.required()) {
                violations.add(new Violation(parameter.pointer(), Code.MISSING,
                        Message.of("problem.http.missing", parameter.name())));
            }
        }
        if (!violations.isEmpty()) {
            throw new InvalidRequest(violations.sorted());
        }
        if (isWhole()) {
            return given.get(parameters.get(0).name()).getBytes(StandardCharsets.UTF_8);
        }
        return body.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Whether the query holds the whole body, which is bounded by the length of the address. */
    private boolean isWhole() {
        return parameters.stream().anyMatch(QueryParameter::isWhole);
    }

    /** The parameter that a violation of the body belongs to, or null. */
    public String parameterOf(Violation violation) {
        if (isWhole()) {
            return parameters.get(0).name();
        }
        return parameters.stream().filter(p -> p.pointer().equals(violation.pointer())
                || p.pointer().startsWith(violation.pointer() + "/")).map(QueryParameter::name).findFirst()
                .orElse(violation.code() == Code.UNKNOWN_FIELD
                        ? violation.pointer().substring(1).replace("~1", "/").replace("~0", "~") : null);
    }

    private Map<String, String> split(String query, Violations violations) {
        Map<String, String> given = new LinkedHashMap<>();
        List<String> known = parameters.stream().map(QueryParameter::name).toList();
        for (String pair : query.split("&")) {
            if (pair.isEmpty()) {
                continue;
            }
            int equals = pair.indexOf('=');
            String name = decode(equals < 0 ? pair : pair.substring(0, equals));
            String value = decode(equals < 0 ? "" : pair.substring(equals + 1));
            if (!known.contains(name)) {
                String nearest = WireNames.nearest(name, known).orElse(null);
                Violations place = violations.at(name);
                place.add(FaultCollector.unknown(place.pointer(), nearest, String.join(", ", known)));
            } else if (given.put(name, value) != null) {
                violations.add(new Violation(pointer(name), Code.INCONSISTENT, Message.of("problem.http.givenMoreThanOnce", name)));
            }
        }
        return given;
    }

    private static void put(ObjectNode body, QueryParameter parameter, String text) {
        String[] path = parameter.pointer().substring(1).split("/");
        ObjectNode parent = body;
        for (int i = 0; i < path.length - 1; i++) {
            parent = parent.withObject("/" + path[i]);
        }
        String name = path[path.length - 1];
        if (parameter.number() && text.length() <= JsonReader.MAX_NUMBER_LENGTH && NUMBER.matcher(text).matches()) {
            parent.put(name, new BigDecimal(text));
        } else {
            parent.put(name, text);
        }
        if (parameter.unit() != null) {
            parent.put("unit", parameter.unit());
        }
    }

    private String decode(String text) {
        if (BROKEN.matcher(text).find()) {
            throw new ProblemException(ProblemType.MALFORMED_QUERY,
                    Message.of("queryReader.queryPercentEncodedCorrectly"));
        }
        String decoded = URLDecoder.decode(text, StandardCharsets.UTF_8);
        if (decoded.indexOf(REPLACEMENT) >= 0 || !isWhole() && decoded.length() > LONGEST) {
            throw new ProblemException(ProblemType.MALFORMED_QUERY,
                    Message.of("queryReader.queryUtf8Or", LONGEST));
        }
        return decoded;
    }

    private String pointer(String name) {
        return parameters.stream().filter(parameter -> parameter.name().equals(name)).findFirst().orElseThrow().pointer();
    }
}
