package dev.brinebook.contract;

import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.List;

/**
 * An error that answers can have, as the contract names it.
 *
 * @param name name of the response in the contract
 * @param status HTTP status
 * @param description when it comes
 */
record ErrorResponses(String name, String status, String description) {

    private static final ErrorResponses MALFORMED = new ErrorResponses("Malformed", "400",
            "The body is not acceptable JSON, or the query is not properly encoded.");
    private static final ErrorResponses NOT_FOUND = new ErrorResponses("NotFound", "404", "There is nothing at this path.");
    private static final ErrorResponses NOT_ACCEPTABLE = new ErrorResponses("NotAcceptable", "406",
            "The Accept header asks for a form that is not made here.");
    private static final ErrorResponses TOO_LARGE = new ErrorResponses("TooLarge", "413", "The body is too large.");
    private static final ErrorResponses UNSUPPORTED = new ErrorResponses("UnsupportedMediaType", "415",
            "The body is not application/json in UTF-8, or is compressed.");
    private static final ErrorResponses INVALID = new ErrorResponses("Invalid", "422",
            "Properties are unknown, missing, of the wrong type, out of range or contradict each other: all are listed.");
    private static final ErrorResponses FAILED = new ErrorResponses("Failed", "500", "A fault of ours.");
    private static final ErrorResponses UNAVAILABLE = new ErrorResponses("Unavailable", "503",
            "The service is overloaded or stopping: try again after the seconds of Retry-After.");

    static final List<ErrorResponses> ALL = List.of(MALFORMED, NOT_FOUND, NOT_ACCEPTABLE, TOO_LARGE, UNSUPPORTED, INVALID,
            FAILED, UNAVAILABLE);
    static final List<ErrorResponses> OF_POST = List.of(MALFORMED, NOT_ACCEPTABLE, TOO_LARGE, UNSUPPORTED, INVALID, FAILED,
            UNAVAILABLE);
    static final List<ErrorResponses> OF_GET = List.of(MALFORMED, NOT_ACCEPTABLE, INVALID, FAILED, UNAVAILABLE);
    static final List<ErrorResponses> OF_PAGE = List.of(NOT_FOUND, FAILED, UNAVAILABLE);

    ApiResponse response(Class<?> problem) {
        Schema<Object> schema = new JsonSchema();
        schema.set$ref("#/components/schemas/" + problem.getSimpleName());
        return new ApiResponse().description(description)
                .content(new Content().addMediaType("application/problem+json", new MediaType().schema(schema)));
    }
}
