// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.pages;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Served;
import dev.brinebook.model.Model;
import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The changelog in each of its forms has the same entries (RFC 4287 sections 4.1.1 and 4.1.2: what feed and entry must have). */
class ChangelogRoutesTest {

    private static final String ATOM = "http://www.w3.org/2005/Atom";

    @Test
    void theFeedHasWhatAtomAsksFor() throws Exception {
        byte[] bytes = Served.given().get("/changelog.atom").then().statusCode(200)
                .contentType("application/atom+xml; charset=utf-8").extract().asByteArray();
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Element feed = factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes)).getDocumentElement();
        assertEquals(ATOM + " feed", feed.getNamespaceURI() + " " + feed.getLocalName());
        assertTrue(feed.getElementsByTagNameNS(ATOM, "author").getLength() == 1, "one author, of the feed");
        HashSet<String> ids = new HashSet<>(List.of(child(feed, "id")));
        NodeList entries = feed.getElementsByTagNameNS(ATOM, "entry");
        for (int i = 0; i < entries.getLength(); i++) {
            Element entry = (Element) entries.item(i);
            assertTrue(ids.add(child(entry, "id")), "an id of its own");
            assertTrue(child(entry, "id").matches("urn:uuid:[0-9a-f-]{36}"));
            OffsetDateTime.parse(child(entry, "updated"));
            assertTrue(!child(entry, "title").isBlank() && !child(entry, "content").isBlank());
        }
        List<String> inJson = Served.given().get("/v1/changelog").jsonPath().getList("versions.entries.id.flatten()");
        assertEquals(inJson.size(), entries.getLength());
        assertEquals(inJson, IntStream.range(0, entries.getLength()).mapToObj(i -> child((Element) entries.item(i), "title"))
                .map(title -> title.substring(title.indexOf(": ") + 2)).toList());
    }

    @Test
    void theJsonNamesTheCallableVersions() {
        Served.given().get("/v1/changelog").then().statusCode(200).body("callableVersions", equalTo(Model.versions()),
                "modelVersion", equalTo("2.3.0"), "versions[0].version", equalTo("2.3.0"), "versions[1].version", equalTo("2.2.0"),
                "versions[0].entries.find { it.id == 'brine-by-weight' }.kind", equalTo("number"),
                "versions[0].entries.find { it.id == 'brine-by-weight' }.effect", not(equalTo(null)));
    }

    /** RFC 9110, section 8.5: the language of the content, not the one asked for. */
    @ParameterizedTest
    @ValueSource(strings = {"/v1/changelog", "/changelog.atom"})
    void isInEnglishWhateverIsAsked(String path) {
        Response answer = Served.given().header("Accept-Language", "de").get(path);
        answer.then().statusCode(200).header("Content-Language", "en");
        assertTrue(!answer.headers().getValues("Vary").contains("Accept-Language"), "it is the same in every language");
    }

    @Test
    void pageAndCatalogLeadToIt() {
        String page = Served.given().get("/docs/changelog").asString();
        assertTrue(page.contains("href=\"/v1/changelog\"") && page.contains("href=\"/changelog.atom\"") && page.contains(
                "id=\"brine-by-weight\""));
        assertTrue(Served.given().get("/.well-known/api-catalog").asString().contains("/changelog.atom"));
    }

    private static String child(Element of, String name) {
        return of.getElementsByTagNameNS(ATOM, name).item(0).getTextContent();
    }
}
