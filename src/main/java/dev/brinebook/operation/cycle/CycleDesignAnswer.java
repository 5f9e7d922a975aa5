package dev.brinebook.operation.cycle;

import dev.brinebook.answer.cycle.CycleBed;
import dev.brinebook.answer.cycle.CycleTable;
import dev.brinebook.answer.cycle.RefillSetting;
import dev.brinebook.answer.resin.EfficiencyLineAnswer;
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.api.quantity.WaterPerCapacityQuantity;
import dev.brinebook.wording.Message;
import java.util.List;

@About("A regeneration step by step, and what it takes and restores.")
public record CycleDesignAnswer(
        @Property(value = "One sentence to quote.", example = "\"Set backwash 8, brine and slow rinse 60, fast rinse 8 and"
                + " refill 6.7 minutes.\"") Message summary,
        @Property("The steps, with their time and water.") CycleTable cycle,
        @Property("The resin in its tank.") CycleBed bed,
        @Property("The backwash in this water.") CycleBackwash backwash,
        @Property("The brine.") CycleBrine brine,
        @Property("The refill of the brine tank.") RefillSetting refill,
        @Property("What is wrong or unusual about the cycle on this hardware; empty when nothing is.")
        List<CycleFindingLine> findings,
        @Property("Capacity that the regeneration restores at its dose.") CapacityQuantity capacity,
        @Property("Hardness removed per salt when all of the capacity is used.") SaltEfficiencyQuantity saltEfficiency,
        @Property("Regeneration water per capacity.") WaterPerCapacityQuantity waterPerCapacity,
        @Property("Regeneration water by the resin, and the rinses in it.") CycleWater waterByResin,
        @Property("Published lines of efficiency, held against salt and water alone: as if what starts the regenerations and"
                + " their interval suited the line.") List<EfficiencyLineAnswer> efficiency,
        @Property(value = "Salt and water of a year.", optional = "when regenerationsPerYear is not given") CycleYear year,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
