package dev.brinebook.http;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;

/** Answers one operation: bytes to request, calculation, answer to bytes. The same for every operation. */
final class OperationHandler<Q extends Record, A extends Record> {

    private final Operation<Q, A> operation;
    private final JsonReader reader;
    private final JsonWriter writer;
    private final Problems problems;
    private final QueryReader query;
    private final Turns turns;
    private final int maxBodyBytes;

    OperationHandler(Operation<Q, A> operation, JsonReader reader, JsonWriter writer, Problems problems,
            Turns turns, int maxBodyBytes) {
        this.operation = operation;
        this.reader = reader;
        this.writer = writer;
        this.problems = problems;
        this.query = new QueryReader(operation.query());
        this.turns = turns;
        this.maxBodyBytes = maxBodyBytes;
    }

    void post(Context context) throws IOException {
        requireJson(context);
        String form = chooseForm(context);
        try {
            Q request = reader.read(body(context), operation.requestType());
            context.header("Cache-Control", "no-store");
            answer(context, request, form);
        } catch (InvalidRequest invalid) {
            problems.answer(context, invalid.violations(), violation -> null);
        }
    }

    void get(Context context) {
        String form = chooseForm(context);
        try {
            Q request = reader.read(query.body(context.queryString()), operation.requestType());
            answer(context, request, form);
            Cached.mark(context);
        } catch (InvalidRequest invalid) {
            problems.answer(context, invalid.violations(), query::parameterOf);
        }
    }

    /** Tells caches, of a problem too, when the form is the caller's to choose (RFC 9110, section 12.5.5). */
    private String chooseForm(Context context) {
        if (!operation.forms().isEmpty()) {
            context.res().addHeader("Vary", "Accept");
        }
        return Acceptance.choose(context, operation.answerMediaTypes());
    }

    private void answer(Context context, Q request, String mediaType) {
        Optional<AnswerForm<Q>> form = operation.forms().stream().filter(one -> one.mediaType().equals(mediaType)).findFirst();
        context.contentType(form.isPresent() ? mediaType + "; charset=utf-8" : mediaType)
                .result(turns.take(() -> calculate(() -> form.isPresent()
                        ? form.get().write().apply(request).getBytes(StandardCharsets.UTF_8)
                        : writer.write(Objects.requireNonNull(operation.calculate().apply(request),
                                "the calculation gave no answer")))));
    }

    /** An error, such as of a table that does not load, is a fault of ours like any exception, and answered as one. */
    private static byte[] calculate(Supplier<byte[]> answer) {
        try {
            return answer.get();
        } catch (Error e) {
            throw new IllegalStateException("the calculation failed", e);
        }
    }

    private static void requireJson(Context context) {
        String encoding = context.header("Content-Encoding");
        if (encoding != null && !encoding.equalsIgnoreCase("identity")) {
            context.header("Accept-Encoding", "identity");
            throw new ProblemException(ProblemType.UNSUPPORTED_MEDIA_TYPE, "Compressed bodies are not taken.");
        }
        String type = context.header("Content-Type");
        String[] parts = type == null ? new String[] {""} : type.toLowerCase(Locale.ROOT).split(";");
        boolean json = parts[0].strip().equals("application/json");
        for (int i = 1; i < parts.length && json; i++) {
            String parameter = parts[i].strip().replace("\"", "");
            json = !parameter.startsWith("charset=") || parameter.equals("charset=utf-8");
        }
        if (!json) {
            context.header("Accept-Post", "application/json");
            throw new ProblemException(ProblemType.UNSUPPORTED_MEDIA_TYPE,
                    "The body must be application/json in UTF-8; Content-Type is " + (type == null ? "missing." : "not."));
        }
    }

    private byte[] body(Context context) throws IOException {
        long length = context.req().getContentLengthLong();
        if (length > 2L * maxBodyBytes) {
            throw tooLarge(context);
        }
        InputStream stream = context.req().getInputStream();
        byte[] body = stream.readNBytes(maxBodyBytes + 1);
        if (body.length > maxBodyBytes) {
            // A caller still sending does not read: a body a little too large is taken in, so that the answer is seen.
            stream.readNBytes(maxBodyBytes);
            throw tooLarge(context);
        }
        return body;
    }

    private ProblemException tooLarge(Context context) {
        context.header("Connection", "close");
        return new ProblemException(ProblemType.BODY_TOO_LARGE, "The body has more than " + maxBodyBytes + " bytes.");
    }
}
