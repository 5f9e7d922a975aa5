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
import dev.brinebook.http.RandomRequests;
import dev.brinebook.http.Served;
import dev.brinebook.http.TestServer;
import dev.brinebook.text.Language;
import io.restassured.response.Response;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheets of an assessment, as pages and as PDF, read back with others' parsers. */
class AssessmentSheetsTest {

    private static final String PATH = "/v1/assessment";
    private static final String HTML = "text/html";
    private static final String PDF = "application/pdf";
    private static final List<String> SHEETS = List.of("letter", "card", "checklist");
    private static final Pattern NUMBER = Pattern.compile("\\d[\\d,]*(\\.\\d+)?");
    private static final int CASES = 4;
    /** Most water at random must be treated first, and then has few numbers. */
    private static final int UNTREATED = 2;
    private static final List<String> DRAWN = new ArrayList<>();
    private static final JsonMapper JSON = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();

    private static Response ask(String request, String accept, String language, String query) {
        return Served.posting(request).header("Accept", accept).header("Accept-Language", language).post(PATH + query);
    }

    private static Document page(String request, String language, String sheet) {
        return Jsoup.parse(ask(request, HTML, language, "?sheet=" + sheet).then().statusCode(200).extract().asString());
    }

    private static byte[] pdf(String request, String language, String query) {
        return ask(request, PDF, language, query).then().statusCode(200).contentType(PDF).extract().asByteArray();
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

    static List<Arguments> drawnSheets() {
        return Stream.concat(drawnCases().stream(), Stream.of("well-family", "apartment", "holiday-cabin").map(name ->
                TestServer.example("assess." + name))).flatMap(request -> SHEETS.stream()
                .map(sheet -> Arguments.of(request, sheet))).toList();
    }

    /** Every number is the one that the JSON answer has at its pointer, rounded for people, and is on the paper too. */
    @ParameterizedTest
    @MethodSource("drawnSheets")
    void itsNumbersAreThoseOfTheAnswer(String request, String sheet) throws IOException {
        JsonNode answer = JSON.readTree(ask(request, "application/json", "en", "?detail=full").then().statusCode(200).extract()
                .asByteArray());
        Document page = page(request, "en", sheet);
        List<Element> shown = page.select("[data-at]");
        assertTrue(shown.size() > 0, "it saw " + shown.size());
        try (PDDocument document = Loader.loadPDF(pdf(request, "en", "?sheet=" + sheet))) {
            String paper = text(document, 1, document.getNumberOfPages());
            for (Element each : shown) {
                for (String at : each.attr("data-at").split(" ")) {
                    assertShows(answer, at, sheet, each);
                }
                assertTrue(paper.contains(packed(each.text())), each.text());
            }
        }
    }

    private static void assertShows(JsonNode answer, String at, String sheet, Element shown) {
        JsonNode answered = answer.at(at);
        assertFalse(answered.isMissingNode(), at);
        JsonNode value = answered.isObject() ? answered.path("value") : answered;
        if (!value.isNumber()) {
            assertEquals(value.asText().replace('\u00a0', ' '), shown.text(), at);
            return;
        }
        if (shown.hasAttr("data-value")) {
            assertEquals(value.asDouble(), Double.parseDouble(shown.attr("data-value")), at);
        }
        double expected = expected(answer, at, sheet, value.asDouble());
        double tolerance = at.startsWith("/settings/") && !at.equals("/settings/meterVolume") ? 1e-9 : Math.max(0.51, expected * 0.06);
        List<Double> numbers = NUMBER.matcher(shown.text()).results().map(found -> Double.parseDouble(found.group().replace(",", "")))
                .toList();
        assertTrue(numbers.stream().anyMatch(number -> Math.abs(number - expected) <= tolerance),
                at + " " + expected + " in " + shown.text());
    }

    /** What a sheet says of a value: bags of salt, homes of 20, days between regenerations, and no sign before money. */
    private static double expected(JsonNode answer, String at, String sheet, double value) {
        if (sheet.equals("letter") && at.endsWith("/salt")) {
            return Math.ceil(value / answer.at("/year/saltAsFound/bag/value").asDouble());
        }
        return at.endsWith("/paysPercent") ? value / 5 : at.endsWith("/regenerations") ? 365 / value : Math.abs(value);
    }

    /** Everything on the page is on the paper, however long it is. */
    @ParameterizedTest
    @MethodSource("drawnSheets")
    void losesNoTextOnPaper(String request, String sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(request, "de", "?sheet=" + sheet))) {
            String paper = text(document, 1, document.getNumberOfPages());
            for (Element each : page(request, "de", sheet).select("h1, h2, h3, th, td, li, p:not(footer p), dt")) {
                assertTrue(paper.contains(packed(each.text())), each.text());
            }
        }
    }

    /** A letter and a card are one page, a checklist at most two, in every language, on the paper asked for or that of the units. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            well-family   | letter    | letter | 612 | 792 | 1
            well-family   | letter    | a4     | 595 | 842 | 1
            well-family   | card      | letter | 612 | 792 | 1
            well-family   | checklist | letter | 612 | 792 | 2
            well-family   | checklist | a4     | 595 | 842 | 2
            well-family   | letter    |        | 612 | 792 | 1
            holiday-cabin | letter    |        | 612 | 792 | 1
            holiday-cabin | checklist |        | 612 | 792 | 2
            apartment     | letter    |        | 595 | 842 | 1
            apartment     | letter    | letter | 612 | 792 | 1
            apartment     | card      | a4     | 595 | 842 | 1
            apartment     | checklist |        | 595 | 842 | 2
            """)
    void fitsItsPagesOnThePaperAskedFor(String name, String sheet, String paper, float width, float height, int pages)
            throws IOException {
        String query = "?sheet=" + sheet + (paper == null ? "" : "&paper=" + paper);
        for (Language language : Language.all()) {
            try (PDDocument document = Loader.loadPDF(pdf(TestServer.example("assess." + name), language.tag(), query))) {
                assertTrue(document.getNumberOfPages() <= pages, language + " has pages " + document.getNumberOfPages());
                for (PDPage page : document.getPages()) {
                    assertEquals(width, page.getMediaBox().getWidth(), 0.5);
                    assertEquals(height, page.getMediaBox().getHeight(), 0.5);
                }
            }
        }
    }

    /** Nothing in the body of a sheet is set smaller than 11 points; its foot is. Source: common practice of large print for letters. */
    @ParameterizedTest
    @ValueSource(strings = {"letter", "card", "checklist"})
    void isSetInAReadableSize(String sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(TestServer.example("assess.well-family"), "en", "?sheet=" + sheet))) {
            Map<Float, Integer> sizes = new TreeMap<>();
            new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    positions.forEach(each -> sizes.merge(each.getFontSize() * each.getTextMatrix().getScalingFactorY(),
                            text.matches("\\W*x\\W*") ? 0 : 1, Integer::sum));
                }
            }.getText(document);
            sizes.values().removeIf(count -> count == 0);
            assertTrue(sizes.keySet().stream().allMatch(size -> size >= 10.9 || size > 8.9 && size < 9.1), sizes.toString());
        }
    }

    /** The bars of the chart stand to each other as their values. */
    @Test
    void itsBarsAreAsLongAsTheirValues() {
        List<Element> bars = page(TestServer.example("assess.well-family"), "en", "letter").select(".chart tr");
        assertEquals(4, bars.size());
        double longest = bars.stream().mapToDouble(bar -> Double.parseDouble(bar.select("[data-value]").attr("data-value"))).max()
                .orElseThrow();
        bars.forEach(bar -> assertEquals(100 * Double.parseDouble(bar.select("[data-value]").attr("data-value")) / longest,
                Double.parseDouble(bar.select("rect").attr("width")), 0.051));
    }

    /** What a letter says of verdicts of every kind, in requests that differ from the well family. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            none needed    | /water    | {"hardness":{"value":1,"unit":"gpg"}} | You do not need a softener | You save
            treat first    | /water/iron | {"value":15,"unit":"mg/L"} | Have the water treated | bag
            without price  | /retrofit |                                          | It stops paying            | It costs $
            converting     | /seed     | 1                                        | It costs $370.             | Ask for a price
            dearer, softer | /softener/control | {"kind":"clock","everyDays":9} | a year more | −
            """)
    void saysWhatTheVerdictIs(String kind, String pointer, String value, String said, String never) throws IOException {
        ObjectNode request = (ObjectNode) JSON.readTree(TestServer.example("assess.well-family"));
        if (value == null) {
            request.remove(pointer.substring(1));
        } else {
            int end = pointer.lastIndexOf('/');
            ((ObjectNode) request.at(pointer.substring(0, end))).set(pointer.substring(end + 1), JSON.readTree(value));
        }
        String text = page(request.toString(), "en", "letter").text();
        assertEquals(!kind.equals("without price"), text.contains(said), text);
        assertFalse(text.contains(never), text);
        for (String sheet : SHEETS) {
            try (PDDocument document = Loader.loadPDF(pdf(request.toString(), "de", "?sheet=" + sheet))) {
                assertTrue(document.getNumberOfPages() <= (sheet.equals("checklist") ? 2 : 1), sheet);
            }
        }
    }

    @Test
    void theCardHasTheSettingsOfTheMeterAndTheChecklistTheirReasons() {
        Document card = page(TestServer.example("assess.well-family"), "en", "card");
        assertEquals(List.of("the hour now", "28 gpg", "29,700 grains", "1,060 gal", "570 gal", "9 lb", "8 minutes", "46 minutes",
                "10 minutes",
                "6 minutes", "3 days", "2:00 AM"), card.select(".settings .big").eachText());
        assertEquals(List.of("22.5 lb", "10 minutes", "60 minutes", "10 minutes", "15 minutes"), card.select(".before").eachText());
        List<String> codes = card.select(".settings tbody .code").eachText().stream().filter(code -> !code.isEmpty()).toList();
        assertEquals(List.of("R1", "R2", "R3", "R4", "R5", "R6", "R7", "R8"), codes);
        assertEquals(codes, page(TestServer.example("assess.well-family"), "en", "checklist").select(".reasons .code").eachText());
        assertTrue(card.text().contains("water use assumed"), card.text());
        assertFalse(card.text().contains("refill flow assumed"), "it was given");
    }

    @Test
    void aClockThatStaysGetsItsOwnSettings() {
        Document card = page(TestServer.example("assess.holiday-cabin"), "en", "card");
        assertEquals(List.of("8 lb/ft³", "5.4 minutes"), card.select(".settings .big").eachText());
        assertEquals(List.of("10 lb/ft³"), card.select(".before").eachText());
        assertTrue(card.text().contains("Leave all other settings"), card.text());
    }

    private static final String FRENCH = """
            {"water": {"hardness": {"value": 32, "unit": "fH"}}, "household": {"people": 5, "country": "france"}, "units": "metric",
             "softener": {"tankDiameter": {"value": 230, "unit": "mm"}, "tankHeight": {"value": 1220, "unit": "mm"},
              "control": {"kind": "clock", "weekdays": ["monday"]}, "saltPerRegeneration": {"value": 2.5, "unit": "kg"}}}
            """;

    /** 3.8 kg of salt in water that takes 0.358 kg a litre, at 1.893 L/min, is 5.6 minutes. Source: by hand; 0.358 from Salt Institute. */
    @Test
    void aClockGetsTheRefillOfItsSaltAndTheHardnessInTheUnitOfItsTest() {
        Document card = page(FRENCH, "en", "card");
        assertEquals(List.of("3.8 kg", "5.6 minutes", "2 days"), card.select(".settings .big").eachText());
        assertTrue(card.text().contains("below 1.7 °fH"), card.text());
        Document checklist = page(FRENCH, "en", "checklist");
        assertEquals(List.of("5.6", "1.9 L/min", "11 L", "0 L"), checklist.select("tr:contains(Brine refill) td").eachText());
    }

    /** What costs more a year is not free; and the letter has the column that the saving is over, and the size of a bag. */
    @Test
    void theLetterSaysWhatItCostsAYear() {
        Document letter = page(FRENCH, "en", "letter");
        assertTrue(letter.text().contains("Nothing to buy. It costs about €420 more a year."), letter.text());
        assertFalse(letter.text().contains("free"), letter.text());
        assertTrue(letter.text().contains("Bags of salt, 25 kg each"), letter.text());
        assertTrue(letter.select("tr:contains(Salt and water cost) td").eachText().containsAll(List.of("€115", "€535")), letter.text());
    }

    /** A line of a French page never ends with an apostrophe (common practice); corrected settings take one page, a checklist two. */
    @ParameterizedTest
    @ValueSource(strings = {"letter", "card", "checklist"})
    void breaksNoLineAfterAnApostropheAndNeedsFewPages(String sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(FRENCH, "fr", "?sheet=" + sheet))) {
            String paper = new PDFTextStripper().getText(document);
            assertTrue(paper.contains("’"), paper);
            assertTrue(document.getNumberOfPages() <= (sheet.equals("checklist") ? 2 : 1), sheet);
            assertEquals(List.of(), paper.lines().filter(line -> line.strip().endsWith("’")).toList());
        }
    }

    /** The saving that a letter states is the difference of two of its columns, as they are rounded. */
    @ParameterizedTest
    @ValueSource(strings = {"well-family", "apartment", "dearer now"})
    void theSavingIsADifferenceOfTheTable(String name) throws IOException {
        ObjectNode request = (ObjectNode) JSON.readTree(TestServer.example("assess." + (name.equals("dearer now") ? "well-family" : name)));
        if (name.equals("dearer now")) {
            ((ObjectNode) request.at("/softener/control")).put("everyDays", 1);
        }
        Document letter = page(request.toString(), "en", "letter");
        java.util.regex.Matcher saved = Pattern.compile("You save about [$€]([\\d,]+)").matcher(letter.text());
        assertTrue(saved.find(), letter.text());
        double saving = Double.parseDouble(saved.group(1).replace(",", ""));
        List<Double> costs = letter.select("table.figures tr:contains(Salt and water cost) td").eachText().stream()
                .map(cost -> Double.parseDouble(cost.replaceAll("[^\\d.]", ""))).toList();
        assertTrue(costs.stream().anyMatch(one -> costs.stream().anyMatch(other -> Math.abs(one - other - saving) <= 5)),
                saving + " of " + costs);
    }

    /** Iron of 1 mg/L and more is a warning in front, which the customer reads too. */
    @Test
    void theLetterHasTheWarningsInFront() {
        assertTrue(page(TestServer.example("assess.well-family"), "en", "letter").select(".cautions li").eachText().stream()
                .anyMatch(caution -> caution.startsWith("Iron and manganese together")));
    }

    /** Names are texts of the caller: shown as they are, never markup. */
    @ParameterizedTest
    @ValueSource(strings = {"<b>x</b>", "{{say}}", "\\\"><script>alert(1)</script>", "&amp; Söhne", "שלום Invented"})
    void aNameIsNoMarkup(String name) throws IOException {
        ObjectNode request = (ObjectNode) JSON.readTree(TestServer.example("assess.well-family"));
        request.putObject("job").put("name", name).put("address", name).put("writtenBy", name).put("seenOn", "2026-03-02");
        for (String sheet : SHEETS) {
            Document page = page(request.toString(), "en", sheet);
            assertEquals(name, page.select(".job bdi").first().text(), sheet);
            assertEquals(name + " · March 2, 2026 · Brinebook 2.3.0", page.select("footer").text());
            assertEquals(List.of(), page.select("script, b"), sheet);
            Loader.loadPDF(pdf(request.toString(), "en", "?sheet=" + sheet)).close();
        }
        JsonNode with = JSON.readTree(ask(request.toString(), "application/json", "en", "").asByteArray());
        assertEquals(JSON.readTree(ask(TestServer.example("assess.well-family"), "application/json", "en", "").asByteArray()), with,
                "the texts are no part of the calculation");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"name": "a\\u202eb"}      | /job/name
            {"name": "a\\u0007b"}      | /job/name
            {"address": "a\\nb"}       | /job/address
            {"phone": "1234567890123456789012345"} | /job/phone
            {"testedOn": "yesterday"} | /job/testedOn
            {"nane": "a"}             | /job/nane
            """)
    void refusesTextsThatArePutWrong(String job, String pointer) {
        String request = TestServer.example("assess.well-family").strip();
        ask(request.substring(0, request.length() - 1) + ", \"job\": " + job + "}", HTML, "en", "").then().statusCode(422)
                .body("errors.pointer", equalTo(List.of(pointer)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            text/html        | sheet=leter           | /sheet | unknownValue
            text/html        | paper=a5              | /paper | unknownValue
            application/pdf  | sheet=                | /sheet | unknownValue
            application/json | sheet=card            | /sheet | inconsistent
            application/json | paper=a4              | /paper | inconsistent
            text/html        | sheet=card&sheet=card | /sheet | inconsistent
            text/html        | shet=card             | /shet  | unknownField
            """)
    void refusesAnUnknownSheetOrPaper(String accept, String query, String pointer, String code) {
        String request = TestServer.example("assess.apartment");
        ask(request, accept, "en", "?" + query).then().statusCode(422).contentType("application/problem+json")
                .body("errors[0].code", equalTo(code)).body("errors[0].parameter", equalTo(pointer.substring(1)));
        Served.given().header("Accept", accept).get(PATH + "?request=" + URLEncoder.encode(packedJson(request), StandardCharsets.UTF_8)
                + "&" + query).then().statusCode(422).body("errors[0].code", equalTo(code));
    }

    /** ISO 14289-1 (PDF/UA-1): sections 5 (identification), 7.1 (tags, title), 7.2 (language), 7.21.4.1 (embedded fonts). */
    @ParameterizedTest
    @ValueSource(strings = {"en", "fr"})
    void isADocumentForScreenReaders(String language) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(TestServer.example("assess.well-family"), language, ""))) {
            var catalog = document.getDocumentCatalog();
            assertNotNull(catalog.getStructureTreeRoot());
            assertTrue(catalog.getMarkInfo().isMarked());
            assertEquals(language, catalog.getLanguage());
            assertTrue(catalog.getViewerPreferences().displayDocTitle());
            assertEquals(page(TestServer.example("assess.well-family"), language, "letter").title(),
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
            assertTrue(fonts >= 1, "it saw fonts");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"letter", "card", "checklist"})
    void givesTheSameBytesForTheSameRequest(String sheet) {
        String request = TestServer.example("assess.apartment");
        assertArrayEquals(pdf(request, "en", "?sheet=" + sheet), pdf(request, "en", "?sheet=" + sheet));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es", "fr", "de", "es-MX"})
    void isAPageForScreenReaders(String language) {
        for (String sheet : SHEETS) {
            Document page = page(TestServer.example("assess.well-family"), language, sheet);
            assertEquals(language, page.select("html").attr("lang"));
            assertEquals(1, page.select("main").size());
            assertEquals(1, page.select("h1").size());
            assertEquals(List.of(), page.select("th:not([scope])"));
            page.select("table[aria-labelledby]").forEach(table -> assertEquals(1,
                    page.select("#" + table.attr("aria-labelledby")).size()));
            assertEquals(List.of(), page.select("table:not([aria-labelledby]):not([aria-label])"));
            assertEquals(List.of(), page.select("script, [style], [src], link, [onclick], form"));
        }
    }

    /** Every caution of the answer is on the checklist once, by its group; the customer reads at most three. */
    @ParameterizedTest
    @ValueSource(strings = {"well-family", "apartment", "holiday-cabin"})
    void saysEachCautionOnce(String name) throws IOException {
        String request = TestServer.example("assess." + name);
        List<String> answered = new ArrayList<>();
        JSON.readTree(ask(request, "application/json", "en", "").asByteArray()).path("cautions")
                .forEach(caution -> answered.add(caution.path("message").asText().replace('\u00a0', ' ')));
        List<String> listed = page(request, "en", "checklist").select(".cautions li").eachText();
        assertEquals(answered.stream().sorted().toList(), listed.stream().sorted().toList());
        List<String> inLetter = page(request, "en", "letter").select(".cautions li").eachText();
        assertTrue(inLetter.size() <= 3 && answered.containsAll(inLetter), inLetter.toString());
        assertEquals(inLetter.stream().distinct().toList(), inLetter);
        String card = page(request, "en", "card").text();
        answered.forEach(caution -> assertFalse(card.contains(caution), caution));
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
        assertEquals(ask(request, HTML, "en", "").asString(), link(request, HTML).asString());
    }

    /** The page may load nothing but its own styles, known by their hashes. */
    @Test
    void allowsBrowsersToLoadNothingElse() {
        String policy = ask(TestServer.example("assess.apartment"), HTML, "en", "").header("Content-Security-Policy");
        assertTrue(policy.startsWith("default-src 'none'; style-src 'sha256-"), policy);
        assertFalse(policy.contains("unsafe"), policy);
        for (Element style : page(TestServer.example("assess.apartment"), "en", "letter").select("style")) {
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
            ask("{\"units\": \"us\"}", accept, "en", "").then().statusCode(422).contentType("application/problem+json")
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
