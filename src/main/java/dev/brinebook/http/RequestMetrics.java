package dev.brinebook.http;

import io.micrometer.core.instrument.Timer;
import io.micrometer.core.instrument.binder.MeterBinder;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Counts and times requests by route template, method and status; whatever is sent, the labels stay few. */
final class RequestMetrics implements AutoCloseable {

    private final PrometheusMeterRegistry registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    private final JvmGcMetrics garbageCollection = new JvmGcMetrics();
    private final Map<RequestLabel, Timer> timers = new ConcurrentHashMap<>();

    RequestMetrics() {
        new JvmMemoryMetrics().bindTo(registry);
        new JvmThreadMetrics().bindTo(registry);
        new ProcessorMetrics().bindTo(registry);
        garbageCollection.bindTo(registry);
    }

    void watch(MeterBinder other) {
        other.bindTo(registry);
    }

    void record(RequestLabel label, Duration duration) {
        timers.computeIfAbsent(label, this::timer).record(duration);
    }

    String scrape() {
        return registry.scrape();
    }

    private Timer timer(RequestLabel label) {
        return Timer.builder("http.server.requests").description("Requests by route, method and status.")
                .tag("route", label.route()).tag("method", label.method()).tag("status", Integer.toString(label.status()))
                .serviceLevelObjectives(Duration.ofNanos(500_000), Duration.ofMillis(1), Duration.ofMillis(2),
                        Duration.ofMillis(5), Duration.ofMillis(20), Duration.ofMillis(100), Duration.ofSeconds(1))
                .register(registry);
    }

    @Override
    public void close() {
        garbageCollection.close();
        registry.close();
    }
}
