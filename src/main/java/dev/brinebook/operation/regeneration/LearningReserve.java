// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.text.Message;

@SchemaDescription("A reserve that the controller multiplies by the level of use in the last weeks.")
public record LearningReserve(
        @Property("Smallest reserve that meets the service standard, at the mean level of use.") VolumeQuantity reserveAtMeanUse,
        @Property("Expected results per year with it, once it has learned.") PolicyTotals year,
        @Property(value = "Benefit of it, in a sentence.", example = "\"It meets the service standard when the home "
                + "changes.\"") Message sentence) {
}
