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
import java.lang.reflect.RecordComponent;
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
        Set<String> wanted = new TreeSet<>(Set.of("/docs", "/docs/try", "/docs/search", "/docs/conventions",
                "/docs/changelog", "/docs/sources", "/problems", "/v1/sources", "/openapi.yaml", "/openapi.json"));
        Main.OPERATIONS.forEach(operation -> List.of("", "/calculation", "/answers").forEach(below ->
                wanted.add("/docs/operations/" + operation.id() + below)));
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
        assertEquals(List.of("/docs/docs.js"), page.select("head script").eachAttr("src"));
        Set<String> ids = new HashSet<>();
        page.select("[id]").eachAttr("id").forEach(id -> assertTrue(ids.add(id), id));
        assertTrue(policy.startsWith("default-src 'none'; ") && policy.contains("frame-ancestors 'none'"), policy);
        assertEquals(1, page.select("h1").size());
        if (!path.equals("/docs/try")) {
            assertEquals(1, page.select("script").size());
            assertEquals("default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self';"
                    + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'", policy);
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
        Document calculations = PAGES.get("/docs/operations/" + operation.id() + "/calculation");
        String calculation = calculations.select("table.formulas").text();
        Set<String> cited = new HashSet<>(calculations.select("table.formulas a").eachText());
        for (String example : operation.examples()) {
            for (JsonNode entry : JSON.readTree(Examples.text(operation, example, "explained")).path("basis")) {
                String words = entry.path("formula").asText().replace('\u00a0', ' ').replaceAll("\\d+(?:[.,]\\d+)*", "#");
                assertTrue(calculation.replaceAll("\\d+(?:[.,]\\d+)*", "#").contains(words), words);
                String source = entry.path("source").asText().replace('\u00a0', ' ');
                assertTrue(cited.contains(source), source);
            }
        }
        List<String> lines = calculations.select("table.formulas tbody tr").eachText();
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

    /** What a page of a whole job may take, without compression; its parts have pages of their own. */
    @ParameterizedTest
    @MethodSource("operations")
    void thePageOfAnOperationStaysSmall(Operation<?, ?> operation) {
        int bytes = Served.given().get("/docs/operations/" + operation.id()).asByteArray().length;
        assertTrue(bytes < 100_000, operation.id() + " takes " + bytes);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void everyRecordOfAnOperationHasAPageWithItsProperties(Operation<?, ?> operation) {
        List<String> linked = PAGES.get("/docs/operations/" + operation.id()).select("a[href^=/docs/parts/]").eachAttr("href");
        assertFalse(linked.isEmpty());
        for (Class<?> root : List.of(operation.requestType(), operation.answerType())) {
            records(root).forEach(type -> {
                Document page = PAGES.get("/docs/parts/" + type.getSimpleName());
                assertEquals(Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName).toList(),
                        page.select("td code[id]").eachAttr("id"));
                assertTrue(type == root || linked.contains("/docs/parts/" + type.getSimpleName()), type.getSimpleName());
                assertFalse(page.select("li a[href^=/docs/operations/" + operation.id() + "#]").isEmpty());
            });
        }
    }

    private static Set<Class<?>> records(Class<?> root) {
        Set<Class<?>> found = new HashSet<>(Set.of(root));
        Deque<Class<?>> open = new ArrayDeque<>(found);
        while (!open.isEmpty()) {
            for (RecordComponent component : open.pop().getRecordComponents()) {
                String name = component.getGenericType().getTypeName().replaceFirst("^java.util.List<([^<>]+)(<.*)?>$", "$1");
                try {
                    Class<?> type = component.getType() == List.class ? Class.forName(name) : component.getType();
                    if (type.isRecord() && found.add(type)) {
                        open.push(type);
                    }
                } catch (ClassNotFoundException e) {
                    throw new AssertionError(name, e);
                }
            }
        }
        return found;
    }

    @Test
    void theSearchFindsEveryOperationPropertyProblemAndSource() throws IOException {
        Set<String> found = new HashSet<>();
        for (JsonNode group : JSON.readTree(Served.given().get("/docs/search.json").asString()).path("groups")) {
            for (JsonNode entry : group.path("entries")) {
                URI address = URI.create(entry.path("address").asText());
                Document page = PAGES.get(address.getPath());
                assertTrue(page != null && (address.getFragment() == null || page.getElementById(address.getFragment()) != null),
                        entry.toString());
                assertFalse(entry.path("text").asText().isBlank(), entry.toString());
                found.add(entry.path("title").asText());
            }
        }
        assertTrue(found.containsAll(Main.OPERATIONS.stream().map(Operation::id).toList()));
        assertTrue(found.containsAll(Sources.all().keySet()) && found.containsAll(WireNames.all(Violation.Code.class)));
        Main.OPERATIONS.forEach(operation -> records(operation.requestType()).forEach(type -> Arrays.stream(
                type.getRecordComponents()).forEach(component -> assertTrue(found.contains(component.getName())))));
        List<String> listed = PAGES.get("/docs/search").select("#everything dt").eachText();
        assertTrue(listed.containsAll(Main.OPERATIONS.stream().map(Operation::id).toList()), "without scripts too");
    }

    /** The programs are run by {@code .ci/run docs}; here is that none is missing, and that each sends what the shell does. */
    @Test
    void everyCallIsShownInEveryLanguage() {
        int compared = 0;
        for (String path : pages().filter(page -> page.startsWith("/docs")).toList()) {
            for (Element languages : PAGES.get(path).select(".languages")) {
                assertEquals(List.of("bash", "python", "javascript", "java"), languages.select("pre").eachAttr("data-language"));
                ShownCall call = ShownCall.of(languages.select("pre.call").first().wholeText());
                for (Element program : languages.select("pre.program")) {
                    assertTrue(program.wholeText().contains("\"http://localhost:8080" + call.path() + "\""), program.wholeText());
                    if (call.body() != null) {
                        assertTrue(program.wholeText().replaceAll("\\s", "").contains(call.body().replaceAll("\\s", "")));
                    }
                    compared++;
                }
            }
        }
        assertTrue(compared > Main.OPERATIONS.size() * 2 * 3, "it saw some");
    }

    @Test
    void everyShownCallGivesTheShownAnswer() throws IOException {
        int compared = 0;
        for (String path : pages().filter(page -> page.startsWith("/docs")).toList()) {
            for (Element call : PAGES.get(path).select(".languages")) {
                String command = call.select("pre.call").first().wholeText();
                Response answer = ShownCall.of(command).send();
                assertEquals(200, answer.statusCode(), command);
                Element next = call.nextElementSiblings().stream().takeWhile(sibling -> !sibling.is(".languages, h2, h3"))
                        .filter(sibling -> sibling.is("pre.answer, p:has(a.whole)")).findFirst().orElse(null);
                if (next != null) {
                    assertShows(answer, shown(next).wholeText().strip());
                    compared++;
                }
            }
        }
        assertTrue(compared > Main.OPERATIONS.size() * 2, "it saw some");
    }

    /** The answer itself, or what its link leads to. */
    private static Element shown(Element answer) {
        if (answer.is("pre")) {
            return answer;
        }
        URI whole = linked(answer.select("a.whole").first());
        return PAGES.get(whole.getPath()).getElementById(whole.getFragment()).nextElementSibling();
    }

    /** A page that introduces shows a part of the answer. */
    private static void assertShows(Response answer, String shown) throws IOException {
        String real = answer.asString().replace("\r\n", "\n");
        if (answer.contentType().startsWith("application/json")) {
            JsonNode whole = JSON.readTree(real);
            JSON.readTree(shown.substring(shown.indexOf('{'))).properties()
                    .forEach(part -> assertEquals(whole.get(part.getKey()), part.getValue()));
        } else {
            String text = shown.replace("\r\n", "\n");
            assertTrue(text.length() > 300 && real.startsWith(text), text);
        }
    }

    @Test
    void knowsNoPageByAnotherName() {
        for (String path : List.of("/docs/", "/docs/operations", "/docs/operations/no-such", "/docs/operations/%3Cb%3E",
                "/docs/parts/NoSuch", "/docs/operations/no-such/answers",
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
