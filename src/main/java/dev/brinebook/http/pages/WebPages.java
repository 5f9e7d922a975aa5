// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.pages;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.http.Resources;
import dev.brinebook.http.exchange.Cached;
import dev.brinebook.text.Language;
import io.javalin.http.Handler;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What people look at: the workbench, the element for shops and an example shop. They use the contract like any caller. */
public final class WebPages {

    /** Scripts and styles come from here alone, and nothing is asked of another host. */
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self';"
            + " img-src 'self' data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    private static final List<String> SCRIPTS = List.of("workbench.js", "quantities.js", "case.js", "service.js",
            "parts.js", "charts.js");

    /** Where a script wants its texts. */
    private static final String TEXTS = "{/* texts */}";

    private WebPages() {
    }

    /** Paths and what answers them. The contract does not list them: no program calls them. */
    public static Map<String, Handler> routes() {
        Map<String, Handler> routes = new LinkedHashMap<>();
        routes.put("/", page("workbench.html"));
        routes.put("/example-shop", page("shop.html"));
        routes.put("/element/brinebook.js", file("text/javascript", withTexts("element.js", "element.")));
        SCRIPTS.forEach(name -> routes.put("/workbench/" + name, file("text/javascript", Resources.own("screen/" + name))));
        routes.put("/workbench/labels.js", file("text/javascript", withTexts("labels.js", "screen.")));
        routes.put("/workbench/workbench.css", file("text/css", Resources.own("screen/workbench.css")));
        routes.put("/workbench/uplot.js", file("text/javascript", Resources.charts("uPlot.iife.min.js")));
        routes.put("/workbench/uplot.css", file("text/css", Resources.charts("uPlot.min.css")));
        return routes;
    }

    /** A script with the texts whose ids begin with {@code prefix}, by language. */
    private static byte[] withTexts(String name, String prefix) {
        Map<String, Map<String, String>> texts = new TreeMap<>();
        Set<String> ids = Language.ENGLISH.texts().keySet();
        Language.all().forEach(language -> texts.put(language.tag(), ids.stream().filter(id -> id.startsWith(prefix))
                .collect(Collectors.toMap(id -> id.substring(prefix.length()), language::text, (one, same) -> one, TreeMap::new))));
        try {
            return new String(Resources.own("screen/" + name), StandardCharsets.UTF_8)
                    .replace(TEXTS, new ObjectMapper().writeValueAsString(texts)).getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
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
