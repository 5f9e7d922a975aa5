package dev.brinebook.http;

import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.contract.Contract;
import dev.brinebook.contract.PageRoute;
import io.javalin.http.Handler;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** Routes beside the operations: each stands here once, with what the contract says of it and what answers it. */
final class Pages {

    private static final String JSON = "application/json";

    private final Map<PageRoute, Handler> routes = new LinkedHashMap<>();

    Pages(List<Operation<?, ?>> operations, JsonWriter writer, Supplier<Contract> contract, BooleanSupplier ready) {
        json("readContractAsYaml", "/openapi.yaml", "The contract as YAML",
                "This document as YAML.", "application/yaml", null, context -> context.result(contract.get().yaml()), true);
        json("readContractAsJson", "/openapi.json", "The contract as JSON",
                "This document as JSON.", JSON, null, context -> context.result(contract.get().json()), true);
        routes.putAll(new DocRoutes(operations, writer).routes());
        json("checkLive", "/health/live", "Whether the process lives", "Up as long as the process can answer.", JSON,
                HealthAnswer.class, context -> context.result(writer.write(new HealthAnswer("up"))), false);
        json("checkReady", "/health/ready", "Whether to send requests", "Up when requests are welcome, 503 when stopping.",
                JSON, HealthAnswer.class, context -> {
                    boolean up = ready.getAsBoolean();
                    if (!up) {
                        context.header("Retry-After", Problems.RETRY_AFTER_SECONDS);
                    }
                    context.status(up ? 200 : 503).result(writer.write(new HealthAnswer(up ? "up" : "stopping")));
                }, false);
        json("readVersion", "/version", "Versions", "Version of the service and of its formulas and data.", JSON,
                VersionAnswer.class, context -> context.result(writer.write(
                        new VersionAnswer(Resources.version(), ModelVersion.CURRENT))), false);
    }

    /** What the contract documents. */
    List<PageRoute> documented() {
        return List.copyOf(routes.keySet());
    }

    Map<PageRoute, Handler> routes() {
        return routes;
    }

    /** Parts of pages, which the contract does not list. */
    static Map<String, Handler> assets() {
        return Map.of(
                "/docs/start.js", asset("text/javascript", () -> Resources.own("start.js")),
                "/docs/page.css", asset("text/css", () -> Resources.own("page.css")),
                "/docs/icon.svg", asset("image/svg+xml", () -> Resources.own("icon.svg")),
                "/docs/assets/swagger-ui.css", asset("text/css", () -> Resources.viewer("swagger-ui.css")),
                "/docs/assets/swagger-ui-bundle.js",
                asset("text/javascript", () -> Resources.viewer("swagger-ui-bundle.js")),
                "/.well-known/api-catalog", asset("application/linkset+json", () -> Resources.own("api-catalog.json")));
    }

    private void json(String id, String path, String summary, String description, String mediaType,
            Class<? extends Record> answer, Handler handler, boolean cached) {
        routes.put(new PageRoute(id, path, summary, description, mediaType, answer, null), context -> {
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
