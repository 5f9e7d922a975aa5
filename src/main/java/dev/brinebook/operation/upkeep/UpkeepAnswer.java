// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.upkeep;

import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.text.Message;
import dev.brinebook.upkeep.UpkeepItem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

@SchemaDescription("The upkeep of a softener: tasks, triggers, intervals and dates.")
public record UpkeepAnswer(
        @Property(value = "Summary in one sentence or more, to quote.", example = "\"The next task is on 2026-04-01. Look at the salt.\"")
        Message summary,
        @Property(value = "First day of the plan.", example = "\"2026-03-02\"") LocalDate from,
        @Property(value = "Last day of the plan.", example = "\"2028-03-01\"") LocalDate to,
        @Property(value = "The tasks, the most frequent kinds first.", eachOf = UpkeepItem.class) List<UpkeepLine> tasks,
        @Basis(formula = "formula.upkeep.metals", source = "OWN-ASSUMPTION")
        @Property(value = "Iron and manganese that a litre of resin is fed in a year, in grams.", min = 0, unit = "g/L", example = "4.1")
        BigDecimal metalsPerYear,
        @Basis(formula = "formula.upkeep.capacityLeft", source = "UFC-3-240-13FN")
        @Property(value = "Capacity left of that of new resin.", min = 0, max = 100, unit = "%", example = "92")
        BigDecimal capacityLeftPercent,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
