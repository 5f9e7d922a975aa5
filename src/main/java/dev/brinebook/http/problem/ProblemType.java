package dev.brinebook.http.problem;

import dev.brinebook.wording.Message;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.TimeoutException;

/** Every kind of problem that an answer can report, each served as a page under {@code /problems/}. */
public enum ProblemType {
    MALFORMED_BODY(400, "The body is not acceptable",
            "The body is not UTF-8 without byte order mark, or should be one JSON object and is not: it is empty or cut off,"
                    + " holds a key twice, a number too big, NaN or"
                    + " Infinity, text after its end, or is nested too deeply.",
            "Mend the body at the line and column that the detail names."),
    MALFORMED_QUERY(400, "The query cannot be read",
            "The query of a GET form is not properly percent-encoded.", "Encode the query as RFC 3986 says."),
    UNAUTHORIZED(401, "The caller is not known", "The service answers callers with a key only, and the request has none that it"
            + " knows.", "Send the header Authorization: Bearer, with your key after it; ask whoever runs the service for one."),
    ORIGIN_REFUSED(403, "The origin is not one that may call", "A web page of an origin that is not listed made this request.",
            "List the origin in CORS_ORIGINS, or call from outside a browser, without an Origin header."),
    NOT_FOUND(404, "There is nothing at this path", "No operation and no page has this path.",
            "Look the path up in /openapi.yaml or at /docs."),
    METHOD_NOT_ALLOWED(405, "The path does not take this method", "The path exists, but not with this method.",
            "Use a method that the Allow header names."),
    NOT_ACCEPTABLE(406, "No such form of the answer", "The Accept header asks for a form that is not made here.",
            "Accept application/json, or leave the header out."),
    REQUEST_TIMEOUT(408, "The request came too slowly", "The request was not whole within the time allowed.",
            "Send it again, in one go."),
    BODY_TOO_LARGE(413, "The body is too large", "The body passes the limit that the detail names.",
            "Send less: a series of days has at most three years."),
    URI_TOO_LONG(414, "The URI is too long", "The path and query pass the limit of the server.",
            "Use the POST form of the operation."),
    UNSUPPORTED_MEDIA_TYPE(415, "The body is of a type not taken here",
            "The Content-Type is missing or not one that the operation takes, or the body is compressed.",
            "Send Content-Type: application/json, or another that the Accept-Post header names, in UTF-8 without"
                    + " Content-Encoding."),
    INVALID_REQUEST(422, "The request has faults",
            "The body can be read, but properties are unknown, missing, of the wrong type or out of range, or contradict each"
                    + " other. All faults found are listed, each with a JSON pointer.",
            "Mend every entry of errors: it says where, what, and what is allowed."),
    TOO_MANY_REQUESTS(429, "The caller asks too often", "More requests came from this caller within a minute than it may send.",
            "Wait the seconds that Retry-After names; RateLimit-Policy says how many requests a minute has."),
    HEADERS_TOO_LARGE(431, "The headers are too large", "The request headers pass the limit of the server.",
            "Send fewer or shorter headers."),
    BAD_REQUEST(400, "The request cannot be read", "The request is not proper HTTP.", "Mend the request line and headers."),
    INTERNAL_ERROR(500, "The service failed", "A fault of ours. It is logged under the request id.",
            "Try again later; if it stays, report the request id."),
    OVERLOADED(503, "The service is busy or stopping", "More requests than the service can answer are waiting.",
            "Try again after the seconds that Retry-After names."),
    CALCULATION_TOO_LONG(503, "The calculation takes too long",
            "The calculation was not done within the time that one may take, and was ended.",
            "Ask for less at once: fewer draws, years, candidates, policies or salt doses. Where others kept the service busy,"
                    + " the same may be done in time later.");

    private final int status;
    private final String title;
    private final String explanation;
    private final String mend;

    ProblemType(int status, String title, String explanation, String mend) {
        this.status = status;
        this.title = title;
        this.explanation = explanation;
        this.mend = mend;
    }

    public int status() {
        return status;
    }

    public Message title() {
        return Message.of(title);
    }

    public Message explanation() {
        return Message.of(explanation);
    }

    public Message mend() {
        return Message.of(mend);
    }

    /** The path under which it is explained, which is also its {@code type}. */
    public String path() {
        return "/problems/" + slug();
    }

    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The type of a body that cannot be read further: it came too slowly, or broke off. */
    public static ProblemType ofBroken(Exception reading) {
        for (Throwable cause = reading; cause != null; cause = cause.getCause()) {
            if (cause instanceof TimeoutException) {
                return REQUEST_TIMEOUT;
            }
        }
        return BAD_REQUEST;
    }

    /** The type that speaks of a bare status, when the server itself refuses a request; 505 is of the request as well. */
    public static ProblemType byStatus(int status) {
        return Arrays.stream(values()).filter(type -> type.status == status && type != MALFORMED_BODY
                && type != MALFORMED_QUERY).findFirst().orElse(status < 500 || status == 505 ? BAD_REQUEST : INTERNAL_ERROR);
    }
}
