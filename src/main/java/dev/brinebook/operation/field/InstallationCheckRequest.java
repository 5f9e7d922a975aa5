// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.field.InstallationCheck.Seen;
import dev.brinebook.field.InstallationCheck.Sign;
import dev.brinebook.household.Country;
import dev.brinebook.payback.Retrofit;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.request.softener.FlowsRequest;
import dev.brinebook.request.softener.ReadinessPricesRequest;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.softener.Readiness.Condition;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

@SchemaDescription("What was seen of an installation. Omit what nobody checked. It is then listed as a question.")
public record InstallationCheckRequest(
        @Property(value = "Whether a tank with salt is joined to the valve by a small line.", fallback = "not checked", example = "true")
        Boolean saltTank,
        @Property(value = "Whether a line runs from the valve to a drain.", fallback = "not checked", example = "true") Boolean drainLine,
        @Property(value = "Whether the water behind it is softer than the water before it, by a test of both.", fallback = "not checked",
                example = "true") Boolean softerOutlet,
        @Property(value = "Whether the valve comes off the resin tank.", fallback = "not checked", example = "true")
        Boolean valveComesOff,
        @Property("The site, as in the other operations: conditions seen, and the prices of meeting them.") SiteRequest site,
        @Property(value = "Age of the resin.", min = 0, max = 60, unit = "years", fallback = "unknown", example = "8")
        BigDecimal resinAgeYears,
        @Property(value = "Backwash that the drain has to take.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min", fallback = "not compared with the drain flow")
        FlowQuantity backwash,
        @Property(value = "Peak flow that the valve has to pass.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min", fallback = "the bore is to check on site")
        FlowQuantity peakFlow,
        @Property(value = HomeCountry.DESCRIPTION, defaultCode = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units)
        implements Checked {

    /** The prices are of one currency, and make a sum that can be a cost. */
    @Override
    public void check(Violations at) {
        if (site == null || at.at("site").here()) {
            return;
        }
        String currency = null;
        double sum = 0;
        for (Map.Entry<Condition, Money> price : site.givenPrices().entrySet()) {
            String own = price.getValue().unit();
            currency = currency == null ? own : currency;
            sum += price.getValue().value().doubleValue();
            if (!own.equals(currency)) {
                at.at("site").at("prices").add(ReadinessPricesRequest.name(price.getKey()), Code.INCONSISTENT,
                        Message.of("problem.common.mustCurrencyPricesPrices", currency));
            }
        }
        if (sum > Retrofit.MAX_COST) {
            at.at("site").add("prices", Code.OUT_OF_RANGE, Message.of("problem.softener.mustMostTogetherCost",
                    Text.number(Retrofit.MAX_COST)));
        }
    }

    /** What was seen of each sign. */
    Map<Sign, Seen> signs() {
        Map<Sign, Seen> signs = new EnumMap<>(Sign.class);
        signs.put(Sign.SALT_TANK, Seen.of(Optional.ofNullable(saltTank)));
        signs.put(Sign.DRAIN_LINE, Seen.of(Optional.ofNullable(drainLine)));
        signs.put(Sign.SOFTER_OUTLET, Seen.of(Optional.ofNullable(softerOutlet)));
        signs.put(Sign.VALVE_COMES_OFF, Seen.of(Optional.ofNullable(valveComesOff)));
        return signs;
    }
}
