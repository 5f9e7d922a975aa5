// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A request that would take much longer than a second is refused, and the fault states the limit, which is answered. */
class MostYearsTest {

    private static final Pattern MOST = Pattern.compile("Must be at most ([\\d,]+)\\. The 8 policies together regenerate ");
    private static final String CASE = """
            {"water": {"hardness": {"value": 19, "unit": "gpg"}}, "household": {"people": 7},
            "softener": {"resinVolume": {"value": 28, "unit": "L"}, "control": {"kind": "clock", "everyDays": 4}},""";

    /** Capacity settings of a gram let it regenerate all day long. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            grams, leastAsked, mostAsked
            1,     10,         2000
            100,   10,         2000
            """)
    void statesTheMostYearsOfPoliciesThatRegenerateAllDay(int grams, int leastAsked, int mostAsked) {
        String body = CASE + "\"years\": %d, \"policies\": [" + IntStream.range(0, 8).mapToObj(i -> """
                {"name": "no. %d", "control": {"kind": "meteredImmediate", "capacitySetting": {"value": %d, "unit": "g"}}}"""
                .formatted(i, grams)).collect(Collectors.joining(",")) + "]}";
        answersTheMostYearsThatItStates("/v1/regeneration-schedule", body, "/years", mostAsked, leastAsked);
    }

    private static void answersTheMostYearsThatItStates(String path, String body, String pointer, int asked, int least) {
        String told = TestServer.post(path, body.formatted(asked)).statusCode(422)
                .body("errors[0].pointer", equalTo(pointer)).body("errors[0].code", equalTo("impossible"))
                .extract().path("errors[0].message");
        Matcher most = MOST.matcher(told);
        assertTrue(most.lookingAt(), told);
        int number = Integer.parseInt(most.group(1).replace(",", ""));
        assertTrue(number >= least && number < asked, told);
        TestServer.post(path, body.formatted(number)).statusCode(200);
    }
}
