// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.caution.Caution;
import dev.brinebook.caution.Severity;
import dev.brinebook.http.RandomRequests;
import dev.brinebook.http.Served;
import dev.brinebook.http.TestServer;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import io.restassured.response.Response;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheet of an assessment, as page and as PDF, read back with others' parsers. */
class AssessmentSheetTest {

    private static final String PATH = "/v1/assessment";
    private static final String HTML = "text/html";
    private static final String PDF = "application/pdf";
    private static final int CASES = 10;
    /** Most water at random must be treated first, and then has few numbers. */
    private static final int UNTREATED = 2;
    private static final List<String> DRAWN = new ArrayList<>();
    private static final JsonMapper JSON = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();

    private static Response ask(String request, String accept, String language) {
        return Served.posting(request).header("Accept", accept).header("Accept-Language", language).post(PATH);
    }

    private static Document page(String request, String language) {
        return Jsoup.parse(ask(request, HTML, language).then().statusCode(200).extract().asString());
    }

    private static byte[] pdf(String request, String language) {
        return ask(request, PDF, language).then().statusCode(200).contentType(PDF).extract().asByteArray();
    }

    /** Without the blanks, which a line may be broken at. */
    private static String text(PDDocument document, int first, int last) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(first);
        stripper.setEndPage(last);
        return packed(stripper.getText(document));
    }

    private static String packed(String text) {
        return text.replaceAll("[\\s\\u00a0\\u202f]+", "");
    }

    /** Simulated once for all tests. */
    static List<String> drawnCases() {
        for (long seed = 1; DRAWN.size() < CASES; seed++) {
            RandomRequests random = new RandomRequests(seed);
            ObjectNode request = random.request(AssessmentRequest.class);
            for (int i = 0; i < CASES; i++) {
                try {
                    boolean untreated = Assess.OPERATION.answer(TestServer.read(request.toString(), AssessmentRequest.class))
                            .settings() == null;
                    if (!untreated || DRAWN.size() < UNTREATED) {
                        DRAWN.add(request.toString());
                    }
                    break;
                } catch (InvalidRequest invalid) {
                    random.repair(request, AssessmentRequest.class, invalid.violations());
                }
            }
        }
        return DRAWN;
    }

    /** Every number of both pages is the one that the JSON answer has at its pointer, rounded for people, and is on the paper too. */
    @ParameterizedTest
    @MethodSource("drawnCases")
    void itsNumbersAreThoseOfTheAnswer(String request) throws IOException {
        JsonNode answer = JSON.readTree(ask(request, "application/json", "en").then().statusCode(200).extract().asByteArray());
        Document page = page(request, "en");
        List<Element> shown = page.select("[data-at]");
        assertTrue(shown.size() > (answer.has("settings") ? 40 : 5), "it saw " + shown.size());
        try (PDDocument document = Loader.loadPDF(pdf(request, "en"))) {
            String paper = text(document, 1, document.getNumberOfPages());
            for (Element each : shown) {
                JsonNode answered = answer.at(each.attr("data-at"));
                assertFalse(answered.isMissingNode(), each.attr("data-at"));
                assertShows(answered, each);
                assertTrue(paper.contains(packed(each.text())), each.text());
            }
        }
    }

    private static void assertShows(JsonNode answered, Element shown) {
        JsonNode value = answered.isObject() ? answered.path("value") : answered;
        String unit = answered.isObject() ? " " + Language.ENGLISH.unit(answered.path("unit").asText()) : "";
        assertTrue(shown.text().endsWith(unit), shown.text());
        String written = shown.text().substring(0, shown.text().length() - unit.length());
        if (value.isNumber()) {
            assertTrue(written.matches("\u2212?(\\d{1,3}(,\\d{3})+|\\d{1,3})(\\.\\d+)?"),
                    "thousands have commas: " + written + " at " + shown.attr("data-at"));
            boolean rounded = shown.hasAttr("data-value");
            if (rounded) {
                assertEquals(value.asDouble(), Double.parseDouble(shown.attr("data-value")), shown.attr("data-at"));
            }
            assertEquals(value.asDouble(), Double.parseDouble(written.replace(",", "").replace('\u2212', '-')),
                    rounded ? Math.max(0.51, Math.abs(value.asDouble()) * 0.06) : Math.abs(value.asDouble()) * 5e-4, shown.attr("data-at"));
        } else {
            assertEquals(value.asText().replace('\u00a0', ' '), written, shown.attr("data-at"));
        }
    }

    /** Everything on the page is on the paper, however long it is. */
    @ParameterizedTest
    @MethodSource("drawnCases")
    void losesNoTextOnPaper(String request) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(request, "de"))) {
            String paper = text(document, 1, document.getNumberOfPages());
            for (Element each : page(request, "de").select("h1, h2, h3, th, td, li, p:not(footer p), dt")) {
                assertTrue(paper.contains(packed(each.text())), each.text());
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"well-family, 612, 792", "holiday-cabin, 612, 792", "apartment, 595, 842"})
    void isOnePageForEachReaderOnThePaperOfItsUnits(String name, float width, float height) throws IOException {
        for (String language : List.of("en", "es", "fr", "de")) {
            try (PDDocument document = Loader.loadPDF(pdf(TestServer.example("assess." + name), language))) {
                assertEquals(2, document.getNumberOfPages(), language);
                for (PDPage page : document.getPages()) {
                    assertEquals(width, page.getMediaBox().getWidth(), 0.5);
                    assertEquals(height, page.getMediaBox().getHeight(), 0.5);
                }
            }
        }
    }

    /** ISO 14289-1 (PDF/UA-1): sections 5 (identification), 7.1 (tags, title), 7.2 (language), 7.21.4.1 (embedded fonts). */
    @ParameterizedTest
    @ValueSource(strings = {"en", "fr"})
    void isADocumentForScreenReaders(String language) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(TestServer.example("assess.well-family"), language))) {
            var catalog = document.getDocumentCatalog();
            assertNotNull(catalog.getStructureTreeRoot());
            assertTrue(catalog.getMarkInfo().isMarked());
            assertEquals(language, catalog.getLanguage());
            assertTrue(catalog.getViewerPreferences().displayDocTitle());
            assertEquals(page(TestServer.example("assess.well-family"), language).title(),
                    document.getDocumentInformation().getTitle().replace('\u00a0', ' '));
            String metadata = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertTrue(metadata.contains("pdfuaid"), metadata);
            String tags = catalog.getStructureTreeRoot().getCOSObject().toString();
            assertFalse(tags.isEmpty());
            int fonts = 0;
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
                    fonts++;
                }
            }
            assertTrue(fonts >= 2, "it saw fonts");
        }
    }

    @Test
    void givesTheSameBytesForTheSameRequest() {
        String request = TestServer.example("assess.apartment");
        assertArrayEquals(pdf(request, "en"), pdf(request, "en"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es", "fr", "de"})
    void isAPageForScreenReaders(String language) {
        Document page = page(TestServer.example("assess.well-family"), language);
        assertEquals(language, page.select("html").attr("lang"));
        assertEquals(1, page.select("main").size());
        assertEquals(1, page.select("h1").size());
        assertEquals(List.of(), page.select("th:not([scope])"));
        page.select("table").forEach(table -> assertEquals(1, page.select("#" + table.attr("aria-labelledby")).size()));
        assertEquals(List.of(), page.select("script, [style], [src], link, [onclick], form"));
    }

    /** A caution as jsoup reads it from a page, with plain spaces. */
    private static String read(Caution caution) {
        return Message.of(caution).toString().replace('\u00a0', ' ');
    }

    @Test
    void warnsOnBothPagesOfWhatMattersMostAndElseOnThatOfTheReader() throws IOException {
        Document page = page(TestServer.example("assess.well-family"), "en");
        try (PDDocument document = Loader.loadPDF(pdf(TestServer.example("assess.well-family"), "en"))) {
            for (Caution caution : List.of(Caution.SODIUM_RESTRICTED_DIET, Caution.WELL_WITHOUT_BACTERIA_TEST,
                    Caution.POWER_AND_PRESSURE, Caution.SEPTIC_SYSTEM, Caution.LOCAL_CODE_DECIDES)) {
                boolean inFront = caution.severity() == Severity.WARNING;
                assertEquals(inFront, page.select("section.customer").text().contains(read(caution)), "customer "
                        + caution);
                assertTrue(page.select("section.installer").text().contains(read(caution)), "installer " + caution);
                assertEquals(inFront, text(document, 1, 1).contains(packed(Message.of(caution).toString())), "first page " + caution);
                assertTrue(text(document, 2, 2).contains(packed(Message.of(caution).toString())), "second page " + caution);
            }
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8 | text/html;charset=utf-8
            application/pdf                                                 | application/pdf
            */*                                                             | application/json
            """)
    void aLinkGivesTheFormThatIsAskedFor(String accept, String contentType) {
        link(TestServer.example("assess.apartment"), accept).then().statusCode(200).header("Content-Type", equalTo(contentType))
                .header("ETag", containsString("\"")).header("Cache-Control", equalTo("no-store"));
        assertTrue(link(TestServer.example("assess.apartment"), accept).headers().getValues("Vary").contains("Accept"));
    }

    /** RFC 9111, section 5.2.2.5: no cache keeps it; RFC 9110, section 13.1.2: who has a copy may ask whether it is current. */
    @Test
    void aLinkSaysWhetherACopyIsCurrent() {
        String example = TestServer.example("assess.apartment");
        String tag = link(example, Operation.JSON).header("ETag");
        Served.given().header("Accept", Operation.JSON).header("If-None-Match", tag)
                .get(PATH + "?request=" + URLEncoder.encode(packedJson(example), StandardCharsets.UTF_8)).then().statusCode(304)
                .header("ETag", equalTo(tag)).header("Cache-Control", equalTo("no-store"));
    }

    @Test
    void aLinkAnswersAsThePostedRequest() {
        String request = TestServer.example("assess.well-family");
        assertEquals(ask(request, HTML, "en").asString(), link(request, HTML).asString());
    }

    /** The page may load nothing but its own styles, known by their hashes. */
    @Test
    void allowsBrowsersToLoadNothingElse() {
        String policy = ask(TestServer.example("assess.apartment"), HTML, "en").header("Content-Security-Policy");
        assertTrue(policy.startsWith("default-src 'none'; style-src 'sha256-"), policy);
        assertFalse(policy.contains("unsafe"), policy);
        for (Element style : page(TestServer.example("assess.apartment"), "en").select("style")) {
            assertTrue(policy.contains("'sha256-" + sha256(style.data()) + "'"), style.data());
        }
    }

    private static String sha256(String text) {
        try {
            return java.util.Base64.getEncoder().encodeToString(java.security.MessageDigest.getInstance("SHA-256")
                    .digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (java.security.NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void faultsStayProblemsWhateverIsAskedFor() {
        for (String accept : List.of(HTML, PDF)) {
            ask("{\"units\": \"us\"}", accept, "en").then().statusCode(422).contentType("application/problem+json")
                    .body("errors.pointer", hasItem("/water"));
            link("{\"units\": \"us\"}", accept).then().statusCode(422).contentType("application/problem+json")
                    .body("errors.pointer", hasItem("/water"));
            link("{", accept).then().statusCode(400).contentType("application/problem+json");
            Served.given().header("Accept", accept).get(PATH).then().statusCode(422).contentType("application/problem+json");
        }
    }

    private static Response link(String request, String accept) {
        return Served.given().header("Accept", accept)
                .get(PATH + "?request=" + URLEncoder.encode(packedJson(request), StandardCharsets.UTF_8));
    }

    private static String packedJson(String request) {
        try {
            return request.length() < 20 ? request : JSON.readTree(request).toString();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
