// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Rendering;
import dev.brinebook.http.TestServer;
import dev.brinebook.model.Model;
import dev.brinebook.operation.upkeep.PlanUpkeep;
import dev.brinebook.text.Language;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheets of the two plans, read by others' parsers. */
class PlanSheetsTest {

    @Test
    void hasABlankAndABandForEachCheck() {
        Document page = page(PlanCommissioning.OPERATION, "well-family", "en");
        CommissioningAnswer answer = PlanCommissioning.OPERATION.answer(TestServer.read(TestServer.example(
                "planCommissioning.well-family"), CommissioningRequest.class));
        assertEquals(answer.checks().size(), page.select("td.blank").size());
        assertEquals(answer.settings().size(), page.select("table.settings tbody tr").size());
        assertEquals("2.64 to 3.36 gpm", words(page.select("td[data-at=/checks/6]").text()));
        assertTrue(words(page.text()).contains("at least 95 degrees"), page.select("td[data-at]").text());
    }

    @Test
    void tellsTheCustomerWhenToDoWhat() {
        Document page = page(PlanUpkeep.OPERATION, "apartment", "de");
        assertTrue(page.select("tbody tr").size() > 10);
        assertTrue(words(page.text()).contains("Salzstand") && words(page.text()).contains("1. April 2026"), page.text());
    }

    private static String words(String text) {
        return text.replaceAll("[\\u00a0\\u202f]", " ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "es", "fr", "es-MX"})
    void fitsItsPages(String language) throws IOException {
        assertPages(2, PlanCommissioning.OPERATION, "well-family", language);
        assertPages(2, PlanCommissioning.OPERATION, "apartment", language);
        assertPages(1, PlanUpkeep.OPERATION, "well-family", language);
        assertPages(1, PlanUpkeep.OPERATION, "apartment", language);
    }

    private static <Q extends Record> void assertPages(int most, Operation<Q, ?> operation, String example, String language)
            throws IOException {
        try (PDDocument document = Loader.loadPDF(written(operation, "pdf", example, language))) {
            assertTrue(document.getNumberOfPages() <= most, operation.id() + " " + example + ": " + document.getNumberOfPages());
            assertFalse(document.getNumberOfPages() < 1);
        }
    }

    private static <Q extends Record> Document page(Operation<Q, ?> operation, String example, String language) {
        return Jsoup.parse(new String(written(operation, "html", example, language), StandardCharsets.UTF_8));
    }

    private static <Q extends Record> byte[] written(Operation<Q, ?> operation, String extension, String example, String language) {
        AnswerForm<Q> form = operation.forms().stream().filter(one -> one.extension().equals(extension)).findFirst().orElseThrow();
        Q request = TestServer.read(TestServer.example(operation.id() + "." + example), operation.requestType());
        return form.write().write(request, Model.CURRENT, Rendering.in(Language.of(language)));
    }
}
