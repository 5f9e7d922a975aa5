package dev.brinebook.request.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.caution.Caution;
import dev.brinebook.payback.Conversion;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.softener.Readiness;
import dev.brinebook.softener.Readiness.Condition;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

@About("What was seen where the softener stands. Leave out what nobody looked at: it is then to check on site.")
public record SiteRequest(
        @Property(value = "The brine tank is sound, its line tight, and it holds salt for several regenerations.",
                fallback = "to check on site", example = "true") Boolean brineTankAndLine,
        @Property(value = "The drain line is large enough and has an air gap.", fallback = "to check on site",
                example = "true") Boolean drain,
        @Property(value = "What the drain line takes, as softener.flows.drainLine; of two the lesser counts.",
                min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE, max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE,
                unit = "L/min", fallback = "unknown") FlowQuantity drainFlow,
        @Property(value = "Bore of the valve.", min = 0.005, max = 0.2, unit = "m", fallback = "to check on site")
        LengthQuantity valveBore,
        @Property(value = "There is room for the meter where the softened water leaves.", fallback = "to check on site",
                example = "true") Boolean placeForMeter,
        @Property(value = "A grounded outlet that is not switched is within reach.", fallback = "to check on site",
                example = "true") Boolean powerWithinReach,
        @Property(value = "The outlet is protected against surges.", fallback = "to check on site", example = "false")
        Boolean surgeProtection,
        @Property(value = "There is a bypass.", fallback = "to check on site", example = "true") Boolean bypass,
        @Property(value = "The resin is in good condition: not fouled, broken or short of volume.",
                fallback = "to check on site", example = "true") Boolean resinGood,
        @Property(value = "Where the waste water goes.", fallback = "unknown: cautions for both on a private well, for the"
                + " sewer elsewhere", example = "\"sewer\"")
        WasteWater wasteWater,
        @Property(value = "What it costs to meet conditions that are not met; it enters the first cost of converting.",
                fallback = "not priced: the first cost of converting lacks them") ReadinessPricesRequest prices) {

    /** Where waste water goes. */
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

    /** What to be careful about where the waste water goes; when nobody said, by the supply. */
    public List<Caution> wasteWaterCautions(WaterAnalysis.Supply supply) {
        if (wasteWater == null) {
            return WaterCautions.ofDischarge(supply);
        }
        return List.of(wasteWater == WasteWater.SEPTIC_SYSTEM ? Caution.SEPTIC_SYSTEM : Caution.SEWER_SALT_LIMITS);
    }

    /** What the drain line takes, if known. */
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
    public static void checkPrices(SiteRequest site, ConversionRequest conversion, PricesRequest prices, HouseholdRequest household,
            Violations at) {
        if (site == null || at.at("site").here() || at.at("prices").here() || at.at("conversion").here()) {
            return;
        }
        String currency = LocalPrices.of(prices, household).currency().getCurrencyCode();
        double sum = conversion != null && ConversionRequest.complete(conversion.cost()) ? conversion.cost().value().doubleValue() : 0;
        for (Map.Entry<Condition, Money> price : site.givenPrices().entrySet()) {
            if (ConversionRequest.complete(price.getValue())) {
                sum += price.getValue().value().doubleValue();
                if (!price.getValue().unit().equals(currency)) {
                    at.at("site").at("prices").add(ReadinessPricesRequest.name(price.getKey()), Code.INCONSISTENT, Message.of("must be"
                            + " in {0}, the currency of the prices; where prices are left out they are in the money of the country",
                            currency));
                }
            }
        }
        if (sum > Conversion.MAX_COST) {
            at.at("site").add("prices", Code.OUT_OF_RANGE, Message.of("must with the cost of the conversion be at most {0}",
                    Text.number(Conversion.MAX_COST)));
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
