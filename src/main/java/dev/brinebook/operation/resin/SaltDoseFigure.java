// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.text.Message;

@SchemaDescription("A salt dose that may not exist: has either `saltDose`, or `reason` and `why`.")
public record SaltDoseFigure(
        @Property(value = "The dose.", optional = "when there is none") SaltDoseQuantity saltDose,
        @Property(value = "Stable code of the reason.", optional = "when saltDose is present") NoResultReason reason,
        @Property(value = "The reason as a sentence.", optional = "when saltDose is present",
                example = "\"No allowed salt dose reaches this salt efficiency.\"") Message why) {

    static SaltDoseFigure of(OptionalResult gramsPerLitre, AnswerUnits units) {
        return gramsPerLitre.exists() ? new SaltDoseFigure(units.saltDose(gramsPerLitre.value()), null, null)
                : new SaltDoseFigure(null, gramsPerLitre.reason(), units.saying(gramsPerLitre.reason()));
    }
}
