package dev.brinebook.payback.api;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The ends of every allowed range together: each request is answered or refused with its faults, none breaks. */
class PaybackCornersTest {

    private static PaybackServer server;

    @BeforeAll
    static void start() {
        server = new PaybackServer();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void answersOrRefusesTheCornersOfTrials() {
        assertMostAnswered(400, PaybackCornersTest::trial);
    }

    @Test
    void answersOrRefusesTheCornersOfGivenYears() {
        assertMostAnswered(200, PaybackCornersTest::years);
    }

    private interface Maker {
        String body(Random random);
    }

    private static void assertMostAnswered(int count, Maker maker) {
        int answered = 0;
        for (int seed = 0; seed < count; seed++) {
            String body = maker.body(new Random(seed));
            Response response = server.post(body);
            int status = response.statusCode();
            assertTrue(status == 200 || status == 422, "seed " + seed + ": " + status + " for " + body);
            answered += status == 200 ? 1 : 0;
        }
        assertTrue(answered > count / 3, "only " + answered + " of " + count + " were answered");
    }

    private static String trial(Random random) {
        return "{\"water\": {\"hardness\": {\"value\": " + of(random, "1", "300", "10000") + ", \"unit\": \"mg/L\"}"
                + maybe(random, ", \"iron\": {\"value\": " + of(random, "0", "0.31", "100") + ", \"unit\": \"mg/L\"}")
                + maybe(random, ", \"temperature\": {\"value\": " + of(random, "1", "35") + ", \"unit\": \"C\"}")
                + maybe(random, ", \"compensation\": {\"set\": \"" + of(random, "light", "conservative") + "\"}")
                + "}, \"household\": " + household(random) + ", \"softener\": " + softener(random)
                + ", \"metered\": " + meter(random)
                + maybe(random, ", \"meteredSaltDose\": " + of(random, "{\"value\": 3, \"unit\": \"lb/ft3\"}",
                        "{\"value\": 20, \"unit\": \"lb/ft3\"}", "{\"value\": 400, \"unit\": \"g/L\"}",
                        "{\"value\": 100, \"unit\": \"g/L\"}"))
                + maybe(random, ", \"preferences\": {\"startDate\": \"" + of(random, "1900-01-01", "2199-12-31")
                        + "\", \"capacityTable\": \"newResin\", \"reserveProbability\": " + of(random, "0.5", "0.999")
                        + "}") + maybe(random, ", \"seed\": " + of(random, "0", "9007199254740991"))
                + money(random) + "}";
    }

    private static String household(Random random) {
        return of(random, "{\"people\": 1}", "{\"people\": 15, \"usePerPerson\": {\"value\": 1000, \"unit\": \"L\"}}",
                "{\"dailyUse\": {\"value\": 0, \"unit\": \"L\"}}",
                "{\"dailyUse\": {\"value\": 15000, \"unit\": \"L\"}, \"dayToDayVariation\": 1.5, \"weekendRatio\": 5}",
                "{\"dailyUse\": {\"value\": 250, \"unit\": \"L\"}, \"dayToDayVariation\": 0,"
                        + " \"outdoorUse\": {\"value\": 5000, \"unit\": \"L\"}}",
                "{\"dailySeries\": {\"firstDate\": \"2026-02-28\", \"unit\": \"L\", \"values\": [45000]}}",
                "{\"dailySeries\": {\"firstDate\": \"2199-12-31\", \"unit\": \"L\", \"values\": [0, 45000, 0]}}");
    }

    private static String softener(Random random) {
        return "{" + of(random, "\"resinVolume\": {\"value\": 1, \"unit\": \"L\"}",
                "\"resinVolume\": {\"value\": 600, \"unit\": \"L\"}, \"tankDiameter\": {\"value\": 1, \"unit\": \"m\"},"
                        + " \"tankHeight\": {\"value\": 3, \"unit\": \"m\"}",
                "\"resinVolume\": {\"value\": 28, \"unit\": \"L\"}",
                "\"nameplateCapacity\": {\"value\": 100, \"unit\": \"g\"}",
                "\"nameplateCapacity\": {\"value\": 30000, \"unit\": \"gr\"}")
                + maybe(random, ", \"salt\": \"potassiumChloride\"")
                + maybe(random, ", \"saltDose\": " + of(random, "{\"value\": 3, \"unit\": \"lb/ft3\"}",
                        "{\"value\": 20, \"unit\": \"lb/ft3\"}", "{\"value\": 200, \"unit\": \"g/L\"}"))
                + maybe(random, ", \"minutes\": {\"backwash\": " + of(random, "0", "240") + ", \"refill\": "
                        + of(random, "0", "1", "240") + ", \"brineAndSlowRinse\": " + of(random, "0", "60", "240") + "}")
                + maybe(random, ", \"flows\": {\"drain\": {\"value\": " + of(random, "1", "500") + ", \"unit\": \"L/min\"},"
                        + " \"refill\": {\"value\": " + of(random, "1", "500") + ", \"unit\": \"L/min\"}}")
                + ", \"control\": " + (random.nextBoolean() ? meter(random) : of(random,
                        "{\"kind\": \"clock\", \"everyDays\": 1}", "{\"kind\": \"clock\", \"everyDays\": 365}",
                        "{\"kind\": \"clock\", \"weekdays\": [\"sunday\"], \"dayOverride\": 1}")) + "}";
    }

    private static String meter(Random random) {
        boolean delayed = random.nextBoolean();
        return "{\"kind\": \"" + (delayed ? "meteredDelayed" : "meteredImmediate") + "\""
                + maybe(random, ", \"hardnessSetting\": {\"value\": " + of(random, "0.001", "10000")
                        + ", \"unit\": \"mg/L\"}")
                + maybe(random, ", \"capacitySetting\": {\"value\": " + of(random, "0.001", "100000")
                        + ", \"unit\": \"g\"}")
                + maybe(random, ", \"dayOverride\": " + of(random, "0", "1", "365"))
                + (delayed ? maybe(random, ", \"reserve\": " + of(random, "{\"rule\": \"meanDay\"}",
                        "{\"rule\": \"share\", \"share\": 0.9}",
                        "{\"rule\": \"volume\", \"volume\": {\"value\": 10000000, \"unit\": \"L\"}}",
                        "{\"rule\": \"dayPercentile\", \"probability\": 0.999}")) : "") + "}";
    }

    private static String years(Random random) {
        return "{\"asFound\": " + year(random) + ", \"converted\": " + year(random) + money(random) + "}";
    }

    private static String year(Random random) {
        return "{\"saltPerYear\": {\"value\": " + of(random, "0", "1e-300", "100", "1e9") + ", \"unit\": \"kg\"},"
                + " \"waterPerYear\": {\"value\": " + of(random, "0", "5000", "1e9") + ", \"unit\": \"L\"}"
                + maybe(random, ", \"regenerationsPerYear\": " + of(random, "0", "1e9"))
                + maybe(random, ", \"serviceVisitsPerYear\": " + of(random, "0", "0.5", "1e9")) + "}";
    }

    private static String money(Random random) {
        String currency = of(random, "USD", "JPY", "KWD");
        return ", \"conversion\": {\"cost\": {\"value\": " + of(random, "0", "0.0001", "350", "1e9") + ", \"unit\": \""
                + currency + "\"}" + maybe(random, ", \"rebate\": {\"value\": " + of(random, "0", "0.0001", "349.9999")
                + ", \"unit\": \"" + currency + "\"}")
                + maybe(random, ", \"horizonYears\": " + of(random, "1", "40")) + "}, \"prices\": {\"saltBag\": {\"price\":"
                + " {\"value\": " + of(random, "0", "8", "1e6") + ", \"unit\": \"" + currency + "\"}, \"mass\": {\"value\": "
                + of(random, "1", "1000") + ", \"unit\": \"kg\"}}, \"water\": " + price(random, currency) + ", \"sewer\": "
                + price(random, currency)
                + maybe(random, ", \"growthPercentPerYear\": " + of(random, "-20", "0", "50"))
                + maybe(random, ", \"discountPercentPerYear\": " + of(random, "0", "50")) + "}"
                + maybe(random, ", \"units\": \"metric\"");
    }

    private static String price(Random random, String currency) {
        return "{\"price\": {\"value\": " + of(random, "0", "2", "1e6") + ", \"unit\": \"" + currency
                + "\"}, \"per\": {\"value\": " + of(random, "1", "1000") + ", \"unit\": \"L\"}}";
    }

    private static String maybe(Random random, String part) {
        return random.nextInt(3) == 0 ? part : "";
    }

    private static String of(Random random, String... choices) {
        return choices[random.nextInt(choices.length)];
    }
}
