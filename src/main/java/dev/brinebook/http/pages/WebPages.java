// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.pages;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.http.Resources;
import dev.brinebook.http.exchange.AnswerLanguage;
import dev.brinebook.http.exchange.Cached;
import dev.brinebook.text.Language;
import io.javalin.http.Handler;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What people look at: the workbench, the element for shops and an example shop. They use the contract like any caller. */
public final class WebPages {

    /** Scripts and styles come from here alone, and nothing is asked of another host. Photos and sheets are made in the page. */
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self';"
            + " img-src 'self' data: blob:; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    private static final String SCRIPT = "text/javascript";

    /** Modules of the workbench, in the order in which a browser needs them. */
    private static final List<String> MODULES = List.of("start.js", "app.js", "book.js", "calculator.js", "case.js", "case-page.js",
            "contract.js", "country.js", "example.js", "fields.js", "front.js", "pages.js", "paste.js", "questions.js", "rounding.js",
            "texts.js", "units.js", "answers.js", "charts.js", "compare.js", "figures.js", "fold.js", "ladder.js", "month.js", "more.js",
            "own-readings.js", "result.js", "set-up.js", "settings.js", "uncertain.js", "report.js", "visit.js", "visit-parts.js",
            "paste-table.js", "afterwards.js", "complaint.js", "commission.js", "savings.js");
    private static final List<String> STYLES = List.of("workbench.css", "result.css");

    /** Texts of the workbench, by the beginnings of their ids. */
    private static final Set<String> SHOWN = Set.of("screen.", "result.");
    /** Those of the questions of a visit, which come when one of them is opened. */
    private static final Set<String> SHOWN_AT_VISIT = Set.of("visit.", "waterParameter.", "complaintSign.");
    private static final String UNIT = "unit.";

    /** Where a script wants its texts. */
    private static final String TEXTS = "{/* texts */}";
    private static final Pattern COMMENT = Pattern.compile("(?ms)^\\s*/\\*\\*.*?\\*/\\s*|^\\s+|\\s+//\\s.*?$");

    private WebPages() {
    }

    /** Paths and what answers them. The contract does not list them: no program calls them. */
    public static Map<String, Handler> routes() {
        Map<String, Handler> routes = new LinkedHashMap<>();
        routes.put("/", workbench());
        routes.put("/example-shop", page("shop.html"));
        routes.put("/element/brinebook.js", file(SCRIPT, new Made(() -> small(withTexts("element.js", "element.")))));
        routes.put("/element/answer.js", file(SCRIPT, new Made(() -> small(withTexts("element-answer.js", "elementAnswer.")))));
        Map<String, Supplier<byte[]>> scripts = scripts();
        scripts.forEach((path, content) -> routes.put(path, file(SCRIPT, content)));
        Map<String, Supplier<byte[]>> texts = texts();
        texts.forEach((path, content) -> routes.put(path, file(SCRIPT, content)));
        Map<String, Supplier<byte[]>> styles = STYLES.stream().collect(Collectors.toMap(name -> "/workbench/" + name,
                name -> new Made(() -> Resources.own("screen/" + name)), (one, same) -> one, LinkedHashMap::new));
        styles.forEach((path, content) -> routes.put(path, file("text/css", content)));
        routes.put("/workbench/manifest.webmanifest", file("application/manifest+json",
                new Made(() -> Resources.own("screen/manifest.webmanifest"))));
        Map<String, Supplier<byte[]>> kept = new LinkedHashMap<>(scripts);
        kept.putAll(texts);
        kept.putAll(styles);
        kept.put("/", new Made(() -> Resources.own("screen/workbench.html")));
        routes.put("/service-worker.js", file(SCRIPT, new Made(() -> serviceWorker(kept))));
        return routes;
    }

    /** Bytes made when they are first asked for: a start does not wait for pages. */
    private static final class Made implements Supplier<byte[]> {

        private final Supplier<byte[]> making;
        private byte[] made;

        Made(Supplier<byte[]> making) {
            this.making = making;
        }

        @Override
        public synchronized byte[] get() {
            if (made == null) {
                made = making.get();
            }
            return made;
        }
    }

