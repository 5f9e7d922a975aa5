// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.BodyForm;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Rendering;
import dev.brinebook.http.access.AccessPolicy;
import dev.brinebook.http.exchange.Acceptance;
import dev.brinebook.http.exchange.AnswerLanguage;
import dev.brinebook.http.exchange.BodyType;
import dev.brinebook.http.exchange.Cached;
import dev.brinebook.http.exchange.Compression;
import dev.brinebook.http.exchange.ModelHeader;
import dev.brinebook.http.exchange.Problems;
import dev.brinebook.http.exchange.QueryReader;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.http.limit.ConcurrencyLimiter;
import dev.brinebook.http.limit.Deadline;
import dev.brinebook.http.limit.HeapPlan;
import dev.brinebook.model.Model;
import dev.brinebook.text.Language;
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
    /** The query of a GET, that of a POST in JSON, and that of a POST in the other form, if there is one. */
    private final QueryReader query;
    private final QueryReader choosing;
    private final QueryReader settings;
    private final List<String> requestTypes;
    private final List<String> answerTypes;
    private final List<String> withChoices;
    private final ConcurrencyLimiter limiter;

    OperationHandler(Operation<Q, A> operation, JsonReader reader, JsonWriter writer, Problems problems,
            ConcurrencyLimiter limiter) {
        this.operation = operation;
        this.reader = reader;
        this.writer = writer;
        this.problems = problems;
        this.query = new QueryReader(operation.query(), operation.choices());
        this.choosing = new QueryReader(List.of(), operation.choices());
        this.settings = operation.textForm() == null ? null : new QueryReader(operation.textForm().query());
        this.requestTypes = operation.requestTypes();
        this.answerTypes = operation.answerMediaTypes();
        this.withChoices = operation.forms().stream().filter(form -> !form.choices().isEmpty()).map(AnswerForm::mediaType).toList();
        this.limiter = limiter;
    }

    void post(Context context) throws IOException {
        BodyForm<?, A> text = BodyType.of(context, requestTypes).equals(Operation.JSON) ? null
                : operation.textForm();
        String answerType = chooseForm(context, text == null ? answerTypes : List.of(Operation.JSON));
        Language language = AnswerLanguage.of(context);
        QueryReader asking = text == null ? choosing : settings;
        QueryReader.Query asked;
        try {
            asked = read(asking, context, answerType);
        } catch (InvalidRequest invalid) {
            problems.answer(context, invalid.violations(), asking::parameterOf);
            return;
        }
        Model model = ModelHeader.choose(context);
        try {
            byte[] body = RequestBody.read(context);
            Supplier<byte[]> calculation = text == null ? ofJson(body, asked, answerType, model, language)
                    : ofText(text, asked, body, model, language);
            context.header("Cache-Control", "no-store");
            Compression.send(context, answer(context, answerType, body.length, calculation));
        } catch (InvalidRequest invalid) {
            problems.answer(context, invalid.violations(), violation -> text == null || violation.pointer().isEmpty() ? null
                    : asking.parameterOf(violation));
        }
    }

    void get(Context context) {
        String answerType = chooseForm(context, answerTypes);
        Model model = ModelHeader.chooseForCaches(context);
        try {
            QueryReader.Query asked = read(query, context, answerType);
            context.result(answer(context, answerType, asked.body().length,
                    ofJson(asked.body(), asked, answerType, model, AnswerLanguage.of(context))));
            Cached.mark(context);
        } catch (InvalidRequest invalid) {
            problems.answer(context, invalid.violations(), query::parameterOf);
        }
    }

    /** What the query says; only an answer in JSON has parts to choose among, only another form has choices. */
    private QueryReader.Query read(QueryReader asking, Context context, String answerType) {
        QueryReader.Query asked = asking.read(context.queryString(), operation.answerType());
        asking.refuseOfOtherForms(context.queryString(), answerType.equals(Operation.JSON), withChoices);
        return asked;
    }

    private Supplier<byte[]> ofJson(byte[] body, QueryReader.Query asked, String answerType, Model model, Language language) {
        Optional<AnswerForm<Q>> form = form(answerType);
        return () -> {
            Q request = reader.read(body, operation.requestType());
            Deadline.enter(Deadline.Part.CALCULATING);
            return form.isPresent() ? form.get().write().write(request, model, new Rendering(language, asked.chosen()))
                    : json(operation.answer(request, model, asked.parts()), asked.parts(), language);
        };
    }

    private <S extends Record> Supplier<byte[]> ofText(BodyForm<S, A> form, QueryReader.Query asked, byte[] body,
            Model model, Language language) {
        return () -> {
            S set = reader.read(asked.body(), form.settingsType());
            String text = JsonReader.decode(body);
            Deadline.enter(Deadline.Part.CALCULATING);
            return json(form.answer(text, set, model, asked.parts()), asked.parts(), language);
        };
    }

    private byte[] json(A answer, AnswerParts parts, Language language) {
        Deadline.enter(Deadline.Part.WRITING);
        return writer.write(Objects.requireNonNull(answer, "the calculation gave no answer"), language, parts);
    }

    /** Informs caches, for a problem too, when the caller chooses the form (RFC 9110, section 12.5.5). */
    private String chooseForm(Context context, List<String> offered) {
        if (!operation.forms().isEmpty()) {
            context.res().addHeader("Vary", "Accept");
        }
        return Acceptance.choose(context, offered);
    }

    private byte[] answer(Context context, String mediaType, int bodyBytes, Supplier<byte[]> calculation) {
        byte[] answer = limiter.call(AccessPolicy.identityOf(context), HeapPlan.of(mediaType, bodyBytes),
                () -> Deadline.calculate(calculation));
        Optional<AnswerForm<Q>> form = form(mediaType);
        form.map(AnswerForm::contentPolicy).ifPresent(policy -> context.header("Content-Security-Policy", policy.get()));
        context.contentType(form.map(AnswerForm::contentType).orElse(mediaType));
        return answer;
    }

    private Optional<AnswerForm<Q>> form(String mediaType) {
        return operation.forms().stream().filter(one -> one.mediaType().equals(mediaType)).findFirst();
    }
}
