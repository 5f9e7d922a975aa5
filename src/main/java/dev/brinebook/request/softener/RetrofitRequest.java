// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.Outlay;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.Retrofit;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.softener.Readiness;
import dev.brinebook.softener.Sizing;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Improvement;
import dev.brinebook.verdict.Step;
import dev.brinebook.verdict.Terms;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

@SchemaDescription("Cost of the retrofit, in the currency of the prices, and the years of savings to consider.")
public record RetrofitRequest(
        @Property(value = "Price of converting, parts and labour.", required = true, min = 0, max = Retrofit.MAX_COST) Money cost,
        @Property(value = "Rebate on the cost, at most equal to it.", min = 0, max = Retrofit.MAX_COST, fallback = "none") Money rebate,
        @Property(value = "Years of savings to consider.", min = Retrofit.MIN_HORIZON_YEARS,
                max = Retrofit.MAX_HORIZON_YEARS, unit = "years", byDefault = Retrofit.ASSUMED_HORIZON_YEARS, example = "10")
        Integer horizonYears,
        @Property(value = "Other improvements with their cost. Those not listed are calculated without a cost, and are not "
                + "recommended if the softener can do the job without them.", maxItems = RetrofitRequest.MAX_UPGRADES, fallback = "none")
        List<UpgradeRequest> upgrades) implements Checked {

    static final int MAX_UPGRADES = 8;

    /** ISO 4217 has no currency with a smaller unit; it also keeps ratios to the investment finite. */
    private static final int MOST_DECIMALS = 4;

    @Override
    public void check(Violations at) {
        checkAmount(cost, "cost", at);
        checkAmount(rebate, "rebate", at);
        checkUpgrades(at);
        if (!complete(cost) || !complete(rebate) || at.at("cost").here() || at.at("rebate").here()) {
            return;
        }
        if (!rebate.unit().equals(cost.unit())) {
            at.add("rebate", Code.INCONSISTENT, Message.of("problem.softener.mustLikeCost", cost.unit()));
        } else if (rebate.value().compareTo(cost.value()) > 0) {
            at.add("rebate", Code.INCONSISTENT, Message.of("problem.common.mustMostCost"));
        }
    }

    private void checkUpgrades(Violations at) {
        Set<Object> seen = new HashSet<>();
        for (int i = 0; upgrades != null && i < upgrades.size(); i++) {
            UpgradeRequest upgrade = upgrades.get(i);
            Object what = upgrade == null ? null : upgrade.kind() != UpgradeRequest.Kind.REPLACEMENT ? upgrade.kind()
                    : upgrade.softener() == null ? null : upgrade.softener().sku();
            if (what != null && !seen.add(what)) {
                if (upgrade.kind() == UpgradeRequest.Kind.REPLACEMENT) {
                    at.at("upgrades").at(i).at("softener").add("sku", Code.INCONSISTENT, Message.of("problem.softener.skuGivenTwice"));
                } else {
                    at.at("upgrades").at(i).add("kind", Code.INCONSISTENT, Message.of("problem.softener.mustDifferUpgradesBefore"));
                }
            }
        }
    }

    /** Reports a cost that the prices cannot be set against. {@code at} is the request that holds both parts. */
    public static void checkCurrency(RetrofitRequest retrofit, PricesRequest prices, HouseholdRequest household, Violations at) {
        LocalPrices.check(prices, household, at);
        if (retrofit == null || !complete(retrofit.cost) || at.at("retrofit").here() || at.at("prices").here()) {
            return;
        }
        String currency = LocalPrices.of(prices, household).currency().getCurrencyCode();
        if (!retrofit.cost.unit().equals(currency)) {
            at.at("retrofit").add("cost", Code.INCONSISTENT, Message.of("problem.common.mustCurrencyPricesPrices", currency));
        }
        for (int i = 0; retrofit.upgrades != null && i < retrofit.upgrades.size(); i++) {
            UpgradeRequest upgrade = retrofit.upgrades.get(i);
            Violations there = at.at("retrofit").at("upgrades").at(i);
            if (upgrade != null && complete(upgrade.cost()) && !there.at("cost").here() && !upgrade.cost().unit().equals(currency)) {
                there.add("cost", Code.INCONSISTENT, Message.of("problem.common.mustCurrencyPricesPrices", currency));
            }
        }
    }

    /** The conversion in the domain, with the cost of its conditions and every default recorded in {@code explanation}. */
    public Retrofit toDomain(YearlyUse asFound, YearlyUse converted, Readiness.Cost unmet, Explanation explanation) {
        explanation.assume(Resolved.of("/retrofit/cost", cost.value(), cost.unit()));
        double rebated = explanation.resolve(rebate == null ? null : rebate.value(),
                Resolved.of("/retrofit/rebate", 0, cost.unit()).byDefault("OWN-ASSUMPTION"));
        int years = (int) explanation.resolve(horizonYears,
                Resolved.of("/retrofit/horizonYears", Retrofit.ASSUMED_HORIZON_YEARS, "years").byDefault("OWN-ASSUMPTION"));
        return new Retrofit(asFound, converted, cost.value().doubleValue() + unmet.priced(), rebated, years);
    }

    /**
     * Prices, horizon and costs for a verdict.
     *
     * @param conversion what is known of costs, or null
     * @param unmet cost of unmet conditions, for any change beyond the settings
     * @param request the case
     * @param given the same, worked out
     */
    public static Terms terms(RetrofitRequest retrofit, Readiness.Cost unmet, Prices prices, CaseRequest request,
            SoftenerCase given) {
        if (retrofit == null) {
            return new Terms(prices, Retrofit.ASSUMED_HORIZON_YEARS, Map.of(), Map.of(), List.of(), unmet.unpriced());
        }
        int years = retrofit.yearsOrAssumed();
        Map<Improvement, Outlay> improvements = new EnumMap<>(Improvement.class);
        List<Sizing.Candidate> goods = new ArrayList<>();
        for (UpgradeRequest upgrade : retrofit.upgrades == null ? List.<UpgradeRequest>of() : retrofit.upgrades) {
            double upgradeCost = upgrade.cost().value().doubleValue() + unmet.priced();
            if (upgrade.kind() == UpgradeRequest.Kind.REPLACEMENT) {
                goods.add(upgrade.softener().asGoods(upgradeCost, request, given));
            } else {
                improvements.putIfAbsent(upgrade.kind().improvement(), Terms.paidOnce(upgradeCost, 0, years));
            }
        }
        return new Terms(prices, years, Map.of(Step.CONVERT, Terms.paidOnce(retrofit.netCost(unmet), 0, years)), improvements, goods,
                unmet.unpriced());
    }

    /** Over how many years it is looked at. */
    public int yearsOrAssumed() {
        return horizonYears == null ? Retrofit.ASSUMED_HORIZON_YEARS : horizonYears;
    }

    /** Cost and what its conditions cost, less rebate. */
    public double netCost(Readiness.Cost unmet) {
        return cost.value().doubleValue() + unmet.priced() - (rebate == null ? 0 : rebate.value().doubleValue());
    }

    /** Reports an amount of finer parts than any currency has. {@code at} is what holds it. */
    public static void checkAmount(Money amount, String name, Violations at) {
        if (amount == null || amount.value() == null || at.at(name).here()) {
            return;
        }
        if (amount.value().stripTrailingZeros().scale() > MOST_DECIMALS) {
            at.add(name, Code.OUT_OF_RANGE, Message.of("problem.softener.mustMostDecimals", MOST_DECIMALS));
        }
    }

    /** Whether an amount has both its parts; one that lacks a part is reported elsewhere. */
    public static boolean complete(Money amount) {
        return amount != null && amount.value() != null && amount.unit() != null;
    }
}
