package dev.brinebook.http;

import dev.brinebook.api.BodyForm;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
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
        BodyForm<?, A> form = BodyType.of(context, operation.requestTypes()).equals("application/json") ? null
                : operation.textForm();
        Acceptance.requireJson(context);
        QueryReader settings = form == null ? null : new QueryReader(form.query());
        try {
            Supplier<A> calculation = form == null ? ofJson(body(context)) : ofText(form, settings, context);
            context.header("Cache-Control", "no-store");
            answer(context, calculation);
        } catch (InvalidRequest invalid) {
            problems.answer(context, invalid.violations(), violation -> form == null || violation.pointer().isEmpty() ? null
                    : settings.parameterOf(violation));
        }
    }

    private Supplier<A> ofJson(byte[] body) {
        Q request = reader.read(body, operation.requestType());
        return () -> operation.calculate().apply(request);
    }

    private <S extends Record> Supplier<A> ofText(BodyForm<S, A> form, QueryReader query, Context context)
            throws IOException {
        String text = JsonReader.decode(body(context));
        S settings = reader.read(query.body(context.queryString()), form.settingsType());
        return () -> form.calculate().apply(text, settings);
    }

    void get(Context context) {
        Acceptance.requireJson(context);
        try {
            answer(context, ofJson(query.body(context.queryString())));
            Cached.mark(context);
        } catch (InvalidRequest invalid) {
            problems.answer(context, invalid.violations(), query::parameterOf);
        }
    }

    private void answer(Context context, Supplier<A> calculation) {
        context.contentType("application/json").result(turns.take(() -> writer.write(calculate(calculation))));
    }

    /** An error, such as of a table that does not load, is a fault of ours like any exception, and answered as one. */
    private A calculate(Supplier<A> calculation) {
        try {
            return Objects.requireNonNull(calculation.get(), "the calculation gave no answer");
        } catch (Error e) {
            throw new IllegalStateException("the calculation failed", e);
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
