package dev.brinebook.operation.assessment;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.household.HouseholdFit;
import dev.brinebook.household.UseModel;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Duty;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.Currency;

@About("What four weeks of readings of the water meter would save, where the use is guessed from the people alone: how much homes"
        + " with equally many people differ has to be kept in reserve.")
public record ReadingsWorth(
        @Property("Salt of a year that settings chosen after the readings save; negative where they take more.") MassQuantity saltSaved,
        @Property(value = "The same as a share of the salt.", max = 100, unit = "%", example = "24") BigDecimal saltSavedPercent,
        @Property("Salt and water of a year at their prices.") Money moneySaved,
        @Property(value = "What they would save, in one sentence.",
                example = "\"Four weeks of water meter readings would save about 24 % of the salt on average.\"") Message sentence,
        @Property(value = "How to take them.", example = "\"Write down the reading of the water meter every day.\"") Message how) {

    private static final int FOUR_WEEKS = 28;

    static ReadingsWorth of(Assessment assessment, Currency currency, AnswerUnits units, Explanation explanation) {
        Duty duty = assessment.duty();
        UseModel model = duty.demand().model();
        Duty known = duty.with(model.with(HouseholdFit.afterDays(FOUR_WEEKS, model.cv(), true)));
        DoseChoice.Option now = assessment.recommended();
        DoseChoice.Option then = DoseChoice.cheapest(now.dosed().softener(), known, assessment.cost(), now.settings().start()).best();
        double saved = now.year().saltGrams() - then.year().saltGrams();
        double percent = now.year().saltGrams() > 0 ? 100 * saved / now.year().saltGrams() : 0;
        explanation.because("/readings", Message.of("the same choice with level and scatter of the use as sure as {0} days of readings"
                + " make them, at the same mean use; over metered homes one to four weeks saved 23 to 25 % of the salt", FOUR_WEEKS),
                "DAIAD");
        long whole = Math.round(percent);
        return new ReadingsWorth(units.mass(saved / 1000), Rounding.answer(percent),
                Money.of(now.costPerYear() - then.costPerYear(), currency),
                whole > 0 ? Message.of("Four weeks of water meter readings would save about {0} % of the salt on average.",
                        Text.number(whole))
                        : Message.of("Four weeks of water meter readings would save no salt here."),
                Message.of("Write down the reading of the water meter every day at about the same hour for four weeks; the readings then"
                        + " take the place of the number of people."));
    }
}
