// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import java.time.LocalDate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerifySavingsTest {

    private static final String CLOCK = "\"from\": \"2026-01-01\", \"to\": \"2026-04-01\", \"control\": \"clock\"";
    private static final String METER = "\"from\": \"2026-05-01\", \"to\": \"2026-07-30\", \"control\": \"meteredImmediate\"";
    private static final String SOFT = ", \"outletHardness\": {\"value\": 0, \"unit\": \"gpg\"}";

    private static String counted(int regenerations, double pounds) {
        return ", \"regenerations\": " + regenerations + ", \"saltPerRegeneration\": {\"value\": " + pounds + ", \"unit\": \"lb\"}";
    }

    private static String water(int gallons) {
        return ", \"water\": {\"value\": " + gallons + ", \"unit\": \"gal\"}";
    }

    /** 90 days each: 30·15 = 450 lb, and 20·15·(18000/20000) = 270 lb at the use before, by hand; 365/90 of them a year. A clock would have
     * used 450 lb in the period after too, which used 300. */
    @Test
    void comparesAtTheUseBefore() {
        verify("before", CLOCK + counted(30, 15) + water(18_000) + SOFT, "after", METER + counted(20, 15) + water(20_000) + SOFT, "")
                .statusCode(200)
                .body("salt.percent", equalTo(40)).body("salt.beforePerYear.value", equalTo(1825))
                .body("salt.savedPerYear.value", equalTo(730)).body("avoidedSalt.value", equalTo(150))
                .body("salt.lowPercent", lessThan(40.0)).body("salt.highPercent", greaterThan(40.0))
                .body("verdict", equalTo("confirmed")).body("findings.code", contains("useMoved"))
                .body("causes.cause", contains("use", "count")).body("water", nullValue())
                .body("summary", containsString("It saves 40\u00a0% of the salt"));
    }

    /** Two readings of a register say the same as their difference. */
    @Test
    void takesTheReadingsOfAMeter() {
        String register = """
                , "meter": {"meter": {"unit": "gal"}, "kind": "register",
                  "readings": [{"at": "%s", "value": 99000}, {"at": "%s", "value": %d}]}""";
        String before = CLOCK + counted(30, 15) + register.formatted("2026-01-01", "2026-04-01", 17_000);
        String after = METER + counted(20, 15) + register.formatted("2026-05-01", "2026-07-30", 19_000);
        String withMeter = verify("before", before, "after", after, "").statusCode(200).extract().asString();
        String withWater = verify("before", CLOCK + counted(30, 15) + water(18_000), "after", METER + counted(20, 15) + water(20_000), "")
                .extract().asString();
        for (String number : new String[] {"salt.percent", "salt.lowPercent", "salt.highPercent", "avoidedSalt.value"}) {
            assertEquals(JsonPath.from(withWater).getDouble(number), JsonPath.from(withMeter).getDouble(number), 1e-4, number);
        }
    }

    /** Days that are alike make the saving surer than days of which only the sum is known. */
    @Test
    void takesTheScatterFromDailyReadings() {
        StringBuilder days = new StringBuilder();
        for (LocalDate day = LocalDate.of(2026, 1, 1); day.isBefore(LocalDate.of(2026, 4, 1)); day = day.plusDays(1)) {
            days.append(days.isEmpty() ? "" : ", ").append("{\"at\": \"").append(day).append("\", \"value\": 200}");
        }
        String daily = ", \"meter\": {\"meter\": {\"unit\": \"gal\", \"intervalMinutes\": 1440}, \"kind\": \"volume\", \"readings\": ["
                + days + "]}";
        String after = METER + counted(20, 15) + water(18_000);
        JsonPath sum = verify("before", CLOCK + counted(30, 15) + water(18_000), "after", after, "").extract().jsonPath();
        JsonPath each = verify("before", CLOCK + counted(30, 15) + daily, "after", after, "").statusCode(200).extract().jsonPath();
        assertEquals(sum.getDouble("salt.percent"), each.getDouble("salt.percent"), 1e-4);
        assertTrue(each.getDouble("salt.uncertaintyPercent") < 0.8 * sum.getDouble("salt.uncertaintyPercent"));
    }

    /** A promise: confirmed, refused, too early; harder water and contradicting bags allow no verdict. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "20 | 30 | '' | '' | confirmed",
        "28 | 50 | '' | '' | notConfirmed",
        "23 | 30 | '' | '' | tooEarly",
        "20 | 30 | '\"outletHardness\": {\"value\": 5, \"unit\": \"gpg\"}' | harderAtOutlet | noVerdict",
        "20 | 30 | '\"bags\": 20, \"saltAtStart\": {\"value\": 100, \"unit\": \"lb\"}, \"saltAtEnd\": {\"value\": 100, \"unit\": \"lb\"}' "
                + "| saltContradicts | noVerdict"})
    void givesTheVerdict(int regenerations, int promised, String more, String finding, String verdict) {
        String after = METER + counted(regenerations, 15) + water(18_000) + (more.contains("outlet") ? "" : SOFT)
                + (more.isEmpty() ? "" : ", " + more);
        ValidatableResponse answer = verify("before", CLOCK + counted(30, 15) + water(18_000) + SOFT, "after", after,
                ", \"promise\": {\"saltPercent\": " + promised + "}").statusCode(200).body("verdict", equalTo(verdict));
        if (finding.isEmpty()) {
            answer.body("findings", empty());
        } else {
            answer.body("findings.code", hasItem(finding));
        }
    }

    /** Waiting is stated with a date, weeks after the last reading; sent again with that much longer readings there is a verdict. */
    @Test
    void saysWhenToReadAgain() {
        String promise = ", \"promise\": {\"saltPercent\": 30}";
        String exact = ", \"saltPerRegenerationPlusMinus\": {\"value\": 0.2, \"unit\": \"lb\"}";
        String before = "\"from\": \"2025-01-01\", \"to\": \"2026-01-01\", \"control\": \"clock\"" + counted(120, 15) + exact
                + water(73_000);
        String short30 = "\"from\": \"2026-02-01\", \"to\": \"2026-03-03\", \"control\": \"meteredImmediate\"";
        JsonPath early = verify("before", before, "after", short30 + counted(7, 15) + exact + water(6_000), promise).statusCode(200)
                .body("verdict", equalTo("tooEarly")).extract().jsonPath();
        int weeks = early.getInt("moreWeeks");
        LocalDate again = LocalDate.parse(early.getString("readAgainOn"));
        assertEquals(LocalDate.of(2026, 3, 3).plusWeeks(weeks), again);
        int days = 30 + 7 * weeks;
        verify("before", before, "after", short30.replace("2026-03-03", again.toString()) + counted(7 * days / 30, 15)
                + exact + water(200 * days), promise).statusCode(200).body("verdict", equalTo("confirmed"));
    }

    /** Beforehand a larger saving shows sooner, and nothing of it can be read yet. */
    @Test
    void statesTheWaitBeforehand() {
        JsonPath wait = verify("before", CLOCK + counted(30, 15) + water(18_000), "plannedControl", null, "").statusCode(200)
                .body("verdict", nullValue()).body("salt", nullValue()).body("waiting", hasSize(4)).extract().jsonPath();
        for (int i = 1; i < 3; i++) {
            Integer sooner = wait.get("waiting[" + i + "].likelyWeeks");
            Integer later = wait.get("waiting[" + (i - 1) + "].likelyWeeks");
            assertTrue(later == null || sooner < later, "a saving of " + wait.get("waiting[" + i + "].savingPercent"));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"to\": \"2026-04-01\" | \"to\": \"2026-01-05\" | /before/to | 7 to 1,096 days",
        "\"from\": \"2026-05-01\" | \"from\": \"2026-03-01\" | /after/from | 2026",
        "\"regenerations\": 30 | \"regenerations\": 3000 | /before/regenerations | 1,080",
        "\"regenerations\": 30, | '' | /before | bags",
        "\"control\": \"clock\" | \"control\": \"clock\", \"saltAtStart\": {\"value\": 3, \"unit\": \"kg\"} | /before/saltAtEnd | start and end"})
    void saysWhatIsWrong(String from, String to, String pointer, String detail) {
        String body = body("before", CLOCK + counted(30, 15) + water(18_000), "after", METER + counted(20, 15) + water(20_000), "");
        TestServer.post("/v1/savings-verification", body.replaceFirst(Pattern.quote(from), to)).statusCode(422)
                .body("errors.pointer", hasItem(containsString(pointer))).body("errors.message", hasItem(containsString(detail)));
    }

    /** Three homes alike: the pooled saving is theirs, and the factor is what was seen of the promise. */
    @Test
    void poolsAFleet() {
        StringBuilder homes = new StringBuilder();
        for (int i = 1; i <= 4; i++) {
            homes.append(i == 1 ? "" : ", ").append("{\"name\": \"home ").append(i).append("\", \"before\": {").append(CLOCK)
                    .append(counted(30, 15)).append(water(18_000)).append("}, \"after\": {").append(METER)
                    .append(counted(i == 4 ? 120 : 24, 15)).append(water(18_000)).append("}}");
        }
        TestServer.post("/v1/fleet-savings-verification", "{\"homes\": [" + homes + "], \"promise\": {\"saltPercent\": 40}}")
                .statusCode(200)
                .body("pooled.homes", equalTo(3)).body("pooled.percent", equalTo(20)).body("pooled.spread", equalTo(0))
                .body("promise.factor", equalTo(0.5)).body("homes.outlier", contains(false, false, false, true))
                .body("promise.useFactor", closeTo(1.3333, 1e-4)).body("homes[3].deviation", greaterThan(3.0))
                .body("summary", containsString("1 home is an outlier"));
    }

    private static ValidatableResponse verify(String one, String before, String other, String after, String more) {
        return TestServer.post("/v1/savings-verification", body(one, before, other, after, more));
    }

    private static String body(String one, String before, String other, String after, String more) {
        return "{\"" + one + "\": {" + before + "}" + (after == null ? "" : ", \"" + other + "\": {" + after + "}") + more + "}";
    }

    /** A register that was read in another year says nothing of this period. */
    @Test
    void refusesReadingsOfAnotherTime() {
        String register = """
                , "meter": {"meter": {"unit": "gal"}, "kind": "register",
                  "readings": [{"at": "%s", "value": 1000}, {"at": "%s", "value": 19000}]}""";
        String before = CLOCK + counted(30, 15) + water(18_000);
        verify("before", before, "after", METER + counted(20, 15) + register.formatted("2020-05-01", "2020-07-30"), "").statusCode(422)
                .body("errors", hasSize(1)).body("errors[0].pointer", equalTo("/after/meter/readings/0/at"));
        verify("before", before, "after", METER + counted(20, 15) + register.formatted("2026-04-29", "2026-08-01"), "").statusCode(200);
    }

    /** Of dates in the wrong order the rest says nothing: one error. */
    @Test
    void namesReversedDatesOnce() {
        verify("before", CLOCK.replace("2026-04-01", "2025-04-01") + counted(30, 15) + water(18_000), "after", METER + counted(20, 15)
                + water(20_000), "").statusCode(422).body("errors.pointer", contains("/before/to"));
    }

    /** A delayed meter runs 0.5 (1 + 0.45²) days over its call, so its salt grows less than the use: 450 lb of 18,000 gal are
     * 450 · 1.111 / (1 + 0.6 · 0.111 / 3) = 489 lb of 20,000 gal. 300 lb were used. Source: mean excess of a renewal process. */
    @Test
    void avoidedSaltKnowsThatADelayedMeterWaits() {
        String delayed = CLOCK.replace("\"clock\"", "\"meteredDelayed\"");
        verify("before", delayed + counted(30, 15) + water(18_000), "after", METER + counted(20, 15) + water(20_000), "")
                .statusCode(200).body("avoidedSalt.value.doubleValue()", closeTo(189, 2));
    }

    /** What a fleet says of the next promises: 21 for 30 regenerations save the 30 % promised, 60 save nothing. Never a negative share. */
    @ParameterizedTest
    @CsvSource({"21, 3 homes save 30\u00a0%, go on promising the same saving",
        "15, 3 homes save 50\u00a0%, Multiply the saving you promise next by 1.7",
        "60, 3 homes use 100\u00a0% more salt, Promise no saving"})
    void saysWhatAFleetMeansForTheNextPromises(int regenerations, String saved, String next) {
        String home = "{\"name\": \"%d\", \"before\": {" + CLOCK + counted(30, 15) + water(18_000) + "}, \"after\": {" + METER
                + counted(regenerations, 15) + water(18_000) + "}}";
        TestServer.post("/v1/fleet-savings-verification", "{\"homes\": [" + home.formatted(1) + "," + home.formatted(2) + ","
                + home.formatted(3) + "], \"promise\": {\"saltPercent\": 30}}").statusCode(200)
                .body("summary", containsString(saved)).body("summary", containsString(next));
    }

    /** One regeneration in 90 days may be a controller that stopped: no promise is kept by it. Three are the fewest that say something. */
    @ParameterizedTest
    @CsvSource({"1, tooEarly", "2, tooEarly", "3, confirmed"})
    void givesNoVerdictOnTooFewRegenerations(int regenerations, String verdict) {
        verify("before", CLOCK + counted(30, 15) + water(18_000), "after", METER + counted(regenerations, 15) + water(18_000), "")
                .statusCode(200).body("verdict", equalTo(verdict)).body("findings.code", hasItem("fewRegenerations"));
    }
}
