// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.answer.softener.ControllerSetting;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("A setting, as it is entered and as the controller must show it when it is read back.")
public record CommissioningSettingLine(
        @Property("The setting.") ControllerSetting setting,
        @Property(value = "Its name.", example = "\"Hardness\"") Message name,
        @Property(value = "What to enter, and what the controller must show.", example = "\"28 gpg\"") Message shows,
        @Basis(formula = "formula.commissioning.setting", source = "CP-CYCLE")
        @Property(value = "The same as a number.", optional = "for words alone", example = "28") BigDecimal value,
        @Property(value = "Unit of that number.", optional = "for words alone, or a number without a unit", example = "\"gpg\"")
        String unit,
        @Property(value = "Whether it is entered. The controller works out the others itself.", example = "true") Boolean entered) {
}
