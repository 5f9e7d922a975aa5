// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import static dev.brinebook.operation.assessment.SheetSamples.FRENCH;
import static dev.brinebook.operation.assessment.SheetSamples.JSON;
import static dev.brinebook.operation.assessment.SheetSamples.SHEETS;
import static dev.brinebook.operation.assessment.SheetSamples.ask;
import static dev.brinebook.operation.assessment.SheetSamples.packed;
import static dev.brinebook.operation.assessment.SheetSamples.page;
import static dev.brinebook.operation.assessment.SheetSamples.pdf;
import static dev.brinebook.operation.assessment.SheetSamples.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.Text;
import dev.brinebook.http.TestServer;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the sheets of an assessment say, held to the answer. */
class AssessmentSheetsTest {

    private static final Pattern NUMBER = Pattern.compile("\\d[\\d,]*(\\.\\d+)?");

    /** Every number is the one that the JSON answer has at its pointer, rounded for people, and is on the paper too. */
    @ParameterizedTest
    @MethodSource("dev.brinebook.operation.assessment.SheetSamples#drawnSheets")
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
        if (sheet.equals("letter") && expected < 0.5 && at.matches(".*/(hardDays|paysPercent)")) {
            return; // said without a number
        }
        double tolerance = at.startsWith("/settings/") && !at.equals("/settings/meterVolume")
                && !Text.isMachineMade(value.decimalValue()) ? 1e-9 : Math.max(0.51, expected * 0.06);
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
        if (sheet.equals("letter") && at.endsWith("/water") && answer.at(at + "/unit").asText().equals("L")) {
            return value / 1000;
        }
        return at.endsWith("/paysPercent") ? value / 5 : at.endsWith("/regenerations") ? 365 / value : Math.abs(value);
    }

    /** The bars of the chart stand to each other as their values. */
    @Test
    void itsBarsAreAsLongAsTheirValues() {
        List<Element> bars = page(TestServer.example("assess.well-family"), "en", "letter").select(".chart tr");
        assertEquals(5, bars.size());
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
        assertEquals(List.of("8 lb", "5.4 minutes"), card.select(".settings .big").eachText());
        assertEquals(List.of("10 lb"), card.select(".before").eachText());
        assertTrue(card.text().contains("Leave all other settings"), card.text());
    }

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
        assertTrue(letter.text().contains("Until then, have the settings corrected. Salt and water then cost about €420"), letter.text());
        assertFalse(letter.text().contains("free"), letter.text());
        assertTrue(letter.text().contains("Bags of salt, 25 kg each"), letter.text());
        assertTrue(letter.select("tr:contains(Salt and water cost) td").eachText().containsAll(List.of("€115", "€535")), letter.text());
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
}
