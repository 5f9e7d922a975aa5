// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.model.Model;
import dev.brinebook.text.Message;
import io.swagger.v3.oas.models.examples.Example;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.ArrayList;
import java.util.List;

/**
 * An error that answers can have, as the contract names it.
 *
 * @param name name of the response in the contract
 * @param status HTTP status
 * @param description when it comes
 * @param type last part of the path of its page
 * @param detail detail of an example of it
 */
public record ErrorResponses(String name, int status, String description, String type, String detail) {

    private static final ErrorResponses MALFORMED = new ErrorResponses("Malformed", 400,
            "The body cannot be read, the query is not encoded correctly, or Model-Version cannot be called.", "malformed-body",
            "The JSON ends too early. Line 1, column 25.");
    /** The second kind of 400, an example of the same response. */
    private static final ErrorResponses UNKNOWN_VERSION = new ErrorResponses(MALFORMED.name, 400, MALFORMED.description,
            "unknown-model-version", "`Model-Version` must be one of " + String.join(", ", Model.versions()) + ".");
    private static final ErrorResponses UNKNOWN_CALLER = new ErrorResponses("UnknownCaller", 401,
            "Only if the service uses keys: the request has no known key.", "unauthorized",
            "The service answers only callers with a key. This request has no known key.");
    private static final ErrorResponses NOT_FOUND = new ErrorResponses("NotFound", 404, "Nothing is at this path.",
            "not-found", "No operation and no page has this path.");
    private static final ErrorResponses NOT_ACCEPTABLE = new ErrorResponses("NotAcceptable", 406,
            "The answer is not available in a format of the Accept header.", "not-acceptable",
            "The answer is available as application/json.");
    private static final ErrorResponses TOO_SLOW = new ErrorResponses("TooSlow", 408,
            "No data of the request arrived for 30 seconds.", "request-timeout",
            "The request was not complete within the time allowed.");
    private static final ErrorResponses TOO_LARGE = new ErrorResponses("TooLarge", 413, "The body is too large.",
            "body-too-large", "The body has more than 262,144 bytes.");
    private static final ErrorResponses URI_TOO_LONG = new ErrorResponses("UriTooLong", 414,
            "The path and query are too long. With the headers they may have 16 KiB.", "uri-too-long",
            "The path and query exceed the limit of the server.");
    private static final ErrorResponses UNSUPPORTED = new ErrorResponses("UnsupportedMediaType", 415,
            "The body has a media type that the operation does not accept, is not UTF-8, or is compressed.", "unsupported-media-type",
            "The body must be application/json in UTF-8. `Content-Type` is missing.");
    private static final ErrorResponses INVALID = new ErrorResponses("Invalid", 422,
            "Properties are unknown, missing, of the wrong type, out of range or contradictory. All errors are listed.",
            "invalid-request", "The request has 1 error.");
    private static final ErrorResponses TOO_MANY = new ErrorResponses("TooManyRequests", 429,
            "Only if the service has a rate limit: too many requests. Try again after the seconds in Retry-After.",
            "too-many-requests", "This caller sent more requests in a minute than allowed.");
    private static final ErrorResponses HEADERS_TOO_LARGE = new ErrorResponses("HeadersTooLarge", 431,
            "The headers are too large. With the path and query they may have 16 KiB.", "headers-too-large",
            "The request headers exceed the limit of the server.");
    private static final ErrorResponses FAILED = new ErrorResponses("Failed", 500, "Internal error.", "internal-error",
            "Internal error. It is logged under the request ID.");
    private static final ErrorResponses UNAVAILABLE = new ErrorResponses("Unavailable", 503,
            "The service is overloaded or stopping, or the calculation took too long. Try again after the seconds in "
                    + "Retry-After, or request less at once.", "overloaded",
            "More requests are waiting than the service can answer.");

