// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;

@SchemaDescription("A saving between two amounts, with 95 %, as far as it depends on what was measured of the softener.")
public record SavingInterval(
        @Property("The least. Negative if converting may cost more.") Money low,
        @Property("The most.") Money high) {
}
