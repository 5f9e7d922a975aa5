// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.http.TestServer;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Equal questions get equal figures, whatever seed, date, operation or unit they are asked with. */
class EqualQuestionsTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int SEEDS = 50;
    /** More are asked for with -Dhomes=500. */
    private static final int HOMES = Integer.getInteger("homes", 120) / 6;
    /** Answers have six digits. */
    private static final double SAME = 1e-5;
    /** What shows an example of a year, or repeats the seed and the date. */
    private static final Set<String> OF_THE_EXAMPLE = Set.of("firstDate", "saltAsFound", "saltMetered", "assumptions");

    /** Steps of a controller, which else go by the units of the answer. */
    static final String US_CONTROLLER = """
            {"reserveStep": {"value": 10, "unit": "gal"}, "controller": {"hardnessStep": {"value": 1, "unit": "gpg"},
              "capacityStep": {"value": 100, "unit": "gr"}, "saltStep": {"value": 0.5, "unit": "lb"}}}""";

    private static JsonNode answer(String path, JsonNode request) {
        try {
            return JSON.readTree(TestServer.post(path, request.toString()).statusCode(200).extract().asString());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static ObjectNode tree(String json) {
        try {
            return (ObjectNode) JSON.readTree(json);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** No setting, verdict or expected figure depends on how an example is simulated. */
    @ParameterizedTest
    @ValueSource(strings = {"well-family", "apartment", "holiday-cabin"})
    void fiftySeedsAndStartDatesGiveOneAnswer(String household) {
        Set<String> answers = new TreeSet<>();
        for (int seed = 1; seed <= SEEDS; seed++) {
            ObjectNode request = tree(TestServer.example("assess." + household));
            request.put("seed", seed);
            request.withObject("/preferences").put("startDate", LocalDate.of(2026, 1, 1).plusDays(8L * seed).toString());
            ObjectNode answer = (ObjectNode) answer("/v1/assessment", request);
            answer.findParents("firstDate").forEach(each -> ((ObjectNode) each).remove(OF_THE_EXAMPLE));
            answers.add(answer.remove(OF_THE_EXAMPLE).toString());
        }
        assertEquals(1, answers.size());
    }

    @Test
    void everyOperationGivesTheSameYear() {
        Random random = new Random(1);
        for (int i = 0; i < HOMES; i++) {
            ObjectNode home = home(random);
            String where = "seed 1, home " + i + ": " + home;
            JsonNode assessed = answer("/v1/assessment", with(home, "retrofit", "{\"cost\": {\"value\": 400, \"unit\": \"USD\"}}"));
            JsonNode found = assessed.at("/year/asFound");
            same(found, answer("/v1/settings-review", home).at("/asFound"), where);
            same(found, answer("/v1/regeneration-schedule", with(home, "policies", "[{\"name\": \"as found\", \"control\": "
                    + home.at("/softener/control") + "}]")).at("/policies/0/perYear"), where);
            JsonNode compared = answer("/v1/alternatives", with(home, "alternatives", "[{\"name\": \"as it is\", \"kind\": \"asFound\"},"
                    + "{\"name\": \"metered\", \"kind\": \"metered\", \"cost\": {\"value\": 400, \"unit\": \"USD\"}}]"))
                    .at("/alternatives");
            same(found, compared.at("/0/year"), where);
            same(assessed.at("/year/metered"), compared.at("/1/year"), where);
            if (home.at("/softener/control/kind").asText().equals("clock")) {
                assertEquals(assessed.at("/retrofit/firstYearSaving/total/value").doubleValue(),
                        compared.findValue("firstYearSaving").at("/total/value").doubleValue(), 0.01, where);
            }
        }
    }

    private static void same(JsonNode expected, JsonNode actual, String where) {
        for (String pointer : List.of("/regenerations", "/hardDays", "/salt/value", "/water/value")) {
            near(expected.at(pointer), actual.at(pointer), pointer + ", " + where);
        }
    }

    private static void near(JsonNode expected, JsonNode actual, String where) {
        assertTrue(expected.isNumber() && actual.isNumber(), where);
        assertEquals(expected.doubleValue(), actual.doubleValue(), SAME * Math.max(1, expected.doubleValue()), where);
    }

    @Test
    void whatIsAdvisedGivesNoFindingAndTheYearThatWasPromised() {
        Random random = new Random(2);
        for (int i = 0; i < HOMES; i++) {
            ObjectNode home = home(random);
            String where = "seed 2, home " + i + ": " + home;
            JsonNode advised = answer("/v1/assessment", home);
            if (List.of("improve", "replace").contains(advised.at("/verdict/step").asText())) {
                continue; // the settings are those of another softener
            }
            JsonNode settings = advised.at("/settings");
            ObjectNode softener = home.withObject("/softener");
            softener.set("saltDose", settings.get("saltDose"));
            boolean atOnce = home.at("/softener/control/kind").asText().equals("meteredImmediate");
            softener.set("control", tree("{\"kind\": \"" + (atOnce ? "meteredImmediate" : "meteredDelayed")
                    + "\", \"hardnessSetting\": " + settings.get("hardness")
                    + ", \"capacitySetting\": " + settings.get("capacity") + ", \"dayOverride\": " + settings.get("dayOverride")
                    + (atOnce ? "}" : ", \"reserve\": {\"rule\": \"volume\", \"volume\": " + settings.get("reserve") + "}}")));
            JsonNode reviewed = answer("/v1/settings-review", home);
            assertEquals(List.of(), reviewed.at("/findings").findValuesAsText("code"), where);
            same(advised.at("/year/metered"), reviewed.at("/asFound"), where);
        }
    }

    /** The same home and controller asked in US and in metric units. */
    @Test
    void usAndMetricTwinsAgree() {
        Random random = new Random(3);
        for (int i = 0; i < HOMES; i++) {
            ObjectNode home = home(random);
            home.set("preferences", tree(US_CONTROLLER));
            JsonNode us = answer("/v1/assessment", home.put("units", "us"));
            JsonNode metric = answer("/v1/assessment", home.put("units", "metric"));
            for (String year : List.of("/year/asFound", "/year/metered")) {
                near(us.at(year + "/regenerations"), metric.at(year + "/regenerations"), "seed 3, home " + i + ": " + home);
                near(us.at(year + "/hardDays"), metric.at(year + "/hardDays"), "seed 3, home " + i + ": " + home);
                // 1 lb = 0.45359237 kg: NIST SP 811
                assertEquals(us.at(year + "/salt/value").doubleValue() * 0.45359237, metric.at(year + "/salt/value").doubleValue(),
                        SAME * us.at(year + "/salt/value").doubleValue(), "seed 3, home " + i + ": " + home);
            }
            assertEquals(us.at("/fit/shortcomings"), metric.at("/fit/shortcomings"));
            assertEquals(us.at("/findings").findValuesAsText("code"), metric.at("/findings").findValuesAsText("code"));
        }
    }

    private static ObjectNode with(ObjectNode home, String name, String value) {
        try {
            ObjectNode copy = home.deepCopy();
            copy.set(name, JSON.readTree(value));
            return copy;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static ObjectNode home(Random random) {
        String control = List.of("{\"kind\": \"clock\", \"everyDays\": " + (1 + random.nextInt(7)) + "}",
                "{\"kind\": \"clock\", \"weekdays\": [\"tuesday\", \"saturday\"]}", "{\"kind\": \"meteredImmediate\"}",
                "{\"kind\": \"meteredDelayed\", \"reserve\": {\"rule\": \"share\", \"share\": 0.2}}").get(random.nextInt(4));
        String iron = random.nextInt(3) > 0 ? "" : ", \"iron\": {\"value\": 0.6, \"unit\": \"mg/L\"}";
        return tree("""
                {"water": {"hardness": {"value": %d, "unit": "gpg"}, "hardnessUncertainty": {"value": 1, "unit": "gpg"}%s},
                 "household": {"people": %d},
                 "softener": {"resinVolume": {"value": %s, "unit": "ft3"}, "tankDiameter": {"value": 12, "unit": "in"},
                  "saltDose": {"value": %d, "unit": "lb/ft3"}, "control": %s}}""".formatted(6 + random.nextInt(30), iron,
                1 + random.nextInt(7), List.of("0.75", "1", "1.25", "1.5", "2", "2.5").get(random.nextInt(6)),
                List.of(6, 8, 10, 12, 15).get(random.nextInt(5)), control));
    }
}
