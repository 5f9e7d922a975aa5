// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.BedCapacityQuantity;
import dev.brinebook.api.quantity.SaltDoseQuantity;

@SchemaDescription("A salt dose, and the capacity restored with it.")
public record CapacityPoint(
        @Basis
        @Property("The dose.") SaltDoseQuantity saltDose,
        @Property("Capacity by the table of resin in use.") TableAtDose workingTable,
        @Property("Capacity by the table of new resin.") TableAtDose newResinTable,
        @Property(value = "Capacity by the column, in this water.", optional = "when the water is too soft for the end point")
        ColumnAtDose column,
        @Property("Theoretical maximum: the equivalents of the salt, or all exchange sites of the resin if fewer.")
        BedCapacityQuantity stoichiometricCapacity) {
}
