// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.cycle;

import dev.brinebook.answer.cycle.CycleBed;
import dev.brinebook.answer.cycle.CycleTable;
import dev.brinebook.answer.cycle.RefillSetting;
import dev.brinebook.answer.resin.EfficiencyLineAnswer;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.api.quantity.WaterPerCapacityQuantity;
import dev.brinebook.regeneration.CycleFinding;
import dev.brinebook.resin.EfficiencyLine;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("A regeneration step by step, its consumption and the capacity it restores.")
public record CycleDesignAnswer(
        @Property(value = "Summary in one sentence, to quote.", example = "\"Set backwash 8, brine and slow rinse 60, fast rinse 8 and"
                + " refill 6.7 minutes.\"") Message summary,
        @Property("The steps, with their time and water.") CycleTable cycle,
        @Property("The resin in its tank.") CycleBed bed,
        @Property("The backwash in this water.") CycleBackwash backwash,
        @Property("The brine.") CycleBrine brine,
        @Property("The refill of the brine tank.") RefillSetting refill,
        @Property(value = "Problems and unusual values of the cycle on this hardware. Empty when there are none.",
                eachOf = CycleFinding.class)
        List<CycleFindingLine> findings,
        @From({"bed/resinVolume", "brine/saltDose"})
        @Property("Capacity restored at this salt dose.") CapacityQuantity capacity,
        @Basis(formula = "formula.common.capacitySaltPerRegeneration", source = "WQP-2009")
        @From({"capacity", "brine/saltPerRegeneration"})
        @Property("Salt efficiency when all of the capacity is used.") SaltEfficiencyQuantity saltEfficiency,
        @Basis(formula = "formula.common.waterPerRegenerationCapacity", source = "DOE-BASC")
        @From({"cycle/water", "capacity"})
        @Property("Regeneration water per capacity.") WaterPerCapacityQuantity waterPerCapacity,
        @Property("Regeneration water per resin volume, and its rinses.") CycleWater waterByResin,
        @Property(value = "Published efficiency limits, compared by salt and water alone. The control "
                + "type and the interval are assumed to meet the limit.", maxItems = EfficiencyLine.COUNT)
                List<EfficiencyLineAnswer> efficiency,
        @Property(value = "Salt and water per year.", optional = "when regenerationsPerYear is not given") CycleYear year,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
