// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.http.Served;
import dev.brinebook.http.TestServer;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The sheets of a water report, of measurements on site and of a saving, held to the answer. */
class RecordSheetTest {

    private static final Pattern NUMBER = Pattern.compile("-?\\d[\\d,]*(\\.\\d+)?");
    /** Salt, water and money of a year, to what people can use; the exact number is in data-value. */
    private static final String ROUNDED_FOR_PEOPLE = "/(salt|water|money)/.*(PerYear|Low|High)|/causes/.*";
    private static final String REPORT = "readWaterReport";
    private static final String MEASUREMENTS = "reduceFieldMeasurements";
    private static final String SAVING = "verifySavings";
    private static final Map<String, String> PATHS = Map.of(REPORT, "/v1/water-report", MEASUREMENTS, "/v1/field-measurements", SAVING,
            "/v1/savings-verification");
    private static final String CONTRADICTORY = """
            {"results": [{"parameter": "hardness", "value": 300, "unit": "mg/L"}, {"parameter": "calcium", "value": 9000, "unit": "mg/L"},
             {"parameter": "arsenic", "value": 40, "unit": "ug/L"}, {"parameter": "ph", "value": 5.1},
             {"parameter": "iron", "value": 8, "unit": "mg/L", "tap": "raw"}], "supply": "privateWell", "units": "us"}
            """;

    private static Response ask(String operation, String request, String accept, String language, String query) {
        return Served.posting(request).header("Accept", accept).header("Accept-Language", language)
                .post(PATHS.get(operation) + query);
    }

    private static byte[] pdf(String operation, String request, String language, String query) {
        return ask(operation, request, "application/pdf", language, query).then().statusCode(200).extract().asByteArray();
    }

    private static String packed(String text) {
        return text.replaceAll("[\\s\\u00a0\\u202f]+", "");
    }

    static Stream<Arguments> requests() {
        return Stream.concat(Stream.of(REPORT, MEASUREMENTS, SAVING).flatMap(operation -> Stream.of("well-family", "apartment")
                .map(name -> Arguments.of(operation, TestServer.example(operation + "." + name)))),
                Stream.of(Arguments.of(REPORT, CONTRADICTORY), Arguments.of(SAVING, TestServer.example(SAVING + ".beforehand"))));
    }

    /** Every number is the one that the JSON answer has at its pointer, rounded for people; every text is on the paper too. */
    @ParameterizedTest
    @MethodSource("requests")
    void itsNumbersAreThoseOfTheAnswer(String operation, String request) throws IOException {
        JsonNode answer = new ObjectMapper().readTree(ask(operation, request, "application/json", "en", "?detail=full").then()
                .statusCode(200).extract().asByteArray());
        Document page = Jsoup.parse(ask(operation, request, "text/html", "en", "").then().statusCode(200).extract().asString());
        List<Element> shown = page.select("[data-at]");
        assertTrue(shown.size() > 4, "it saw " + shown.size());
        for (Element each : shown) {
            for (String at : each.attr("data-at").split(" ")) {
                assertShows(answer.at(at), at, each);
            }
        }
        try (PDDocument document = Loader.loadPDF(pdf(operation, request, "en", ""))) {
            String paper = packed(new PDFTextStripper().getText(document));
            for (Element each : page.select("h1, h2, th, td, li, p:not(footer p), dt")) {
                assertTrue(paper.contains(packed(each.text())), each.text());
            }
        }
    }

    private static void assertShows(JsonNode answered, String at, Element shown) {
        assertFalse(answered.isMissingNode(), at);
        JsonNode value = answered.has("unit") ? answered.get("value") : answered;
        if (!value.isNumber()) {
            assertEquals(value.asText().replace('\u00a0', ' '), shown.text(), at);
            return;
        }
        double expected = at.endsWith("/changesPercent") ? value.asDouble() / 5 : value.asDouble();
        double tolerance = at.endsWith("/changesPercent") ? 0.5 : at.matches(ROUNDED_FOR_PEOPLE) ? Math.max(5, Math.abs(expected) * 0.03)
                : Math.abs(expected) * 0.0051;
        if (shown.hasAttr("data-value")) {
            assertEquals(value.asDouble(), Double.parseDouble(shown.attr("data-value")), at);
        }
        assertTrue(NUMBER.matcher(shown.text().replace('\u2212', '-')).results()
                .map(found -> Double.parseDouble(found.group().replace(",", "")))
                .anyMatch(number -> Math.abs(number - expected) <= tolerance), at + " " + expected + " in " + shown.text());
    }

    /** One page in every language, on the paper of the units or the one asked for. Sizes: ISO 216; ANSI/ASME Y14.1. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            readWaterReport         | well-family |               | 612 | 792
            readWaterReport         | well-family | ?paper=a4     | 595 | 842
            readWaterReport         | apartment   |               | 595 | 842
            reduceFieldMeasurements | well-family |               | 612 | 792
            reduceFieldMeasurements | apartment   | ?paper=letter | 612 | 792
            verifySavings           | well-family |               | 612 | 792
            verifySavings           | apartment   |               | 595 | 842
            verifySavings           | beforehand  | ?paper=a4     | 595 | 842
            """)
    void isOnePageOnThePaperAskedFor(String operation, String name, String query, float width, float height) throws IOException {
        for (String language : List.of("en", "de", "es", "fr")) {
            byte[] bytes = pdf(operation, TestServer.example(operation + "." + name), language, query == null ? "" : query);
            try (PDDocument document = Loader.loadPDF(bytes)) {
                assertEquals(1, document.getNumberOfPages(), language);
                assertEquals(width, document.getPage(0).getMediaBox().getWidth(), 0.5);
                assertEquals(height, document.getPage(0).getMediaBox().getHeight(), 0.5);
                assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            }
        }
    }

    /** What cannot be is on the sheet, and so is the caution of a health authority. */
    @Test
    void saysWhatDoesNotFit() {
        Document page = Jsoup.parse(ask(REPORT, CONTRADICTORY, "text/html", "en", "").asString());
        assertTrue(page.select("#misfits + ul").text().contains("9,000"), page.text());
        assertTrue(page.select("[aria-labelledby=limits] tbody").text().contains("arsenic"), page.text());
        assertEquals(List.of("cautions", "misfits", "tests", "limits", "results"), page.select("h2").eachAttr("id"));
    }

    /** A section that would hold nothing is left out. */
    @Test
    void hasNoEmptySection() {
        String request = "{\"resinTank\": {\"outerDiameter\": {\"value\": 10, \"unit\": \"in\"}, \"height\": {\"value\": 54, \"unit\": "
                + "\"in\"}, \"freeboard\": {\"value\": 20, \"unit\": \"in\"}}}";
        Document page = Jsoup.parse(ask(MEASUREMENTS, request, "text/html", "en", "").asString());
        assertEquals(page.select("h2").size(), page.select("h2 + ul, h2 + table").size(), page.text());
    }
}
