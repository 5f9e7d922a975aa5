package dev.brinebook.http;

import dev.brinebook.api.Violation;
import io.javalin.http.Context;
import java.util.List;
import java.util.function.Function;

/** Answers requests with problem documents. */
final class Problems {

    static final String MEDIA_TYPE = "application/problem+json";
    /** Seconds after which a caller may try again: a stopped service starts anew in less. */
    static final String RETRY_AFTER_SECONDS = "2";

    private final JsonWriter writer;

    Problems(JsonWriter writer) {
        this.writer = writer;
    }

    void answer(Context context, ProblemType type, String detail) {
        send(context, type, document(type, detail, context.path(), RequestId.of(context), null, null));
    }

    /** Lists every violation, up to the limit, with the query parameter that each belongs to. */
    void answer(Context context, List<Violation> violations, Function<Violation, String> parameter) {
        send(context, ProblemType.INVALID_REQUEST, document(violations, parameter, context.path(), RequestId.of(context)));
    }

    /** Lists every violation, up to the limit. */
    byte[] document(List<Violation> violations, String path, String requestId) {
        return document(violations, violation -> null, path, requestId);
    }

    private byte[] document(List<Violation> violations, Function<Violation, String> parameter, String path,
            String requestId) {
        List<Problem.Fault> faults = violations.stream().limit(Problem.MAX_ERRORS)
                .map(violation -> Problem.Fault.of(violation, parameter.apply(violation))).toList();
        int omitted = violations.size() - faults.size();
        String detail = violations.size() == 1 ? "1 fault in the request." : violations.size() + " faults in the request.";
        return document(ProblemType.INVALID_REQUEST, detail, path, requestId, faults, omitted == 0 ? null : omitted);
    }

    byte[] document(ProblemType type, String detail, String path, String requestId) {
        return document(type, detail, path, requestId, null, null);
    }

    private byte[] document(ProblemType type, String detail, String path, String requestId, List<Problem.Fault> faults,
            Integer omitted) {
        return writer.write(new Problem(type.path(), type.title(), type.status(), detail, path, requestId, faults,
                omitted));
    }

    private static void send(Context context, ProblemType type, byte[] document) {
        if (type == ProblemType.OVERLOADED) {
            context.header("Retry-After", RETRY_AFTER_SECONDS);
        }
        context.status(type.status()).contentType(MEDIA_TYPE).header("Cache-Control", "no-store").result(document);
    }
}
