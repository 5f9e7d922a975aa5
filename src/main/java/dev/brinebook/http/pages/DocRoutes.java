// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.pages;

import dev.brinebook.api.Operation;
import dev.brinebook.contract.PageRoute;
import dev.brinebook.docs.ChangelogAnswer;
import dev.brinebook.docs.Docs;
import dev.brinebook.docs.ProblemKind;
import dev.brinebook.docs.SourcesAnswer;
import dev.brinebook.docs.UnitsAnswer;
import dev.brinebook.http.exchange.Acceptance;
import dev.brinebook.http.exchange.AnswerLanguage;
import dev.brinebook.http.exchange.Cached;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Routes of the pages for people who call the service, and of the register of sources. */
final class DocRoutes {

    private static final String HTML = "text/html";
    private static final String JSON = "application/json";
    private static final String ATOM = "application/atom+xml";
    /** Scripts and styles come from here alone. */
    private static final String PAGE_POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
            + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    /** The console asks the service, and draws its own icons. */
    private static final String CONSOLE_POLICY = "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline';"
            + " img-src 'self' data:; connect-src 'self'; font-src 'self'; base-uri 'none'; form-action 'none';"
            + " frame-ancestors 'none'";

    private final Map<PageRoute, Handler> routes = new LinkedHashMap<>();
    private final Map<String, Handler> undocumented = new LinkedHashMap<>();

    private final JsonWriter writer;
    private final String publicUrl;
    private final Docs docs;

    DocRoutes(List<Operation<?, ?>> operations, JsonWriter writer, String publicUrl) {
        this.writer = writer;
        this.publicUrl = publicUrl;
        this.docs = new Docs(operations, Arrays.stream(ProblemType.values()).map(type -> new ProblemKind(type.slug(),
                type.title().toString(), type.status(), type.explanation().toString(), type.remedy().toString())).toList());
        page("readDocs", "/docs", "Where to start", "A page for people with a first call for each kind of caller, and "
                + "links to all other pages. Language models choose readLlmsText.", docs::entry);
        routes.put(new PageRoute("tryOut", "/docs/try", "Contract console",
                "A page for people that shows the contract of one operation and sends requests from the browser. Programs choose "
                + "readContractAsJson.", HTML),
                context -> send(context, CONSOLE_POLICY, docs.console()));
        page("readOperation", "/docs/operations/{operationId}", "Documentation of an operation",
                "A page for people about one operation: when to choose it, a call, its formulas with sources and limits, its "
                + "request, answer and errors.", "operationId", operations.stream().map(Operation::id).toList(), docs::operation);
        page("readBulkGuide", "/docs/bulk", "How to send lists and tables", "A page for people about lists of requests: columns, "
                + "numbers and units as they have them, dry runs, what to do after a break, and scripts to copy. Programs choose "
                + "calculateInBulk.", docs::bulk);
        page("readChangelog", "/docs/changelog", "Changelog", "A page for people with every version of the "
                + "formulas and of this document, and its effect on answers. Programs choose readChangelogAsJson.", docs::changelog);
        routes.put(new PageRoute("readChangelogFeed", "/changelog.atom", "The changelog as a feed", "A feed (Atom, RFC 4287) with an "
                + "entry for each change, for readers that report what is new. Its ids stay the same. Programs choose "
                + "readChangelogAsJson.", ATOM).inEnglish(),
                context -> Cached.mark(inEnglish(context).contentType(ATOM + "; charset=utf-8").result(docs.changelogFeed())));
        routes.put(new PageRoute("readChangelogAsJson", "/v1/changelog", "The changelog as JSON", "Choose this to learn what changed "
                + "with a version, and which versions the header Model-Version accepts: every change with its id, kind, date, text and "
                + "effect. To see what changes for one case choose compareCases.", JSON)
                .answering(ChangelogAnswer.class, () -> writer.write(ChangelogAnswer.of(2))).inEnglish(),
                context -> Cached.mark(inEnglish(context).contentType(JSON).result(writer.write(ChangelogAnswer.of(Integer.MAX_VALUE)))));
        page("readSourcesPage", "/docs/sources", "The register of sources", "A page for people with every source: its edition, its "
                + "reliability and the results based on it. Programs choose readSources, with the same content.",
                docs::sourcesPage);
        page("readProblems", "/problems", "Every kind of problem", "A page for people that lists all kinds of problems "
                + "by status, and explains each error code of a request.", docs::problems);
        routes.put(new PageRoute("readProblem", "/problems/{kind}", "What a problem means", "A page about one type of problem, whose "
                + "address is the type of the problem document: its meaning, and how to correct it. With an example as HTML, for people; "
                + "in short as JSON, for programs.", HTML).also(List.of(JSON))
                .choosing("kind", Arrays.stream(ProblemType.values()).map(ProblemType::slug).toList())
                .answering(ProblemTypeAnswer.class, null), this::problem);
        routes.put(new PageRoute("readSources", "/v1/sources", "The register of sources, with the results based on each",
                "Choose this to find the sources of a number: every source with its edition, its reliability, what is taken from "
                + "it, and the results and cautions of each operation based on it.", JSON)
                .answering(SourcesAnswer.class, () -> writer.write(docs.someSources())),
                context -> Cached.mark(context.contentType(JSON).result(writer.write(docs.sources()))));
        routes.put(new PageRoute("readUnits", "/v1/units", "Every kind of quantity with its units", "Choose this to convert or to offer "
                + "units: every kind of quantity with the units that requests may use, the exact factor of each to the base unit of its "
                + "kind, its UCUM code and its name. To convert one hardness choose convertHardness.", JSON)
                .answering(UnitsAnswer.class, () -> writer.write(docs.someUnits())),
                context -> Cached.mark(context.contentType(JSON).result(writer.write(docs.units()))));
        deeper("/docs/operations/{operationId}/calculation", context -> docs.calculation(context.pathParam("operationId")));
        deeper("/docs/operations/{operationId}/answers", context -> docs.answers(context.pathParam("operationId")));
        deeper("/docs/parts/{name}", context -> docs.part(context.pathParam("name")));
        deeper("/docs/search", context -> Optional.of(docs.search()));
        deeper("/docs/conventions", context -> Optional.of(docs.conventions()));
        undocumented.put("/docs/search.json", context -> Cached.mark(context.contentType(JSON).result(docs.searchIndex())));
    }

