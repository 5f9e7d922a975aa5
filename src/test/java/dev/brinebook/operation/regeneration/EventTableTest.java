// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import static org.hamcrest.Matchers.contains;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.http.TestServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The table by RFC 4180, read back by another's parser (Apache Commons CSV 1.14.1). */
class EventTableTest {

    private static final String PATH = "/v1/regeneration-schedule";
    private static final String MEDIA_TYPE = "text/csv";
    private static final List<String> POLICIES = List.of("clock, every \u6c34", "=weekdays", "say \"night\"", "share", "at once");
    /** What a thousand rows of ten digits, each off by half of its last, can be off by. */
    private static final double ADDENDS = 1e-9;

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 60);
    }

    private static List<CSVRecord> table(String request) {
        byte[] bytes = TestServer.post(PATH, request, MEDIA_TYPE).then().statusCode(200).extract().asByteArray();
        String text = new String(bytes, StandardCharsets.UTF_8);
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            return parser.getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void addsUpToTheTotalsOfEveryPolicy(int seed) throws IOException {
        boolean metric = seed % 2 == 0;
        String request = request(new Random(seed), metric ? "metric" : "us");
        JsonNode answer = new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .readTree(TestServer.post(PATH, request).statusCode(200).extract().asByteArray());
        List<CSVRecord> rows = table(request);
        for (int i = 0; i < POLICIES.size(); i++) {
            JsonNode policy = answer.path("policies").path(i);
            JsonNode totals = policy.path("totals");
            String name = POLICIES.get(i).startsWith("=") ? "'" + POLICIES.get(i) : POLICIES.get(i);
            List<CSVRecord> own = rows.stream().filter(row -> row.get("policy").equals(name)).toList();
            List<CSVRecord> regenerations = own.stream().filter(row -> row.get("event").equals("regeneration")).toList();
            assertEquals(totals.path("regenerations").asInt(), regenerations.size(), name);
            assertEquals(totals.path("overrides").asInt(), regenerations.stream()
                    .filter(row -> row.get("reason").equals("override")).count(), name);
            assertSum(totals.at("/salt/value").decimalValue(), regenerations,
                    metric ? "saltKilograms" : "saltPounds");
            assertSum(totals.at("/water/value").decimalValue(), regenerations,
                    metric ? "waterLitres" : "waterUsGallons");
            assertSum(totals.at("/capacityThrownAway/value").decimalValue(), regenerations,
                    metric ? "capacityThrownAwayGrams" : "capacityThrownAwayGrains");
            assertEquals(policy.at("/salt/bags").asInt(), own.stream().filter(row -> row.get("event").equals("saltPurchase"))
                    .mapToInt(row -> Integer.parseInt(row.get("bags"))).sum(), name);
            List<String> dates = own.stream().map(row -> row.get("date")).toList();
            assertEquals(dates.stream().sorted().toList(), dates, name);
            List<String> listed = policy.path("events").findValuesAsText("date");
            assertEquals(listed, regenerations.stream().map(row -> row.get("date")).limit(listed.size()).toList(), name);
            assertTrue(regenerations.stream().allMatch(row -> row.get("hour").isEmpty() == name.equals("at once")), name);
        }
    }

    /** Within half of the last of the six digits that the answer's total is rounded to. */
    private static void assertSum(BigDecimal total, List<CSVRecord> rows, String column) {
        BigDecimal sum = rows.stream().map(row -> new BigDecimal(row.get(column))).reduce(BigDecimal.ZERO, BigDecimal::add);
        int scale = total.signum() == 0 ? 0 : 6 - (total.precision() - total.scale());
        double halfDigit = total.signum() == 0 ? 0 : BigDecimal.ONE.movePointLeft(scale).doubleValue() / 2;
        assertEquals(total.doubleValue(), sum.doubleValue(), halfDigit + ADDENDS * sum.doubleValue(), column);
    }

    @Test
    void dropsNothingOfTheLongestSchedule() {
        List<CSVRecord> rows = table(named("nightly", "\"days\": 1096,", 1));
        assertEquals(1096, rows.stream().filter(row -> row.get("event").equals("regeneration")).count());
        assertEquals(3, rows.stream().filter(row -> row.get("event").equals("service")).count());
    }

    @Test
    void listsTheTasksDueWhateverThePolicy() {
        List<CSVRecord> due = table(TestServer.example("scheduleRegeneration.well-family")).stream()
                .filter(row -> row.get("policy").isEmpty()).toList();
        assertEquals(2, due.size(), "120 days");
        assertEquals("bacteriaTest", due.get(0).get("event"));
        assertEquals("2026-01-01", due.get(0).get("date"));
        assertEquals("resinCleaner", due.get(1).get("event"));
    }

    /** Characters after the list of the OWASP page on CSV injection, from memory; the wide forms are U+FF1D and its like. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', ignoreLeadingAndTrailingWhitespace = true, textBlock = """
            =1+1          | guarded
            +5 days       | guarded
            -5 days       | guarded
            @SUM(A1)      | guarded
            \uFF1D1+1       | guarded
            plain         | as it is
            a=1, "b"      | as it is
            4-day clock   | as it is
            """)
    void noSpreadsheetTakesANameForAFormula(String name, String how) {
        String written = table(named(name, "\"days\": 30,", 4)).get(0).get("policy");
        assertEquals(how.equals("guarded") ? "'" + name : name, written);
    }

    @Test
    void namesHoldNoControlCharacters() {
        for (String name : List.of("\t=1", "\r=1", "\n=1")) {
            TestServer.post(PATH, named(name, "\"days\": 30,", 4), MEDIA_TYPE).then().statusCode(422)
                    .body("errors.pointer", contains("/policies/0/name"));
        }
    }

    /** An apostrophe of the caller's own is kept apart from the guard, so that two names never become one. */
    @Test
    void anApostropheIsGuardedToo() {
        assertEquals("''=1", table(named("'=1", "\"days\": 30,", 4)).get(0).get("policy"));
    }

    private static String named(String name, String days, int everyDays) {
        try {
            return """
                {"water": {"hardness": {"value": 30, "unit": "gpg"}},
                 "household": {"dailyUse": {"value": 100, "unit": "gal"}, "dayToDayVariation": 0}, %s
                 "softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "saltDose": {"value": 8, "unit": "lb/ft3"}},
                 "policies": [{"name": %s, "control": {"kind": "clock", "everyDays": %d}}]}""".formatted(days,
                        new ObjectMapper().writeValueAsString(name), everyDays);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String request(Random random, String units) throws IOException {
        ObjectMapper json = new ObjectMapper();
        return String.format(Locale.ROOT, """
                {"water": {"hardness": {"value": %.3f, "unit": "dH"}, "iron": {"value": %.2f, "unit": "mg/L"}},
                 "household": {"people": %d}, "days": %d, "chargeLeftShare": %.2f, "seed": %d, "units": "%s",
                 "preferences": {"capacityMethod": "table"},
                 "softener": {"resinVolume": {"value": %.2f, "unit": "L"}, "saltDose": {"value": %.1f, "unit": "g/L"}},
                 "policies": [
                  {"name": %s, "control": {"kind": "clock", "everyDays": %d}},
                  {"name": %s, "control": {"kind": "clock", "weekdays": ["friday"], "dayOverride": %d}},
                  {"name": %s, "control": {"kind": "meteredDelayed", "dayOverride": %d}},
                  {"name": %s, "control": {"kind": "meteredDelayed", "reserve": {"rule": "share", "share": 0.2}}},
                  {"name": %s, "control": {"kind": "meteredImmediate"}}]}""", 2 + 40 * random.nextDouble(),
                3 * random.nextDouble(), 1 + random.nextInt(8), 1 + random.nextInt(1096), random.nextDouble(),
                random.nextInt(1_000), units, 5 + 60 * random.nextDouble(), 60 + 180 * random.nextDouble(),
                json.writeValueAsString(POLICIES.get(0)), 1 + random.nextInt(14),
                json.writeValueAsString(POLICIES.get(1)), 7 + random.nextInt(8), json.writeValueAsString(POLICIES.get(2)),
                2 + random.nextInt(20), json.writeValueAsString(POLICIES.get(3)), json.writeValueAsString(POLICIES.get(4)));
    }
}