    public static final List<ErrorResponses> ALL = List.of(MALFORMED, UNKNOWN_CALLER, NOT_FOUND, NOT_ACCEPTABLE, TOO_SLOW,
            TOO_LARGE, URI_TOO_LONG, UNSUPPORTED, INVALID, TOO_MANY, HEADERS_TOO_LARGE, FAILED, UNAVAILABLE);
    public static final List<ErrorResponses> OF_BULK = ALL;
    public static final List<ErrorResponses> OF_TEMPLATE = List.of(UNKNOWN_CALLER, NOT_FOUND, NOT_ACCEPTABLE, URI_TOO_LONG,
            TOO_MANY, HEADERS_TOO_LARGE, FAILED, UNAVAILABLE);
    public static final List<ErrorResponses> OF_POST = List.of(MALFORMED, UNKNOWN_CALLER, NOT_ACCEPTABLE, TOO_SLOW, TOO_LARGE,
            URI_TOO_LONG, UNSUPPORTED, INVALID, TOO_MANY, HEADERS_TOO_LARGE, FAILED, UNAVAILABLE);
    public static final List<ErrorResponses> OF_GET = List.of(MALFORMED, UNKNOWN_CALLER, NOT_ACCEPTABLE, URI_TOO_LONG, INVALID,
            TOO_MANY, HEADERS_TOO_LARGE, FAILED, UNAVAILABLE);
    public static final List<ErrorResponses> OF_PAGE = List.of(NOT_FOUND, URI_TOO_LONG, HEADERS_TOO_LARGE, FAILED, UNAVAILABLE);

    /** Of a page that keys and rates concern as they do the operations. */
    static final List<ErrorResponses> OF_GUARDED_PAGE = List.of(UNKNOWN_CALLER, NOT_FOUND, URI_TOO_LONG, TOO_MANY,
            HEADERS_TOO_LARGE, FAILED, UNAVAILABLE);

    /** Whether every operation can report the kind of problem whose page ends in {@code type}. */
    public static boolean isOfOperations(String type) {
        return type.equals(UNKNOWN_VERSION.type) || OF_POST.stream().anyMatch(error -> error.type.equals(type));
    }

    ApiResponse response(Class<?> problem) {
        Schema<Object> schema = new JsonSchema();
        schema.set$ref("#/components/schemas/" + problem.getSimpleName());
        MediaType document = new MediaType().schema(schema);
        document.addExamples(type, new Example().summary(title()).value(example()));
        if (this == MALFORMED) {
            document.addExamples(UNKNOWN_VERSION.type, new Example().summary(UNKNOWN_VERSION.title()).value(UNKNOWN_VERSION.example()));
        }
        ApiResponse response = new ApiResponse().description(description)
                .content(new Content().addMediaType("application/problem+json", document));
        return ResponseHeaders.on(response, headers());
    }

    private List<String> headers() {
        List<String> headers = new ArrayList<>(ResponseHeaders.ALWAYS);
        headers.add(ResponseHeaders.LANGUAGE);
        switch (status) {
            case 400, 422 -> headers.add(ResponseHeaders.MODEL);
            case 401 -> headers.add("WWW-Authenticate");
            case 415 -> headers.add("Accept-Post");
            case 429 -> {
                headers.addAll(ResponseHeaders.RATE);
                headers.add(ResponseHeaders.RETRY_AFTER);
            }
            case 503 -> headers.add(ResponseHeaders.RETRY_AFTER);
            default -> { }
        }
        return headers;
    }

    /** The title that the service gives to problems of this type. */
    private String title() {
        String[] words = type.split("-");
        StringBuilder id = new StringBuilder("problemType.").append(words[0]);
        for (int word = 1; word < words.length; word++) {
            id.append(Character.toUpperCase(words[word].charAt(0))).append(words[word], 1, words[word].length());
        }
        return Message.of(id.append(".title").toString()).toString();
    }

    private ObjectNode example() {
        ObjectNode problem = JsonNodeFactory.instance.objectNode().put("type", "/problems/" + type).put("title", title())
                .put("status", status).put("detail", detail).put("instance", "/v1/hardness-conversion#b1946ac92492d234")
                .put("requestId", "b1946ac92492d234");
        if (this == INVALID) {
            problem.putArray("errors").addObject().put("pointer", "/hardness/value").put("code", "outOfRange")
                    .put("message", "Must be from 0 to 584.178\u00a0gpg. Given: -4\u00a0gpg.").put("received", "-4")
                    .putArray("allowed").add("from 0 to 584.178\u00a0gpg");
        } else if (this == UNKNOWN_VERSION) {
            ArrayNode allowed = problem.putArray("errors").addObject().put("pointer", "").put("header", ResponseHeaders.MODEL)
                    .put("code", "unknownValue").put("message", detail).put("received", "1.0.0").putArray("allowed");
            Model.versions().forEach(allowed::add);
        }
        return problem;
    }
}
