// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.prices;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.VolumeQuantity;

@SchemaDescription("Price of a volume of water, as on the bill.")
public record WaterPrice(
        @Property(value = "The price.", required = true, min = 0, max = PricesRequest.MAX_AMOUNT) Money price,
        @Property(value = "The volume for this price.", required = true, min = 1, max = 1_000_000, unit = "L")
        VolumeQuantity per) {

    /** Price of a cubic metre. */
    public double perCubicMetre() {
        return 1000 * price.value().doubleValue() / per.inBase();
    }
}
