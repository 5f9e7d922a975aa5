// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.api.Explainer;
import dev.brinebook.api.ExplanationAnswer;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Violation;
import dev.brinebook.http.access.AccessPolicy;
import dev.brinebook.http.exchange.Acceptance;
import dev.brinebook.http.exchange.AnswerLanguage;
import dev.brinebook.http.exchange.BodyType;
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
import java.util.function.Function;
import java.util.regex.Pattern;

/** Explains single results of an operation: its request is calculated as for the operation itself. */
final class ExplanationHandler {

    private static final Pattern OF_QUERY = Pattern.compile("/" + Explainer.POINTER + "/\\d+");

    private final Function<String, Operation<?, ?>> operations;
    private final JsonReader reader;
    private final JsonWriter writer;
    private final Problems problems;
    private final ConcurrencyLimiter limiter;

    ExplanationHandler(Function<String, Operation<?, ?>> operations, JsonReader reader, JsonWriter writer, Problems problems,
            ConcurrencyLimiter limiter) {
        this.operations = operations;
        this.reader = reader;
        this.writer = writer;
        this.problems = problems;
        this.limiter = limiter;
    }

    void post(Context context) throws IOException {
        Operation<?, ?> operation = operations.apply(context.pathParam("calculator"));
        BodyType.of(context, List.of(Operation.JSON));
        Acceptance.choose(context, List.of(Operation.JSON));
        Language language = AnswerLanguage.of(context);
        Model model = ModelHeader.choose(context);
        List<String> pointers;
        try {
            pointers = QueryReader.values(context.queryString(), Explainer.POINTER, Explainer.MAX_POINTERS);
        } catch (InvalidRequest invalid) {
            problems.answer(context, invalid.violations(), violation -> violation.pointer().substring(1));
            return;
        }
        try {
            byte[] body = RequestBody.read(context);
            byte[] answer = limiter.call(AccessPolicy.identityOf(context), HeapPlan.of(Operation.JSON, body.length),
                    () -> Deadline.calculate(() -> explain(operation, body, model, pointers, language)));
            Compression.send(context.header("Cache-Control", "no-store").contentType(Operation.JSON), answer);
        } catch (InvalidRequest invalid) {
            problems.answer(context, invalid.violations(), ExplanationHandler::parameterOf);
        }
    }

    private <Q extends Record> byte[] explain(Operation<Q, ?> operation, byte[] body, Model model, List<String> pointers,
            Language language) {
        Q request = reader.read(body, operation.requestType());
        Deadline.enter(Deadline.Part.CALCULATING);
        ExplanationAnswer answer = Explainer.explain(operation, request, model, pointers);
        Deadline.enter(Deadline.Part.WRITING);
        return writer.write(answer, language);
    }

    private static String parameterOf(Violation violation) {
        return OF_QUERY.matcher(violation.pointer()).matches() ? Explainer.POINTER : null;
    }
}
