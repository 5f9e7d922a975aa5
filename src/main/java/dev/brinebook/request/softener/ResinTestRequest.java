// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Alternatives;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.BedCapacityQuantity;
import dev.brinebook.quantity.BedCapacityUnit;
import dev.brinebook.resin.Resin;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("Laboratory test of the resin. Give its total capacity, or its percentage of new resin.")
@Alternatives(value = {"totalCapacity", "percentOfNew"}, required = true)
public record ResinTestRequest(
        @Property(value = "Remaining total capacity. Give this, or percentOfNew.", min = Resin.MIN_TOTAL_EQUIVALENTS_PER_LITRE,
                max = Resin.MAX_TOTAL_EQUIVALENTS_PER_LITRE, unit = "eq/L") BedCapacityQuantity totalCapacity,
        @Property(value = "Remaining total capacity, as a percentage of new resin. Above 100 is treated as new.",
                min = ResinTestRequest.MIN_PERCENT, max = ResinTestRequest.MAX_PERCENT, unit = "%", example = "72")
        BigDecimal percentOfNew) {

    static final double MIN_PERCENT = 10;
    /** New resin varies, and so do tests. */
    static final double MAX_PERCENT = 120;

    /** Share of the sites of new resin that the test found, 1 at most. */
    public double sitesLeft(double newEquivalentsPerLitre) {
        return Math.min(1, totalCapacity == null ? percentOfNew.doubleValue() / 100
                : BedCapacityUnit.EQUIVALENT_PER_LITRE.fromBase(totalCapacity.inBase()) / newEquivalentsPerLitre);
    }

    /** The same, recorded in {@code explanation}; {@code pointer} is where the request has the test. */
    public double sitesLeft(String pointer, double newEquivalentsPerLitre, Explanation explanation) {
        double left = sitesLeft(newEquivalentsPerLitre);
        Resolved found = totalCapacity == null ? Resolved.of(pointer + "/percentOfNew", percentOfNew, "%")
                : Resolved.of(pointer + "/totalCapacity", totalCapacity);
        explanation.assume(found.noting(Message.of("assumed.softener.resinTestLeavesExchange", Text.digits(100 * left),
                Text.digits(newEquivalentsPerLitre))));
        return left;
    }
}
