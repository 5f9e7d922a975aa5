// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.TestServer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A litre of resin that is used up dozens of times a day would fill a file of many megabytes: that is refused before it is made. */
class ScheduleFileSizeTest {

    private static final String PATH = "/v1/regeneration-schedule";
    private static final int MOST_BYTES = 8_000_000;

    private static String request(int policies, int days) {
        return """
                {"water": {"hardness": {"value": 580, "unit": "gpg"}}, "household": {"dailyUse": {"value": 8000, "unit": "L"}},
                "softener": {"resinVolume": {"value": 1, "unit": "L"}, "saltDose": {"value": 50, "unit": "g/L"},
                "minutes": {"backwash": 1, "brineAndSlowRinse": 5, "fastRinse": 1, "refill": 1}}, "days": %d, "policies": [%s]}"""
                .formatted(days, IntStream.range(0, policies).mapToObj(i -> """
                        {"name": "no. %d", "control": {"kind": "meteredImmediate", "capacitySetting": {"value": 1, "unit": "g"}}}"""
                        .formatted(i)).collect(Collectors.joining(",")));
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            form,          policies, days
            text/csv,      8,        1096
            text/csv,      1,        1096
            text/calendar, 1,        1096
            """)
    void refusesAFileOfTooManyEvents(String form, int policies, int days) {
        TestServer.post(PATH, request(policies, days), form).then().statusCode(422).body("errors.code", contains("impossible"))
                .body("errors[0].pointer", equalTo("/days"))
                .body("errors[0].message", startsWith("Too many days for a file. In 1,096 days it would list "));
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            form,          policies, days
            text/csv,      8,        10
            text/calendar, 8,        80
            application/json, 8,     1096
            """)
    void answersWhatFits(String form, int policies, int days) {
        byte[] answer = TestServer.post(PATH, request(policies, days), form).then().statusCode(200).extract().asByteArray();
        assertTrue(answer.length < MOST_BYTES, answer.length + " bytes");
    }
}
