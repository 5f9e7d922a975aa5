// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import org.eclipse.jetty.ee10.servlet.SessionHandler;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/** Stands where Javalin has sessions, of which the service has none, and hands each request on without looking for one. */
final class NoSessions extends SessionHandler {

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        Handler next = getHandler();
        return next != null && next.handle(request, response, callback);
    }
}
