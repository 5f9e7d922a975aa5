// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.trace;

import dev.brinebook.http.exchange.TraceParent;
import dev.brinebook.http.limit.Exemplar;
import dev.brinebook.http.limit.RequestLabel;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Makes a span of each request that was answered. */
public interface RequestTraces extends AutoCloseable {

    /** Makes no spans; the trace of the caller is still known. */
    RequestTraces NONE = (label, requestId, headers, nanoseconds) -> TraceParent.sampledBy(headers.apply(TraceParent.HEADER));

    /**
     * Makes a span of a request that ends now.
     *
     * @param label route, method and status
     * @param requestId id of the request
     * @param headers the value of a header of the request by its name, or null
     * @param nanoseconds how long it took
     * @return where to find it, or null where its trace is not kept
     */
    Exemplar record(RequestLabel label, String requestId, UnaryOperator<String> headers, long nanoseconds);

    /** Sends what was not sent yet. */
    @Override
    default void close() {
    }

    /**
     * As the standard variables of OpenTelemetry say. Its classes are loaded only if they name a receiver.
     *
     * @throws IllegalArgumentException that says which variable is wrong
     */
    static RequestTraces of(Map<String, String> environment) {
        boolean named = isSet(environment, "OTEL_EXPORTER_OTLP_ENDPOINT") || isSet(environment, "OTEL_EXPORTER_OTLP_TRACES_ENDPOINT");
        boolean disabled = environment.getOrDefault("OTEL_SDK_DISABLED", "").strip().equalsIgnoreCase("true");
        return named && !disabled ? new OtlpTraces(environment) : NONE;
    }

    private static boolean isSet(Map<String, String> environment, String name) {
        return !environment.getOrDefault(name, "").isBlank();
    }
}
