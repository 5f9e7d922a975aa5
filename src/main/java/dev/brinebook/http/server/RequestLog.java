// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.http.access.AccessPolicy;
import dev.brinebook.http.exchange.RequestId;
import dev.brinebook.http.exchange.TraceParent;
import dev.brinebook.http.limit.RequestLabel;
import dev.brinebook.http.limit.RequestMetrics;
import io.javalin.http.Context;
import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Logs each request and its result, without data of the caller, and counts it. */
final class RequestLog {

    private static final Logger LOG = LoggerFactory.getLogger(BrinebookServer.class);
    private static final double NANOSECONDS_PER_MILLISECOND = 1e6;

    private final RequestMetrics metrics;

    RequestLog(RequestMetrics metrics) {
        this.metrics = metrics;
    }

    void tell(Context context, Float milliseconds) {
        tell(RequestLabel.of(context), RequestId.of(context), TraceParent.idOf(context),
                context.attribute(AccessPolicy.ATTRIBUTE), (long) (milliseconds * NANOSECONDS_PER_MILLISECOND));
    }

    /** Nothing is said of a trace or a caller that is null. */
    void tell(RequestLabel label, String id, String trace, String caller, long nanoseconds) {
        metrics.record(label, Duration.ofNanos(nanoseconds));
        LOG.atInfo().addKeyValue(RequestId.ATTRIBUTE, id).addKeyValue(TraceParent.ATTRIBUTE, trace)
                .addKeyValue("route", label.route()).addKeyValue("method", label.method())
                .addKeyValue("status", label.status())
                .addKeyValue("milliseconds", (float) (nanoseconds / NANOSECONDS_PER_MILLISECOND))
                .addKeyValue(AccessPolicy.ATTRIBUTE, caller).log("answered");
    }
}
