// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Alternatives;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.request.water.HardnessSource;
import dev.brinebook.water.Hardness;

@SchemaDescription("A hardness to convert to every unit.")
@Alternatives(value = {"hardness", "calcium + magnesium"}, required = true)
public record HardnessConversionRequest(
        @Property(value = "The hardness. Give this, or calcium and magnesium.", min = 0, max = Hardness.MAX_MG_PER_L,
                unit = "mg/L") HardnessQuantity hardness,
        @Property(value = "Calcium. Give it with magnesium, instead of hardness.", min = 0,
                max = Hardness.MAX_ION_MG_PER_L, unit = "mg/L") ConcentrationQuantity calcium,
        @Property(value = "Magnesium. Give it with calcium, instead of hardness.", min = 0,
                max = Hardness.MAX_ION_MG_PER_L, unit = "mg/L") ConcentrationQuantity magnesium)
        implements HardnessSource {
}
