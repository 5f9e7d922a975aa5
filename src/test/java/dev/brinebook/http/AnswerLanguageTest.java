// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.server.Agent;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever is said to people comes in their language (RFC 9110, sections 8.5, 12.5.4 and 12.5.5); codes and names never change. */
class AnswerLanguageTest {

    private static final String QUERY = "/v1/compensated-hardness?value=18.5&unit=gpg";

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en               | en | Set the hardness to 19 gpg. The test gives 18.5 gpg.
            es-MX            | es-MX | Ajuste la dureza a 19 gpg. El análisis da 18.5 gpg.
            fr;q=0.9, pt     | fr | Réglez la dureté sur 19 gpg. L’analyse donne 18,5 gpg.
            de-AT, en;q=0.5  | de | Stellen Sie die Härte auf 19 gpg ein. Die Messung ergibt 18,5 gpg.
            pt               | en | Set the hardness to 19 gpg
            """)
    void answersInTheLanguageAskedFor(String asked, String language, String summary) {
        Response answer = Served.given().header("Accept-Language", asked).get(QUERY);
        answer.then().statusCode(200).header("Content-Language", language).body("summary", startsWith(summary))
                .body("cautions[0].code", equalTo("ironNotTested")).body("hardness.tested.unit", equalTo("gpg"));
        assertEquals(1, answer.headers().getValues("Vary").stream().filter("Accept-Language"::equals).count());
    }

    @Test
    void everyLanguageIsKeptAndAskedForAgainByItself() {
        Set<String> tags = new TreeSet<>();
        for (String language : List.of("en", "es", "fr", "de")) {
            String tag = Served.given().header("Accept-Language", language).get(QUERY).header("ETag");
            Served.given().header("Accept-Language", language).header("If-None-Match", tag).get(QUERY).then().statusCode(304);
            tags.add(tag);
        }
        assertEquals(4, tags.size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            es | La petición tiene errores | La petición tiene 1 error. | Valores admitidos: de 0 a 584,1\u00a0gpg. Recibido: \u22121\u00a0gpg.
            fr | La requête contient des erreurs | La requête contient 1 erreur. | Valeurs admises\u00a0: de 0 à 584,1\u00a0gpg. Valeur reçue\u00a0: \u22121\u00a0gpg.
            de | Die Anfrage enthält Fehler | Die Anfrage enthält 1 Fehler. | Erlaubt: 0 bis 584,1\u00a0gpg. Angegeben: \u22121\u00a0gpg.
            """)
    void refusesInTheLanguageAskedFor(String language, String title, String detail, String fault) {
        Served.posting("{\"hardness\": {\"value\": -1, \"unit\": \"gpg\"}}").header("Accept-Language", language)
                .post(Served.CONVERSION).then().statusCode(422).header("Content-Language", language)
                .body("title", equalTo(title)).body("detail", equalTo(detail)).body("errors[0].message", equalTo(fault))
                .body("errors[0].code", equalTo("outOfRange")).body("type", equalTo("/problems/invalid-request"));
    }

    @Test
    void refusesInTheLanguageAskedForWhereNoOperationIsMet() throws IOException {
        Served.given().header("Accept-Language", "de").get("/nowhere").then().statusCode(404).header("Content-Language", "de")
                .body("title", equalTo("Unter diesem Pfad gibt es nichts"));
        // The server refuses a bad request line before it reads the headers, so it cannot know the language.
        String answer = RawHttp.send(Served.SERVER.port(), "GET /%zz HTTP/1.1", "Accept-Language: de\r\n", "");
        assertTrue(answer.contains("Content-Language: en") && answer.contains("The request cannot be read"), answer);
    }

    @Test
    void answersListsAndAgentsInTheLanguageAskedFor() {
        Served.given().header("Accept-Language", "fr").contentType("application/x-ndjson")
                .body("{\"hardness\": {\"value\": 18.5, \"unit\": \"gpg\"}}\n{}\n".getBytes(StandardCharsets.UTF_8))
                .post("/v1/bulk/convertHardness").then()
                .statusCode(200).header("Content-Language", "fr").body(containsString("très dure"))
                .body(containsString("Il manque `hardness`"));
        Agent.posting(Served.SERVER.port(), Agent.calculate("convertHardness", "{\"hardness\": {\"value\": 18.5, \"unit\": \"gpg\"}}",
                ",\"format\":\"json\""))
                .header("Accept-Language", "es").post(Agent.PATH).then().statusCode(200)
                .body("result.content[0].text", containsString("muy dura"));
    }

    /** The units of the answer reach what is said, too: 10 degrees Celsius are 50 degrees Fahrenheit. */
    @ParameterizedTest
    @CsvSource({"us, en, 50\u00a0°F", "metric, en, 10\u00a0°C", "metric, de, 10 °C"})
    void speaksInTheUnitsOfTheAnswer(String units, String language, String told) {
        List<String> messages = Served.posting("{\"water\": {\"hardness\": {\"value\": 18.5, \"unit\": \"gpg\"}, \"temperature\":"
                + " {\"value\": 8, \"unit\": \"C\"}}, \"units\": \"" + units + "\"}").header("Accept-Language", language)
                .post("/v1/compensated-hardness").then().statusCode(200).extract().path("cautions.message");
        assertTrue(messages.stream().anyMatch(message -> message.contains(told)), messages.toString());
        assertEquals(messages.size(), Stream.of(messages).flatMap(List::stream).distinct().count());
    }
}
