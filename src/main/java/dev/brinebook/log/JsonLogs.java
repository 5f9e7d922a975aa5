// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.log;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.ILoggerFactory;
import org.slf4j.IMarkerFactory;
import org.slf4j.Logger;
import org.slf4j.event.Level;
import org.slf4j.helpers.BasicMarkerFactory;
import org.slf4j.helpers.NOPMDCAdapter;
import org.slf4j.spi.MDCAdapter;
import org.slf4j.spi.SLF4JServiceProvider;

/**
 * Where everything that is logged here comes together, of libraries too: slf4j finds this by its name in
 * {@code META-INF/services}.
 */
public final class JsonLogs implements SLF4JServiceProvider, ILoggerFactory {

    /** These quote what callers send. */
    private static final List<String> TELLING_OF_CALLERS = List.of("io.modelcontextprotocol", "org.eclipse.jetty.http.HttpParser");
    /** Tests, which fail on purpose, log less. */
    private static final Level LEAST_BAD = Level.valueOf(System.getProperty("dev.brinebook.log.level", "INFO"));

    private final Map<String, Logger> loggers = new ConcurrentHashMap<>();
    private final IMarkerFactory markers = new BasicMarkerFactory();

    @Override
    public Logger getLogger(String name) {
        return loggers.computeIfAbsent(name, one -> new JsonLogger(one,
                TELLING_OF_CALLERS.stream().anyMatch(one::startsWith) ? Integer.MAX_VALUE : LEAST_BAD.toInt()));
    }

    @Override
    public ILoggerFactory getLoggerFactory() {
        return this;
    }

    @Override
    public IMarkerFactory getMarkerFactory() {
        return markers;
    }

    @Override
    public MDCAdapter getMDCAdapter() {
        return new NOPMDCAdapter();
    }

    @Override
    public String getRequestedApiVersion() {
        return "2.0.99";
    }

    @Override
    public void initialize() {
        // The fields are all there is.
    }
}
