// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.http.Settings;
import dev.brinebook.http.limit.HeapPlan;
import dev.brinebook.http.limit.RequestMetrics;
import java.time.Duration;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The two ports and the threads behind them, all of them bounded. */
final class ServerConnectors {

    private static final int MAX_HEADER_BYTES = 16_384;
    private static final Duration IDLE = Duration.ofSeconds(30);
    /** When the limit of connections is reached, idle ones are closed sooner. */
    private static final Duration IDLE_WHEN_FULL = Duration.ofSeconds(2);
    /**
     * While stopping, each answer closes its connection, and one without a request is closed after this part of the time that a
     * stop may take: a caller that calls again within it loses no request.
     */
    private static final int IDLE_WHEN_STOPPING_PART = 20;
    /** Connections made and not yet taken; of more at once, the caller would have to retry a second later. */
    private static final int MOST_AT_THE_DOOR = 1_024;

    /** Beside the requests let in: accepting and selecting for both ports, and the health paths. */
    private static final int OTHER_THREADS = 16;
    private static final int FEWEST_THREADS = 8;
    private static final int THREAD_IDLE_MILLIS = 60_000;

    private final Settings settings;
    private final HeapPlan plan;
    private final RequestMetrics metrics;
    private final SlowHeaderGuard heads;
    private ServerConnector service;
    private ServerConnector watching;

    ServerConnectors(Settings settings, HeapPlan plan, RequestMetrics metrics, SlowHeaderGuard heads) {
        this.settings = settings;
        this.plan = plan;
        this.metrics = metrics;
        this.heads = heads;
    }

    /**
     * A small pool of plain threads: the work is calculation only, so that more of them would only wait for processors. Its
     * queue has no bound: a task that it refuses is a caller without an answer. {@link RequestLimit} bounds what it holds. Jetty's
     * own queue would start the JVM's management at its first use, a tenth of a start.
     */
    static QueuedThreadPool threads() {
        QueuedThreadPool threads = new QueuedThreadPool(RequestLimit.MOST_AT_ONCE + OTHER_THREADS, FEWEST_THREADS,
                THREAD_IDLE_MILLIS, new LinkedBlockingQueue<>());
        threads.setName("http");
        return threads;
    }

    ServerConnector service(Server server, HttpConfiguration http) {
        service = connector(server, http, "service", settings.port(), plan.connections());
        service.addBean(heads);
        return service;
    }

    ServerConnector watching(Server server, HttpConfiguration http) {
        watching = connector(server, http, "watching", settings.metricsPort(), Descriptors.CONNECTIONS_TO_METRICS);
        return watching;
    }

    /** Ends connections whose heads drip in, from now on. */
    void watchHeads() {
        heads.watch(service.getScheduler());
    }

    int servicePort() {
        return service.getLocalPort();
    }

    int watchingPort() {
        return watching.getLocalPort();
    }

    static void restrict(HttpConfiguration http) {
        http.setUriCompliance(UriCompliance.DEFAULT);
        http.setSendServerVersion(false);
        http.setRequestHeaderSize(MAX_HEADER_BYTES);
        http.setIdleTimeout(IDLE.toMillis()); // while a request is handled, however full the service is
        http.setHeaderCacheSize(0); // it holds 100 KB for each connection that has called twice
    }

    private ServerConnector connector(Server server, HttpConfiguration http, String name, int port, int mostConnections) {
        ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
        connector.setName(name);
        connector.setHost(settings.host());
        connector.setPort(port);
        connector.setAcceptQueueSize(MOST_AT_THE_DOOR);
        connector.setIdleTimeout(IDLE.toMillis());
        connector.setShutdownIdleTimeout(Math.max(1, TimeUnit.SECONDS.toMillis(settings.stopSeconds()) / IDLE_WHEN_STOPPING_PART));
        NetworkConnectionLimit limit = new NetworkConnectionLimit(mostConnections, connector);
        limit.setEndPointIdleTimeout(IDLE_WHEN_FULL.toMillis());
        server.addBean(limit);
        metrics.watchConnections(connector);
        return connector;
    }
}
