package dev.brinebook.http;

import io.javalin.http.Context;
import java.util.Set;

/** Lets browsers of the listed origins call, and no other. */
final class Cors {

    private final Set<String> origins;

    Cors(Set<String> origins) {
        this.origins = origins;
    }

    /** Marks an answer as readable by the caller's origin, if that is listed. */
    void allow(Context context) {
        if (origins.isEmpty()) {
            return;
        }
        context.res().addHeader("Vary", "Origin");
        String origin = context.header("Origin");
        if (origin != null && origins.contains(origin)) {
            context.header("Access-Control-Allow-Origin", origin);
            context.header("Access-Control-Expose-Headers", RequestId.HEADER + ", ETag, Link, Retry-After");
        }
    }

    /** Answers OPTIONS for a path that takes {@code methods}. */
    void preflight(Context context, String methods) {
        context.header("Allow", methods).status(204);
        context.res().setContentType(null);
        if (context.res().getHeader("Access-Control-Allow-Origin") != null) {
            context.header("Access-Control-Allow-Methods", methods);
            context.header("Access-Control-Allow-Headers", "Content-Type, " + RequestId.HEADER + ", " + TraceParent.HEADER
                    + ", " + AgentHandler.PROTOCOL_VERSION);
            context.header("Access-Control-Max-Age", "600");
        }
    }
}
