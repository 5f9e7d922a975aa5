// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.guard.Guard;
import dev.brinebook.water.chemistry.CarbonateConstants;

/** How fast dissolved iron turns to rust in water that holds oxygen. */
final class IronOxidation {

    /** 1/(mol²/L² atm min) at 25 °C. */
    private static final double RATE = 8e13;
    private static final double OXYGEN_OF_AIR_ATM = 0.21;

    private IronOxidation() {
    }

    /**
     * Half-life of dissolved iron in water saturated with air.
     *
     * <pre>t = ln 2 / (k c(OH)² p(O2));  c(OH) = 10^(pH − pKw)</pre>
     *
     * <p>t minutes; k 8e13; p atm.
     * Validity: pH 6 to 8; the order of size only away from 25 °C, as k is held. Source: [STUMM-LEE-1961], its constant from memory.
     */
    static double halfLifeMinutes(double ph, double celsius) {
        double hydroxide = StrictMath.pow(10, Guard.within(ph, 0, 14, "ph") - CarbonateConstants.at(celsius).pkWater());
        return StrictMath.log(2) / (RATE * hydroxide * hydroxide * OXYGEN_OF_AIR_ATM);
    }
}
