// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.payback.WaterTariff;
import dev.brinebook.request.prices.WaterPrice;

@SchemaDescription("Block of a tariff: water of a year up to an amount, at one price.")
public record TariffBlock(
        @Property(value = "Upper end of the block. Omit it in the last block.", min = 0, aboveMin = true,
                max = 1000 * WaterTariff.MAX_CUBIC_METRES, unit = "L", fallback = "no end") VolumeQuantity upTo,
        @Property(value = "Price within the block.", required = true) WaterPrice price) {
}
