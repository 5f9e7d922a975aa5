// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import com.sun.management.UnixOperatingSystemMXBean;
import dev.brinebook.http.Settings;
import java.lang.management.ManagementFactory;
import java.util.Optional;

/** File descriptors that the process may have: each connection takes one, and so does each file that it reads from. */
public final class Descriptors {

    /** Libraries, the log, the listeners and what else the process opens while it runs. */
    static final int RESERVE = 256;
    /** Connections to the port of the metrics, as {@code ServerConnectors} bounds them. */
    static final int CONNECTIONS_TO_METRICS = 100;

    private Descriptors() {
    }

    /** The error message if this process may not open the files that its settings need; nothing if the system has no such limit. */
    public static Optional<String> shortage(Settings settings) {
        return ManagementFactory.getOperatingSystemMXBean() instanceof UnixOperatingSystemMXBean unix
                ? shortage(unix.getMaxFileDescriptorCount(), settings.maxConnections()) : Optional.empty();
    }

    static Optional<String> shortage(long limit, int maxConnections) {
        long needed = (long) maxConnections + CONNECTIONS_TO_METRICS + RESERVE;
        return limit <= 0 || limit >= needed ? Optional.empty()
                : Optional.of("the process may open " + limit + " files (ulimit -n), MAX_CONNECTIONS " + maxConnections
                        + " needs " + needed + ": raise the limit or lower MAX_CONNECTIONS");
    }
}
