// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.protobuf.ByteString;
import com.sun.net.httpserver.HttpServer;
import dev.brinebook.Main;
import dev.brinebook.http.Served;
import dev.brinebook.http.Settings;
import dev.brinebook.http.trace.RequestTraces;
import io.opentelemetry.proto.collector.trace.v1.ExportTraceServiceRequest;
import io.opentelemetry.proto.common.v1.KeyValue;
import io.opentelemetry.proto.trace.v1.Span;
import io.opentelemetry.proto.trace.v1.Status.StatusCode;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spans as a receiver gets them (OTLP 1.x over HTTP, binary protobuf), read by OpenTelemetry's own messages. */
class TracesTest {

    private static final String TRACE = "0af7651916cd43dd8448eb211c80319c";
    private static final String PARENT = "b7ad6b7169203331";
    private final List<ExportTraceServiceRequest> received = new CopyOnWriteArrayList<>();
    private HttpServer receiver;

    @BeforeEach
    void receive() throws IOException {
        receiver = HttpServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
        receiver.createContext("/v1/traces", exchange -> {
            received.add(ExportTraceServiceRequest.parseFrom(exchange.getRequestBody().readAllBytes()));
            exchange.getResponseHeaders().set("Content-Type", "application/x-protobuf");
            exchange.sendResponseHeaders(200, -1);
            exchange.close();
        });
        receiver.start();
    }

    @AfterEach
    void stop() {
        receiver.stop(0);
    }

    private Map<String, String> environment(Map<String, String> more) {
        Map<String, String> environment = new HashMap<>(more);
        environment.put("OTEL_EXPORTER_OTLP_ENDPOINT", "http://127.0.0.1:" + receiver.getAddress().getPort());
        return environment;
    }

    private BrinebookServer start(Map<String, String> more) {
        return new BrinebookServer(new Settings(0, 0, "127.0.0.1", Served.MAX_BODY_BYTES, 10, 0, Set.of()), Main.OPERATIONS,
                RequestTraces.of(environment(more))).start();
    }

    private List<Span> spans() {
        return received.stream().flatMap(request -> request.getResourceSpansList().stream())
                .flatMap(resource -> resource.getScopeSpansList().stream()).flatMap(scope -> scope.getSpansList().stream()).toList();
    }

    private static String hex(ByteString id) {
        return HexFormat.of().formatHex(id.toByteArray());
    }

    private static Map<String, String> attributes(List<KeyValue> given) {
        return given.stream().collect(Collectors.toMap(KeyValue::getKey, pair -> pair.getValue().hasIntValue()
                ? Long.toString(pair.getValue().getIntValue()) : pair.getValue().getStringValue()));
    }

    /** W3C Trace Context, section 3.2; attributes by the semantic conventions for HTTP servers 1.23. */
    @Test
    void aSpanContinuesTheTraceOfItsCaller() {
        try (BrinebookServer server = start(Map.of())) {
            Served.given(server.port()).header("traceparent", "00-" + TRACE + "-" + PARENT + "-01").header("tracestate", "one=2")
                    .header("X-Request-Id", "mine-1").contentType("application/json").body(Served.SMALLEST).post(Served.CONVERSION)
                    .then().statusCode(200);
            Served.given(server.port()).get("/problems/no-such").then().statusCode(404);
            Served.given(server.port()).get("/health/live").then().statusCode(200);
            Served.metrics(server, text -> text.contains("route=\"/v1/hardness-conversion\""));
            assertTrue(Served.given(server.metricsPort()).header("Accept", "application/openmetrics-text").get("/metrics").asString()
                    .contains("trace_id=\"" + TRACE + "\""), "the exemplar leads to the span");
        }
        Map<String, Span> byName = spans().stream().collect(Collectors.toMap(Span::getName, span -> span));
        assertEquals(Set.of("POST /v1/hardness-conversion", "GET /problems/{kind}"), byName.keySet());
        Span span = byName.get("POST /v1/hardness-conversion");
        assertEquals(List.of(TRACE, PARENT, "one=2"), List.of(hex(span.getTraceId()), hex(span.getParentSpanId()), span.getTraceState()));
        assertEquals(Span.SpanKind.SPAN_KIND_SERVER, span.getKind());
        assertEquals(Map.of("http.request.method", "POST", "http.route", "/v1/hardness-conversion", "http.response.status_code", "200",
                "request.id", "mine-1"), attributes(span.getAttributesList()));
        assertTrue(span.getEndTimeUnixNano() > span.getStartTimeUnixNano());
        assertEquals(StatusCode.STATUS_CODE_UNSET, span.getStatus().getCode());
        Span other = byName.get("GET /problems/{kind}");
        assertTrue(other.getParentSpanId().isEmpty() && !hex(other.getTraceId()).equals(TRACE), "a trace of its own");
        assertEquals("404", attributes(other.getAttributesList()).get("http.response.status_code"));
        assertEquals("brinebook", attributes(received.get(0).getResourceSpans(0).getResource().getAttributesList()).get("service.name"));
    }

    /** OpenTelemetry, "Environment Variable Specification". */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "OTEL_TRACES_SAMPLER|always_off|01|0", "OTEL_TRACES_SAMPLER|parentbased_always_on|00|0",
        "OTEL_TRACES_SAMPLER|always_on|00|1", "OTEL_TRACES_EXPORTER|none|01|0", "OTEL_SDK_DISABLED|true|01|0"})
    void theStandardVariablesSayWhatIsSent(String name, String value, String flags, int spans) {
        try (BrinebookServer server = start(Map.of(name, value))) {
            Served.given(server.port()).header("traceparent", "00-" + TRACE + "-" + PARENT + "-" + flags).get("/version");
        }
        assertEquals(spans, spans().size());
    }

    @Test
    void nothingIsMadeWithoutAReceiver() {
        assertSame(RequestTraces.NONE, RequestTraces.of(Map.of("OTEL_SERVICE_NAME", "x", "OTEL_EXPORTER_OTLP_ENDPOINT", " ")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "OTEL_EXPORTER_OTLP_PROTOCOL|grpc|OTEL_EXPORTER_OTLP_PROTOCOL must be http/protobuf, was grpc",
        "OTEL_TRACES_SAMPLER|sometimes|a variable OTEL_… is wrong: Unrecognized value for otel.traces.sampler: sometimes"})
    void namesAWrongVariable(String name, String value, String fault) {
        assertEquals(fault, assertThrows(IllegalArgumentException.class, () -> RequestTraces.of(environment(Map.of(name, value))))
                .getMessage());
    }

    /** A receiver that is down costs callers nothing, and does not keep the service from its end. */
    @Test
    void aReceiverThatIsDownHoldsNobody() {
        receiver.stop(0);
        try (BrinebookServer server = start(Map.of())) {
            Served.given(server.port()).get("/version").then().statusCode(200);
        }
        assertEquals(List.of(), spans());
    }
}
