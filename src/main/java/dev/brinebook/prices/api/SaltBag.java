package dev.brinebook.prices.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.api.MassQuantity;
import dev.brinebook.quantity.api.Money;
import dev.brinebook.regeneration.SaltStore;

@About("A bag of salt as it is sold.")
public record SaltBag(
        @Property(value = "Price of a bag.", required = true) Money price,
        @Property(value = "Salt in a bag.", required = true, min = SaltStore.MIN_BAG_KILOGRAMS,
                max = SaltStore.MAX_BAG_KILOGRAMS, unit = "kg") MassQuantity mass) {
}
