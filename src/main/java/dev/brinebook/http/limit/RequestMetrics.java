// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

import dev.brinebook.api.ModelVersion;
import dev.brinebook.http.Resources;
import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.Timer;
import io.micrometer.core.instrument.binder.MeterBinder;
import io.micrometer.core.instrument.binder.jetty.JettyConnectionMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.eclipse.jetty.server.Connector;

/** Counts and times requests by route template, method and status; the number of labels stays small. */
public final class RequestMetrics implements AutoCloseable {

    /** Most names of callers that are counted each for itself. */
    public static final int MOST_CALLERS = 1_000;

    private final PrometheusMeterRegistry registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    private final JvmGcMetrics garbageCollection = new JvmGcMetrics();
    private final Map<RequestLabel, Timer> timers = new ConcurrentHashMap<>();
    private final Map<String, Counter> callers = new ConcurrentHashMap<>();
    private final Map<Rejection, Counter> rejections = new EnumMap<>(Rejection.class);
    private final Map<Deadline.Part, Counter> late = new EnumMap<>(Deadline.Part.class);
    private final Counter answeredLines = line("answered");
    private final Counter refusedLines = line("refused");

    public RequestMetrics() {
        new JvmMemoryMetrics().bindTo(registry);
        new JvmThreadMetrics().bindTo(registry);
        new ProcessorMetrics().bindTo(registry);
        garbageCollection.bindTo(registry);
        for (Rejection reason : Rejection.values()) {
            rejections.put(reason, Counter.builder("http.server.rejected").description("Requests refused, by reason.")
                    .tag("reason", reason.name().toLowerCase(Locale.ROOT)).register(registry));
        }
        for (Deadline.Part part : Deadline.Part.values()) {
            late.put(part, Counter.builder("http.server.late").description("Requests ended at their deadline, by phase.")
                    .tag("part", part.name().toLowerCase(Locale.ROOT)).register(registry));
        }
        Gauge.builder("brinebook.build.info", () -> 1).description("Build information.").tag("version", Resources.version())
                .tag("model", ModelVersion.CURRENT).register(registry);
    }

    public void watch(MeterBinder other) {
        other.bindTo(registry);
    }

    public void record(RequestLabel label, Duration duration) {
        timers.computeIfAbsent(label, this::timer).record(duration);
    }

    /** Counts a request that passed its deadline, by phase. */
    void countLate(Deadline.Part part) {
        late.get(part).increment();
    }

    public void reject(Rejection reason) {
        rejections.get(reason).increment();
    }

    /**
     * Counts a request by the name of its caller, and returns the name counted. Names come from a file, and so are few unless
     * that changes for ever.
     */
    public String countCaller(String name) {
        String label = callers.containsKey(name) || callers.size() < MOST_CALLERS ? name : "other";
        callers.computeIfAbsent(label, one -> Counter.builder("caller.requests").description("Requests by name of key.")
                .tag("caller", one).register(registry)).increment();
        return label;
    }

    /** Counts a line of a stream by whether it was answered. */
    public void countLine(boolean answered) {
        (answered ? answeredLines : refusedLines).increment();
    }

    public void showInFlight(Supplier<Number> requests) {
        Gauge.builder("http.server.requests.in.flight", requests)
                .description("Requests accepted and not yet answered.").register(registry);
    }

    /** Counts the connections of a port, by its name. */
    public void watchConnections(Connector connector) {
        connector.addBean(new JettyConnectionMetrics(registry, connector));
    }

    public String scrape() {
        return registry.scrape();
    }

    private Counter line(String outcome) {
        return Counter.builder("bulk.lines").description("Lines of bulk streams.").tag("outcome", outcome).register(registry);
    }

    /** Up to 1 s of waiting, 10 s of a body and 10 s of a calculation lie below the last bound, as the settings are by default. */
    private Timer timer(RequestLabel label) {
        return Timer.builder("http.server.requests").description("Requests by route, method and status.")
                .tag("route", label.route()).tag("method", label.method()).tag("status", Integer.toString(label.status()))
                .serviceLevelObjectives(Duration.ofNanos(500_000), Duration.ofMillis(1), Duration.ofMillis(2),
                        Duration.ofMillis(5), Duration.ofMillis(20), Duration.ofMillis(100), Duration.ofSeconds(1),
                        Duration.ofSeconds(3), Duration.ofSeconds(10), Duration.ofSeconds(30))
                .register(registry);
    }

    @Override
    public void close() {
        garbageCollection.close();
        registry.close();
    }
}
