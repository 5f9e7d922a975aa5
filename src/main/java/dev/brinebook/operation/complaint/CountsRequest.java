// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.complaint;

import dev.brinebook.api.Alternatives;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.VolumeQuantity;

@SchemaDescription("What the controller counted over some days.")
@Alternatives(value = {"regenerations", "meteredWater"}, required = true, several = true)
public record CountsRequest(
        @Property(value = "Days between the two readings.", required = true, min = 7, max = 3660, unit = "days", example = "60")
        Integer days,
        @Property(value = "Regenerations between them.", min = 0, max = 4000, example = "12") Integer regenerations,
        @Property(value = "Water by the display of the softener between them.", min = 0, max = 50_000_000, unit = "L")
        VolumeQuantity meteredWater) {
}
