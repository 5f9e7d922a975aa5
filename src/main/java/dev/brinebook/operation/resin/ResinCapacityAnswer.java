package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.BedCapacityQuantity;
import dev.brinebook.wording.Message;
import java.util.List;

@About("Capacity against salt dose: what the tables give, and what the column gives in this water.")
public record ResinCapacityAnswer(
        @Property(value = "One sentence or more to quote.", example = "\"From 3 to 20 lb/ft3 the working table gives 10.49 to"
                + " 32.81 kgr/ft3.\"") Message summary,
        @Property("The water.") ChartedWater water,
        @Property("All exchange sites of the resin, with those that age has taken away left out: never reached.")
        BedCapacityQuantity totalCapacity,
        @Property("The column.") ChartedColumn column,
        @Property("Each dose, in the order given.") List<CapacityPoint> points,
        @Property("Each published line, by its salt efficiency alone.") List<EfficiencyLineReach> efficiencyLines,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
