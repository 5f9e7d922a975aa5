// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.agent.AgentServer;
import dev.brinebook.agent.Guide;
import dev.brinebook.api.Operation;
import dev.brinebook.contract.Contract;
import dev.brinebook.http.Resources;
import dev.brinebook.http.Settings;
import dev.brinebook.http.access.AccessPolicy;
import dev.brinebook.http.bulk.BulkHandler;
import dev.brinebook.http.bulk.BulkTemplate;
import dev.brinebook.http.exchange.Acceptance;
import dev.brinebook.http.exchange.CachePolicy;
import dev.brinebook.http.exchange.Compression;
import dev.brinebook.http.exchange.Problems;
import dev.brinebook.http.exchange.RequestId;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.http.limit.ConcurrencyLimiter;
import dev.brinebook.http.limit.HeapPlan;
import dev.brinebook.http.limit.RequestMetrics;
import dev.brinebook.http.pages.Pages;
import dev.brinebook.http.pages.WebPages;
import dev.brinebook.http.problem.Problem;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.http.trace.RequestTraces;
import dev.brinebook.text.Message;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.util.JavalinBindException;
import io.javalin.util.JavalinException;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.jetty.ee10.servlet.ServletContextResponse;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.server.Handler.Singleton;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Server;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Serves the operations over HTTP. Wiring only: no line here knows a feature. */
public final class BrinebookServer implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(BrinebookServer.class);

    private final Settings settings;
    private final JsonReader reader = new JsonReader();
    private final JsonWriter writer = new JsonWriter();
    private final Problems problems;
    private final RequestMetrics metrics = new RequestMetrics();
    private final RequestTraces traces;
    private final HeapPlan plan;
    private final ConcurrencyLimiter limiter;
    private final SlowHeaderGuard heads;
    private final ServerConnectors listeners;
    private final Cors cors;
    private final AccessPolicy callers;
    private final Pages pages;
    private final List<Operation<?, ?>> operations;
    private final Set<String> calculated;
    private final Map<String, Set<String>> methodsByPath = new TreeMap<>();
    private final Javalin javalin;
    private volatile boolean ready;
    private volatile WarmUp warmUp;

    /**
     * The service, not yet started.
     *
     * @throws IllegalArgumentException when the file of API keys cannot be used
     */
    public BrinebookServer(Settings settings, List<Operation<?, ?>> operations) {
        this(settings, operations, BulkHandler.LONGEST_PAUSE, RequestTraces.NONE);
    }

    /** The same, sending spans of its requests. */
    public BrinebookServer(Settings settings, List<Operation<?, ?>> operations, RequestTraces traces) {
        this(settings, operations, BulkHandler.LONGEST_PAUSE, traces);
    }

    public BrinebookServer(Settings settings, List<Operation<?, ?>> operations, Duration longestPause) {
        this(settings, operations, longestPause, RequestTraces.NONE);
    }

    private BrinebookServer(Settings settings, List<Operation<?, ?>> operations, Duration longestPause, RequestTraces traces) {
        this.settings = settings;
        this.traces = traces;
        this.problems = new Problems(writer, settings.publicUrl());
        this.plan = HeapPlan.of(settings, Runtime.getRuntime().maxMemory());
        this.heads = new SlowHeaderGuard(settings.requestSeconds(), metrics, problems);
        this.listeners = new ServerConnectors(settings, plan, metrics, heads);
        this.callers = new AccessPolicy(settings, metrics);
        this.limiter = new ConcurrencyLimiter(metrics, settings.calculationMilliseconds(), plan.calculatingBytes());
        this.cors = new Cors(settings.corsOrigins());
        this.pages = new Pages(operations, writer, () -> ready, Guide.llmsText(operations), settings.publicUrl());
        this.operations = List.copyOf(operations);
        this.calculated = operations.stream().flatMap(each -> Stream.of(each.path(), Contract.explanationPath(each)))
                .collect(Collectors.toUnmodifiableSet());
        this.javalin = Javalin.create(config -> configure(config, operations, longestPause));
    }

    /**
     * Opens the ports and becomes ready.
     *
     * @throws UncheckedIOException when a port cannot be opened
     */
    public BrinebookServer start() {
        open();
        becomeReady();
        return this;
    }

    /**
     * Opens the ports and becomes ready once the cheap operations are warm; the dear ones become so afterwards.
     *
     * @throws UncheckedIOException when a port cannot be opened
     */
    public BrinebookServer startWarm() {
        return startWarm(WarmUp.LONGEST);
    }

    BrinebookServer startWarm(Duration longest) {
        open();
        warmUp = new WarmUp(operations, settings.host());
        warmUp.run(port(), longest);
        becomeReady();
        warmUp.goOn(port(), limiter::isIdle);
        return this;
    }

    private void open() {
        try {
            javalin.start();
        } catch (JavalinBindException e) {
            throw new UncheckedIOException(ListenFault.of(settings.host(), e), new IOException(e));
        }
        listeners.watchHeads();
    }

    private void becomeReady() {
        ready = true;
        LOG.info("Brinebook {} answers on port {}, metrics on port {}", Resources.version(), port(), metricsPort());
    }

    /** Shows something else that counts, beside the requests, in the metrics. */
    public BrinebookServer watch(MeterBinder counting) {
        metrics.watch(counting);
        return this;
    }

    /** The server below; for tests that ask it without a socket. */
    public Server jetty() {
        return javalin.jettyServer().server();
    }

    public int port() {
        return listeners.servicePort();
    }

    public int metricsPort() {
        return listeners.watchingPort();
    }

    /** Turns readiness off, lets running requests finish, then closes the ports. */
    @Override
    public void close() {
        ready = false;
        try {
            TimeUnit.SECONDS.sleep(settings.drainSeconds());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        try {
            javalin.stop();
        } catch (JavalinException e) {
            LOG.warn("requests still running after {} s were cut off", settings.stopSeconds());
        }
        metrics.close();
        traces.close();
    }

    /** The contract of what is routed, made anew; served is the file that the build keeps of it. */
    public Contract contract() {
        return new Contract(operations, pages.documented(), Problem.class);
    }

    private void configure(JavalinConfig config, List<Operation<?, ?>> operations, Duration longestPause) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.prefer405over404 = true;
        config.http.compressionStrategy = CompressionStrategy.NONE;
        config.router.ignoreTrailingSlashes = false;
        config.jetty.threadPool = ServerConnectors.threads();
        config.jetty.modifyHttpConfiguration(ServerConnectors::restrict);
        config.jetty.modifyServer(this::prepare);
        config.jetty.modifyServletContextHandler(context -> context.setSessionHandler(new NoSessions()));
        config.jetty.addConnector(listeners::service);
        config.jetty.addConnector(listeners::watching);
        config.requestLogger.http(new RequestLog(metrics, traces)::log);
        config.routes.before(this::begin);
        config.routes.after(Compression::apply);
        operations.forEach(operation -> route(config.routes,
                new OperationHandler<>(operation, reader, writer, problems, limiter), operation));
        BulkHandler bulk = new BulkHandler(operations, reader, writer, problems, limiter, metrics, longestPause);
        add(config.routes, HandlerType.POST, Contract.BULK_PATH, bulk::post);
        get(config.routes, Contract.TEMPLATE_PATH, new BulkTemplate(bulk::operation, writer)::get);
        add(config.routes, HandlerType.POST, Contract.EXPLANATION_PATH,
                new ExplanationHandler(bulk::operation, reader, writer, problems, limiter)::post);
        AgentHandler agents = new AgentHandler(operations, reader, writer, limiter, settings, metrics);
        config.routes.before(AgentServer.PATH, agents::admit);
        add(config.routes, HandlerType.POST, AgentServer.PATH, agents::post);
        pages.routes().forEach((page, handler) -> get(config.routes, page.path(), handler));
        pages.undocumented().forEach((path, handler) -> get(config.routes, path, handler));
        WebPages.routes().forEach((path, handler) -> get(config.routes, path, handler));
        Pages.assets().forEach((path, handler) -> get(config.routes, path, handler));
        Pages.security(settings).forEach((path, handler) -> get(config.routes, path, handler));
        get(config.routes, "/metrics", this::metrics);
        methodsByPath.forEach((path, methods) -> config.routes.options(path,
                context -> cors.options(context, String.join(", ", methods))));
        faults(config.routes);
    }

    private void route(RoutesConfig routes, OperationHandler<?, ?> handler, Operation<?, ?> operation) {
        add(routes, HandlerType.POST, operation.path(), handler::post);
        if (!operation.query().isEmpty()) {
            boolean whole = operation.query().stream().anyMatch(Operation.QueryParameter::isWhole);
            get(routes, operation.path(), whole ? CachePolicy.neverStored(handler::get) : handler::get);
        }
    }

    private void get(RoutesConfig routes, String path, Handler handler) {
        add(routes, HandlerType.GET, path, handler);
        add(routes, HandlerType.HEAD, path, handler);
    }

    private void add(RoutesConfig routes, HandlerType method, String path, Handler handler) {
        routes.addHttpHandler(method, path, handler);
        methodsByPath.computeIfAbsent(path, p -> new TreeSet<>(Set.of("OPTIONS"))).add(method.name());
    }

    private void faults(RoutesConfig routes) {
        routes.exception(ProblemException.class, (problem, context) -> problems.answer(context, problem));
        routes.exception(HttpResponseException.class, (refused, context) -> {
            ProblemType type = ProblemType.byStatus(refused.getStatus());
            if (type == ProblemType.NOT_FOUND && cors.isPreflight(context)) {
                cors.preflight(context, Cors.SAFELISTED);
                return;
            }
            if (type == ProblemType.METHOD_NOT_ALLOWED) {
                context.header("Allow", String.join(", ", methodsOf(context.path())));
            }
            problems.answer(context, type, type.explanation());
        });
        // The router answers this one itself, without a body.
        routes.error(ProblemType.REQUEST_TIMEOUT.status(), context -> problems.answer(context, ProblemType.REQUEST_TIMEOUT,
                ProblemType.REQUEST_TIMEOUT.explanation()));
        routes.exception(IOException.class, (broken, context) -> {
            ProblemType type = ProblemType.ofBroken(broken);
            problems.answer(context, type, type.explanation());
        });
        routes.exception(Exception.class, (fault, context) -> {
            RequestId.addTo(LOG.atError(), context).setCause(fault).log("failed");
            problems.answer(context, ProblemType.INTERNAL_ERROR, ProblemType.INTERNAL_ERROR.explanation());
        });
    }

    /** OpenMetrics where it is asked for by name, as collectors do that keep exemplars. */
    private void metrics(Context context) {
        String format = Acceptance.asksFor(context, "application/openmetrics-text", "text/plain") ? RequestMetrics.OPEN_METRICS
                : RequestMetrics.TEXT;
        context.contentType(format).header("Cache-Control", "no-store").result(metrics.scrape(format));
    }

    /** Methods that a path takes, found also where the route holds a parameter. */
    private Set<String> methodsOf(String path) {
        return methodsByPath.entrySet().stream()
                .filter(entry -> path.matches(entry.getKey().replaceAll("\\{[^}]+}", "[^/]+")))
                .map(Map.Entry::getValue).findFirst().orElse(Set.of());
    }

    private void begin(Context context) {
        RequestId.give(context);
        CommonHeaders.put(ServletContextResponse.getServletContextResponse(context.res()).getHeaders());
        // The server below keeps the connection of a CONNECT for the tunnel, whatever its caller asked for; there is none here.
        if (!ready || context.req().getMethod().equals("CONNECT")) {
            context.header("Connection", "close");
        }
        cors.allow(context);
        boolean onWatchingPort = context.req().getLocalPort() == metricsPort();
        boolean watchingPath = context.path().equals("/metrics");
        boolean either = context.path().startsWith("/health/") || port() == metricsPort();
        if (onWatchingPort != watchingPath && !either) {
            throw new ProblemException(ProblemType.NOT_FOUND, Message.of("brinebookServer.pathAvailablePort"));
        }
        if (!WarmUp.mark(context, warmUp)) {
            callers.admit(context);
        }
    }

    /** Whether a request has a body from which something is calculated. */
    private boolean isCalculated(Request request) {
        String path = request.getHttpURI().getCanonicalPath();
        return HttpMethod.POST.is(request.getMethod()) && path != null
                && (calculated.contains(path) || path.equals(AgentServer.PATH));
    }

    private void prepare(Server server) {
        server.setStopTimeout(TimeUnit.SECONDS.toMillis(settings.stopSeconds()));
        ConnectionRefusal refusals = new ConnectionRefusal();
        // From the innermost, which Javalin puts its own handler into.
        Singleton chain = null;
        for (Singleton outer : List.of(new RequestLimit(metrics, limiter, refusals), new BodyHandler(this::isCalculated, settings,
                new CallerShares(plan.arrivingBytes(), plan.arrivingBytes() / 2), metrics, refusals),
                new RequestAdmission(metrics, callers, limiter, this::isCalculated, refusals), heads)) {
            outer.setHandler(chain);
            chain = outer;
        }
        server.setHandler(chain);
        server.setErrorHandler(new ServerErrors(problems, cors, metrics));
    }
}
