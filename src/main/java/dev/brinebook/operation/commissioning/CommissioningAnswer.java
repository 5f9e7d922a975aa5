// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.answer.cycle.CycleTable;
import dev.brinebook.answer.softener.ControllerSetting;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.commissioning.CommissioningCheck;
import dev.brinebook.commissioning.CommissioningStage;
import dev.brinebook.commissioning.LaterCheck;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("How a softener is put into service: settings, stages, what each reading must show, and what readings say.")
public record CommissioningAnswer(
        @Property(value = "Summary in one sentence or more, to quote.", example = "\"Enter 11 settings and wait 2 hours for the brine. "
                + "The first regeneration then takes 83 minutes.\"") Message summary,
        @Property(value = "The settings, in the order of a common menu.", eachOf = ControllerSetting.class)
        List<CommissioningSettingLine> settings,
        @Property(value = "The stages, in order.", eachOf = CommissioningStage.class) List<CommissioningStageLine> stages,
        @Property("The first regeneration, step by step.") CycleTable cycle,
        @Property("Its brine.") CommissioningBrine brine,
        @Property(value = "The checks, in order, with their bands and readings.", eachOf = CommissioningCheck.class)
        List<CommissioningCheckLine> checks,
        @Basis(formula = "formula.commissioning.testFlow", source = "UFC-3-230-02")
        @Property("Service flow at which the loss of pressure is read.") FlowQuantity pressureTestFlow,
        @Property(value = "What the readings come to.", optional = "when readings is not given") ReadingTally readings,
        @Property("What the controller then does in this household.") ExpectedWeeks expected,
        @Property(value = "What to look at later.", eachOf = LaterCheck.class) List<LaterCheckLine> later,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
