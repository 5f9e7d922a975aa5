package dev.brinebook.regeneration.api;

import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;

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
                .body("refill.note", containsString("13 % too much"))
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
                .body("summary", startsWith("Set in minutes: backwash 8, brine and slow rinse 60, fast rinse 8, refill 6.7."))
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
                .body("refill.note", startsWith("Each litre of water dissolves 0.309 kg"))
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
                .body("assumptions.name", hasItem("softener.minutes"));
        post(request.formatted("7.5")).body("findings.code", contains("backwashAboveRoom", "fastRinseShorterThanGuide"))
                .body("bed.roomForBackwash", equalTo(false));
        post(request.formatted("30")).statusCode(200)
                .body("findings.code", contains("backwashCarriesResinOut", "supplyBelowDrainFlow",
                        "fastRinseShorterThanGuide"))
                .body("backwash.expansionShare", nullValue());
    }

    /** 0.2 gpm of saturated brine in 0.6 gpm: worked-suction. */
    @Test
    void takesTheStrengthFromTheInjector() {
        String request = """
                {"softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "saltDose": {"value": 10, "unit": "lb/ft3"},
                  "flows": {"brineSuction": {"value": %s, "unit": "gpm"}, "brineDraw": {"value": 0.6, "unit": "gpm"}}},
                 "waterTemperature": {"value": 59, "unit": "F"}, "brineTankTemperature": {"value": 68, "unit": "F"}}""";
        post(request.formatted("0.2")).statusCode(200).body("brine.dilutedPercent", closeTo(9.91, 0.02))
                .body("brine.contactMinutes", closeTo(18.9, 0.05)).body("brine.motiveWater.value", closeTo(7.56, 0.02))
                .body("brine.suction.value", closeTo(0.2, 1e-5))
                .body("assumptions.find { it.name == 'brine.dilutedPercent' }.origin", equalTo("derived"));
        post(request.formatted("0.3")).statusCode(200).body("findings.code", hasItem("brineTooStrong"));
        post(request.formatted("0.6")).statusCode(422).body("errors.pointer", contains("/softener/flows/brineSuction"));
    }

    @Test
    void tellsEveryFault() {
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
        return TestServer.post("/v1/regeneration-cycle", body);
    }
}
