// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.pages;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.emptyOrNullString;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.api.WireNames;
import dev.brinebook.household.Country;
import dev.brinebook.http.Served;
import dev.brinebook.payback.UsualPrices;
import dev.brinebook.softener.Sizing;
import dev.brinebook.text.Language;
import io.restassured.response.Response;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people look at, as a browser gets it (Content Security Policy Level 3; RFC 9110, section 13). */
class WebPagesTest {

    private static final String HOST = "http://localhost";
    private static final Pattern IMPORTED = Pattern.compile("from '\\./([\\w-]+\\.js)'");

    @ParameterizedTest
    @ValueSource(strings = {"/", "/example-shop"})
    void holdNoScriptOrStyleOfTheirOwnAndAskNoOtherHost(String path) {
        Response response = Served.given().get(path);
        response.then().statusCode(200).header("Content-Security-Policy", startsWith("default-src 'none'; script-src 'self'; "))
                .header("Set-Cookie", emptyOrNullString());
        assertFalse(response.header("Content-Security-Policy").contains("unsafe"));
        Document page = Jsoup.parse(response.asString(), HOST + path);
        assertEquals(0, page.select("[style], style, script:not([src]):not([type=application/json]), [onclick], [onload]").size());
        int parts = 0;
        for (Element part : page.select("link[href], script[src], img[src]")) {
            String address = part.absUrl(part.hasAttr("href") ? "href" : "src");
            assertTrue(address.startsWith(HOST + "/"), address);
            Response file = Served.given().get(URI.create(address).getPath());
            String tag = file.then().statusCode(200).header("ETag", notNullValue()).extract().header("ETag");
            Served.given().header("If-None-Match", tag).get(URI.create(address).getPath()).then().statusCode(304);
            parts++;
        }
        assertTrue(parts > 2, "it has some");
    }

    /** Every module that a page loads is served; what is drawn first is small, and so is the whole of a first visit. Limits: our own. */
    @ParameterizedTest
    @CsvSource({"/workbench/start.js, 8, 25000", "/workbench/app.js, 20, 58000"})
    void theFirstViewIsSmall(String script, int least, int most) throws IOException {
        Map<String, byte[]> loaded = new TreeMap<>();
        Deque<String> wanted = new ArrayDeque<>(List.of("/", "/workbench/workbench.css", script,
                "/workbench/text-de.js", "/v1/units"));
        while (!wanted.isEmpty()) {
            String path = wanted.pop();
            if (!loaded.containsKey(path)) {
                byte[] content = Served.given().get(path).then().statusCode(200).extract().asByteArray();
                loaded.put(path, content);
                IMPORTED.matcher(new String(content, StandardCharsets.UTF_8)).results()
                        .map(use -> "/workbench/" + use.group(1)).forEach(wanted::push);
            }
        }
        int size = 0;
        for (byte[] content : loaded.values()) {
            size += packed(content);
        }
        assertTrue(size <= most && loaded.size() >= least, size + " bytes in " + loaded.keySet());
    }

    /** The words that a reader wants are named with the page. RFC 8288, 3; the relation: HTML, link type "modulepreload". */
    @ParameterizedTest
    @CsvSource({"de-AT, de", "es-AR, es-419", "es-MX, es-MX", "it, en"})
    void thePageNamesTheWordsOfItsReader(String languages, String tag) {
        Served.given().header("Accept-Language", languages).get("/").then().statusCode(200)
                .header("Vary", containsString("Accept"));
        List<String> links = Served.given().header("Accept-Language", languages).get("/").headers().getValues("Link");
        assertTrue(links.contains("</workbench/text-" + tag + ".js>; rel=modulepreload"), links.toString());
    }

    /** Service Workers, W3C Working Draft, 2.1: a worker keeps what lies below its own path. */
    @Test
    void theWorkerKeepsEveryPage() {
        String worker = Served.given().get("/service-worker.js").then().statusCode(200).contentType(startsWith("text/javascript"))
                .extract().asString();
        assertFalse(worker.contains("/* paths */") || worker.contains("/* version */"), worker);
        for (String path : List.of("/", "/workbench/app.js", "/workbench/lit-html.js", "/workbench/text-es-MX.js",
                "/workbench/result.css", "/workbench/report.js", "/workbench/complaint.js", "/workbench/commission.js",
                "/workbench/savings.js", "/workbench/visit-text-de.js")) {
            assertTrue(worker.contains('"' + path + '"'), path);
        }
    }

    /** One language is loaded, with the texts of the screens alone. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "es", "fr", "es-419", "es-MX"})
    void eachLanguageIsAModule(String tag) {
        Served.given().get("/workbench/text-" + tag + ".js").then().statusCode(200).contentType(startsWith("text/javascript"))
                .body(startsWith("export default {"), containsString("\"screen.whatToKnow\":"), not(containsString("\"element.")));
    }

    /** The words of a visit come apart: nobody else waits for them. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "es", "fr", "es-419", "es-MX"})
    void theWordsOfAVisitAreAModuleOfTheirOwn(String tag) {
        Served.given().get("/workbench/visit-text-" + tag + ".js").then().statusCode(200).contentType(startsWith("text/javascript"))
                .body(startsWith("export default {"), containsString("\"visit.orderNext\":"), containsString("\"waterParameter.iron\":"),
                        containsString("\"visit.symptom.salty\":"), containsString("\"complaintSign.saltBridge\":"),
                        not(containsString("\"screen.")));
        Served.given().get("/workbench/text-" + tag + ".js").then().body(not(containsString("\"visit.")));
    }

    private static int packed(byte[] content) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(content);
        }
        return packed.size();
    }

    @Test
    void theElementIsSmall() throws IOException {
        byte[] script = Served.given().get("/element/brinebook.js").then().contentType(startsWith("text/javascript"))
                .header("X-Content-Type-Options", is("nosniff")).extract().asByteArray();
        assertTrue(packed(script) <= 8_000, packed(script) + " bytes");
    }

    /** The years over which the price of a softener is spread are those of the calculation. */
    @Test
    void theElementSaysOverHowManyYears() {
        Language.all().forEach(language -> assertTrue(language.text("elementAnswer.yearly")
                .contains(language.number(BigDecimal.valueOf((long) Sizing.ASSUMED_LIFE_YEARS))), language.tag()));
    }

    /** The script knows every country of the contract, with the currency in which its usual prices are (ISO 4217). */
    @ParameterizedTest
    @EnumSource(Country.class)
    void theElementKnowsTheCurrencyOfEachCountry(Country country) {
        String script = Served.given().get("/element/brinebook.js").asString();
        Matcher known = Pattern.compile(WireNames.of(country) + ": \\['[A-Z]{2}', '([A-Z]{3})'").matcher(script);
        assertTrue(known.find(), country.name());
        assertEquals(UsualPrices.of(country).currency().getCurrencyCode(), known.group(1));
        assertEquals(Country.values().length, Pattern.compile("\\['[A-Z]{2}', '[A-Z]{3}'").matcher(script).results().count());
    }

    /** Comments are cut out of what pages of others load; texts and addresses are not. */
    @Test
    void theElementKeepsItsTextsWhole() {
        for (String file : List.of("brinebook", "answer")) {
            String script = Served.given().get("/element/" + file + ".js").asString();
            assertFalse(script.contains("/**"), file);
            Language.ENGLISH.texts().forEach((id, text) -> assertTrue(!id.startsWith("element") || id.startsWith("elementAnswer")
                    == file.equals("brinebook") || script.contains(text), id));
        }
    }
}
