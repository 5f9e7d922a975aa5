// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The flows of an injector, as far as known.
 *
 * @param suctionLitresPerMinute saturated brine that it draws from the tank, below what it sends through the bed
 * @param brineLitresPerMinute what it sends through the bed while it draws brine, and in the slow rinse
 * @param mixing how the two add up where both are known
 */
public record InjectorFlows(OptionalDouble suctionLitresPerMinute, OptionalDouble brineLitresPerMinute, BrineMixing mixing) {

    public InjectorFlows {
        Objects.requireNonNull(mixing, "mixing");
        check(suctionLitresPerMinute, "brineSuctionLitresPerMinute");
        check(brineLitresPerMinute, "brineLitresPerMinute");
        if (suctionLitresPerMinute.isPresent() && brineLitresPerMinute.isPresent()) {
            Injector.suctionShare(suctionLitresPerMinute.getAsDouble(), brineLitresPerMinute.getAsDouble());
        }
    }

    private static void check(OptionalDouble flow, String name) {
        flow.ifPresent(known -> Guard.within(known, CycleFlows.MIN_FLOW_LITRES_PER_MINUTE, CycleFlows.MAX_FLOW_LITRES_PER_MINUTE,
                name));
    }
}
