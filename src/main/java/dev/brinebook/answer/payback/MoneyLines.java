package dev.brinebook.answer.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.YearlyCost;
import java.util.Currency;

@About("Money of a year by what it is for. Each line is rounded by itself, so the total may differ from their sum by cents."
        + " A saving is negative where more is paid.")
public record MoneyLines(
        @Property("Salt.") Money salt,
        @Property("Water bought.") Money water,
        @Property("Water sent to the sewer.") Money sewer,
        @Property("Paid service visits.") Money service,
        @Property("All lines together.") Money total) {

    public static MoneyLines of(YearlyCost cost, Currency currency) {
        return new MoneyLines(Money.of(cost.salt(), currency), Money.of(cost.water(), currency),
                Money.of(cost.sewer(), currency), Money.of(cost.service(), currency), Money.of(cost.total(), currency));
    }
}
