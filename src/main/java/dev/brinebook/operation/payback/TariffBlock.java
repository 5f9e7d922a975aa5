package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.payback.WaterTariff;
import dev.brinebook.request.prices.WaterPrice;

@About("Water of a year up to an amount, at one price.")
public record TariffBlock(
        @Property(value = "Where the block ends; leave it out in the last, which has no end.", min = 0, aboveMin = true,
                max = 1000 * WaterTariff.MAX_CUBIC_METRES, unit = "L", fallback = "no end") VolumeQuantity upTo,
        @Property(value = "Price in it.", required = true) WaterPrice price) {
}
