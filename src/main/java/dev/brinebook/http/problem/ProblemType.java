// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.problem;

import dev.brinebook.text.Localizable;
import dev.brinebook.text.Message;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeoutException;

/** Every kind of problem that an answer can report, each served as a page under {@code /problems/}. */
public enum ProblemType implements Localizable {
    MALFORMED_BODY(400),
    MALFORMED_QUERY(400),
    UNKNOWN_MODEL_VERSION(400),
    UNAUTHORIZED(401),
    ORIGIN_REFUSED(403),
    NOT_FOUND(404),
    METHOD_NOT_ALLOWED(405),
    NOT_ACCEPTABLE(406),
    REQUEST_TIMEOUT(408),
    BODY_TOO_LARGE(413),
    URI_TOO_LONG(414),
    UNSUPPORTED_MEDIA_TYPE(415),
    INVALID_REQUEST(422),
    TOO_MANY_REQUESTS(429),
    HEADERS_TOO_LARGE(431),
    BAD_REQUEST(400),
    INTERNAL_ERROR(500),
    OVERLOADED(503),
    CALCULATION_TOO_LONG(503);

    /** Those of what a request says, where the server itself refuses none. */
    private static final Set<ProblemType> OF_CONTENT = EnumSet.of(MALFORMED_BODY, MALFORMED_QUERY, UNKNOWN_MODEL_VERSION);

    private final int status;

    ProblemType(int status) {
        this.status = status;
    }

    public int status() {
        return status;
    }

    /** What went wrong, in a few words. */
    public Message title() {
        return part("title");
    }

    /** The same in a sentence. */
    public Message explanation() {
        return part("detail");
    }

    /** Remedy for the caller. */
    public Message remedy() {
        return part("remedy");
    }

    private Message part(String part) {
        return Message.of(textId() + "." + part);
    }

    @Override
    public String textId() {
        return Localizable.idOf("problemType", this);
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
        return Arrays.stream(values()).filter(type -> type.status == status && !OF_CONTENT.contains(type)).findFirst()
                .orElse(status < 500 || status == 505 ? BAD_REQUEST : INTERNAL_ERROR);
    }
}
