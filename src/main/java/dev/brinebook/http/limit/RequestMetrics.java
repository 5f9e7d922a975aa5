// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

import com.sun.management.OperatingSystemMXBean;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.http.Resources;
import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.binder.MeterBinder;
import io.micrometer.core.instrument.binder.jetty.JettyConnectionMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.core.instrument.config.MeterFilter;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.prometheus.metrics.core.datapoints.DistributionDataPoint;
import io.prometheus.metrics.core.metrics.Histogram;
import io.prometheus.metrics.model.snapshots.Labels;
import io.prometheus.metrics.model.snapshots.Unit;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.eclipse.jetty.server.Connector;

/** Counts and times requests by route template, method and status; the number of labels stays small. */
public final class RequestMetrics implements AutoCloseable {

    /** Most names of callers that are counted each for itself. */
    public static final int MOST_CALLERS = 1_000;

    /** Prometheus text format 0.0.4. */
    public static final String TEXT = "text/plain; version=0.0.4; charset=utf-8";
    /** OpenMetrics 1.0, which alone has exemplars. */
    public static final String OPEN_METRICS = "application/openmetrics-text; version=1.0.0; charset=utf-8";

    private static final double NANOSECONDS_PER_SECOND = 1e9;
    /** Up to 1 s of waiting, 10 s of a body and 10 s of a calculation lie below the last bound, as the settings are by default. */
    private static final double[] BOUNDS_SECONDS = {0.0005, 0.001, 0.002, 0.005, 0.02, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30};

    /** OpenMetrics 1.0 allows exemplars at buckets and counters only, and parsers refuse others. */
    private static final class Format implements PrometheusConfig {

        @Override
        public String get(String key) {
            return null;
        }

        @Override
        public Properties prometheusProperties() {
            return new Properties();
        }
    }

    private final PrometheusMeterRegistry registry = new PrometheusMeterRegistry(new Format());
    private final JvmGcMetrics garbageCollection = new JvmGcMetrics();
    /** Not by Micrometer, whose timers take exemplars from the thread alone. */
    private final Histogram requests;
    private final Map<RequestLabel, DistributionDataPoint> timers = new ConcurrentHashMap<>();
    private final Map<String, Counter> callers = new ConcurrentHashMap<>();
    private final Work lines;
    private final Work agentCalls;
    private final Map<Rejection, Counter> rejections = new EnumMap<>(Rejection.class);
    private final Map<Deadline.Part, Counter> late = new EnumMap<>(Deadline.Part.class);

    public RequestMetrics() {
        requests = histogram("http_server_requests", "Requests by route, method and status.", "route", "method", "status");
        lines = new Work("bulk.lines", "Lines of bulk streams.", histogram("bulk_line_duration",
                "Lines of bulk streams by operation, from reading to answer, waiting included.", "operation"));
        agentCalls = new Work("agent.calls", "Calculations asked for by agents.", histogram("agent_call_duration",
                "Calculations asked for by agents, by operation, waiting included.", "operation"));
        countProcessorSeconds(); // first, as it filters what is bound after it
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

    private Histogram histogram(String name, String help, String... labels) {
        return Histogram.builder().name(name).unit(Unit.SECONDS).classicOnly().help(help).labelNames(labels)
                .classicUpperBounds(BOUNDS_SECONDS).register(registry.getPrometheusRegistry());
    }

    /** As Prometheus and OpenMetrics name it, in place of the nanoseconds of Micrometer. */
    private void countProcessorSeconds() {
        registry.config().meterFilter(MeterFilter.denyNameStartsWith("process.cpu.time"));
        if (ManagementFactory.getOperatingSystemMXBean() instanceof OperatingSystemMXBean system) {
            FunctionCounter.builder("process.cpu", system, bean -> bean.getProcessCpuTime() / NANOSECONDS_PER_SECOND)
                    .baseUnit("seconds").description("Processor time of the process.").register(registry);
        }
    }

    public void watch(MeterBinder other) {
        other.bindTo(registry);
    }

    /** Counts and times a request; {@code exemplar} is the trace that it belongs to, or null if that is not kept. */
    public void record(RequestLabel label, Duration duration, Exemplar exemplar) {
        DistributionDataPoint timer = timers.computeIfAbsent(label, one -> requests.labelValues(one.route(), one.method(),
                Integer.toString(one.status())));
        double seconds = duration.toNanos() / NANOSECONDS_PER_SECOND;
        if (exemplar == null) {
            timer.observe(seconds);
        } else {
            timer.observeWithExemplar(seconds, Labels.of("trace_id", exemplar.traceId(), "span_id", exemplar.spanId()));
        }
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

    /** Counts and times a line of a stream by its operation and whether it was answered. */
    public void countLine(String operation, boolean answered, long nanoseconds) {
        lines.count(operation, answered, nanoseconds);
    }

    /** Counts and times a calculation that an agent asked for, by its operation and whether it was answered. */
    public void countAgentCall(String operation, boolean answered, long nanoseconds) {
        agentCalls.count(operation, answered, nanoseconds);
    }

    /** What is done for one operation after the other, not in requests of their own. */
    private final class Work {

        private final String name;
        private final String description;
        private final Histogram durations;
        private final Map<String, Done> byOperation = new ConcurrentHashMap<>();

        private record Done(Counter answered, Counter refused, DistributionDataPoint duration) {
        }

        Work(String name, String description, Histogram durations) {
            this.name = name;
            this.description = description;
            this.durations = durations;
        }

        void count(String operation, boolean answered, long nanoseconds) {
            Done done = byOperation.computeIfAbsent(operation, one -> new Done(counter(one, "answered"), counter(one, "refused"),
                    durations.labelValues(one)));
            (answered ? done.answered : done.refused).increment();
            done.duration.observe(nanoseconds / NANOSECONDS_PER_SECOND);
        }

        private Counter counter(String operation, String outcome) {
            return Counter.builder(name).description(description).tag("operation", operation).tag("outcome", outcome).register(registry);
        }
    }

    public void showInFlight(Supplier<Number> requests) {
        Gauge.builder("http.server.requests.in.flight", requests)
                .description("Requests accepted and not yet answered.").register(registry);
    }

    /** Counts the connections of a port, by its name. */
    public void watchConnections(Connector connector) {
        connector.addBean(new JettyConnectionMetrics(registry, connector));
    }

    /** All metrics in the format of a media type, {@link #TEXT} or {@link #OPEN_METRICS}. */
    public String scrape(String mediaType) {
        return registry.scrape(mediaType);
    }

    @Override
    public void close() {
        garbageCollection.close();
        registry.close();
    }
}
