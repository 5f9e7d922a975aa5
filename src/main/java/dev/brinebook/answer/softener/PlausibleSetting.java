// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.softener;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.Question;
import dev.brinebook.softener.Setting;
import dev.brinebook.softener.Softener;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("A plausible value of a setting that was not given, and a year with it. All other settings are as they are now.")
public record PlausibleSetting(
        @Property(value = "Plausible value of the setting.", example = "\"6 lb/ft3\"") Message set,
        @Property("Expected salt per year.") MassQuantity saltPerYear,
        @Property(value = "Expected hard days per year.", min = 0, unit = "days a year", example = "3")
        BigDecimal hardDaysPerYear) {

    static PlausibleSetting of(Setting setting, Question.End end, Softener softener, DesignConditions duty, AnswerUnits units) {
        var totals = end.year().totals();
        return new PlausibleSetting(SettingFinding.text(setting, end.value(), softener,
                new ControllerQuantities(duty, units)), units.mass(totals.saltGrams() / 1000),
                Rounding.toThousandth(totals.hardDays()));
    }
}
