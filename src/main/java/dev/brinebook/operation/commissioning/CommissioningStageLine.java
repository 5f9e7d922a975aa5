// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.commissioning.CommissioningBands;
import dev.brinebook.commissioning.CommissioningCheck;
import dev.brinebook.commissioning.CommissioningStage;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("A stage of the commissioning, with the checks that are made meanwhile.")
public record CommissioningStageLine(
        @Property(value = "The stage.", example = "\"fillResinTank\"") CommissioningStage stage,
        @Property(value = "What to do, in sentences.", example = "\"Open the inlet a quarter and let the tank fill slowly.\"")
        Message instruction,
        @Basis(formula = "formula.commissioning.stageMinutes", source = "OWN-ASSUMPTION")
        @Property(value = "Usual minutes; of the regeneration those of its cycle.", min = 0, unit = "minutes", example = "15")
        BigDecimal minutes,
        @Property(value = "The checks.", eachOf = CommissioningCheck.class) List<CommissioningCheck> checks) {

    static CommissioningStageLine of(CommissioningStage stage, CommissioningBands bands, double cycleMinutes) {
        return new CommissioningStageLine(stage, Message.of(stage), Rounding.answer(stage.minutes(cycleMinutes)),
                stage.checks().stream().filter(bands::has).toList());
    }
}
