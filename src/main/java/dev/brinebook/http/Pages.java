package dev.brinebook.http;

import dev.brinebook.api.ModelVersion;
import dev.brinebook.contract.Contract;
import dev.brinebook.contract.PageRoute;
import dev.brinebook.wording.Message;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;

/** Routes beside the operations: each stands here once, with what the contract says of it and what answers it. */
final class Pages {

    private static final String HTML = "text/html";
    private static final String TEXT = "text/plain";
    private static final String JSON = "application/json";
    private static final String PAGE_POLICY = "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline';"
            + " img-src 'self' data:; connect-src 'self'; font-src 'self'; base-uri 'none'; form-action 'none';"
            + " frame-ancestors 'none'";

    private final Map<PageRoute, Handler> routes = new LinkedHashMap<>();

    Pages(JsonWriter writer, Supplier<Contract> contract, BooleanSupplier ready, String llmsText) {
        json("readContractAsYaml", "/openapi.yaml", "The contract as YAML", "This document as YAML, with every operation, its"
                + " schemas and examples. Choose it to read it, or to make a client; a program that takes JSON chooses"
                + " readContractAsJson.", "application/yaml", null, context -> context.result(contract.get().yaml()), true);
        json("readContractAsJson", "/openapi.json", "The contract as JSON", "This document as JSON, the same as"
                + " readContractAsYaml in the other form. Choose it where a program is to find the operation that it wants.",
                JSON, null, context -> context.result(contract.get().json()), true);
        page("readDocs", "/docs", "The contract, to read and to try", "A page for people that shows this document and sends"
                + " requests from the browser. A program chooses readContractAsJson.", context -> Resources.own("docs.html"));
        routes.put(new PageRoute("readLlmsText", "/llms.txt", "The service in short, for language models", "What the service"
                + " is, its operations with links to their parts of this document, how requests, answers and errors are shaped,"
                + " and where the tools for agents are. Choose it before the whole contract.", TEXT, null, null, true, null),
                context -> {
                    context.contentType(TEXT + "; charset=utf-8").result(llmsText);
                    Cached.mark(context);
                });
        routes.put(new PageRoute("readProblem", "/problems/{kind}", "What a problem means", "A page for people for each type of"
                + " problem, whose path is the type of the problem document: what it means and how to mend it.", HTML, null,
                "kind", true, null), this::problem);
        json("checkLive", "/health/live", "Whether the process lives", "Up as long as the process can answer. Choose it to tell"
                + " whether to start it anew; whether to send requests here tells checkReady.", JSON,
                HealthAnswer.class, context -> context.result(writer.write(new HealthAnswer("up"))), false);
        routes.put(new PageRoute("checkReady", "/health/ready", "Whether to send requests", "Up when requests are welcome, and"
                + " 503 from the moment it stops, while the requests that run are finished. Choose it to tell whether to send"
                + " requests here; whether the process lives tells checkLive.", JSON, HealthAnswer.class, null, false,
                "It is stopping: send requests elsewhere."), context -> ready(context, ready.getAsBoolean(), writer));
        json("readVersion", "/version", "The versions of the service and its formulas", "Version of the service and of its"
                + " formulas and data. Choose it to tell whether stored answers still hold: an equal request has an equal answer"
                + " as long as modelVersion is the same, which every answer names too.", JSON,
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
                "/docs/assets/swagger-ui.css", asset("text/css", () -> Resources.viewer("swagger-ui.css")),
                "/docs/assets/swagger-ui-bundle.js",
                asset("text/javascript", () -> Resources.viewer("swagger-ui-bundle.js")),
                "/.well-known/api-catalog", asset("application/linkset+json", () -> Resources.own("api-catalog.json")));
    }

    private void json(String id, String path, String summary, String description, String mediaType,
            Class<? extends Record> answer, Handler handler, boolean cached) {
        routes.put(new PageRoute(id, path, summary, description, mediaType, answer, null, cached, null), context -> {
            context.contentType(mediaType);
            handler.handle(context);
            if (cached) {
                Cached.mark(context);
            } else {
                context.header("Cache-Control", "no-store");
            }
        });
    }

    private void page(String id, String path, String summary, String description,
            Function<Context, byte[]> content) {
        routes.put(new PageRoute(id, path, summary, description, HTML, null, null, true, null),
                context -> sendPage(context, content.apply(context)));
    }

    private void problem(Context context) {
        ProblemType type = ProblemType.bySlug(context.pathParam("kind")).orElseThrow(
                () -> new ProblemException(ProblemType.NOT_FOUND, Message.of("No kind of problem has this name.")));
        String page = new String(Resources.own("problem.html"), StandardCharsets.UTF_8)
                .replace("{title}", type.title().toString()).replace("{status}", Integer.toString(type.status()))
                .replace("{explanation}", type.explanation().toString()).replace("{mend}", type.mend().toString());
        sendPage(context, page.getBytes(StandardCharsets.UTF_8));
    }

    private static void sendPage(Context context, byte[] page) {
        context.contentType("text/html; charset=utf-8").header("Content-Security-Policy", PAGE_POLICY).result(page);
        Cached.mark(context);
    }

    private static Handler asset(String mediaType, Supplier<byte[]> content) {
        return context -> {
            context.contentType(mediaType).result(content.get());
            Cached.mark(context);
        };
    }
}
