// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.commissioning;

import static dev.brinebook.commissioning.CommissioningCheck.AIR_OUT;
import static dev.brinebook.commissioning.CommissioningCheck.BACKWASH_FLOW;
import static dev.brinebook.commissioning.CommissioningCheck.BRINE_LEVEL_FALL;
import static dev.brinebook.commissioning.CommissioningCheck.BRINE_STRENGTH;
import static dev.brinebook.commissioning.CommissioningCheck.DRAIN_STILL;
import static dev.brinebook.commissioning.CommissioningCheck.DRAW_MINUTES;
import static dev.brinebook.commissioning.CommissioningCheck.FAST_RINSE_FLOW;
import static dev.brinebook.commissioning.CommissioningCheck.METER_COUNT;
import static dev.brinebook.commissioning.CommissioningCheck.NO_LEAK;
import static dev.brinebook.commissioning.CommissioningCheck.OUTLET_HARDNESS;
import static dev.brinebook.commissioning.CommissioningCheck.POWER_LOSS;
import static dev.brinebook.commissioning.CommissioningCheck.PRESSURE_LOSS;
import static dev.brinebook.commissioning.CommissioningCheck.REFILL_FLOW;
import static dev.brinebook.commissioning.CommissioningCheck.REFILL_WATER;
import static dev.brinebook.commissioning.CommissioningCheck.RINSE_CHLORIDE;
import static dev.brinebook.commissioning.CommissioningCheck.RINSE_CONDUCTIVITY;
import static dev.brinebook.commissioning.CommissioningCheck.SETTINGS_READ_BACK;
import static dev.brinebook.commissioning.CommissioningCheck.SLOW_RINSE_FLOW;
import static dev.brinebook.commissioning.CommissioningCheck.TAP_ABOVE_OUTLET;

import dev.brinebook.field.SaltDissolving;
import dev.brinebook.text.Localizable;
import java.util.List;

/** What to do when a softener is put into service, in order. Source: [CP-INSTALLATION]. */
public enum CommissioningStage implements Localizable {
    BEFORE_WATER(15),
    ENTER_SETTINGS(15, SETTINGS_READ_BACK),
    FILL_RESIN_TANK(20, AIR_OUT),
    LOOK_FOR_LEAKS(15, NO_LEAK),
    FILL_BRINE_TANK(10, REFILL_FLOW, REFILL_WATER),
    WAIT_FOR_BRINE(SaltDissolving.WAIT_MINUTES, BRINE_STRENGTH),
    SANITISE(5),
    /** Its minutes are those of the cycle. */
    REGENERATE(0, BACKWASH_FLOW, DRAW_MINUTES, BRINE_LEVEL_FALL, SLOW_RINSE_FLOW, FAST_RINSE_FLOW),
    END_OF_RINSE(5, RINSE_CHLORIDE, RINSE_CONDUCTIVITY),
    BACK_IN_SERVICE(25, OUTLET_HARDNESS, TAP_ABOVE_OUTLET, METER_COUNT, PRESSURE_LOSS, DRAIN_STILL),
    INTERRUPT_POWER(3, POWER_LOSS),
    HAND_OVER(10);

    private final double assumedMinutes;
    private final List<CommissioningCheck> checks;

    CommissioningStage(double assumedMinutes, CommissioningCheck... checks) {
        this.assumedMinutes = assumedMinutes;
        this.checks = List.of(checks);
    }

    /** Usual minutes, an assumption but for the wait; of the regeneration those of its cycle. */
    public double minutes(double cycleMinutes) {
        return this == REGENERATE ? cycleMinutes : assumedMinutes;
    }

    /** What is read meanwhile. */
    public List<CommissioningCheck> checks() {
        return checks;
    }

    @Override
    public String textId() {
        return Localizable.idOf("commissioningStage", this);
    }
}
