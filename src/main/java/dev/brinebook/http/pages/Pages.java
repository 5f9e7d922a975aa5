// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.pages;

import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.contract.PageRoute;
import dev.brinebook.docs.Docs;
import dev.brinebook.http.Resources;
import dev.brinebook.http.Settings;
import dev.brinebook.http.exchange.Cached;
import dev.brinebook.http.exchange.Problems;
import dev.brinebook.http.json.JsonWriter;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** Routes other than operations: each is listed here once, with its text in the contract and its handler. */
public final class Pages {

    private static final String TEXT = "text/plain";
    private static final String JSON = "application/json";

    private final Map<PageRoute, Handler> routes = new LinkedHashMap<>();
    private final Map<String, Handler> undocumented;

    public Pages(List<Operation<?, ?>> operations, JsonWriter writer, BooleanSupplier ready, String llmsText,
            String publicUrl) {
        routes.putAll(new ContractRoutes(operations).routes());
        DocRoutes docs = new DocRoutes(operations, writer, publicUrl);
        routes.putAll(docs.routes());
        undocumented = docs.undocumented();
        routes.put(new PageRoute("readLlmsText", "/llms.txt", "The service in short, for language models", "The purpose of the "
                + "service, its operations with links into this document, the structure of requests, answers and errors, and the "
                + "address of the tools for agents. Choose it before the whole contract.", TEXT),
                context -> {
                    context.contentType(TEXT + "; charset=utf-8").result(llmsText);
                    Cached.mark(context);
                });
        json("checkLive", "/health/live", "Liveness of the process", "Up as long as the process can answer. Choose it to decide "
                + "whether to restart the process. To decide whether to send requests, choose checkReady.", JSON,
                HealthAnswer.class, context -> context.result(writer.write(new HealthAnswer("up"))), false);
        routes.put(new PageRoute("checkReady", "/health/ready", "Readiness for requests", "Up when the service accepts "
                + "requests. 503 while it stops and finishes running requests. Choose it to decide whether to send requests. For "
                + "liveness choose checkLive.", JSON)
                .answering(HealthAnswer.class, null).neverKept("The service is stopping. Send requests elsewhere."),
                context -> ready(context, ready.getAsBoolean(), writer));
        json("readVersion", "/version", "The versions of the service and its formulas", "Version of the service, and of its "
                + "formulas and data. Choose it to check whether stored answers are still current. Equal requests get equal "
                + "answers as long as modelVersion, which is in every answer, stays the same.", JSON,
                VersionAnswer.class, context -> context.result(writer.write(
                        new VersionAnswer(Resources.version(), ModelVersion.CURRENT))), false);
    }

    private static void ready(Context context, boolean up, JsonWriter writer) {
        if (!up) {
            context.header("Retry-After", Problems.RETRY_AFTER_SECONDS);
        }
        context.status(up ? 200 : 503).contentType(JSON).header("Cache-Control", "no-store")
                .result(writer.write(new HealthAnswer(up ? "up" : "stopping")));
    }

    /** What the contract documents. */
    public List<PageRoute> documented() {
        return List.copyOf(routes.keySet());
    }

    public Map<PageRoute, Handler> routes() {
        return routes;
    }

    /** Pages that those of the contract lead to. */
    public Map<String, Handler> undocumented() {
        return undocumented;
    }

    /** Parts of pages, which the contract does not list. */
    public static Map<String, Handler> assets() {
        return Map.of(
                "/docs/try.js", asset("text/javascript", () -> Resources.own("try.js")),
                "/docs/docs.js", asset("text/javascript", () -> Resources.own("docs.js")),
                "/docs/page.css", asset("text/css", () -> Resources.own("page.css")),
                "/docs/bulk.py", asset("text/x-python; charset=utf-8", () -> Docs.script("bulk.py")),
                "/docs/bulk.mjs", asset("text/javascript", () -> Docs.script("bulk.mjs")),
                "/docs/icon.svg", asset("image/svg+xml", () -> Resources.own("icon.svg")),
                "/docs/assets/swagger-ui.css", asset("text/css", () -> Resources.viewer("swagger-ui.css")),
                "/docs/assets/swagger-ui-bundle.js",
                asset("text/javascript", () -> Resources.viewer("swagger-ui-bundle.js")),
                "/.well-known/api-catalog", asset("application/linkset+json", () -> Resources.own("api-catalog.json")));
    }

    /** Where to report a weakness (RFC 9116); nothing where whoever runs the service names no contact. */
    public static Map<String, Handler> security(Settings settings) {
        if (settings.securityContact().isEmpty()) {
            return Map.of();
        }
        byte[] text = ("Contact: " + settings.securityContact() + "\nExpires: "
                + settings.securityExpires().toInstant() + "\n").getBytes(StandardCharsets.UTF_8);
        return Map.of("/.well-known/security.txt", asset(TEXT + "; charset=utf-8", () -> text));
    }

    private void json(String id, String path, String summary, String description, String mediaType,
            Class<? extends Record> answer, Handler handler, boolean cached) {
        PageRoute page = new PageRoute(id, path, summary, description, mediaType).answering(answer, null);
        routes.put(cached ? page : page.neverKept(null), context -> {
            context.contentType(mediaType);
            handler.handle(context);
            if (cached) {
                Cached.mark(context);
            } else {
                context.header("Cache-Control", "no-store");
            }
        });
    }

    private static Handler asset(String mediaType, Supplier<byte[]> content) {
        return context -> {
            context.contentType(mediaType).result(content.get());
            Cached.mark(context);
        };
    }
}
