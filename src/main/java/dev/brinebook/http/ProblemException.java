package dev.brinebook.http;

/** Ends a request with a problem. */
final class ProblemException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final ProblemType type;

    ProblemException(ProblemType type, String detail) {
        super(detail, null, false, false);
        this.type = type;
    }

    ProblemType type() {
        return type;
    }
}
