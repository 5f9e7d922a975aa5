// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;

class ComputeBedHydraulicsTest {

    /** fluids 1.3.1, Ergun: a bed of 0.25 m x 0.85 m of 0.65 mm beads loses 5.766 psi at 10 gpm in water of 10 C. */
    @Test
    void losesThePressureThatALibraryGivesInUsUnits() {
        post("""
                {"softener": {"resinVolume": {"value": 41.72428, "unit": "L"}, "tankDiameter": {"value": 0.25, "unit": "m"},
                  "tankHeight": {"value": 1.4, "unit": "m"}}, "waterTemperature": {"value": 50, "unit": "F"},
                 "bead": {"diameter": {"value": 0.65, "unit": "mm"}}, "serviceFlow": {"value": 1.6, "unit": "gpm"},
                 "peakFlow": {"value": 10, "unit": "gpm"}}""").statusCode(200)
                .body("pressureDrops.origin", contains("serviceFlow", "peakFlow", "guideLowVelocity", "guideHighVelocity",
                        "guideLowFlowPerResin", "guideHighFlowPerResin", "guidePeakFlowPerResin"))
                .body("pressureDrops[1].pressureDrop.value", closeTo(5.766, 0.005 * 5.766))
                .body("pressureDrops[1].pressureDrop.unit", equalTo("psi"))
                .body("pressureDrops[1].surfaceFlow.value", closeTo(46.27 / 2.44475, 0.005))
                .body("pressureDrops[3].surfaceFlow.value", equalTo(8))
                .body("pressureDrops[5].bedFlow.value", equalTo(5))
                .body("pressureDrops[5].bedVolumesPerHour", closeTo(40.1, 0.05))
                .body("pressureDrops[5].emptyBedContactMinutes", closeTo(60 / 40.1, 0.001))
                .body("pressureDrops[5].voidContactMinutes", closeTo(0.38 * 60 / 40.1, 0.001))
                .body("lasting.binding", equalTo("surfaceVelocity"))
                .body("lasting.flow.value", closeTo(8 * 0.52838, 0.01))
                .body("peaks.bounds.limit", contains("peakFlowPerResin", "pressureDrop"))
                .body("findings", empty())
                .body("summary", startsWith("The bed takes 4.2\u00a0gpm all day (surface velocity)"))
                .body("summary", containsString("The bed is 33.5\u00a0in deep."))
                .body("cautions.code", hasItems("powerAndPressure", "drainAirGap", "localCodeDecides"))
                .body("cautions.code", not(hasItem("coldWater")));
    }

    /** fluids 1.3.1: beads of 0.60 mm are lifted by half by 15.61 m/h at 20 C and by 11.10 m/h at 5 C. */
    @Test
    void liftsTheBedAsALibrarySaysInMetricUnits() {
        String request = """
                {"softener": {"resinVolume": {"value": 12, "unit": "L"}, "tankDiameter": {"value": 0.2, "unit": "m"},
                  "tankHeight": {"value": 0.9, "unit": "m"}, "flows": {"drain": {"value": 4, "unit": "L/min"}}},
                 "waterTemperature": {"value": %s, "unit": "C"}, "bead": {"diameter": {"value": 0.6, "unit": "mm"},
                 "voidPercent": 38, "wetDensityKilogramsPerCubicMetre": 1280}, "crushedPercent": 50,
                 "targetExpansionPercent": 50, "units": "metric"}""";
        post(request.formatted("20")).statusCode(200)
                .body("backwash.targetVelocity.value", closeTo(15.61, 0.005 * 15.61))
                .body("backwash.targetVelocity.unit", equalTo("m/h"))
                .body("backwash.choose.flow.value", closeTo(2.5 * 3.785411784, 0.0001))
                .body("backwash.choose.staysInTank", equalTo(true))
                .body("backwash.fitted.weak", equalTo(true))
                .body("backwash.bands[0].minVelocity.value", equalTo(12))
                .body("backwash.bands[1].minVelocity.value", closeTo(14.67, 0.005))
                .body("beads.crushedDiameterMillimetres", equalTo(0.4))
                .body("beads.crushedVoidPercent", equalTo(35))
                .body("water.densityKilogramsPerCubicMetre", closeTo(998.2, 0.05))
                .body("water.viscosityMillipascalSeconds", closeTo(1.002, 0.001))
                .body("findings.code", contains("bedTooShallow", "backwashTooWeak"))
                .body("summary", containsString("too little to clean all of it"));
        post(request.formatted("5")).statusCode(200)
                .body("backwash.targetVelocity.value", closeTo(11.10, 0.005 * 11.10))
                .body("cautions.code", hasItem("coldWater"));
    }

