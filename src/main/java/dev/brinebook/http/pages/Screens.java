package dev.brinebook.http.pages;

import dev.brinebook.http.Resources;
import dev.brinebook.http.exchange.Cached;
import io.javalin.http.Handler;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What people look at: the workbench, the element for shops and an example shop. They use the contract like any caller. */
public final class Screens {

    /** Scripts and styles come from here alone, and nothing is asked of another host. */
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self';"
            + " img-src 'self' data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    private static final List<String> SCRIPTS = List.of("workbench.js", "labels.js", "quantities.js", "case.js", "service.js",
            "parts.js", "charts.js");

    private Screens() {
    }

    /** Paths and what answers them. The contract does not list them: no program calls them. */
    public static Map<String, Handler> routes() {
        Map<String, Handler> routes = new LinkedHashMap<>();
        routes.put("/", page("workbench.html"));
        routes.put("/example-shop", page("shop.html"));
        routes.put("/element/brinebook.js", file("text/javascript", Resources.own("screen/element.js")));
        SCRIPTS.forEach(name -> routes.put("/workbench/" + name, file("text/javascript", Resources.own("screen/" + name))));
        routes.put("/workbench/workbench.css", file("text/css", Resources.own("screen/workbench.css")));
        routes.put("/workbench/uplot.js", file("text/javascript", Resources.charts("uPlot.iife.min.js")));
        routes.put("/workbench/uplot.css", file("text/css", Resources.charts("uPlot.min.css")));
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
