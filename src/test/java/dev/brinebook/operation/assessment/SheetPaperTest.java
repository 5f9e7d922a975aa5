// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import static dev.brinebook.operation.assessment.SheetSamples.FRENCH;
import static dev.brinebook.operation.assessment.SheetSamples.packed;
import static dev.brinebook.operation.assessment.SheetSamples.page;
import static dev.brinebook.operation.assessment.SheetSamples.pdf;
import static dev.brinebook.operation.assessment.SheetSamples.text;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.api.Rendering;
import dev.brinebook.http.TestServer;
import dev.brinebook.model.Model;
import dev.brinebook.sheet.PageSize;
import dev.brinebook.sheet.Typesetter;
import dev.brinebook.text.Language;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheets of an assessment as PDF: pages, type, lines and tags, read by another's parser. */
class SheetPaperTest {

    private static final int HOUSEHOLDS = 30;

    /** Everything on the page is on the paper, however long it is. */
    @ParameterizedTest
    @MethodSource("dev.brinebook.operation.assessment.SheetSamples#drawnSheets")
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

    /** The same of households at random, a language and a paper for each. */
    @Test
    void everyHouseholdFitsItsPages() throws IOException {
        List<String> requests = HouseholdRequests.first(HOUSEHOLDS);
        for (int i = 0; i < requests.size(); i++) {
            AssessmentRequest request = TestServer.read(requests.get(i), AssessmentRequest.class);
            Language language = Language.all().get(i % Language.all().size());
            PageSize paper = PageSize.values()[i / 2 % 2];
            for (SheetKind sheet : SheetKind.values()) {
                String page = AssessmentSheets.xhtml(request, Model.CURRENT, Rendering.in(language, sheet, paper));
                try (PDDocument document = Loader.loadPDF(Typesetter.pdf(page))) {
                    assertTrue(document.getNumberOfPages() <= (sheet == SheetKind.CHECKLIST ? 2 : 1),
                            "seed " + (i + 1) + " " + sheet + " " + language + " " + paper + ": " + document.getNumberOfPages());
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
}
