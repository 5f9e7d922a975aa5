// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.BedCapacityQuantity;
import dev.brinebook.resin.EfficiencyLine;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Capacity against salt dose, by the tables and by the column in this water.")
public record ResinCapacityAnswer(
        @Property(value = "Summary in one sentence or more, to quote.", example = "\"From 3 to 20 lb/ft3 the working "
                + "table gives 10.5 to 32.8 kgr/ft3.\"") Message summary,
        @Property("The water.") ChartedWater water,
        @Property("Total capacity: all remaining exchange sites of the resin. Never reached in use.")
        BedCapacityQuantity totalCapacity,
        @Property("The column.") ChartedColumn column,
        @Property(value = "Each dose, in the order of the request.", maxItems = ResinCapacityRequest.MAX_DOSES) List<CapacityPoint> points,
        @Property(value = "Each published limit, by its salt efficiency alone.", maxItems = EfficiencyLine.COUNT)
        List<EfficiencyLineReach> efficiencyLines,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
