// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.http.access.AccessPolicy;
import dev.brinebook.http.limit.ConcurrencyLimiter;
import dev.brinebook.http.limit.Rejection;
import dev.brinebook.http.limit.RequestMetrics;
import dev.brinebook.http.problem.ProblemType;
import java.util.function.Predicate;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Identifies the caller, and refuses a request that would wait for a permit in vain, before its body is read. Health and metrics
 * are always let in.
 */
final class RequestAdmission extends Handler.Wrapper {

    private final RequestMetrics metrics;
    private final AccessPolicy callers;
    private final ConcurrencyLimiter limiter;
    private final Predicate<Request> calculated;
    private final ConnectionRefusal refusals;

    /** Knows which requests are {@code calculated} with a permit. */
    RequestAdmission(RequestMetrics metrics, AccessPolicy callers, ConcurrencyLimiter limiter, Predicate<Request> calculated,
            ConnectionRefusal refusals) {
        this.metrics = metrics;
        this.callers = callers;
        this.limiter = limiter;
        this.calculated = calculated;
        this.refusals = refusals;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        long waitSeconds = callers.identify(request);
        if (waitSeconds > 0) {
            metrics.reject(Rejection.KEY);
            response.getHeaders().put(HttpHeader.RETRY_AFTER, waitSeconds);
            return refusals.answer(ProblemType.TOO_MANY_REQUESTS.status(), request, response, callback);
        }
        String caller = AccessPolicy.identityOf(request);
        if (calculated.test(request) && limiter.isFullFor(caller)) {
            metrics.reject(Rejection.PERMITS);
            return refusals.answer(ProblemType.OVERLOADED.status(), request, response, callback);
        }
        return super.handle(request, response, callback);
    }

    /** Whether a path is answered under any load. */
    static boolean isAlwaysAnswered(Request request) {
        String path = request.getHttpURI().getCanonicalPath();
        return path != null && (path.startsWith("/health/") || path.equals("/metrics"));
    }
}
