// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.http.RandomRequests;
import dev.brinebook.http.Served;
import dev.brinebook.http.TestServer;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.params.provider.Arguments;

/** Requests for sheets, and what is answered to them. */
final class SheetSamples {

    static final String PATH = "/v1/assessment";
    static final String HTML = "text/html";
    static final String PDF = "application/pdf";
    static final List<String> SHEETS = List.of("letter", "card", "checklist");
    private static final int CASES = 4;
    /** Most water at random must be treated first, and then has few numbers. */
    private static final int UNTREATED = 2;
    private static final List<String> DRAWN = new ArrayList<>();
    static final JsonMapper JSON = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();

    private SheetSamples() {
    }

    static Response ask(String request, String accept, String language, String query) {
        return Served.posting(request).header("Accept", accept).header("Accept-Language", language).post(PATH + query);
    }

    static Document page(String request, String language, String sheet) {
        return Jsoup.parse(ask(request, HTML, language, "?sheet=" + sheet).then().statusCode(200).extract().asString());
    }

    static byte[] pdf(String request, String language, String query) {
        return ask(request, PDF, language, query).then().statusCode(200).contentType(PDF).extract().asByteArray();
    }

    /** Without the blanks, which a line may be broken at. */
    static String text(PDDocument document, int first, int last) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(first);
        stripper.setEndPage(last);
        return packed(stripper.getText(document));
    }

    static String packed(String text) {
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

    static final String FRENCH = """
            {"water": {"hardness": {"value": 32, "unit": "fH"}}, "household": {"people": 5, "country": "france"}, "units": "metric",
             "softener": {"tankDiameter": {"value": 230, "unit": "mm"}, "tankHeight": {"value": 1220, "unit": "mm"},
              "control": {"kind": "clock", "weekdays": ["monday"]}, "saltPerRegeneration": {"value": 2.5, "unit": "kg"}}}
            """;
}
