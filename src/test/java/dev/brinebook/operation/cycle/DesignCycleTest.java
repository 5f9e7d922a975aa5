// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.cycle;

import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import dev.brinebook.http.Served;
import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DesignCycleTest {

    /** Common practice: a cubic foot at 10 lb takes 60 minutes of brine and slow rinse, and 6.7 of refill at 0.5 gpm. */
    @Test
    void setsUpACubicFootInUsUnits() {
        post("""
                {"softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "tankDiameter": {"value": 9, "unit": "in"},
                  "tankHeight": {"value": 48, "unit": "in"}, "saltDose": {"value": 10, "unit": "lb/ft3"}},
                 "waterTemperature": {"value": 59, "unit": "F"}, "brineTankTemperature": {"value": 68, "unit": "F"},
                 "regenerationsPerYear": 50}""").statusCode(200)
                .body("cycle.steps.step", contains("backwash", "brineAndSlowRinse", "fastRinse", "refill"))
                .body("cycle.steps.wholeMinutes", contains(8, 60, 8, 7))
                .body("cycle.steps[3].tenthMinutes", equalTo(6.7))
                .body("cycle.steps[3].withinGuide", nullValue())
                .body("cycle.steps[0].flow.value", equalTo(3))
                .body("cycle.totalWholeMinutes", equalTo(83))
                .body("cycle.water.value", closeTo(24 + 7.5 + 7.5 + 22.4 + 3.3, 2))
                .body("refill.saltInWater.value", closeTo(2.99, 0.005)).body("refill.saltInWater.unit", equalTo("lb/gal"))
                .body("refill.saltInBrine.value", closeTo(2.645, 0.005))
                .body("refill.saltPerVolumeOfWater.value", closeTo(0.3583, 0.0006)).body("refill.saltPerVolumeOfWater.unit", equalTo("kg"))
                .body("refill.saltPerVolumeOfBrine.unit", equalTo("kg"))
                .body("refill.saltInWholeMinutes.value", closeTo(7 * 0.5 * 2.99, 0.02))
                .body("refill.note", containsString("13\u00a0% too much salt"))
                .body("capacity.value", equalTo(27000)).body("capacity.unit", equalTo("gr"))
                .body("saltEfficiency.value", equalTo(2700))
                .body("efficiency.findAll { it.standing == 'met' }", empty())
                .body("efficiency.find { it.mostWater?.value == 5 }.missedBy", contains("salt"))
                .body("waterPerCapacity.value", closeTo(64.8 / 27, 0.02)).body("waterPerCapacity.unit", equalTo("gal/kgr"))
                .body("waterByResin.perVolumeOfResin.value", closeTo(64.8, 0.2))
                .body("waterByResin.slowRinse.volume.value", closeTo(7.48, 0.005))
                .body("waterByResin.slowRinse.withinPlantBand", equalTo(true))
                .body("waterByResin.fastRinse.bedVolumes", equalTo(3))
                .body("waterByResin.fastRinse.withinPlantBand", equalTo(false))
                .body("waterByResin.withinUsual", equalTo(true)).body("waterByResin.belowPlants", equalTo(true))
                .body("year.salt.value", equalTo(500))
                .body("findings", empty())
                .body("summary", endsWith("Set these minutes: backwash 8, brine draw and slow rinse 60, fast rinse 8, brine refill 6.7."))
                .body("cautions.code", hasItems("powerAndPressure", "drainAirGap", "localCodeDecides", "sewerSaltLimits"))
                .body("cautions.code", not(hasItem("coldWater")));
    }

    /** CRC Handbook: 100 g of water at 10 C dissolve 30.9 g of potassium chloride, 35.8 g of sodium chloride. */
    @Test
    void givesPotassiumChlorideMoreWaterAndItsCautionInMetricUnits() {
        String request = """
                {"softener": {"resinVolume": {"value": 12, "unit": "L"}, "tankDiameter": {"value": 0.2, "unit": "m"},
                  "tankHeight": {"value": 0.9, "unit": "m"}, "saltDose": {"value": 160, "unit": "g/L"}, "salt": "%s"},
                 "secondBackwash": true, "waterTemperature": {"value": 6, "unit": "C"},
                 "brineTankTemperature": {"value": 10, "unit": "C"}, "units": "metric"}""";
        post(request.formatted("potassiumChloride")).statusCode(200)
                .body("cycle.steps.step", hasItem("secondBackwash"))
                .body("brine.saturatedPercent", equalTo(23.61))
                .body("refill.water.value", closeTo(1.92 / 0.30907 / 0.9997, 0.01))
                .body("refill.note", startsWith("Each litre of water dissolves 0.309\u00a0kg of salt."))
                .body("cautions.code", hasItems("potassiumKidneyHeart", "coldWater"))
                .body("year", nullValue());
        post(request.formatted("sodiumChloride")).statusCode(200)
                .body("refill.water.value", closeTo(1.92 / 0.358 / 0.9997, 0.01))
                .body("cautions.code", not(hasItem("potassiumKidneyHeart")));
    }

    @Test
    void findsADrainFlowThatThisTankCannotTake() {
        String request = """
                {"softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "tankDiameter": {"value": 10, "unit": "in"},
                  "tankHeight": {"value": 44, "unit": "in"}, "minutes": {"backwash": 10},
                  "flows": {"drain": {"value": %s, "unit": "gpm"}, "supply": {"value": 8, "unit": "gpm"}}}}""";
        post(request.formatted("2")).body("findings.code", contains("backwashTooWeak", "fastRinseLongerThanGuide"))
                .body("findings[1].step", equalTo("fastRinse")).body("findings[1].guideMaxMinutes", equalTo(10))
                .body("findings[1].minutes", closeTo(22.44 / 2, 0.01)).body("findings[0].step", nullValue())
                .body("assumptions.pointer", hasItem("/softener/minutes"));
        post(request.formatted("7.5")).body("findings.code", contains("backwashAboveRoom", "fastRinseShorterThanGuide"))
                .body("bed.roomForBackwash", equalTo(false));
        post(request.formatted("30")).statusCode(200)
                .body("findings.code", contains("backwashAboveRoom", "supplyBelowDrainFlow",
                        "fastRinseShorterThanGuide"))
                .body("backwash.flow.value", equalTo(8)).body("cycle.backwash.rule", equalTo("supply"));
    }

    /**
     * A cubic foot in 10 in at 12 degrees Celsius wants 3.5 gpm, the flow control above 6 gpm/ft2 (Ten States Standards: 6 to 8);
     * the least rules (common practice); three bed volumes are 22.44 gal (exact definitions).
     */
    @ParameterizedTest(name = "control {0}, drain {1}, supply {2}: {3} gpm by {4}")
    @CsvSource({", , , 3.5, flowControl, false, ''", ", 1.6, 8, 1.5, drain, true, A larger or shorter drain line",
        ", 8, 1.7, 1.5, supply, true, A larger service line or a stronger pump",
        "3, 1.9, , 1.9, drain, true, A larger or shorter drain line", "1.5, , 8, 1.5, flowControl, true, A larger drain line flow control"})
    void givesTheLeastOfFlowControlDrainAndSupply(String control, String drain, String supply, double flow, String rule, boolean weak,
            String cure) {
        post("""
                {"softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "tankDiameter": {"value": 10, "unit": "in"},
                  "tankHeight": {"value": 44, "unit": "in"}, "flows": {%s}}}""".formatted(Stream.of(gpm("drain", control),
                gpm("drainLine", drain), gpm("supply", supply)).filter(each -> !each.isEmpty()).collect(Collectors.joining(","))))
                .statusCode(200).body("cycle.backwash.flow.value", closeTo(flow, 1e-4)).body("cycle.backwash.rule", equalTo(rule))
                .body("cycle.backwash.targetPercent", equalTo(50)).body("cycle.backwash.weak", equalTo(weak))
                .body("cycle.backwash.sentence", containsString(cure))
                .body("cycle.steps.find { it.step == 'fastRinse' }.minutes", closeTo(22.44 / flow, 0.01))
                .body("cycle.steps.find { it.step == 'backwash' }.flow.value", closeTo(flow, 1e-4))
                .body("findings.code", weak ? hasItem("backwashTooWeak") : not(hasItem("backwashTooWeak")))
                .body("findings.code", "drain".equals(rule) ? hasItem("drainLineBelowDrainFlow") : not(hasItem("drainLineBelowDrainFlow")));
    }

    /** The same limits as above, each named in the words of the language; 3.5, 1.5 and 1.5 gpm. */
    @ParameterizedTest(name = "{0} in {1}")
    @CsvSource(delimiter = '|', value = {
        "flowControl | en | The drain line flow control limits the backwash to 3.5\u00a0gpm.",
        "flowControl | de | Der Durchflussbegrenzer der Rückspülung begrenzt die Rückspülung auf 3,5\u00a0gpm.",
        "flowControl | fr | Le limiteur de débit de détassage limite le détassage à 3,5\u00a0gpm.",
        "flowControl | es | El limitador de caudal del contralavado limita el contralavado a 3,5\u00a0gpm.",
        "flowControl | es-AR | El limitador de caudal del retrolavado limita el retrolavado a 3,5\u00a0gpm.",
        "drain | en | The drain limits the backwash to 1.5\u00a0gpm.",
        "drain | de | Der Abfluss begrenzt die Rückspülung auf 1,5\u00a0gpm.",
        "drain | fr | L’évacuation limite le détassage à 1,5\u00a0gpm.",
        "drain | es | El desagüe limita el contralavado a 1,5\u00a0gpm.",
        "drain | es-AR | El desagüe limita el retrolavado a 1,5\u00a0gpm.",
        "supply | en | The water supply limits the backwash to 1.5\u00a0gpm.",
        "supply | de | Die Zuleitung begrenzt die Rückspülung auf 1,5\u00a0gpm.",
        "supply | fr | L’alimentation en eau limite le détassage à 1,5\u00a0gpm.",
        "supply | es | El suministro de agua limita el contralavado a 1,5\u00a0gpm.",
        "supply | es-AR | El suministro de agua limita el retrolavado a 1,5\u00a0gpm."})
    void namesWhatLimitsTheBackwash(String rule, String language, String sentence) {
        String flows = switch (rule) {
            case "drain" -> gpm("drainLine", "1.6");
            case "supply" -> gpm("supply", "1.7");
            default -> gpm("supply", "8");
        };
        Served.posting("""
                {"softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "tankDiameter": {"value": 10, "unit": "in"},
                  "tankHeight": {"value": 44, "unit": "in"}, "flows": {%s}}, "units": "us"}""".formatted(flows))
                .header("Accept-Language", language).post("/v1/regeneration-cycle").then().statusCode(200)
                .body("cycle.backwash.rule", equalTo(rule)).body("cycle.backwash.sentence", startsWith(sentence));
    }

    /**
     * What is taken for the flows of a cubic foot in 10 in: 3.5 gpm as above, 2.5 bed volumes an hour of 7.4805 gal (exact
     * definitions), half a gallon per minute of refill (from memory), and a flow that is given as it is given.
     */
    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource({"drain, 3.5, estimated, CP-CYCLE", "brineDraw, 0.31169, estimated, OWN-ASSUMPTION", "fastRinse, 3.5, estimated, CP-CYCLE",
        "refill, 0.5, default, OWN-ASSUMPTION", "drainLine, , default, CP-CYCLE", "supply, 8, caller,"})
    void saysWhatItTakesForEachFlow(String flow, Double value, String origin, String source) {
        String each = "assumptions.find { it.pointer == '/softener/flows/%s' }.".formatted(flow);
        post("""
                {"softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "tankDiameter": {"value": 10, "unit": "in"},
                  "tankHeight": {"value": 44, "unit": "in"}, "flows": {"supply": {"value": 8, "unit": "gpm"}}}}""").statusCode(200)
                .body(each + "origin", equalTo(origin)).body(each + "source", equalTo(source))
                .body(each + "unit", equalTo(value == null ? null : "gpm"))
                .body(each + "value", value == null ? nullValue() : near(value, 1e-5, "as above"));
    }

    private static String gpm(String name, String value) {
        return value == null ? "" : "\"%s\": {\"value\": %s, \"unit\": \"gpm\"}".formatted(name, value);
    }

    @Test
    void refusesADrainThatTakesNothing() {
        post("""
                {"softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "flows": {"drainLine": {"value": 0, "unit": "gpm"}}}}""")
                .statusCode(422).body("errors.pointer", contains("/softener/flows/drainLine/value"));
    }

    /** 0.2 gpm of saturated brine in 0.6 gpm: worked-suction. */
    @Test
    void takesTheStrengthFromTheInjector() {
        String request = """
                {"softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "saltDose": {"value": 10, "unit": "lb/ft3"},
                  "flows": {"brineSuction": {"value": %s, "unit": "gpm"}, "brineDraw": {"value": 0.6, "unit": "gpm"}}},
                 "waterTemperature": {"value": 59, "unit": "F"}, "brineTankTemperature": {"value": 68, "unit": "F"}}""";
        post(request.formatted("0.2")).statusCode(200).body("brine.dilutedPercent", closeTo(9.91, 0.02))
                .body("brine.contactMinutes", closeTo(18.9, 0.05)).body("brine.motiveWater.value", closeTo(7.59, 0.01))
                .body("brine.suction.value", closeTo(0.2, 1e-5))
                .body("assumptions.find { it.name == 'brineStrength' }.value", closeTo(9.91, 0.02))
                .body("assumptions.find { it.name == 'brineStrength' }.unit", equalTo("%"))
                .body("assumptions.find { it.name == 'brineStrength' }.origin", equalTo("estimated"));
        post(request.formatted("0.3")).statusCode(200).body("findings.code", hasItem("brineTooStrong"));
        post(request.formatted("0.6")).statusCode(422).body("errors.pointer", contains("/softener/flows/brineSuction"));
    }

    @Test
    void reportsEveryFault() {
        post("{}").statusCode(422).body("errors.pointer", contains("/softener"));
        post("""
                {"softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "saltDose": {"value": 21, "unit": "lb/ft3"}},
                 "brineTankTemperature": {"value": 45, "unit": "C"}, "waterTemperature": {"value": 0, "unit": "C"},
                 "regenerationsPerYear": 2001}""").statusCode(422)
                .body("errors.pointer", contains("/brineTankTemperature/value", "/regenerationsPerYear",
                        "/softener/saltDose", "/waterTemperature/value"));
        post("""
                {"softener": {"resinVolume": {"value": 2, "unit": "ft3"}, "tankDiameter": {"value": 8, "unit": "in"},
                  "tankHeight": {"value": 44, "unit": "in"}}}""").statusCode(422)
                .body("errors.pointer", contains("/softener/tankHeight"));
    }

    private static ValidatableResponse post(String body) {
        return TestServer.post("/v1/regeneration-cycle?detail=full", body);
    }
}