    /** Says that the answer is in English in any case (RFC 9110, section 8.5). */
    private static Context inEnglish(Context context) {
        return context.header(AnswerLanguage.HEADER, Language.ENGLISH.tag());
    }

    private void problem(Context context) {
        String slug = context.pathParam("kind");
        ProblemType type = Arrays.stream(ProblemType.values()).filter(each -> each.slug().equals(slug)).findFirst()
                .orElseThrow(DocRoutes::nothing);
        context.res().addHeader("Vary", "Accept");
        if (Acceptance.choose(context, List.of(HTML, JSON)).equals(JSON)) {
            Cached.mark(context.contentType(JSON).result(writer.write(ProblemTypeAnswer.of(type, publicUrl), AnswerLanguage.of(context))));
        } else {
            send(context, PAGE_POLICY, docs.problem(slug).orElseThrow(DocRoutes::nothing));
        }
    }

    private static ProblemException nothing() {
        return new ProblemException(ProblemType.NOT_FOUND, Message.of("docRoutes.noPageName"));
    }

    /** Routes with their texts in the contract. */
    Map<PageRoute, Handler> routes() {
        return routes;
    }

    /** Pages that those lead to; the contract does not list them. */
    Map<String, Handler> undocumented() {
        return undocumented;
    }

    private void deeper(String path, Function<Context, Optional<byte[]>> content) {
        undocumented.put(path, context -> send(context, PAGE_POLICY, existing(content.apply(context))));
    }

    private static byte[] existing(Optional<byte[]> page) {
        return page.orElseThrow(DocRoutes::nothing);
    }

    private void page(String id, String path, String summary, String description, Supplier<byte[]> content) {
        routes.put(new PageRoute(id, path, summary, description, HTML),
                context -> send(context, PAGE_POLICY, content.get()));
    }

    private void page(String id, String path, String summary, String description, String parameter, List<String> values,
            Function<String, Optional<byte[]>> content) {
        routes.put(new PageRoute(id, path, summary, description, HTML).choosing(parameter, values),
                context -> send(context, PAGE_POLICY, existing(content.apply(context.pathParam(parameter)))));
    }

    private static void send(Context context, String policy, byte[] page) {
        Cached.mark(context.contentType("text/html; charset=utf-8").header("Content-Security-Policy", policy).result(page));
    }
}
