// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.request.water.HardnessSource;
import dev.brinebook.water.Hardness;

@SchemaDescription("A hardness to convert to every unit.")
public record HardnessConversionRequest(
        @Property(value = "The hardness. Give this, or calcium and magnesium.", min = 0, max = Hardness.MAX_MG_PER_L,
                unit = "mg/L") HardnessQuantity hardness,
        @Property(value = "Calcium. Give it with magnesium, instead of hardness.", min = 0,
                max = Hardness.MAX_ION_MG_PER_L, unit = "mg/L") ConcentrationQuantity calcium,
        @Property(value = "Magnesium. Give it with calcium, instead of hardness.", min = 0,
                max = Hardness.MAX_ION_MG_PER_L, unit = "mg/L") ConcentrationQuantity magnesium)
        implements Checked, HardnessSource {

    @Override
    public void check(Violations at) {
        checkHardness(at);
    }
}
