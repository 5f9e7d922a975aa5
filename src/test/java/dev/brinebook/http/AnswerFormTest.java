// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An operation that answers in several forms: RFC 9110, sections 12.4.2 (weights), 12.5.1 (Accept), 12.5.5 (Vary). */
class AnswerFormTest {

    private static final String PATH = "/v1/regeneration-schedule";
    private static final String REQUEST = TestServer.example("scheduleRegeneration.apartment");

    private static Response accepting(String accept) {
        return Served.posting(REQUEST).header("Accept", accept).post(PATH);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            application/json                                   | application/json
            text/calendar                                      | text/calendar; charset=utf-8
            text/csv                                           | text/csv; charset=utf-8
            Text/CSV; charset=utf-8                            | text/csv; charset=utf-8
            */*                                                | application/json
            application/*                                      | application/json
            text/*                                             | text/calendar; charset=utf-8
            text/html, */*;q=0.8                               | application/json
            text/csv;q=0.9, application/json;q=0.8             | text/csv; charset=utf-8
            text/csv;q=0.8, application/json;q=0.9             | application/json
            text/csv, application/json                         | application/json
            text/csv;q=0.5, text/calendar;q=0.7, */*;q=0.1     | text/calendar; charset=utf-8
            text/*;q=0.5, text/calendar;q=0.1                  | text/csv; charset=utf-8
            text/csv, */*;q=0.999                              | text/csv; charset=utf-8
            */*, application/json;q=0                          | text/calendar; charset=utf-8
            text/*, text/calendar;q=0                          | text/csv; charset=utf-8
            text/csv;Q=0.3, text/calendar;q=0.30               | text/calendar; charset=utf-8
            """)
    void answersInTheFormOfTheMostWeight(String accept, String contentType) {
        accepting(accept).then().statusCode(200).header("Content-Type", equalTo(contentType))
                .header("Cache-Control", "no-store");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            text/html
            application/xml, image/*
            text/csv;q=0, text/calendar;q=0.000
            application/json;q=0
            */*;q=0
            """)
    void refusesUnsupportedFormsAndNamesTheSupportedOnes(String accept) {
        accepting(accept).then().statusCode(406).contentType("application/problem+json")
                .body("detail", equalTo("The answer is available as application/json, text/calendar or text/csv."));
    }

    @Test
    void answersInJsonWhenNothingIsAsked() throws Exception {
        String answer = RawHttp.send(Served.SERVER.port(), "POST " + PATH + " HTTP/1.1",
                "Content-Type: application/json\r\nContent-Length: " + REQUEST.length() + "\r\n", REQUEST);
        HttpText.assertHeader(answer, "Content-Type", "application/json");
    }

    /** Beside the coding, which is named for every answer; an operation of one form does not depend on Accept. */
    @Test
    void variesByAcceptWhereItDecides() {
        for (String accept : new String[] {"text/csv", "application/json", "text/html"}) {
            assertTrue(accepting(accept).headers().getValues("Vary").contains("Accept"), accept);
        }
        assertTrue(Served.posting("{").header("Accept", "text/csv").post(PATH).headers().getValues("Vary").contains("Accept"));
        Served.posting(Served.SMALLEST).post(Served.CONVERSION).then().header("Vary", not(hasItem("Accept")))
                .header("Vary", equalTo("Accept-Encoding"));
    }

    @Test
    void listsFaultsAsAProblemWhateverTheForm() {
        Served.posting("{}").header("Accept", "text/calendar").post(PATH).then().statusCode(422)
                .contentType("application/problem+json").body("errors.pointer", hasItem("/water"));
    }

    @Test
    void givesTheSameBytesAgain() {
        for (String form : new String[] {"text/csv", "text/calendar", "application/json"}) {
            assertArrayEquals(accepting(form).asByteArray(), accepting(form).asByteArray(), form);
        }
    }

    @Test
    void sendsLargeTablesByGzip() {
        Served.posting(REQUEST.replace("\"days\": 60", "\"days\": 365")).header("Accept", "text/csv")
                .header("Accept-Encoding", "gzip").post(PATH).then().statusCode(200).header("Content-Encoding", "gzip");
    }
}
