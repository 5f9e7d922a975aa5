// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.pages;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation;
import dev.brinebook.api.WireNames;
import dev.brinebook.contract.Examples;
import dev.brinebook.http.Served;
import dev.brinebook.http.ShownCall;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.source.Source;
import dev.brinebook.source.Sources;
import io.restassured.response.Response;
import java.io.IOException;
import java.net.URI;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The pages as a browser gets them, read by another's parser (jsoup, by the HTML standard). */
class DocsTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String HOST = "http://localhost";
    private static final Map<String, Document> PAGES = new TreeMap<>();

    /** Follows every link from /docs. */
    @BeforeAll
    static void crawl() {
        Deque<String> open = new ArrayDeque<>(List.of("/docs"));
        while (!open.isEmpty()) {
            String path = open.pop();
            if (PAGES.containsKey(path)) {
                continue;
            }
            Response response = Served.given().get(path);
            assertEquals(200, response.statusCode(), path);
            if (response.contentType().startsWith("text/html")) {
                Document page = Jsoup.parse(response.asString(), HOST + path);
                PAGES.put(path, page);
                page.select("a[href], link[href], script[src], img[src]")
                        .forEach(element -> open.push(linked(element).getPath()));
            } else {
                PAGES.put(path, new Document(HOST + path));
            }
        }
    }

    private static URI linked(Element element) {
        return URI.create(element.absUrl(element.hasAttr("href") ? "href" : "src"));
    }

    static Stream<String> pages() {
        return PAGES.keySet().stream().filter(path -> path.matches("/(docs|problems)(/[\\w/-]+)?"))
                .filter(path -> !PAGES.get(path).select("title").isEmpty());
    }

    static Stream<Operation<?, ?>> operations() {
        return Main.OPERATIONS.stream();
    }

    @Test
    void everyOperationProblemAndSourceIsReachedFromTheEntry() {
        Set<String> wanted = new TreeSet<>(Set.of("/docs", "/docs/try", "/docs/changelog", "/docs/sources", "/problems",
                "/v1/sources", "/openapi.yaml", "/openapi.json"));
        Main.OPERATIONS.forEach(operation -> wanted.add("/docs/operations/" + operation.id()));
        Arrays.stream(ProblemType.values()).forEach(type -> wanted.add(type.path()));
        wanted.removeAll(PAGES.keySet());
        assertEquals(Set.of(), wanted);
        Set<String> shown = new HashSet<>(PAGES.get("/docs/sources").select("section h2").eachAttr("id"));
        assertEquals(Sources.all().keySet(), shown);
        List<String> kinds = PAGES.get("/docs/sources").select("main > p > code").eachText();
        assertTrue(kinds.containsAll(WireNames.all(Source.Kind.class)), kinds.toString());
    }

    @Test
    void everyLinkLeadsToAPlaceThatExists() {
        int fragments = 0;
        for (Document page : PAGES.values()) {
            for (Element link : page.select("a[href]")) {
                URI to = linked(link);
                assertTrue(link.absUrl("href").startsWith(HOST + "/"), link.outerHtml());
                if (to.getFragment() != null && !to.getFragment().startsWith("/")) {
                    assertFalse(PAGES.get(to.getPath()).select("[id=\"" + to.getFragment() + "\"]").isEmpty(), link.outerHtml());
                    fragments++;
                }
            }
        }
        assertTrue(fragments > 500, "it saw some");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void holdsOneHeadingNoScriptAndNoStyleOfItsOwn(String path) {
        Document page = PAGES.get(path);
        String policy = Served.given().get(path).header("Content-Security-Policy");
        assertEquals("en", page.select("html").attr("lang"));
        assertEquals(0, page.select("[style], style, script:not([src]), [onclick], [onload], form").size());
        Set<String> ids = new HashSet<>();
        page.select("[id]").eachAttr("id").forEach(id -> assertTrue(ids.add(id), id));
        assertTrue(policy.startsWith("default-src 'none'; ") && policy.contains("frame-ancestors 'none'"), policy);
        if (!path.equals("/docs/try")) {
            assertEquals(0, page.select("script").size());
            assertEquals(1, page.select("h1").size());
            assertEquals("default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none';"
                    + " frame-ancestors 'none'", policy);
        }
    }

    @ParameterizedTest
    @MethodSource("operations")
    void showsEveryPropertyFormulaSourceAndErrorOfAnOperation(Operation<?, ?> operation) throws IOException {
        Document page = PAGES.get("/docs/operations/" + operation.id());
        assertTrue(page.text().contains(operation.description()));
        for (Class<?> root : List.of(operation.requestType(), operation.answerType())) {
            Set<String> told = new HashSet<>(page.select("table.properties td:last-child").eachText());
            for (var component : root.getRecordComponents()) {
                String what = component.getAnnotation(Property.class).value();
                assertTrue(told.stream().anyMatch(text -> text.startsWith(what)), what);
            }
        }
        String calculation = page.select("table.formulas").text();
        Set<String> cited = new HashSet<>(page.select("table.formulas a").eachText());
        for (String example : operation.examples()) {
            for (JsonNode entry : JSON.readTree(Examples.text(operation, example, "explained")).path("basis")) {
                String words = entry.path("formula").asText().replace('\u00a0', ' ').replaceAll("\\d+(?:[.,]\\d+)*", "#");
                assertTrue(calculation.replaceAll("\\d+(?:[.,]\\d+)*", "#").contains(words), words);
                assertTrue(cited.contains(entry.path("source").asText()));
            }
        }
        List<String> lines = page.select("table.formulas tbody tr").eachText();
        assertEquals(lines.size(), Set.copyOf(lines).size(), "each once");
        assertEquals(Set.of("400", "401", "406", "408", "413", "414", "415", "422", "429", "431", "500", "503"),
                Set.copyOf(page.select("section[aria-labelledby=errors] td:first-child").eachText()));
    }

    @ParameterizedTest
    @EnumSource(ProblemType.class)
    void explainsEveryKindOfProblem(ProblemType type) {
        Document page = PAGES.get(type.path());
        assertEquals(type.title().toString(), page.select("h1").text());
        assertTrue(page.text().contains("HTTP status " + type.status()) && page.text().contains(type.explanation().toString())
                && page.text().contains(type.remedy().toString()));
        assertTrue(page.select("pre.answer").first().wholeText().startsWith("HTTP/1.1 " + type.status() + " "));
        assertFalse(page.select("main a[href=/problems]").isEmpty());
    }

    @Test
    void explainsEveryCodeOfAFaultByARealOne() {
        Document page = PAGES.get("/problems/invalid-request");
        assertEquals(WireNames.all(Violation.Code.class), page.select("dt[id]").eachAttr("id"));
        assertTrue(page.select("dd .aside").eachText().stream().allMatch(text -> text.startsWith("Such as: /")));
    }

    @Test
    void everyShownCallGivesTheShownAnswer() throws IOException {
        int compared = 0;
        for (String path : pages().filter(page -> page.startsWith("/docs")).toList()) {
            for (Element call : PAGES.get(path).select("pre.call")) {
                Response answer = ShownCall.of(call.wholeText()).send();
                assertEquals(200, answer.statusCode(), call.wholeText());
                Element next = call.nextElementSiblings().stream().takeWhile(sibling -> !sibling.is("pre.call, h2, h3"))
                        .filter(sibling -> sibling.is("pre.answer, details")).findFirst().orElse(null);
                if (next != null) {
                    assertShows(answer, next.wholeText().strip());
                    compared++;
                }
            }
        }
        assertTrue(compared > Main.OPERATIONS.size() * 2, "it saw some");
    }

    /** A page that introduces shows a part of the answer. */
    private static void assertShows(Response answer, String shown) throws IOException {
        String real = answer.asString().replace("\r\n", "\n");
        if (answer.contentType().startsWith("application/json")) {
            JsonNode whole = JSON.readTree(real);
            JSON.readTree(shown.substring(shown.indexOf('{'))).properties()
                    .forEach(part -> assertEquals(whole.get(part.getKey()), part.getValue()));
        } else {
            String text = shown.replaceFirst("^The whole answer as \\S+\\s+", "").replace("\r\n", "\n");
            assertTrue(text.length() > 300 && real.startsWith(text), text);
        }
    }

    @Test
    void knowsNoPageByAnotherName() {
        for (String path : List.of("/docs/", "/docs/operations", "/docs/operations/no-such", "/docs/operations/%3Cb%3E",
                "/problems/")) {
            Served.given().get(path).then().statusCode(404).body("type", equalTo("/problems/not-found"));
        }
    }

    @Test
    void theContractLinksEveryOperationToItsPage() {
        Map<String, Map<String, Map<String, Object>>> paths = Served.given().get("/openapi.json").jsonPath().getMap("paths");
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            assertTrue(paths.get(operation.path()).get("post").get("description").toString()
                    .endsWith(": /docs/operations/" + operation.id() + "."));
        }
        assertEquals(Arrays.stream(ProblemType.values()).map(ProblemType::slug).collect(Collectors.toList()),
                Served.given().get("/openapi.json").jsonPath().getList("paths.'/problems/{kind}'.get.parameters[0].schema.enum"));
    }
}
