// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.commissioning.LaterCheck;
import dev.brinebook.text.Message;
import java.time.LocalDate;

@SchemaDescription("What to look at after a day, a week or a month.")
public record LaterCheckLine(
        @Property(value = "Stable code.", example = "\"brineLevel\"") LaterCheck check,
        @Basis(formula = "formula.commissioning.afterDays", source = "CP-INSTALLATION")
        @Property(value = "Days after the commissioning.", min = 0, unit = "days", example = "7") Integer afterDays,
        @Property(value = "The date.", example = "\"2026-01-08\"") LocalDate date,
        @Property(value = "What to look at.", example = "\"The brine level is that of the first day.\"") Message instruction) {

    static LaterCheckLine of(LaterCheck check, LocalDate first) {
        return new LaterCheckLine(check, check.afterDays(), first.plusDays(check.afterDays()), Message.of(check));
    }
}
