// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.http.access.AccessPolicy;
import dev.brinebook.http.exchange.RequestId;
import dev.brinebook.http.exchange.TraceParent;
import dev.brinebook.http.limit.Exemplar;
import dev.brinebook.http.limit.RequestLabel;
import dev.brinebook.http.limit.RequestMetrics;
import dev.brinebook.http.trace.RequestTraces;
import io.javalin.http.Context;
import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Logs each request and its result, without data of the caller, counts it, and makes its span. */
final class RequestLog {

    private static final Logger LOG = LoggerFactory.getLogger(BrinebookServer.class);
    private static final double NANOSECONDS_PER_MILLISECOND = 1e6;

    private final RequestMetrics metrics;
    private final RequestTraces traces;

    RequestLog(RequestMetrics metrics, RequestTraces traces) {
        this.metrics = metrics;
        this.traces = traces;
    }

    void log(Context context, Float milliseconds) {
        if (WarmUp.isMarked(context)) {
            return;
        }
        RequestLabel label = RequestLabel.of(context);
        long nanoseconds = (long) (milliseconds * NANOSECONDS_PER_MILLISECOND);
        Exemplar kept = traces.record(label, RequestId.of(context), context::header, nanoseconds);
        metrics.record(label, Duration.ofNanos(nanoseconds), kept);
        String trace = kept == null ? TraceParent.idOf(context) : kept.traceId();
        LOG.atInfo().addKeyValue(RequestId.ATTRIBUTE, RequestId.of(context)).addKeyValue(TraceParent.ATTRIBUTE, trace)
                .addKeyValue("route", label.route()).addKeyValue("method", label.method())
                .addKeyValue("status", label.status())
                .addKeyValue("milliseconds", (float) (nanoseconds / NANOSECONDS_PER_MILLISECOND))
                .addKeyValue(AccessPolicy.ATTRIBUTE, (String) context.attribute(AccessPolicy.ATTRIBUTE)).log("answered");
    }
}
