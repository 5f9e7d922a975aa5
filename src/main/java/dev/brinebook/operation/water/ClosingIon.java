// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.water.chemistry.Ion;

@SchemaDescription("How much more of an ion would close the balance by itself.")
public record ClosingIon(
        @Property("The ion.") Ion ion,
        @Property("How much more of it.") ConcentrationQuantity concentration) {
}
