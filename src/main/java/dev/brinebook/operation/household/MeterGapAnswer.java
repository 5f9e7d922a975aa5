// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.MeterGap;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

@SchemaDescription("Consecutive missing days.")
public record MeterGapAnswer(
        @Property(value = "First missing day.", example = "\"2026-02-03\"") LocalDate firstDate,
        @Property(value = "Last missing day.", example = "\"2026-02-05\"") LocalDate lastDate,
        @Basis(formula = "meter.datesBetweenFirstLast", source = "CP-METER-READING")
        @Property(value = "Number of missing days.", min = 1, unit = "days", example = "3") Integer days,
        @Basis(formula = "formula.household.volumeBetweenReadingsToo", source = "CP-METER-READING")
        @Property(value = "Total use on these days.", optional = "when the readings do not show it")
        VolumeQuantity volume) {

    static MeterGapAnswer of(MeterGap gap, AnswerUnits units) {
        return new MeterGapAnswer(gap.firstDate(), gap.lastDate(),
                (int) ChronoUnit.DAYS.between(gap.firstDate(), gap.lastDate()) + 1,
                gap.litres().isPresent() ? units.volume(gap.litres().getAsDouble()) : null);
    }
}
