// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.payback;

import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.CashFlows;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

@SchemaDescription("Cash flow of one year, at its end.")
public record CashFlowYear(
        @Property(value = "Year. 0 is today.", min = 0, max = CashFlows.MAX_YEARS, example = "1") Integer year,
        @Property("Investment in year 0, as a negative amount. Saving in every other year.") Money cashFlow,
        @From({"cashFlow", "year"})
        @Property("The same in today's money.") Money discounted,
        @Property("Cumulative cash flow to this year, in today's money. In the last year it is the net present value.")
        Money cumulative) {

    public static List<CashFlowYear> of(List<Double> flows, double discountSharePerYear, Currency currency) {
        double[] discounted = CashFlows.discounted(discountSharePerYear,
                flows.stream().mapToDouble(Double::doubleValue).toArray());
        List<CashFlowYear> years = new ArrayList<>();
        double sum = 0;
        for (int year = 0; year < discounted.length; year++) {
            sum += discounted[year];
            years.add(new CashFlowYear(year, Money.of(flows.get(year), currency), Money.of(discounted[year], currency),
                    Money.of(sum, currency)));
        }
        return years;
    }
}
