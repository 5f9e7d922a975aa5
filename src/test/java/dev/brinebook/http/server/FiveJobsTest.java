// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.http.Served;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Five whole jobs as a sensible client of a small context would do them, each from nothing but the address. Expected figures are those of
 * the operations; each job also has one that can be checked by hand.
 */
class FiveJobsTest {

    private static final int FRAME_OF_A_CALL = 15;
    private static final int CONTEXT = 32_000;
    private static final int UP_FRONT = 2_400;

    /** What is read and written in one conversation, in tokens. */
    private int tokens = upFront();

    private static int upFront() {
        try {
            Response opened = Agent.send(Agent.request("initialize", "{\"protocolVersion\":\"2025-11-25\",\"capabilities\":{}}"));
            String tools = Agent.JSON.readTree(Agent.send(Agent.request("tools/list", "{}")).asString()).at("/result/tools").toString();
            return Agent.tokens(opened.path("result.instructions")) + Agent.tokens(tools);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private void asks(String question) {
        tokens += Agent.tokens(question);
    }

    private String calls(String tool, String arguments, boolean faulty) {
        Response response = Agent.send(Agent.call(tool, arguments));
        assertEquals(faulty, response.path("result.isError"), response.asString());
        String text = response.path("result.content[0].text");
        tokens += Agent.tokens(arguments) + Agent.tokens(text) + FRAME_OF_A_CALL;
        return text;
    }

    private static JsonNode answer(String path, String request) throws JsonProcessingException {
        return Agent.JSON.readTree(Served.posting(request).post(path).then().statusCode(200).extract().asString());
    }

    private static void assertHolds(String text, String... parts) {
        int from = 0;
        for (String part : parts) {
            int at = plain(text).indexOf(plain(part), from);
            assertTrue(at >= 0, part + " (in this order) in " + text);
            from = at;
        }
    }

    /** Sentences have no-break spaces, figures have not. */
    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    private void assertWithin(int budget) {
        assertTrue(tokens < budget && budget < CONTEXT, tokens + " tokens of " + budget);
    }

    @Test
    void spendsLittleBeforeTheFirstCall() {
        assertWithin(UP_FRONT);
    }

    /** By hand: iron adds 0.2 mg/L times 4 gpg (common practice): 18.5 gpg and 0.8 gpg. */
    @Test
    void isItWorthIt() throws JsonProcessingException {
        asks("18.5 grains, iron 0.2 mg/L, city water, four people, 1.5 cubic feet with a clock; a meter costs 480 dollars. Worth it?");
        String facts = "{\"hardness\":18.5,\"hardnessUnit\":\"gpg\",\"ironMgPerL\":0.2,\"supply\":\"publicSupply\",\"people\":4,\""
                + "size\":1.5,"
                + "\"sizeUnit\":\"ft3\",\"control\":\"clock\",\"conversionCost\":480";
        String questions = calls("quick_assess", facts + "}", true);
        assertHolds(questions, "Nothing was calculated", "everyDays:", "saltPerRegeneration:");
        asks("Every 3 days, 15 pounds.");
        String text = calls("quick_assess", facts + ",\"everyDays\":3,\"saltPerRegeneration\":15,\"saltUnit\":\"lb\"}", false);
        JsonNode answer = answer("/v1/assessment", "{\"water\":{\"hardness\":{\"value\":18.5,\"unit\":\"gpg\"},\"iron\":{\"value\":0.2,"
                + "\"unit\":\"mg/L\"},\"supply\":\"publicSupply\"},\"household\":{\"people\":4},\"softener\":{\"resinVolume\":{\""
                + "value\":1.5,"
                + "\"unit\":\"ft3\"},\"saltPerRegeneration\":{\"value\":15,\"unit\":\"lb\"},\"control\":{\"kind\":\"clock\",\""
                + "everyDays\":3}},"
                + "\"retrofit\":{\"cost\":{\"value\":480,\"unit\":\"USD\"}}}");
        assertHolds(text, "WARNING sodiumRestrictedDiet: ", "Summary: " + answer.get("summary").asText(),
                "with iron and manganese 19.3 gpg", "hardness " + answer.at("/settings/hardness/value").asText() + " gpg",
                "A year now: salt ", "A year metered: salt ",
                "cost after rebate 480 USD; simple payback ");
        assertWithin(3_700);
    }

    /**
     * By hand: 310 mg/L are 17.4 German degrees (17.848 mg/L each), and iron adds 0.4 mg/L times 68.47, so that the next whole degree is
     * 19.
     */
    @Test
    void whatToSet() throws JsonProcessingException {
        asks("A well with 310 ppm and 0.4 mg/L iron, three people, 25 litres of resin, a night meter, 120 g of salt a litre. What to set?");
        calls("describe_operation", "{\"operation\":\"assess\"}", false);
        String request = "{\"water\":{\"hardness\":{\"value\":310,\"unit\":\"mg/L\"},\"iron\":{\"value\":0.4,\"unit\":\"mg/L\"},\"supply\":"
                + "\"privateWell\"},\"household\":{\"people\":3},\"softener\":{\"resinVolume\":{\"value\":25,\"unit\":\"L\"},\"saltDose\":"
                + "{\"value\":120,\"unit\":\"g/L\"},\"control\":{\"kind\":\"meteredDelayed\"}},\"units\":\"metric\"}";
        String text = calls("calculate", "{\"operation\":\"assess\",\"arguments\":" + request + ",\"show\":[\"/refill\"]}", false);
        JsonNode answer = answer("/v1/assessment", request);
        assertHolds(text, "WARNING wellWithoutBacteriaTest: ", "WARNING tankSizeNotGiven: ", "Softener: fits yes",
                "Set: hardness 19 °dH; capacity " + answer.at("/settings/capacity/value").asText(),
                "refill " + answer.at("/settings/refillMinutes").asText() + " min", "/refill: {");
        assertWithin(4_700);
    }

    /** By hand: the service flow of five people is too high for one cubic foot, and of the others the larger costs less a year. */
    @Test
    void whichOneFits() throws JsonProcessingException {
        asks("24 grains, iron 0.1 mg/L, five people. C-100 1 ft3 499 dollars, C-150 1.5 ft3 629, C-200 2 ft3 799. Which one fits?");
        String found = calls("find_operation", "{\"question\":\"Which of three softeners fits five people?\"}", false);
        assertHolds(found, "sizeSoftener: ");
        calls("describe_operation", "{\"operation\":\"sizeSoftener\"}", false);
        calls("describe_operation", "{\"part\":\"candidate\"}", false);
        String request = "{\"water\":{\"hardness\":{\"value\":24,\"unit\":\"gpg\"},\"iron\":{\"value\":0.1,\"unit\":\"mg/L\"}},\""
                + "household\":"
                + "{\"people\":5},\"candidates\":[" + candidate("C-100", "1", 9, 48, 499) + "," + candidate("C-150", "1.5", 10, 54, 629)
                + "," + candidate("C-200", "2", 12, 52, 799) + "]}";
        String text = calls("calculate", "{\"operation\":\"sizeSoftener\",\"arguments\":" + request + "}", false);
        JsonNode answer = answer("/v1/softener-sizing", request);
        assertEquals("C-200", answer.get("choice").asText());
        assertHolds(text, "WARNING sodiumRestrictedDiet: ", "Rank 1: “C-200”; fits yes", "cost 360 USD a year", "Rank 2: “C-150”; "
                + "fits yes",
                "Rank 3: “C-100”; fits no", "fails continuousFlowTooHigh");
        assertTrue(Math.abs(answer.at("/candidates/0/costPerYear/value").asDouble() - 360) <= 2.5, answer.at("/candidates/0").toString());
        assertWithin(5_100);
    }

    private static String candidate(String sku, String cubicFeet, int diameter, int height, int dollars) {
        return "{\"sku\":\"" + sku + "\",\"resinVolume\":{\"value\":" + cubicFeet
                + ",\"unit\":\"ft3\"},\"tankDiameter\":{\"value\":" + diameter
                + ",\"unit\":\"in\"},\"tankHeight\":{\"value\":" + height + ",\"unit\":\"in\"},\"price\":{\"value\":" + dollars
                + ",\"unit\":\"USD\"}}";
    }

    @Test
    void whyThatReserve() throws JsonProcessingException {
        asks("Why that reserve and that dose?");
        String request = "{\"water\":{\"hardness\":{\"value\":18.5,\"unit\":\"gpg\"},\"iron\":{\"value\":0.2,\"unit\":\"mg/L\"}},"
                + "\"household\":{\"people\":4},\"softener\":{\"resinVolume\":{\"value\":1.5,\"unit\":\"ft3\"},\"control\":{\"kind\":"
                + "\"clock\","
                + "\"everyDays\":3}}}";
        String text = calls("calculate", "{\"operation\":\"assess\",\"arguments\":" + request
                + ",\"explain\":[\"/settings/reserve\",\"/settings/saltDose\"]}", false);
        JsonNode settings = answer("/v1/assessment", request).get("settings");
        assertHolds(text, "WARNING sodiumRestrictedDiet: ", "/settings/reserve = " + settings.at("/reserve/value").asText() + " gal",
                "Source (", "/settings/saltDose = " + settings.at("/saltDose/value").asText() + " lb/ft³", "Source (published): ",
                "/softener/saltDose 10 lb/ft3");
        assertWithin(2_900);
    }

    /** By hand: 22 gpg and 0.5 mg/L of iron times 4 make 24 gpg. */
    @Test
    void isThisListRight() throws JsonProcessingException {
        asks("Set: 22 grains, capacity 48000, reserve 100 gal, override 14, hour 2, backwash 10, refill 15 at 0.5 gpm, 18 lb. Test 22 "
                + "with iron "
                + "0.5 mg/L, 1.5 ft3, four people. Right?");
        String start = "{\"operation\":\"reviewSettings\",\"arguments\":{\"water\":{\"hardness\":{\"value\":22,\"unit\":\"gpg\"},\"iron\":"
                + "{\"value\":0.5,\"unit\":\"mg/L\"}},\"household\":{\"people\":4},\"softener\":{\"resinVolume\":{\"value\":1.5,\""
                + "unit\":\"ft3\"},"
                + "\"saltPerRegeneration\":{\"value\":18,\"unit\":\"lb\"},\"minutes\":{\"backwash\":10,\"refill\":15},\"flows\":{\""
                + "refill\":"
                + "{\"value\":0.5,\"unit\":\"gpm\"}},\"control\":";
        String faults = calls("calculate", start + "{\"kind\":\"meter\",\"hardness\":{\"value\":22,\"unit\":\"gpg\"},\"capacity\":{\""
                + "value\":48000,"
                + "\"unit\":\"gr\"}}}}}", true);
        assertHolds(faults, "3 faults; nothing was calculated", "did you mean capacitySetting?", "did you mean hardnessSetting?",
                "did you mean meteredDelayed?", "describe_operation part control");
        calls("describe_operation", "{\"part\":\"control\"}", false);
        calls("describe_operation", "{\"part\":\"reserve\"}", false);
        String control = "{\"kind\":\"meteredDelayed\",\"hardnessSetting\":{\"value\":22,\"unit\":\"gpg\"},\"capacitySetting\":{\""
                + "value\":48000,"
                + "\"unit\":\"gr\"},\"reserve\":{\"rule\":\"volume\",\"volume\":{\"value\":100,\"unit\":\"gal\"}},\"dayOverride\":14,"
                + "\"regenerationHour\":2}";
        String text = calls("calculate", start + control + "}}}", false);
        JsonNode answer = answer("/v1/settings-review", start.substring(start.indexOf("{\"water\"")) + control + "}}");
        List<String> codes = answer.get("findings").findValuesAsText("code");
        assertTrue(codes.containsAll(List.of("capacityAboveDose", "hardnessWithoutIron", "overrideTooLongForIron", "refillAboveDose",
                "reserveTooSmall")), codes.toString());
        answer.get("findings").forEach(finding -> assertHolds(text, finding.get("code").asText() + ": set " + finding.get("set").asText()
                + ", should be " + finding.get("shouldBe").asText()));
        assertHolds(text, "hardnessWithoutIron: set 22 gpg, should be 24 gpg");
        assertWithin(5_000);
    }
}
