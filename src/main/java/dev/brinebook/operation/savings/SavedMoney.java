// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;

@SchemaDescription("Money saved a year at one price before and after, with the interval that holds it with 90 %.")
public record SavedMoney(
        @Property("Money saved a year.") Money savedPerYear,
        @Property("Low end of its interval.") Money savedLow,
        @Property("High end of its interval.") Money savedHigh) {
}
