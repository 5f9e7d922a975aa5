// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.complaint;

import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.complaint.CaseDesign;
import dev.brinebook.complaint.Sign;
import dev.brinebook.household.Days;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;

/** Numbers of signs as answers show them: in the unit of the quantity, or in percent. */
record SignValues(CaseDesign design, AnswerUnits units) {

    private static final String PERCENT = "%";

    /** A number in its unit. */
    record Shown(BigDecimal number, String unit) {

        private static Shown of(Quantity<?> quantity) {
            return new Shown(quantity.value(), quantity.unit().symbol());
        }
    }

    /** What a value over that of the sound softener is in this case. */
    Shown of(Sign sign, double value) {
        double base = value * design.scale(sign);
        return switch (sign) {
            case SUCTION, DRAIN_FLOW -> Shown.of(units.flow(base));
            case REFILL_WATER, METERED_USE, METER_SETTING -> Shown.of(units.volume(base));
            case SALT_BY_BOOKS -> Shown.of(units.mass(base));
            case BREAKTHROUGH -> Shown.of(units.capacity(base));
            case RAW_CHANGE -> Shown.of(units.hardness(base));
            case RESIN_VOLUME -> Shown.of(units.resinVolume(base));
            case CHLORIDE_EXCESS -> Shown.of(units.concentration(base));
            case SOFT_DAYS -> new Shown(Rounding.answer(base), "days");
            case REGENERATION_RATE -> new Shown(Rounding.answer(base * Days.PER_YEAR), "regenerations a year");
            case BRINE_STRENGTH -> new Shown(Rounding.answer(100 * value), "degrees");
            default -> new Shown(Rounding.answer(100 * value), PERCENT);
        };
    }
}
