package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.MoneyLines;
import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.Prices;
import dev.brinebook.wording.Message;
import java.util.Currency;

@About("How much of the first year's saving is due to the metered control, and how much to the changed dose. The control"
        + " counts first: in the other order the parts would be others, with the same sum.")
public record SavingByChange(
        @Property("Saved by the metered control at the dose as found.") MoneyLines byMetering,
        @Property("Saved by the changed dose once the metered control stands.") MoneyLines byDose,
        @Property("A year with the metered control at the dose as found.") YearlyUseAnswer metered) {

    /** The parts in {@code currency}, with their basis told below {@code pointer}. */
    public static SavingByChange of(ConvertedYears years, Prices prices, Currency currency, AnswerUnits units,
            String pointer, Explanation explanation) {
        explanation.because(pointer, Message.of("an expected year once more with the metered control at the dose as found: what it uses"
                + " less than as found is due to metering, the rest to the dose"), "DAIAD");
        return new SavingByChange(MoneyLines.of(years.savedByMetering(prices), currency),
                MoneyLines.of(years.savedByDose(prices), currency), YearlyUseAnswer.tried(years.metered(), units));
    }
}
