// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.caution.Caution;
import dev.brinebook.payback.Retrofit;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.softener.Readiness;
import dev.brinebook.softener.Readiness.Condition;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

@SchemaDescription("Conditions seen at the site of the softener. Omit those that nobody checked. They are then listed to check on site.")
public record SiteRequest(
        @Property(value = "Whether the brine tank is sound, its line tight, and it holds salt for several regenerations.",
                fallback = "to check on site", example = "true") Boolean brineTankAndLine,
        @Property(value = "Whether the drain line is large enough and has an air gap.", fallback = "to check on site",
                example = "true") Boolean drain,
        @Property(value = "Maximum flow of the drain line, like softener.flows.drainLine. If both are given, the smaller applies.",
                min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE, max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE,
                unit = "L/min", fallback = "unknown") FlowQuantity drainFlow,
        @Property(value = "Bore of the valve.", min = 0.005, max = 0.2, unit = "m", fallback = "to check on site")
        LengthQuantity valveBore,
        @Property(value = "Whether there is room for the meter at the softened water outlet.", fallback = "to check on site",
                example = "true") Boolean placeForMeter,
        @Property(value = "Whether a grounded, unswitched outlet is within reach.", fallback = "to check on site",
                example = "true") Boolean powerWithinReach,
        @Property(value = "Whether the outlet is protected against surges.", fallback = "to check on site", example = "false")
        Boolean surgeProtection,
        @Property(value = "Whether there is a bypass.", fallback = "to check on site", example = "true") Boolean bypass,
        @Property(value = "Whether the resin is in good condition: not fouled, broken or short of volume.",
                fallback = "to check on site", example = "true") Boolean resinGood,
        @Property(value = "Destination of the waste water.", fallback = "unknown: cautions for both with a private "
                + "well, for the sewer elsewhere", example = "\"sewer\"")
        WasteWater wasteWater,
        @Property(value = "Cost of meeting unmet conditions. It is part of the first cost of converting.",
                fallback = "not priced: the first cost of converting does not include them") ReadinessPricesRequest prices) {

    /** Destination of the waste water. */
    public enum WasteWater {
        SEWER, SEPTIC_SYSTEM
    }

    private static final SiteRequest UNSEEN = new SiteRequest(null, null, null, null, null, null, null, null, null, null,
            null);

    /** {@code given}, or a site that nobody looked at. */
    public static SiteRequest orUnseen(SiteRequest given) {
        return given == null ? UNSEEN : given;
    }

    /** Whether the waste water stays on the ground: that of a private well does unless somebody says otherwise. */
    public boolean ownSewage(WaterAnalysis.Supply supply) {
        return wasteWater == null ? supply == WaterAnalysis.Supply.PRIVATE_WELL : wasteWater == WasteWater.SEPTIC_SYSTEM;
    }

    /** Cautions for the destination of the waste water; if unknown, by the supply. */
    public List<Caution> wasteWaterCautions(WaterAnalysis.Supply supply) {
        if (wasteWater == null) {
            return WaterCautions.ofDischarge(supply);
        }
        return List.of(wasteWater == WasteWater.SEPTIC_SYSTEM ? Caution.SEPTIC_SYSTEM : Caution.SEWER_SALT_LIMITS);
    }

    /** Maximum flow of the drain line, if known. */
    OptionalDouble drainLitresPerMinute() {
        return FlowsRequest.base(drainFlow);
    }

    /** The prices of conditions that are given. */
    public Map<Condition, Money> givenPrices() {
        return prices == null ? Map.of() : prices.given();
    }

    /**
     * Reports prices of conditions that cannot be added to those of the conversion. {@code at} is the request that holds the site,
     * the conversion and the prices, each of which may be null.
     */
    public static void checkPrices(SiteRequest site, RetrofitRequest retrofit, PricesRequest prices, HouseholdRequest household,
            Violations at) {
        if (site == null || at.at("site").here() || at.at("prices").here() || at.at("retrofit").here()) {
            return;
        }
        String currency = LocalPrices.of(prices, household).currency().getCurrencyCode();
        double sum = retrofit != null && RetrofitRequest.complete(retrofit.cost()) ? retrofit.cost().value().doubleValue() : 0;
        for (Map.Entry<Condition, Money> price : site.givenPrices().entrySet()) {
            if (RetrofitRequest.complete(price.getValue())) {
                sum += price.getValue().value().doubleValue();
                if (!price.getValue().unit().equals(currency)) {
                    at.at("site").at("prices").add(ReadinessPricesRequest.name(price.getKey()), Code.INCONSISTENT,
                            Message.of("problem.common.mustCurrencyPricesPrices",
                            currency));
                }
            }
        }
        if (sum > Retrofit.MAX_COST) {
            at.at("site").add("prices", Code.OUT_OF_RANGE, Message.of("problem.softener.mustMostTogetherCost",
                    Text.number(Retrofit.MAX_COST)));
        }
    }

    /** The site in SI. */
    public Readiness.Site toDomain(BigDecimal resinAgeYears) {
        return new Readiness.Site(Optional.ofNullable(brineTankAndLine), FlowsRequest.base(drainFlow),
                Optional.ofNullable(drain), FlowsRequest.base(valveBore), Optional.ofNullable(placeForMeter),
                Optional.ofNullable(powerWithinReach), Optional.ofNullable(surgeProtection), Optional.ofNullable(bypass),
                Optional.ofNullable(resinGood),
                resinAgeYears == null ? OptionalDouble.empty() : OptionalDouble.of(resinAgeYears.doubleValue()));
    }
}
