package dev.brinebook.http;

import io.javalin.http.Handler;
import java.util.LinkedHashMap;
import java.util.Map;

/** What people look at: the element for shops and an example shop. They use the contract like any caller. */
final class Screens {

    /** Scripts and styles come from here alone, and nothing is asked of another host. */
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self';"
            + " img-src 'self' data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private Screens() {
    }

    /** Paths and what answers them. The contract does not list them: no program calls them. */
    static Map<String, Handler> routes() {
        Map<String, Handler> routes = new LinkedHashMap<>();
        routes.put("/example-shop", page("shop.html"));
        routes.put("/element/brinebook.js", file("text/javascript", Resources.own("screen/element.js")));
        return routes;
    }

    private static Handler page(String name) {
        byte[] page = Resources.own("screen/" + name);
        return context -> Cached.mark(context.contentType("text/html; charset=utf-8")
                .header("Content-Security-Policy", POLICY).result(page));
    }

    private static Handler file(String mediaType, byte[] content) {
        return context -> Cached.mark(context.contentType(mediaType + "; charset=utf-8").result(content));
    }
}
