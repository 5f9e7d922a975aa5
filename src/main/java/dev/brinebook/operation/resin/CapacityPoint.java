package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.BedCapacityQuantity;
import dev.brinebook.api.quantity.SaltDoseQuantity;

@About("A salt dose, and what resin takes up when it is regenerated with it.")
public record CapacityPoint(
        @Property("The dose.") SaltDoseQuantity saltDose,
        @Property("By the table of resin in use.") TableAtDose workingTable,
        @Property("By the table of new resin.") TableAtDose newResinTable,
        @Property(value = "By the column, in this water.", optional = "when the water is too soft for the end point")
        ColumnAtDose column,
        @Property("What no regeneration can exceed: the equivalents of the salt, or all sites of the resin where those are"
                + " fewer.") BedCapacityQuantity stoichiometricCapacity) {
}
