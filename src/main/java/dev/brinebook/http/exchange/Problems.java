// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import dev.brinebook.api.Violation;
import dev.brinebook.api.Violations;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.http.problem.Problem;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import io.javalin.http.Context;
import java.util.List;
import java.util.function.Function;

/** Answers requests with problem documents. */
public final class Problems {

    public static final String MEDIA_TYPE = "application/problem+json";
    public static final String RETRY_AFTER = "Retry-After";
    /** Seconds after which a caller may try again: a stopped service restarts in less. */
    public static final String RETRY_AFTER_SECONDS = "2";

    private final JsonWriter writer;
    private final String publicUrl;

    /**
     * Writes problems.
     *
     * @param publicUrl scheme and authority that callers know the service by, or empty; then types are relative references, which
     *     resolve against the address of the request (RFC 9457, section 3.1.1), and no caller's Host is repeated
     */
    public Problems(JsonWriter writer, String publicUrl) {
        this.writer = writer;
        this.publicUrl = publicUrl;
    }

    public void answer(Context context, ProblemType type, Message detail) {
        send(context, type, document(type, detail, context.path(), RequestId.of(context), AnswerLanguage.of(context)));
    }

    /** With the errors that the problem lists, if it does. */
    public void answer(Context context, ProblemException problem) {
        send(context, problem.type(), document(problem.type(), problem.detail(), problem.errors(), context.path(), RequestId.of(context),
                AnswerLanguage.of(context)));
    }

    /** Lists every violation, up to the limit, with the query parameter that each belongs to. */
    public void answer(Context context, List<Violation> violations, Function<Violation, String> parameter) {
        send(context, ProblemType.INVALID_REQUEST, document(faults(violations, parameter, violation -> null), violations.size(),
                context.path(), RequestId.of(context), AnswerLanguage.of(context)));
    }

    /** Lists every violation, up to the limit. */
    public byte[] document(List<Violation> violations, String path, String requestId, Language language) {
        return document(violations, violation -> null, path, requestId, language);
    }

    /** Lists every violation of a row, up to the limit, with the column that each belongs to. */
    public byte[] document(List<Violation> violations, Function<Violation, String> column, String path, String requestId,
            Language language) {
        return document(faults(violations, violation -> null, column), violations.size(), path, requestId, language);
    }

    private static List<Problem.Fault> faults(List<Violation> violations, Function<Violation, String> parameter,
            Function<Violation, String> column) {
        return violations.stream().limit(Problem.MAX_ERRORS)
                .map(violation -> Problem.Fault.of(violation, parameter.apply(violation), column.apply(violation))).toList();
    }

    private byte[] document(List<Problem.Fault> faults, int found, String path, String requestId, Language language) {
        int omitted = found - faults.size();
        Message detail = found < Violations.MAX_FAULTS ? Message.of("problems.requestErrors", found)
                : Message.of("problems.requestLeastErrorsThem", found, faults.size());
        ProblemType type = ProblemType.INVALID_REQUEST;
        return writer.write(new Problem(publicUrl + type.path(), type.title(), type.status(), detail, instance(path, requestId),
                requestId, faults,
                omitted == 0 ? null : omitted), language);
    }

    public byte[] document(ProblemType type, Message detail, String path, String requestId, Language language) {
        return document(type, detail, List.of(), path, requestId, language);
    }

    private byte[] document(ProblemType type, Message detail, List<Problem.Fault> errors, String path, String requestId,
            Language language) {
        return writer.write(new Problem(publicUrl + type.path(), type.title(), type.status(), detail, instance(path, requestId),
                requestId, errors.isEmpty() ? null : errors, null), language);
    }

    /** Of each request another (RFC 9457, section 3.1.5); what ids may hold may stand in a fragment. */
    private String instance(String path, String requestId) {
        return path == null ? null : publicUrl + path + "#" + requestId;
    }

    private static void send(Context context, ProblemType type, byte[] document) {
        if (type.status() == ProblemType.OVERLOADED.status()) {
            context.header(RETRY_AFTER, RETRY_AFTER_SECONDS);
        }
        context.status(type.status()).contentType(MEDIA_TYPE).header("Cache-Control", "no-store").result(document);
    }
}
