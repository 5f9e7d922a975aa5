// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.agent.Reply;
import dev.brinebook.agent.ToolAnswer;
import dev.brinebook.agent.ToolServer;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Resources;
import dev.brinebook.http.Settings;
import dev.brinebook.http.access.AccessPolicy;
import dev.brinebook.http.exchange.Acceptance;
import dev.brinebook.http.exchange.AnswerLanguage;
import dev.brinebook.http.exchange.BodyType;
import dev.brinebook.http.exchange.Problems;
import dev.brinebook.http.exchange.RequestId;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.http.limit.ConcurrencyLimiter;
import dev.brinebook.http.limit.Deadline;
import dev.brinebook.http.limit.HeapPlan;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import io.javalin.http.Context;
import java.util.List;
import java.util.Objects;

/**
 * Answers agents: the Model Context Protocol over streamable HTTP, without sessions and without streams, as its revision of
 * 2025-11-25 lets a server choose. A call of a tool is calculated as the POST of its operation is.
 */
final class AgentHandler {

    static final String PROTOCOL_VERSION = "MCP-Protocol-Version";

    private final List<Operation<?, ?>> operations;
    private final JsonReader reader;
    private final JsonWriter writer;
    private final Problems problems;
    private final ConcurrencyLimiter limiter;
    private final Settings settings;
    private ToolServer tools;

    AgentHandler(List<Operation<?, ?>> operations, JsonReader reader, JsonWriter writer, Problems problems,
            ConcurrencyLimiter limiter, Settings settings) {
        this.operations = operations;
        this.reader = reader;
        this.writer = writer;
        this.problems = problems;
        this.limiter = limiter;
        this.settings = settings;
    }

    /** Refuses requests of web pages from unlisted origins, for any method. */
    void admit(Context context) {
        String origin = context.header("Origin");
        if (origin != null && !settings.corsOrigins().contains(origin)) {
            throw new ProblemException(ProblemType.ORIGIN_REFUSED, ProblemType.ORIGIN_REFUSED.explanation());
        }
    }

    void post(Context context) {
        BodyType.of(context, List.of(Operation.JSON));
        Acceptance.choose(context, List.of(Operation.JSON));
        String version = context.header(PROTOCOL_VERSION);
        if (version != null && !ToolServer.protocolVersions().contains(version)) {
            throw new ProblemException(ProblemType.BAD_REQUEST, Message.of("agentHandler.mustOne", PROTOCOL_VERSION,
                    String.join(", ", ToolServer.protocolVersions())));
        }
        Language language = AnswerLanguage.of(context);
        byte[] body = RequestBody.read(context);
        // Decoding and parsing a message are work too, and hold several times its size.
        Reply reply = limiter.callWithoutDeadline(AccessPolicy.identityOf(context), HeapPlan.ofAgent(body.length), () -> {
            Deadline deadline = limiter.deadline();
            return tools().answer(deadline.run(() -> JsonReader.decode(body)),
                    (operation, arguments) -> call(context, operation, arguments, language, deadline));
        });
        context.status(reply.status()).header("Cache-Control", "no-store");
        if (reply.json() == null) {
            context.res().setContentType(null);
        } else {
            context.contentType(Operation.JSON).result(reply.json());
        }
    }

    private <Q extends Record, A extends Record> ToolAnswer call(Context context, Operation<Q, A> operation, byte[] arguments,
            Language language, Deadline deadline) {
        try {
            return new ToolAnswer(deadline.run(() -> calculate(operation, arguments, language)), false);
        } catch (InvalidRequest invalid) {
            return new ToolAnswer(problems.document(invalid.violations(), context.path(), RequestId.of(context), language), true);
        } catch (ProblemException problem) {
            if (problem.type() != ProblemType.MALFORMED_BODY && problem.type() != ProblemType.CALCULATION_TOO_LONG) {
                throw problem;
            }
            return new ToolAnswer(problems.document(problem.type(), problem.detail(), context.path(), RequestId.of(context),
                    language), true);
        }
    }

    private <Q extends Record, A extends Record> byte[] calculate(Operation<Q, A> operation, byte[] arguments, Language language) {
        try {
            Q request = reader.read(arguments, operation.requestType());
            Deadline.enter(Deadline.Part.CALCULATING);
            A answer = Objects.requireNonNull(operation.answer(request), "the calculation gave no answer");
            Deadline.enter(Deadline.Part.WRITING);
            return writer.write(answer, language);
        } catch (Error e) {
            throw new IllegalStateException("the calculation failed", e);
        }
    }

    /** Built for the first agent that comes, not at the start, which it would make longer. */
    private synchronized ToolServer tools() {
        if (tools == null) {
            tools = new ToolServer(operations, Resources.version());
        }
        return tools;
    }
}
