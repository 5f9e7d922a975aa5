// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import java.util.List;

@SchemaDescription("A kind of quantity. Units of one kind convert into each other, those of two kinds never.")
public record UnitKindAnswer(
        @Property(value = "Name of the kind.", example = "\"hardness\"") String kind,
        @Property(value = "Name of its schema in the contract.", example = "\"HardnessQuantity\"") String schema,
        @Property(value = "Symbol of the base unit, whose factor is 1.", example = "\"mg/L\"") String baseUnit,
        @Property(value = "The units, each with its factor.", minItems = 1, maxItems = UnitKindAnswer.MAX_UNITS) List<UnitAnswer> units) {

    static final int MAX_UNITS = 20;
}
