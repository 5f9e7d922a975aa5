// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.log;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.slf4j.Marker;
import org.slf4j.event.KeyValuePair;
import org.slf4j.event.Level;
import org.slf4j.event.LoggingEvent;
import org.slf4j.helpers.LegacyAbstractLogger;
import org.slf4j.helpers.MessageFormatter;
import org.slf4j.spi.LoggingEventAware;

/** Logs what is at least as severe as its level, as lines of JSON. */
final class JsonLogger extends LegacyAbstractLogger implements LoggingEventAware {

    private static final long serialVersionUID = 1L;

    private final int leastBad;

    JsonLogger(String name, int leastBad) {
        this.name = name;
        this.leastBad = leastBad;
    }

    @Override
    public void log(LoggingEvent event) {
        add(event.getLevel(), event.getMessage(), event.getArgumentArray(), event.getKeyValuePairs(), event.getThrowable());
    }

    @Override
    protected void handleNormalizedLoggingCall(Level level, Marker marker, String pattern, Object[] arguments, Throwable error) {
        add(level, pattern, arguments, null, error);
    }

    private void add(Level level, String pattern, Object[] arguments, List<KeyValuePair> about, Throwable error) {
        LogOutput.add(new LogLine(Instant.now(), level, name, MessageFormatter.basicArrayFormat(pattern, arguments),
                Objects.requireNonNullElse(about, List.of()), error));
    }

    @Override
    protected String getFullyQualifiedCallerName() {
        return null;
    }

    @Override
    public boolean isTraceEnabled() {
        return isEnabled(Level.TRACE);
    }

    @Override
    public boolean isDebugEnabled() {
        return isEnabled(Level.DEBUG);
    }

    @Override
    public boolean isInfoEnabled() {
        return isEnabled(Level.INFO);
    }

    @Override
    public boolean isWarnEnabled() {
        return isEnabled(Level.WARN);
    }

    @Override
    public boolean isErrorEnabled() {
        return isEnabled(Level.ERROR);
    }

    private boolean isEnabled(Level level) {
        return level.toInt() >= leastBad;
    }
}
