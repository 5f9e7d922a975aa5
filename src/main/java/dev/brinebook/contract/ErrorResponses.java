package dev.brinebook.contract;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.swagger.v3.oas.models.examples.Example;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.List;
import java.util.Set;

/**
 * An error that answers can have, as the contract names it.
 *
 * @param name name of the response in the contract
 * @param status HTTP status
 * @param description when it comes
 * @param type last part of the path of its page
 * @param title title of an example of it
 * @param detail detail of an example of it
 */
public record ErrorResponses(String name, int status, String description, String type, String title, String detail) {

    private static final ErrorResponses MALFORMED = new ErrorResponses("Malformed", 400,
            "The body is not acceptable, or the query is not properly encoded.", "malformed-body",
            "The body is not acceptable", "The JSON is cut off at line 1, column 25.");
    private static final ErrorResponses UNKNOWN_CALLER = new ErrorResponses("UnknownCaller", 401,
            "Only where keys are on: the request has no key that the service knows.", "unauthorized", "The caller is not known",
            "The service answers callers with a key only, and the request has none that it knows.");
    private static final ErrorResponses NOT_FOUND = new ErrorResponses("NotFound", 404, "There is nothing at this path.",
            "not-found", "There is nothing at this path", "No operation and no page has this path.");
    private static final ErrorResponses NOT_ACCEPTABLE = new ErrorResponses("NotAcceptable", 406,
            "The Accept header asks for a form that is not made here.", "not-acceptable", "No such form of the answer",
            "The answer is application/json.");
    private static final ErrorResponses TOO_SLOW = new ErrorResponses("TooSlow", 408,
            "Nothing of the request came for half a minute.", "request-timeout", "The request came too slowly",
            "The request was not whole within the time allowed.");
    private static final ErrorResponses TOO_LARGE = new ErrorResponses("TooLarge", 413, "The body is too large.",
            "body-too-large", "The body is too large", "The body has more than 262144 bytes.");
    private static final ErrorResponses URI_TOO_LONG = new ErrorResponses("UriTooLong", 414,
            "The path and the query are too long: 16 KiB with the headers.", "uri-too-long", "The URI is too long",
            "The path and query pass the limit of the server.");
    private static final ErrorResponses UNSUPPORTED = new ErrorResponses("UnsupportedMediaType", 415,
            "The body is of a type that the operation does not take, not in UTF-8, or compressed.", "unsupported-media-type",
            "The body is of a type not taken here", "The body must be application/json in UTF-8; Content-Type is missing.");
    private static final ErrorResponses INVALID = new ErrorResponses("Invalid", 422,
            "Properties are unknown, missing, of the wrong type, out of range or contradict each other: all are listed.",
            "invalid-request", "The request has faults", "1 fault in the request.");
    private static final ErrorResponses TOO_MANY = new ErrorResponses("TooManyRequests", 429,
            "Only where a rate is set: the caller asks too often; try again after the seconds of Retry-After.",
            "too-many-requests", "The caller asks too often",
            "More requests came from this caller within a minute than it may send.");
    private static final ErrorResponses HEADERS_TOO_LARGE = new ErrorResponses("HeadersTooLarge", 431,
            "The headers are too large: 16 KiB with the path and the query.", "headers-too-large", "The headers are too large",
            "The request headers pass the limit of the server.");
    private static final ErrorResponses FAILED = new ErrorResponses("Failed", 500, "A fault of ours.", "internal-error",
            "The service failed", "A fault of ours. It is logged under the request id.");
    private static final ErrorResponses UNAVAILABLE = new ErrorResponses("Unavailable", 503,
            "The service is overloaded or stopping, or the calculation took too long: try again after the seconds of"
                    + " Retry-After, or ask for less at once.", "overloaded",
            "The service is busy or stopping", "More requests than the service can answer are waiting.");

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

    ApiResponse response(Class<?> problem) {
        Schema<Object> schema = new JsonSchema();
        schema.set$ref("#/components/schemas/" + problem.getSimpleName());
        MediaType document = new MediaType().schema(schema);
        document.addExamples(type, new Example().summary(title).value(example()));
        ApiResponse response = new ApiResponse().description(description)
                .content(new Content().addMediaType("application/problem+json", document));
        return this == UNAVAILABLE || this == TOO_MANY ? comeBack(response) : response;
    }

    /** The same response, which also says when to try again. */
    static ApiResponse comeBack(ApiResponse response) {
        Schema<Object> whole = new JsonSchema();
        whole.setTypes(Set.of("integer"));
        return response.addHeaderObject("Retry-After",
                new Header().description("Seconds to wait before trying again.").schema(whole));
    }

    private ObjectNode example() {
        ObjectNode problem = JsonNodeFactory.instance.objectNode().put("type", "/problems/" + type).put("title", title)
                .put("status", status).put("detail", detail).put("instance", "/v1/hardness-conversion")
                .put("requestId", "b1946ac92492d234");
        if (this == INVALID) {
            problem.putArray("errors").addObject().put("pointer", "/hardness/value").put("code", "outOfRange")
                    .put("message", "must be from 0 to 584.178 gpg, was -4 gpg").put("allowed", "from 0 to 584.178 gpg")
                    .put("received", "-4");
        }
        return problem;
    }
}
