// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.household;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.HighDay;
import java.time.LocalDate;

@SchemaDescription("A day above four times the median day, such as a leak or a filling. For the expected use it is limited to four "
        + "times the median.")
public record HighDayAnswer(
        @Property(value = "Date.", example = "\"2026-05-02\"") LocalDate date,
        @Basis(formula = "formula.household.daysAboveFourTimes", source = "DAIAD")
        @Property("Measured use.") VolumeQuantity use,
        @Basis(formula = "formula.household.use4Median", source = "DAIAD")
        @Property("Use above that limit, left out of the expected use.") VolumeQuantity above) {

    /** The day in the units of the answer. */
    public static HighDayAnswer of(HighDay day, AnswerUnits units) {
        return new HighDayAnswer(day.date(), units.volume(day.litres()), units.volume(day.aboveLitres()));
    }
}
