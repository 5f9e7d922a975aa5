// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Country;
import dev.brinebook.household.DayVariation;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;

@SchemaDescription("The household compared with usual values.")
public record UsualUse(
        @Basis(formula = "formula.household.meanDaysSomebodyHomeNumber", source = "CHOI-WETTE")
        @Property("Mean use per person and occupied day.") VolumeQuantity perPerson,
        @Property("Usual indoor use.") VolumeQuantity usualPerPerson,
        @Basis(formula = "formula.household.scatterMeasuredHomesSame", source = "DAIAD")
        @Property(value = "Usual day-to-day scatter for this number of people.", min = 0, example = "0.42")
        BigDecimal usualDayToDayVariation) {

    static UsualUse of(double occupiedMeanLitres, int people, Country country, AnswerUnits units) {
        return new UsualUse(units.volume(occupiedMeanLitres / people), units.volume(country.usePerPersonLitres()),
                Rounding.answer(DayVariation.forPersons(people).cv()));
    }
}
