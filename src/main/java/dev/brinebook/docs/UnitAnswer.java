// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import java.math.BigDecimal;

@SchemaDescription("A unit. In the base unit a number is (number - zero) times factor.")
public record UnitAnswer(
        @Property(value = "How it is written in requests and answers.", example = "\"gpg\"") String symbol,
        @Property(value = "What it is.", example = "\"grains per US gallon as CaCO3\"") String name,
        @Property(value = "UCUM code.", optional = "when it has none", example = "\"[gr]/[gal_us]\"") String ucum,
        @Property(value = "Base units in one of it: exact if it ends, else to the last digit that the calculation uses.", min = 0,
                aboveMin = true, example = "17.11806104527095") BigDecimal factor,
        @Property(value = "Number that it has where the base unit has 0.", optional = "when that is 0, as for all but one scale of "
                + "temperature", min = -1000, max = 1000, example = "32") BigDecimal zero) {
}
