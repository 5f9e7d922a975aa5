// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.request.water.FactorSet;

@SchemaDescription("Compensated hardness of the same water by another factor set.")
public record FactorSetTotal(
        @Property("The factor set.") FactorSet set,
        @Property("Compensated hardness by this factor set.") HardnessQuantity total) {
}