    private static Map<String, Supplier<byte[]>> scripts() {
        Map<String, Supplier<byte[]>> scripts = new LinkedHashMap<>();
        MODULES.forEach(name -> scripts.put("/workbench/" + name, new Made(() -> small(Resources.own("screen/" + name)))));
        scripts.put("/workbench/lit-html.js", new Made(() -> Resources.library("lit-html", "lit-html.js")));
        scripts.put("/workbench/idb.js", new Made(() -> Resources.library("idb", "build/index.js")));
        scripts.put("/workbench/wrap-idb-value.js", new Made(() -> Resources.library("idb", "build/wrap-idb-value.js")));
        return scripts;
    }

    /** One module for each language, so that a page loads the language in use alone. */
    private static Map<String, Supplier<byte[]>> texts() {
        Map<String, Supplier<byte[]>> texts = new TreeMap<>();
        Language.tags().forEach(tag -> {
            texts.put("/workbench/text-" + tag + ".js", new Made(() -> texts(Language.tagged(tag))));
            texts.put("/workbench/visit-text-" + tag + ".js", new Made(() -> module(shown(SHOWN_AT_VISIT, Language.tagged(tag)))));
        });
        return texts;
    }

    private static Map<String, String> shown(Set<String> beginnings, Language language) {
        return textsOf(Language.ENGLISH.texts().keySet(), language, id -> beginnings.contains(id.substring(0, id.indexOf('.') + 1)),
                Function.identity());
    }

    private static byte[] module(Map<String, String> words) {
        return ("export default " + json(words) + ";\n").getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] texts(Language language) {
        Set<String> units = Language.all().stream().flatMap(each -> each.texts().keySet().stream())
                .filter(id -> id.startsWith(UNIT)).collect(Collectors.toSet()); // of which some have words in some languages alone
        Map<String, String> words = shown(SHOWN, language);
        units.forEach(id -> words.put(id, language.unit(id.substring(UNIT.length()))));
        return module(words);
    }

    /** The worker that keeps the pages, with the paths to keep and a version that changes with any of them. */
    private static byte[] serviceWorker(Map<String, Supplier<byte[]>> kept) {
        return new String(Resources.own("screen/service-worker.js"), StandardCharsets.UTF_8)
                .replace("[/* paths */]", json(kept.keySet())).replace("/* version */", digest(kept.values()))
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String digest(Collection<Supplier<byte[]>> contents) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            contents.forEach(content -> digest.update(content.get()));
            return HexFormat.of().formatHex(digest.digest(), 0, 8);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** A script without its comments and indents: none of our texts holds what begins or ends a comment. */
    private static byte[] small(byte[] script) {
        return COMMENT.matcher(new String(script, StandardCharsets.UTF_8)).replaceAll("").getBytes(StandardCharsets.UTF_8);
    }

    /** A script with the texts whose ids begin with {@code prefix}, by language; of a variant those that differ. */
    private static byte[] withTexts(String name, String prefix) {
        Map<String, Map<String, String>> texts = new TreeMap<>();
        Language.all().forEach(language -> texts.put(language.tag(), textsOf(language.ids(prefix), language,
                id -> true, id -> id.substring(prefix.length()))));
        return new String(Resources.own("screen/" + name), StandardCharsets.UTF_8).replace(TEXTS, json(texts))
                .getBytes(StandardCharsets.UTF_8);
    }

    private static Map<String, String> textsOf(Set<String> ids, Language language, Predicate<String> wanted,
            Function<String, String> key) {
        return ids.stream().filter(wanted)
                .collect(Collectors.toMap(key, language::text, (one, same) -> one, TreeMap::new));
    }

    private static String json(Object value) {
        try {
            return new ObjectMapper().writeValueAsString(value);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** The workbench, with the words that its reader wants, so that a browser need not first find out which. */
    private static Handler workbench() {
        Handler page = page("workbench.html");
        return context -> {
            context.res().addHeader("Link", "</workbench/text-" + AnswerLanguage.of(context).tag() + ".js>; rel=modulepreload");
            page.handle(context);
        };
    }

    private static Handler page(String name) {
        Supplier<byte[]> page = new Made(() -> Resources.own("screen/" + name));
        return context -> Cached.mark(context.contentType("text/html; charset=utf-8")
                .header("Content-Security-Policy", POLICY).result(page.get()));
    }

    private static Handler file(String mediaType, Supplier<byte[]> content) {
        return context -> Cached.mark(context.contentType(mediaType + "; charset=utf-8").result(content.get()));
    }
}
