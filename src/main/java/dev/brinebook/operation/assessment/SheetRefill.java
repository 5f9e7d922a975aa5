// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.cycle.RefillSetting;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

/**
 * The brine refill of the step that is advised. The answer has that of the metered settings; a control that is kept gets other
 * salt, and for it the refill follows from the answer: the salt of a regeneration, the salt that a volume of water dissolves,
 * and the flow.
 *
 * @param derived whether it is other than that of the answer
 */
record SheetRefill(BigDecimal tenthMinutes, VolumeQuantity volume, boolean derived) {

    static SheetRefill of(SheetCase sheet) {
        RefillSetting refill = sheet.answer().refill();
        if (!sheet.keepsControl()) {
            return new SheetRefill(refill.tenthMinutes(), refill.water(), false);
        }
        return sheet.option(sheet.stepNow()).filter(option -> option.rung().regenerations().signum() > 0).map(option -> {
            double salt = option.rung().salt().value().doubleValue() / option.rung().regenerations().doubleValue();
            double volume = salt / refill.saltInWater().value().doubleValue();
            double minutes = volume / refill.flow().value().doubleValue();
            return new SheetRefill(Rounding.answer(Math.round(minutes * 10) / 10.0),
                    new VolumeQuantity(Rounding.answer(volume), refill.water().unit()), true);
        }).orElseGet(() -> new SheetRefill(refill.tenthMinutes(), refill.water(), false));
    }

    /** Its water, of the answer if it is there. */
    SheetCell water(String at) {
        return derived ? SheetCell.words(volume) : SheetCell.of(at, volume);
    }

    /** Its minutes as they are set. */
    SheetCell setting() {
        return SheetCell.words(Message.of("settingFinding.minutes", tenthMinutes));
    }
}
