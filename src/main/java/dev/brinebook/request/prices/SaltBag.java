package dev.brinebook.request.prices;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.regeneration.SaltStore;

@About("A bag of salt as it is sold.")
public record SaltBag(
        @Property(value = "Price of a bag.", required = true) Money price,
        @Property(value = "Salt in a bag.", required = true, min = SaltStore.MIN_BAG_KILOGRAMS,
                max = SaltStore.MAX_BAG_KILOGRAMS, unit = "kg") MassQuantity mass) {
}
