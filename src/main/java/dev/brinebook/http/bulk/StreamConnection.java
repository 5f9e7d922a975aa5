// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import io.javalin.http.Context;
import java.time.Duration;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.io.EndPoint;

/** The connection of a stream: it may do nothing for longer than others, and can be cut. */
final class StreamConnection {

    private final EndPoint connection;
    private final long usualMillis;

    private StreamConnection(EndPoint connection) {
        this.connection = connection;
        this.usualMillis = connection.getIdleTimeout();
    }

    /** The connection that a request came by; until {@link #end} it may pause for {@code longestPause}. */
    static StreamConnection of(Context context, Duration longestPause) {
        StreamConnection stream = new StreamConnection(ServletContextRequest.getServletContextRequest(context.req())
                .getConnectionMetaData().getConnection().getEndPoint());
        stream.connection.setIdleTimeout(longestPause.toMillis());
        return stream;
    }

    void end() {
        connection.setIdleTimeout(usualMillis);
    }

    /** Ends the read or write that waits now, as if it had paused too long; a last line may still be sent. */
    void wake() {
        connection.setIdleTimeout(1);
        connection.setIdleTimeout(usualMillis);
    }

    /** Closes it with the answer as far as it was written, so that nobody mistakes it for the whole. */
    void cut() {
        connection.close();
    }
}
