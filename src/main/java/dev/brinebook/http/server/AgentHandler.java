// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.agent.AgentServer;
import dev.brinebook.agent.Calculation;
import dev.brinebook.agent.Headers;
import dev.brinebook.agent.Outcome;
import dev.brinebook.agent.Reply;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Resources;
import dev.brinebook.http.Settings;
import dev.brinebook.http.access.AccessPolicy;
import dev.brinebook.http.exchange.Acceptance;
import dev.brinebook.http.exchange.AnswerLanguage;
import dev.brinebook.http.exchange.BodyType;
import dev.brinebook.http.exchange.Compression;
import dev.brinebook.http.exchange.ModelHeader;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.http.limit.ConcurrencyLimiter;
import dev.brinebook.http.limit.Deadline;
import dev.brinebook.http.limit.HeapPlan;
import dev.brinebook.http.limit.RequestMetrics;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.model.Model;
import dev.brinebook.text.Language;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import java.util.Objects;

/**
 * Answers agents: the Model Context Protocol over streamable HTTP, without sessions and without streams, as its revisions
 * let a server choose. A call of a tool is calculated as the POST of its operation is.
 */
final class AgentHandler {

    private final List<Operation<?, ?>> operations;
    private final JsonReader reader;
    private final JsonWriter writer;
    private final ConcurrencyLimiter limiter;
    private final Settings settings;
    private final RequestMetrics metrics;
    private AgentServer server;

    AgentHandler(List<Operation<?, ?>> operations, JsonReader reader, JsonWriter writer,
            ConcurrencyLimiter limiter, Settings settings, RequestMetrics metrics) {
        this.operations = operations;
        this.reader = reader;
        this.writer = writer;
        this.limiter = limiter;
        this.settings = settings;
        this.metrics = metrics;
    }

    /** Refuses requests of web pages from unlisted origins, for any method. */
    void admit(Context context) {
        String origin = context.header("Origin");
        if (origin != null && !settings.corsOrigins().contains(origin)) {
            throw new ProblemException(ProblemType.ORIGIN_REFUSED, ProblemType.ORIGIN_REFUSED.explanation());
        }
    }

    void post(Context context) throws IOException {
        BodyType.of(context, List.of(Operation.JSON));
        Acceptance.choose(context, List.of(Operation.JSON));
        Headers headers = new Headers(context.header(Headers.VERSION), context.header(Headers.METHOD), context.header(Headers.NAME));
        Model model = ModelHeader.choose(context);
        Language language = AnswerLanguage.of(context);
        byte[] body = RequestBody.read(context);
        // Decoding and parsing a message are work too, and hold several times its size.
        Reply reply = limiter.callWithoutDeadline(AccessPolicy.identityOf(context), HeapPlan.ofAgent(body.length), () -> {
            Deadline deadline = limiter.deadline();
            return server().answer(headers, deadline.run(() -> JsonReader.decode(body)), new Call(model, language, deadline));
        });
        context.status(reply.status()).header("Cache-Control", "no-store");
        if (reply.json() == null) {
            context.res().setContentType(null);
        } else {
            Compression.send(context.contentType(Operation.JSON), reply.json());
        }
    }

    /** Built for the first agent that comes, not at the start, which it would make longer. */
    private synchronized AgentServer server() {
        if (server == null) {
            server = new AgentServer(operations, Resources.version(), !settings.apiKeysFile().isEmpty());
        }
        return server;
    }

    private final class Call implements Calculation {

        private final Model model;
        private final Language language;
        private final Deadline deadline;

        Call(Model model, Language language, Deadline deadline) {
            this.model = model;
            this.language = language;
            this.deadline = deadline;
        }

        @Override
        public Outcome calculate(Operation<?, ?> operation, byte[] request) {
            long start = System.nanoTime();
            boolean answered = false;
            try {
                Record answer = deadline.run(() -> answer(operation, request));
                answered = true;
                return Outcome.answered(answer);
            } catch (InvalidRequest invalid) {
                return Outcome.invalid(invalid.violations());
            } catch (ProblemException problem) {
                if (problem.type() != ProblemType.MALFORMED_BODY && problem.type() != ProblemType.CALCULATION_TOO_LONG) {
                    throw problem;
                }
                return Outcome.failed(problem.detail());
            } finally {
                metrics.countAgentCall(operation.id(), answered, System.nanoTime() - start);
            }
        }

        private <Q extends Record, A extends Record> A answer(Operation<Q, A> operation, byte[] arguments) {
            try {
                Q request = reader.read(arguments, operation.requestType());
                Deadline.enter(Deadline.Part.CALCULATING);
                return Objects.requireNonNull(operation.answer(request, model, AnswerParts.ALL), "the calculation gave no answer");
            } catch (Error e) {
                throw new IllegalStateException("the calculation failed", e);
            }
        }

        @Override
        public byte[] write(Object part) {
            return deadline.run(() -> {
                Deadline.enter(Deadline.Part.WRITING);
                return writer.write(part, language);
            });
        }

        @Override
        public Language language() {
            return language;
        }
    }
}
