// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.MoneyLines;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.Prices;
import java.util.Currency;

@SchemaDescription("Parts of the saving in the first year: from the metered control and from the changed dose. The control is counted "
        + "first. In the other order the parts would differ, with the same sum.")
public record SavingByChange(
        @Property("Saved by the metered control at the present dose.") MoneyLines byMetering,
        @Property("Saved by the changed dose, with the metered control in place.") MoneyLines byDose,
        @Property("A year with the metered control at the present dose.") YearlyUseAnswer metered) {

    /** The parts in {@code currency}. */
    public static SavingByChange of(ConvertedYears years, Prices prices, Currency currency, AnswerUnits units) {
        return new SavingByChange(MoneyLines.of(years.savedByMetering(prices), currency),
                MoneyLines.of(years.savedByDose(prices), currency), YearlyUseAnswer.tried(years.metered(), units));
    }
}
