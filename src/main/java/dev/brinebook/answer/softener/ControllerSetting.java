// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.softener;

import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.softener.Setting;
import dev.brinebook.text.ListedOnce;
import dev.brinebook.text.Localizable;

/** What is entered at a controller, in the order of a common menu. Source: common practice. */
@ListedOnce("A setting of a controller.")
public enum ControllerSetting implements Localizable {
    TIME_OF_DAY, HARDNESS, CAPACITY, METER_VOLUME, RESERVE, SALT, BACKWASH, BRINE, SECOND_BACKWASH, FAST_RINSE, REFILL, BACKWASH_FLOW,
    INTERVAL, DAY_OVERRIDE, HOUR;

    /** Where a setting of the review is entered. */
    public static ControllerSetting of(Setting setting) {
        return switch (setting) {
            case SALT_DOSE -> SALT;
            case SLOW_RINSE -> BRINE;
            case REGENERATION_HOUR -> HOUR;
            case BACKWASH -> BACKWASH_FLOW;
            default -> valueOf(setting.name());
        };
    }

    /** Where the minutes of a step are entered. */
    public static ControllerSetting of(CycleStep.Kind step) {
        return step == CycleStep.Kind.BRINE_AND_SLOW_RINSE ? BRINE : valueOf(step.name());
    }

    @Override
    public String textId() {
        return Localizable.idOf("controllerSetting", this);
    }
}
