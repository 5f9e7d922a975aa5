// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.FormChoice;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Turns the query of a GET form into the body that the POST form takes, strictly. */
public final class QueryReader {

    private static final Pattern BROKEN = Pattern.compile("%(?![0-9A-Fa-f]{2})");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?([eE][+-]?\\d{1,2})?");

    private static final int LONGEST = JsonReader.MAX_NAME_LENGTH;
    private static final int LONGEST_LIST = LONGEST * AnswerParts.MAX_FIELDS;

    /** What the decoder puts in place of bytes that are no UTF-8. */
    private static final char REPLACEMENT = '\uFFFD';

    /** Parameters that choose among the parts of an answer; none of them belongs to a request body. */
    private static final List<String> PARTS = List.of(AnswerParts.DETAIL, AnswerParts.FIELDS);

    private static final byte[] EMPTY_BODY = {'{', '}'};

    private final List<QueryParameter> parameters;
    private final List<FormChoice<?>> choices;
    /** Names that may stand beside the parameters. */
    private final List<String> others;

    public QueryReader(List<QueryParameter> parameters) {
        this(parameters, List.of());
    }

    /** For a query that may choose among the forms of the answer too. */
    public QueryReader(List<QueryParameter> parameters, List<FormChoice<?>> choices) {
        this.parameters = parameters;
        this.choices = choices;
        this.others = Stream.concat(PARTS.stream(), choices.stream().map(FormChoice::name)).toList();
    }

    /**
     * What a query says.
     *
     * @param body the request body
     * @param parts the parts of the answer that are wanted
     * @param chosen what is chosen about the form of the answer
     */
    public record Query(byte[] body, AnswerParts parts, List<Enum<?>> chosen) {
    }

    /**
     * What {@code query} says, where it may choose among the parts of {@code answer} too.
     *
     * @throws ProblemException when the query is not properly encoded
     * @throws InvalidRequest when a parameter is unknown, repeated, missing or wrong
     */
    public Query read(String query, Class<? extends Record> answer) {
        if (query == null && parameters.isEmpty()) {
            return new Query(EMPTY_BODY, AnswerParts.standard(answer), List.of());
        }
        Violations violations = new Violations();
        Map<String, String> given = split(query, others, violations);
        List<Enum<?>> chosen = new ArrayList<>();
        choices.stream().filter(choice -> given.containsKey(choice.name()))
                .map(choice -> choice.parse(given.get(choice.name()), violations)).filter(Objects::nonNull).forEach(chosen::add);
        AnswerParts parts = AnswerParts.parse(given.get(AnswerParts.DETAIL), given.get(AnswerParts.FIELDS), answer, violations);
        return new Query(body(given, violations), parts, chosen);
    }

    /**
     * Every name and value of a query, in its order, for whoever knows the names itself.
     *
     * @throws ProblemException when the query is not properly encoded
     */
    public static List<Map.Entry<String, String>> pairs(String query) {
        List<Map.Entry<String, String>> pairs = new ArrayList<>();
        for (String pair : query == null ? new String[0] : query.split("&")) {
            if (!pair.isEmpty()) {
                int equals = pair.indexOf('=');
                pairs.add(Map.entry(decoded(equals < 0 ? pair : pair.substring(0, equals), LONGEST),
                        decoded(equals < 0 ? "" : pair.substring(equals + 1), LONGEST_LIST)));
            }
        }
        return pairs;
    }

