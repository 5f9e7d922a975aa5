// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;

@SchemaDescription("A hardness, as calcium carbonate.")
public record HardnessQuantity(
        @Property(value = "The number.", required = true, example = "18.5") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"gpg\"") HardnessUnit unit)
        implements Quantity<HardnessUnit> {

    /** A hardness for a sentence, in the unit that its reader thinks in. */
    public static HardnessQuantity forReader(double mgPerL, Explanation explanation) {
        return of(mgPerL, explanation.hardnessUnit());
    }

    /** A hardness in a unit. */
    public static HardnessQuantity of(double mgPerL, HardnessUnit unit) {
        return new HardnessQuantity(Rounding.answer(unit.fromBase(mgPerL)), unit);
    }
}
