// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.prices;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.regeneration.SaltStore;

@SchemaDescription("A bag of salt, as sold.")
public record SaltBag(
        @Property(value = "Price of a bag.", required = true, min = 0, max = PricesRequest.MAX_AMOUNT) Money price,
        @Property(value = "Mass of salt in a bag.", required = true, min = SaltStore.MIN_BAG_KILOGRAMS,
                max = SaltStore.MAX_BAG_KILOGRAMS, unit = "kg") MassQuantity mass) {
}
