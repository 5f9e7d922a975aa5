// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.http.exchange.AnswerLanguage;
import dev.brinebook.http.exchange.Problems;
import dev.brinebook.http.exchange.RequestId;
import dev.brinebook.http.exchange.TraceParent;
import dev.brinebook.http.limit.RequestLabel;
import dev.brinebook.http.limit.RequestMetrics;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Language;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.EofException;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Writes problem documents where the server refuses a request before any handler sees it. */
final class ServerErrors extends ErrorHandler {

    private static final Logger LOG = LoggerFactory.getLogger(ServerErrors.class);
    /** The path that the server puts where it could not read the request line. */
    private static final String UNREADABLE = "/badMessage";

    private final Problems problems;
    private final Cors cors;
    private final RequestMetrics metrics;

    ServerErrors(Problems problems, Cors cors, RequestMetrics metrics) {
        this.problems = problems;
        this.cors = cors;
        this.metrics = metrics;
    }

    /** A request that did not arrive complete is not an internal error, although the server calls it one if a read failed. */
    private static ProblemType type(Request request, int status) {
        ProblemType type = ProblemType.byStatus(status);
        return type == ProblemType.INTERNAL_ERROR && request.getAttribute(ERROR_EXCEPTION) instanceof Exception failure
                && isOfReading(failure) ? ProblemType.ofBroken(failure) : type;
    }

    private static boolean isOfReading(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof TimeoutException || cause instanceof EofException) {
                return true;
            }
        }
        return false;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        ProblemType type = type(request, response.getStatus());
        response.setStatus(type.status());
        String id = RequestId.accepted(request.getHeaders().get(RequestId.HEADER));
        String path = request.getHttpURI() == null ? null : request.getHttpURI().getPath();
        path = UNREADABLE.equals(path) ? null : path;
        Language language = Language.of(request.getHeaders().get(AnswerLanguage.ACCEPT));
        byte[] document = problems.document(type, type.explanation(), path, id, language);
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, Problems.MEDIA_TYPE);
        response.getHeaders().put(AnswerLanguage.HEADER, language.tag());
        response.getHeaders().put(RequestId.HEADER, id);
        CommonHeaders.put(response.getHeaders());
        response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
        cors.allow(request.getHeaders(), response.getHeaders());
        if (type == ProblemType.OVERLOADED) {
            response.getHeaders().put(HttpHeader.RETRY_AFTER, Problems.RETRY_AFTER_SECONDS);
        }
        String traceParent = request.getHeaders().get(TraceParent.HEADER);
        metrics.record(RequestLabel.unmatched(request.getMethod(), type.status()),
                Duration.ofNanos(System.nanoTime() - request.getBeginNanoTime()), TraceParent.sampledBy(traceParent));
        LOG.atInfo().addKeyValue(RequestId.ATTRIBUTE, id).addKeyValue(TraceParent.ATTRIBUTE,
                TraceParent.idOf(traceParent)).addKeyValue("status", response.getStatus())
                .log("refused before it was read");
        response.write(true, ByteBuffer.wrap(document), callback);
        return true;
    }
}