    /**
     * Refuses to choose among the parts of an answer that has none, or about the form of one in JSON.
     *
     * @throws InvalidRequest when the query does
     */
    public void refuseOfOtherForms(String query, boolean json, List<String> mediaTypes) {
        if (query == null) {
            return;
        }
        Violations violations = new Violations();
        List<String> refused = json ? choices.stream().map(FormChoice::name).toList() : PARTS;
        split(query, others, violations).keySet().stream().filter(refused::contains).forEach(name -> violations.add(name,
                Code.INCONSISTENT, Message.of("queryReader.partsOfJsonOnly", name, json ? String.join(", ", mediaTypes) : Operation.JSON)));
        if (!violations.isEmpty()) {
            throw new InvalidRequest(violations.sorted());
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
        return body(split(query, List.of(), violations), violations);
    }

    private byte[] body(Map<String, String> given, Violations violations) {
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

    /** The parameter that a violation of the query, or of the body that it makes, belongs to, or null. */
    public String parameterOf(Violation violation) {
        Optional<String> part = others.stream().filter(name -> (violation.pointer() + "/").startsWith("/" + name + "/")).findFirst();
        if (part.isPresent()) {
            return part.get();
        }
        if (isWhole()) {
            return parameters.get(0).name();
        }
        return parameters.stream().filter(p -> p.pointer().equals(violation.pointer())
                || p.pointer().startsWith(violation.pointer() + "/")).map(QueryParameter::name).findFirst()
                .orElse(violation.code() == Code.UNKNOWN_FIELD
                        ? violation.pointer().substring(1).replace("~1", "/").replace("~0", "~") : null);
    }

    /**
     * The values of the only parameter that a query may hold, and must hold once to {@code most} times.
     *
     * @throws ProblemException when the query is not properly encoded
     * @throws InvalidRequest when another parameter is given, or this one too seldom or too often
     */
    public static List<String> values(String query, String name, int most) {
        Violations violations = new Violations();
        List<String> values = new ArrayList<>();
        for (Map.Entry<String, String> pair : pairs(query)) {
            if (pair.getKey().equals(name)) {
                values.add(pair.getValue());
            } else {
                Violations place = violations.at(pair.getKey());
                place.add(Violation.unknownField(place.pointer(), pair.getKey(), List.of(name)));
            }
        }
        if (values.isEmpty() || values.size() > most) {
            violations.add(name, Code.WRONG_COUNT, Message.of("queryReader.times", name, most, values.size()));
        }
        if (!violations.isEmpty()) {
            throw new InvalidRequest(violations.sorted());
        }
        return values;
    }

    /** Names and values of a query, each known among the parameters or {@code others}. */
    private Map<String, String> split(String query, List<String> beside, Violations violations) {
        Map<String, String> given = new LinkedHashMap<>();
        List<String> known = Stream.concat(parameters.stream().map(QueryParameter::name), beside.stream()).toList();
        for (String pair : query == null ? new String[0] : query.split("&")) {
            if (pair.isEmpty()) {
                continue;
            }
            int equals = pair.indexOf('=');
            String name = decode(equals < 0 ? pair : pair.substring(0, equals), LONGEST);
            String value = decode(equals < 0 ? "" : pair.substring(equals + 1), beside.contains(name) ? LONGEST_LIST : LONGEST);
            if (!known.contains(name)) {
                Violations place = violations.at(name);
                place.add(known.isEmpty() ? new Violation(place.pointer(), Code.UNKNOWN_FIELD,
                        Message.of("faultCollector.unknownFieldQueryMust")) : Violation.unknownField(place.pointer(), name, known));
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

    private String decode(String text, int longest) {
        return decoded(text, isWhole() ? Integer.MAX_VALUE : longest);
    }

    private static String decoded(String text, int longest) {
        if (BROKEN.matcher(text).find()) {
            throw new ProblemException(ProblemType.MALFORMED_QUERY,
                    Message.of("queryReader.queryPercentEncodedCorrectly"));
        }
        String decoded = URLDecoder.decode(text, StandardCharsets.UTF_8);
        if (decoded.indexOf(REPLACEMENT) >= 0 || decoded.length() > longest) {
            throw new ProblemException(ProblemType.MALFORMED_QUERY,
                    Message.of("queryReader.queryUtf8Or", longest));
        }
        return decoded;
    }

    private String pointer(String name) {
        return parameters.stream().filter(parameter -> parameter.name().equals(name)).findFirst()
                .map(QueryParameter::pointer).orElse("/" + name);
    }
}
