// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.VolumeQuantity;

@SchemaDescription("Water of regenerations saved a year, with the interval that holds it with 90 %.")
public record SavedWater(
        @Property("Water saved a year.") VolumeQuantity savedPerYear,
        @Property("Low end of its interval.") VolumeQuantity savedLow,
        @Property("High end of its interval.") VolumeQuantity savedHigh) {
}
