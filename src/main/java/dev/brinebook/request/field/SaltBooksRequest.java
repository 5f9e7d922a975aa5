// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.field;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.MassQuantity;

@SchemaDescription("Salt bought and regenerations counted over the same time.")
public record SaltBooksRequest(
        @Property(value = "Salt used: bought, less what the tank holds more than at the start.", required = true, min = 0,
                max = 20_000, unit = "kg") MassQuantity salt,
        @Property(value = "Regenerations counted.", required = true, min = 2, max = 20_000, example = "26") Integer regenerations,
        @Property(value = "Mass of a bag. The level at start and end is taken as known to half a bag.", min = 1, max = 50, unit = "kg",
                byDefault = 40, defaultUnit = "lb") MassQuantity bag) {
}
