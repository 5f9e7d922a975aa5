// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.commissioning;

import dev.brinebook.text.ListedOnce;
import dev.brinebook.text.Localizable;
import dev.brinebook.text.Message;
import java.util.Optional;

/** What is read while a softener is put into service, in order, with what a reading outside its band means. Source: [CP-FIELD-TESTS]. */
@ListedOnce("A check of the commissioning.")
public enum CommissioningCheck implements Localizable {
    SETTINGS_READ_BACK(Kind.YES_NO, Message.of("checkHow.settingsReadBack"), Message.of("checkLow.settingsReadBack"), null),
    AIR_OUT(Kind.YES_NO, Message.of("checkHow.airOut"), Message.of("checkLow.airOut"), null),
    NO_LEAK(Kind.YES_NO, Message.of("checkHow.noLeak"), Message.of("checkLow.noLeak"), null),
    /** L/min. */
    REFILL_FLOW(Kind.FLOW, Message.of("checkHow.refillFlow"), Message.of("checkLow.refillFlow"), Message.of("checkHigh.refillFlow")),
    /** L. */
    REFILL_WATER(Kind.VOLUME, Message.of("checkHow.refillWater"), Message.of("checkLow.refillWater"), Message.of("checkHigh.refillWater")),
    /** Degrees of a hydrometer at 60 °F. */
    BRINE_STRENGTH(Kind.DEGREES, Message.of("checkHow.brineStrength"), Message.of("checkLow.brineStrength"), null),
    /** L/min. */
    BACKWASH_FLOW(Kind.FLOW, Message.of("checkHow.backwashFlow"), Message.of("checkLow.drainFlow"), Message.of("checkHigh.drainFlow")),
    /** Minutes until the level stops falling. */
    DRAW_MINUTES(Kind.MINUTES, Message.of("checkHow.drawMinutes"), Message.of("checkLow.drawMinutes"),
            Message.of("checkHigh.drawMinutes")),
    /** m. */
    BRINE_LEVEL_FALL(Kind.LENGTH, Message.of("checkHow.brineLevelFall"), Message.of("checkLow.brineLevelFall"),
            Message.of("checkHigh.brineLevelFall")),
    /** L/min at the drain. */
    SLOW_RINSE_FLOW(Kind.FLOW, Message.of("checkHow.slowRinseFlow"), Message.of("checkLow.slowRinseFlow"),
            Message.of("checkHigh.slowRinseFlow")),
    /** L/min. */
    FAST_RINSE_FLOW(Kind.FLOW, Message.of("checkHow.fastRinseFlow"), Message.of("checkLow.drainFlow"), Message.of("checkHigh.drainFlow")),
    /** mg/L above raw water. */
    RINSE_CHLORIDE(Kind.CONCENTRATION, Message.of("checkHow.rinseChloride"), null, Message.of("checkHigh.brineLeft")),
    /** µS/cm above raw water. */
    RINSE_CONDUCTIVITY(Kind.CONDUCTIVITY, Message.of("checkHow.rinseConductivity"), null, Message.of("checkHigh.brineLeft")),
    /** mg/L as CaCO₃. */
    OUTLET_HARDNESS(Kind.HARDNESS, Message.of("checkHow.outletHardness"), null, Message.of("checkHigh.outletHardness")),
    /** Tap less outlet, mg/L as CaCO₃. */
    TAP_ABOVE_OUTLET(Kind.HARDNESS, Message.of("checkHow.tapAboveOutlet"), Message.of("checkLow.tapAboveOutlet"),
            Message.of("checkHigh.tapAboveOutlet")),
    /** What the meter counts of the water caught, percent. */
    METER_COUNT(Kind.PERCENT, Message.of("checkHow.meterCount"), Message.of("checkLow.meterCount"), Message.of("checkHigh.meterCount")),
    /** kPa. */
    PRESSURE_LOSS(Kind.PRESSURE, Message.of("checkHow.pressureLoss"), null, Message.of("checkHigh.pressureLoss")),
    DRAIN_STILL(Kind.YES_NO, Message.of("checkHow.drainStill"), Message.of("checkLow.drainStill"), null),
    POWER_LOSS(Kind.YES_NO, Message.of("checkHow.powerLoss"), Message.of("checkLow.powerLoss"), null);

    /** What a reading is. */
    public enum Kind {
        YES_NO, FLOW, VOLUME, MINUTES, DEGREES, LENGTH, CONCENTRATION, CONDUCTIVITY, HARDNESS, PERCENT, PRESSURE
    }

    private final Kind kind;
    private final Message how;
    private final Message low;
    private final Message high;

    CommissioningCheck(Kind kind, Message how, Message low, Message high) {
        this.kind = kind;
        this.how = how;
        this.low = low;
        this.high = high;
    }

    public Kind kind() {
        return kind;
    }

    /** How it is read. */
    public Message how() {
        return how;
    }

    /** What a reading below its band means, or a no; none where it has no low end. */
    public Optional<Message> low() {
        return Optional.ofNullable(low);
    }

    /** What a reading above its band means; none where it has no high end. */
    public Optional<Message> high() {
        return Optional.ofNullable(high);
    }

    @Override
    public String textId() {
        return Localizable.idOf("commissioningCheck", this);
    }
}
