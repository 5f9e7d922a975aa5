// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.softener;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.request.softener.ReadinessPricesRequest;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.Readiness;
import dev.brinebook.softener.Readiness.Condition;
import dev.brinebook.text.Message;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The state of the conditions of a conversion on a site, and the cost of those not met.
 *
 * @param checks every condition
 * @param cost the part of the first cost of converting, and the conditions without a price
 */
public record SiteReadiness(List<ReadinessCheck> checks, Readiness.Cost cost) {

    /** Nothing is known of a site: nothing is checked, and nothing enters the first cost. */
    public static final SiteReadiness NOT_ASKED = new SiteReadiness(List.of(), Readiness.Cost.NONE);

    public SiteReadiness {
        checks = List.copyOf(checks);
    }

    /** The conditions of converting an existing softener; {@code site} may be null. */
    public static SiteReadiness of(SiteRequest site, SoftenerRequest softener, ExistingSoftener found, DesignConditions duty,
            Explanation explanation) {
        SiteRequest seen = SiteRequest.orUnseen(site);
        List<Readiness.Check> checks = Readiness.of(seen.toDomain(softener.resinAgeYears()), found, duty);
        Map<Condition, Money> prices = seen.givenPrices();
        checks.stream().filter(check -> check.state() == Readiness.State.NOT_MET).map(Readiness.Check::condition)
                .forEach(condition -> assume(condition, prices.get(condition), explanation));
        return new SiteReadiness(checks.stream().map(check -> ReadinessCheck.of(check, prices.get(check.condition()))).toList(),
                Readiness.cost(checks, prices.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey,
                        price -> price.getValue().value().doubleValue()))));
    }

    private static void assume(Condition condition, Money price, Explanation explanation) {
        String place = "/site/prices/" + ReadinessPricesRequest.name(condition);
        explanation.assume(price != null ? Resolved.of(place, price.value(), price.unit())
                : Resolved.inWords(place, Message.of("assumed.softener.pricedSoFirstCost")).byDefault("OWN-ASSUMPTION"));
    }
}
