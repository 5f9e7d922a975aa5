// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.household.HouseholdFit;
import dev.brinebook.household.UseModel;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.DoseSearch;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Currency;

@SchemaDescription("Saving from four weeks of water meter readings, when the use is estimated from the people alone. The reserve must "
        + "then cover the differences between homes of the same size.")
public record ReadingsWorth(
        @Property("Salt saved per year by settings chosen from the readings. Negative if they use more.") MassQuantity saltSaved,
        @Property(value = "The same as a share of the salt.", max = 100, unit = "%", example = "24") BigDecimal saltSavedPercent,
        @Property("Cost of salt and water saved per year.") Money moneySaved,
        @Property(value = "Saving from the readings, in one sentence.",
                example = "\"Four weeks of water meter readings would save about 24 % of the salt on average.\"") Message sentence,
        @Property(value = "How to take the readings.", example = "\"Write down the water meter reading every day at about the "
                + "same hour for four weeks. The readings then replace the number of people.\"") Message how) {

    private static final int FOUR_WEEKS = 28;

    static ReadingsWorth of(Assessment assessment, Currency currency, AnswerUnits units, Explanation explanation) {
        DesignConditions duty = assessment.duty();
        UseModel model = duty.demand().model();
        DesignConditions known = duty.with(model.with(HouseholdFit.afterDays(FOUR_WEEKS, model.cv(), true)));
        DoseChoice.Option now = assessment.recommended();
        DoseChoice.Option then = DoseSearch.cheapest(now.dosed().softener(), known, assessment.cost(), now.settings().start()).best();
        double saved = now.year().saltGrams() - then.year().saltGrams();
        double percent = now.year().saltGrams() > 0 ? 100 * saved / now.year().saltGrams() : 0;
        explanation.because("/readings", Message.of("formula.assessment.sameChoiceLevelScatter", FOUR_WEEKS),
                "DAIAD");
        long whole = Math.round(percent);
        return new ReadingsWorth(units.mass(saved / 1000), Rounding.answer(percent),
                Money.of(now.costPerYear() - then.costPerYear(), currency),
                whole > 0 ? Message.of("readingsWorth.fourWeeksWaterMeter",
                        Text.number(whole))
                        : Message.of("readingsWorth.fourWeeksWaterMeterReadings"),
                Message.of("readingsWorth.writeDownWaterMeter"));
    }
}
