// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import static dev.brinebook.operation.assessment.SheetSamples.HTML;
import static dev.brinebook.operation.assessment.SheetSamples.JSON;
import static dev.brinebook.operation.assessment.SheetSamples.PATH;
import static dev.brinebook.operation.assessment.SheetSamples.PDF;
import static dev.brinebook.operation.assessment.SheetSamples.ask;
import static dev.brinebook.operation.assessment.SheetSamples.page;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.api.Operation;
import dev.brinebook.http.Served;
import dev.brinebook.http.TestServer;
import io.restassured.response.Response;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a sheet is asked for, in a body or a link, and what is refused. */
class SheetRequestTest {

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
