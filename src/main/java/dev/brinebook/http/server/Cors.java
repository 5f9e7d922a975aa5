// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.agent.Headers;
import dev.brinebook.http.access.AccessPolicy;
import dev.brinebook.http.exchange.ModelHeader;
import dev.brinebook.http.exchange.RequestId;
import dev.brinebook.http.exchange.TraceParent;
import io.javalin.http.Context;
import java.util.Set;
import java.util.function.BiConsumer;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;

/** Lets browsers of the listed origins call and read every answer, also those that refuse; and no other (Fetch standard). */
final class Cors {

    /** Further headers that a script of another origin may read. */
    static final String EXPOSED = "ETag, Link, Retry-After, " + RequestId.HEADER + ", " + ModelHeader.NAME
            + ", Content-Language, Allow, Accept-Post, "
            + AccessPolicy.CHALLENGE + ", " + AccessPolicy.RATE + ", " + AccessPolicy.RATE_POLICY + ", Table-Separator, Passed-Columns";
    /** What a script may send without having asked (Fetch standard): all that is said of a path that does not exist. */
    static final String SAFELISTED = "GET, HEAD, POST";
    private static final String HEADERS = "Content-Type, Authorization, If-None-Match, " + RequestId.HEADER + ", " + TraceParent.HEADER
            + ", " + Headers.VERSION + ", " + Headers.METHOD + ", " + Headers.NAME + ", " + ModelHeader.NAME;
    private static final String ANY = "*";

    private final Set<String> origins;

    Cors(Set<String> origins) {
        this.origins = origins;
    }

    /** Marks an answer as readable by the caller's origin, if that is listed. */
    void allow(Context context) {
        if (!origins.isEmpty()) {
            context.res().addHeader("Vary", "Origin");
            allow(context.header("Origin"), context::header);
        }
    }

    /**
     * The same for what the server itself answers. Where it gave up before the headers, it does not know the origin; its
     * answer then holds nothing of the request, so that any may read it.
     */
    void allow(HttpFields request, HttpFields.Mutable response) {
        if (!origins.isEmpty()) {
            response.ensureField(new HttpField(HttpHeader.VARY, "Origin"));
            if (request.size() == 0) {
                expose(ANY, response::put);
            } else {
                allow(request.get(HttpHeader.ORIGIN), response::put);
            }
        }
    }

    private void allow(String origin, BiConsumer<String, String> header) {
        if (origin != null && origins.contains(origin)) {
            expose(origin, header);
        }
    }

    private static void expose(String origin, BiConsumer<String, String> header) {
        header.accept("Access-Control-Allow-Origin", origin);
        header.accept("Access-Control-Expose-Headers", EXPOSED);
    }

    /** Whether a browser asks for a listed origin what it may send. It is answered for any path, so that the request comes. */
    boolean isPreflight(Context context) {
        String origin = context.header("Origin");
        return context.req().getMethod().equals("OPTIONS") && origin != null && origins.contains(origin)
                && context.header("Access-Control-Request-Method") != null;
    }

    /** Answers such a question with the methods of the path. */
    void preflight(Context context, String methods) {
        context.status(204).header("Access-Control-Allow-Methods", methods).header("Access-Control-Allow-Headers", HEADERS)
                .header("Access-Control-Max-Age", "600");
        context.res().setContentType(null);
    }

    /** Answers OPTIONS for a path that takes {@code methods}. */
    void options(Context context, String methods) {
        context.header("Allow", methods).status(204);
        context.res().setContentType(null);
        if (isPreflight(context)) {
            preflight(context, methods);
        }
    }
}
