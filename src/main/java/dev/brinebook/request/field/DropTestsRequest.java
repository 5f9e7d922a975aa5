// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.field;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.water.Hardness;

@SchemaDescription("Drop tests of hardness, all within some minutes.")
public record DropTestsRequest(
        @Property(value = "Before the softener.", required = true, min = 0, aboveMin = true, max = Hardness.MAX_MG_PER_L, unit = "mg/L")
        HardnessQuantity raw,
        @Property(value = "At the outlet of the softener, while it softens.", required = true, min = 0, max = Hardness.MAX_MG_PER_L,
                unit = "mg/L") HardnessQuantity outlet,
        @Property(value = "At a cold tap of softened water.", min = 0, max = Hardness.MAX_MG_PER_L, unit = "mg/L",
                fallback = "not tested: raw water that passes by is not known") HardnessQuantity tap,
        @Property(value = "Hardness of one drop.", min = 0.5, max = 60, unit = "mg/L", byDefault = 1, defaultUnit = "gpg")
        HardnessQuantity dropSize) {
}
