// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.savings.FleetSavings;
import java.math.BigDecimal;

@SchemaDescription("The mean saving of salt of such homes, with the interval that holds it with 90 %.")
public record FleetPooled(
        @Property(value = "Homes pooled.", min = FleetSavings.MIN_HOMES, example = "96") Integer homes,
        @Property(value = "Mean share of the salt that is saved.", unit = "%", example = "25.1") BigDecimal percent,
        @Property(value = "Low end of its interval.", unit = "%", example = "23.8") BigDecimal lowPercent,
        @Property(value = "High end of its interval.", unit = "%", example = "26.4") BigDecimal highPercent,
        @Property(value = "How far homes truly differ: standard deviation of the logarithm of what they still use.", min = 0,
                example = "0.09") BigDecimal spread) {

    static FleetPooled of(FleetSavings fleet) {
        return new FleetPooled(fleet.homes(), SavedSalt.percent(fleet.share()), SavedSalt.percent(fleet.low()),
                SavedSalt.percent(fleet.high()), Rounding.answer(fleet.spread()));
    }
}
