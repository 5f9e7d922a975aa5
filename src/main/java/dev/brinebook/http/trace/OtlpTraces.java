// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.trace;

import dev.brinebook.http.Resources;
import dev.brinebook.http.limit.Exemplar;
import dev.brinebook.http.limit.RequestLabel;
import io.opentelemetry.api.trace.Span;
import io.opentelemetry.api.trace.SpanBuilder;
import io.opentelemetry.api.trace.SpanContext;
import io.opentelemetry.api.trace.SpanKind;
import io.opentelemetry.api.trace.StatusCode;
import io.opentelemetry.api.trace.Tracer;
import io.opentelemetry.context.Context;
import io.opentelemetry.context.propagation.TextMapGetter;
import io.opentelemetry.context.propagation.TextMapPropagator;
import io.opentelemetry.sdk.OpenTelemetrySdk;
import io.opentelemetry.sdk.autoconfigure.AutoConfiguredOpenTelemetrySdk;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import org.slf4j.bridge.SLF4JBridgeHandler;

/**
 * Sends spans by OTLP over HTTP, with the attributes of OpenTelemetry's semantic conventions for HTTP servers. Nothing that callers
 * make up is among them but the ids of request and trace.
 */
final class OtlpTraces implements RequestTraces {

    private static final String PROTOCOL = "http/protobuf";
    private static final Map<String, String> DEFAULTS = Map.of("otel.exporter.otlp.protocol", PROTOCOL, "otel.metrics.exporter", "none",
            "otel.logs.exporter", "none", "otel.service.name", "brinebook");
    /** What remains at the end is sent in this time, or lost. */
    private static final Duration LONGEST_END = Duration.ofSeconds(2);
    private static final int FIRST_FAULT_OF_OURS = 500;

    private static final TextMapGetter<UnaryOperator<String>> HEADERS = (headers, name) -> headers.apply(name);

    private final OpenTelemetrySdk sdk;
    private final Tracer tracer;
    private final TextMapPropagator propagator;

    OtlpTraces(Map<String, String> environment) {
        for (String name : List.of("OTEL_EXPORTER_OTLP_PROTOCOL", "OTEL_EXPORTER_OTLP_TRACES_PROTOCOL")) {
            String protocol = environment.getOrDefault(name, PROTOCOL).strip();
            if (!protocol.equals(PROTOCOL)) {
                throw new IllegalArgumentException(name + " must be " + PROTOCOL + ", was " + protocol);
            }
        }
        // It reports by java.util.logging what it cannot send; every line of the log is JSON.
        SLF4JBridgeHandler.removeHandlersForRootLogger();
        SLF4JBridgeHandler.install();
        try {
            sdk = AutoConfiguredOpenTelemetrySdk.builder().addPropertiesSupplier(() -> properties(environment)).disableShutdownHook()
                    .build().getOpenTelemetrySdk();
        } catch (RuntimeException wrong) {
            throw new IllegalArgumentException("a variable OTEL_… is wrong: " + wrong.getMessage(), wrong);
        }
        tracer = sdk.getTracer("dev.brinebook", Resources.version());
        propagator = sdk.getPropagators().getTextMapPropagator();
    }

    /** OTEL_SERVICE_NAME is the property otel.service.name. */
    private static Map<String, String> properties(Map<String, String> environment) {
        Map<String, String> properties = new HashMap<>(DEFAULTS);
        environment.forEach((name, value) -> {
            if (name.startsWith("OTEL_")) {
                properties.put(name.toLowerCase(Locale.ROOT).replace('_', '.'), value);
            }
        });
        return properties;
    }

    @Override
    public Exemplar record(RequestLabel label, String requestId, UnaryOperator<String> headers, long nanoseconds) {
        if (label.route().startsWith("/health/") || label.route().equals("/metrics")) {
            return null;
        }
        Instant now = Instant.now();
        long end = TimeUnit.SECONDS.toNanos(now.getEpochSecond()) + now.getNano();
        SpanBuilder builder = tracer.spanBuilder(label.method() + " " + label.route()).setSpanKind(SpanKind.SERVER)
                .setParent(propagator.extract(Context.root(), headers, HEADERS))
                .setStartTimestamp(end - nanoseconds, TimeUnit.NANOSECONDS)
                .setAttribute("http.request.method", label.method().equals("other") ? "_OTHER" : label.method())
                .setAttribute("http.route", label.route()).setAttribute("http.response.status_code", label.status())
                .setAttribute("request.id", requestId);
        if (label.status() >= FIRST_FAULT_OF_OURS) {
            builder.setAttribute("error.type", Integer.toString(label.status()));
        }
        Span span = builder.startSpan();
        if (label.status() >= FIRST_FAULT_OF_OURS) {
            span.setStatus(StatusCode.ERROR);
        }
        span.end(end, TimeUnit.NANOSECONDS);
        SpanContext made = span.getSpanContext();
        return made.isSampled() ? new Exemplar(made.getTraceId(), made.getSpanId()) : null;
    }

    @Override
    public void close() {
        sdk.shutdown().join(LONGEST_END.toMillis(), TimeUnit.MILLISECONDS);
    }
}
