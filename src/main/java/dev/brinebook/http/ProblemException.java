package dev.brinebook.http;

import dev.brinebook.wording.Message;

/** Ends a request with a problem. */
final class ProblemException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final ProblemType type;
    private final transient Message detail;

    ProblemException(ProblemType type, Message detail) {
        super(detail.toString(), null, false, false);
        this.type = type;
        this.detail = detail;
    }

    ProblemType type() {
        return type;
    }

    Message detail() {
        return detail;
    }
}
