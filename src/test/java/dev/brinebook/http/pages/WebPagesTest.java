// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.pages;

import static org.hamcrest.Matchers.emptyOrNullString;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Served;
import io.restassured.response.Response;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.util.zip.GZIPOutputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What people look at, as a browser gets it (Content Security Policy Level 3; RFC 9110, section 13). */
class WebPagesTest {

    private static final String HOST = "http://localhost";

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

    @Test
    void theElementIsSmall() throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        byte[] script = Served.given().get("/element/brinebook.js").then().contentType(startsWith("text/javascript"))
                .header("X-Content-Type-Options", is("nosniff")).extract().asByteArray();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(script);
        }
        assertTrue(packed.size() <= 15_000, packed.size() + " bytes");
    }
}
