package dev.brinebook.http;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.BodyForm;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Language;
import dev.brinebook.api.Operation;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
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
    private final RequestBody bodies;
    private final List<String> varying;

    OperationHandler(Operation<Q, A> operation, JsonReader reader, JsonWriter writer, Problems problems,
            Turns turns, RequestBody bodies) {
        this.operation = operation;
        this.reader = reader;
        this.writer = writer;
        this.problems = problems;
        this.query = new QueryReader(operation.query());
        this.turns = turns;
        this.bodies = bodies;
        this.varying = operation.forms().isEmpty() ? List.of(AnswerLanguage.ACCEPT, "Accept-Encoding")
                : List.of("Accept", AnswerLanguage.ACCEPT, "Accept-Encoding");
    }

    void post(Context context) throws IOException {
        BodyForm<?, A> text = BodyType.of(context, operation.requestTypes()).equals(Operation.JSON) ? null
                : operation.textForm();
        String answerType = chooseForm(context, text == null ? operation.answerMediaTypes() : List.of(Operation.JSON));
        if (text == null && !QueryReader.isEmpty(context, problems)) {
            return;
        }
        Language language = AnswerLanguage.of(context);
        QueryReader settings = text == null ? null : new QueryReader(text.query());
        try {
            if (context.req().getAttribute(ShortWay.FAULT) instanceof RuntimeException fault) {
                throw fault;
            }
            Supplier<byte[]> calculation = text == null ? ofJson(bodies.read(context), answerType, language)
                    : ofText(text, settings, context, language);
            context.header("Cache-Control", "no-store");
            answer(context, answerType, calculation);
        } catch (InvalidRequest invalid) {
            problems.answer(context, invalid.violations(), violation -> text == null || violation.pointer().isEmpty() ? null
                    : settings.parameterOf(violation));
        }
    }

    void get(Context context) {
        String answerType = chooseForm(context, operation.answerMediaTypes());
        try {
            answer(context, answerType, ofJson(query.body(context.queryString()), answerType, AnswerLanguage.of(context)));
            Cached.mark(context);
        } catch (InvalidRequest invalid) {
            problems.answer(context, invalid.violations(), query::parameterOf);
        }
    }

    /**
     * The answer in JSON to a body in JSON.
     *
     * @throws InvalidRequest for every fault of the request
     * @throws ProblemException when it is not calculated at all
     */
    byte[] answer(byte[] body, Language language) {
        return turns.take(() -> calculate(ofJson(body, Operation.JSON, language)));
    }

    /** What an answer depends on beside path and body. */
    List<String> varying() {
        return varying;
    }

    private Supplier<byte[]> ofJson(byte[] body, String answerType, Language language) {
        Optional<AnswerForm<Q>> form = form(answerType);
        return () -> {
            Q request = reader.read(body, operation.requestType());
            return form.isPresent() ? form.get().write().apply(request, language)
                    : json(operation.calculate().apply(request), language);
        };
    }

    private <S extends Record> Supplier<byte[]> ofText(BodyForm<S, A> form, QueryReader settings, Context context,
            Language language) throws IOException {
        String text = JsonReader.decode(bodies.read(context));
        S set = reader.read(settings.body(context.queryString()), form.settingsType());
        return () -> json(form.calculate().apply(text, set), language);
    }

    private byte[] json(A answer, Language language) {
        return writer.write(Objects.requireNonNull(answer, "the calculation gave no answer"), language);
    }

    /** Tells caches, of a problem too, when the form is the caller's to choose (RFC 9110, section 12.5.5). */
    private String chooseForm(Context context, List<String> offered) {
        if (!operation.forms().isEmpty()) {
            context.res().addHeader("Vary", "Accept");
        }
        return Acceptance.choose(context, offered);
    }

    private void answer(Context context, String mediaType, Supplier<byte[]> calculation) {
        byte[] answer = turns.take(() -> calculate(calculation));
        Optional<AnswerForm<Q>> form = form(mediaType);
        form.map(AnswerForm::contentPolicy).ifPresent(policy -> context.header("Content-Security-Policy", policy));
        context.contentType(form.map(AnswerForm::contentType).orElse(mediaType)).result(answer);
    }

    private Optional<AnswerForm<Q>> form(String mediaType) {
        return operation.forms().stream().filter(one -> one.mediaType().equals(mediaType)).findFirst();
    }

    /** An error, such as of a table that does not load, is a fault of ours like any exception, and answered as one. */
    static byte[] calculate(Supplier<byte[]> answer) {
        try {
            return answer.get();
        } catch (Error e) {
            throw new IllegalStateException("the calculation failed", e);
        }
    }
}
