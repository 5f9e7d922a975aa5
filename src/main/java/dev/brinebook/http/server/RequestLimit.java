// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.http.access.AccessPolicy;
import dev.brinebook.http.limit.ConcurrencyLimiter;
import dev.brinebook.http.limit.Rejection;
import dev.brinebook.http.limit.RequestMetrics;
import dev.brinebook.http.limit.StreamSlots;
import dev.brinebook.http.problem.ProblemType;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Lets in no more requests at once than the threads can hold; the next is asked immediately to retry. A caller that reads its
 * answers slowly holds threads, so one caller gets three of four at most. Health and metrics are always let in: some threads
 * are left for them.
 */
final class RequestLimit extends Handler.Wrapper {

    /** Beside what is calculated, waits for a permit or streams: pages and answers that are read slowly. */
    private static final int OTHERS = 32;
    static final int MOST_AT_ONCE = ConcurrencyLimiter.AT_ONCE + ConcurrencyLimiter.MOST_WAITING + StreamSlots.MOST_AT_ONCE + OTHERS;
    static final int MOST_OF_ONE_CALLER = MOST_AT_ONCE * 3 / 4;

    private final RequestMetrics metrics;
    private final ConcurrencyLimiter limiter;
    private final ConnectionRefusal refusals;
    private final CallerShares inside = new CallerShares(MOST_AT_ONCE, MOST_OF_ONE_CALLER);

    RequestLimit(RequestMetrics metrics, ConcurrencyLimiter limiter, ConnectionRefusal refusals) {
        this.metrics = metrics;
        this.limiter = limiter;
        this.refusals = refusals;
        metrics.showInFlight(inside::held);
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        if (RequestAdmission.isAlwaysAnswered(request)) {
            return super.handle(request, response, callback);
        }
        String caller = AccessPolicy.identityOf(request);
        if (request.getAttribute(BodyHandler.ATTRIBUTE) != null && limiter.isFullFor(caller)) {
            metrics.reject(Rejection.PERMITS);
            return refusals.answer(ProblemType.OVERLOADED.status(), request, response, callback);
        }
        if (!inside.tryTake(caller, 1)) {
            metrics.reject(Rejection.REQUESTS);
            return refusals.answer(ProblemType.OVERLOADED.status(), request, response, callback);
        }
        Request.addCompletionListener(request, failure -> inside.giveBack(caller, 1));
        return super.handle(request, response, callback);
    }
}