    @Test
    void saysWhatADrainFlowDoesThatThisTankCannotTake() {
        String request = """
                {"softener": {"nameplateCapacity": {"value": 45000, "unit": "gr"},
                  "tankDiameter": {"value": 10, "unit": "in"}, "tankHeight": {"value": 54, "unit": "in"},
                  "flows": {"drain": {"value": %s, "unit": "gpm"}, "supply": {"value": 6, "unit": "gpm"}}},
                  "targetExpansionPercent": %s}""";
        post(request.formatted("30", "50")).statusCode(200)
                .body("findings.code", contains("backwashAboveRoom", "supplyBelowDrainFlow"))
                .body("bed.roomForBackwash", equalTo(false))
                .body("backwash.fitted.flow.value", equalTo(6)).body("backwash.rule", equalTo("supply"));
        post(request.formatted("3.5", "100")).statusCode(200)
                .body("backwash.roomForTarget", equalTo(false))
                .body("findings.code", contains("noRoomForTarget", "backwashBelowTarget"))
                .body("summary", containsString("more than the tank has room for"));
    }

    /** Beads as light and small as are allowed, in a narrow tank and cold water: a common control carries them out. */
    @Test
    void saysThatACommonControlCarriesLightBeadsOut() {
        post("""
                {"softener": {"resinVolume": {"value": 4, "unit": "L"}, "tankDiameter": {"value": 0.1, "unit": "m"},
                  "tankHeight": {"value": 0.8, "unit": "m"}, "flows": {"drain": {"value": 4, "unit": "L/min"}}},
                 "waterTemperature": {"value": 1, "unit": "C"}, "bead": {"diameter": {"value": 0.4, "unit": "mm"},
                 "wetDensityKilogramsPerCubicMetre": 1150}}""").statusCode(200)
                .body("findings.code", hasItem("backwashCarriesResinOut"));
    }

    @Test
    void reportsEveryFault() {
        post("{}").statusCode(422).body("errors.pointer", contains("/softener"));
        post("""
                {"softener": {"resinVolume": {"value": 1, "unit": "ft3"}}, "bead": {"diameter": {"value": 0.3, "unit": "mm"},
                  "voidPercent": 29, "wetDensityKilogramsPerCubicMetre": 1351}, "crushedPercent": 51,
                 "targetExpansionPercent": 9, "waterTemperature": {"value": 36, "unit": "C"}}""").statusCode(422)
                .body("errors.pointer", contains("/bead/diameter/value", "/bead/voidPercent",
                        "/bead/wetDensityKilogramsPerCubicMetre", "/crushedPercent", "/targetExpansionPercent",
                        "/waterTemperature/value"));
        post("""
                {"softener": {"resinVolume": {"value": 1, "unit": "ft3"}}, "serviceFlow": {"value": 5, "unit": "gpm"},
                 "peakFlow": {"value": 4, "unit": "gpm"}}""").statusCode(422)
                .body("errors.pointer", contains("/peakFlow"));
    }

    /** The findings are about the fitted flow control, so it comes before them beside the one to choose. */
    @Test
    void saysWhatTheFittedDrainFlowControlDoesBesideTheOneToChoose() {
        post("""
                {"softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "tankDiameter": {"value": 9, "unit": "in"},
                  "tankHeight": {"value": 48, "unit": "in"}, "flows": {"drain": {"value": 9, "unit": "gpm"}}},
                 "waterTemperature": {"value": 40, "unit": "F"}}""").statusCode(200)
                .body("summary", containsString("The fitted drain line flow control of 9\u00a0gpm lifts the bed by 423\u00a0%,"
                        + " more than the tank has room for. The backwash lifts the bed higher than the tank has room"));
        post("""
                {"softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "tankDiameter": {"value": 9, "unit": "in"},
                  "tankHeight": {"value": 48, "unit": "in"}, "flows": {"drain": {"value": 1, "unit": "gpm"}}},
                 "waterTemperature": {"value": 60, "unit": "F"}}""").statusCode(200)
                .body("summary", containsString("The fitted drain line flow control of 1\u00a0gpm lifts the bed by "));
    }

    private static ValidatableResponse post(String body) {
        return TestServer.post("/v1/bed-hydraulics", body);
    }
}
