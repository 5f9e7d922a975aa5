// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import dev.brinebook.water.chemistry.ChargeBalance;
import dev.brinebook.water.report.Slip;
import dev.brinebook.water.report.SlipFinder;
import java.math.BigDecimal;

@SchemaDescription("A slip that would explain the report. It is offered, never applied: compare with older reports first.")
public record SlipAnswer(
        @Property("Stable code of the slip.") Slip slip,
        @Property(value = "The slip, in a sentence.", example = "\"Calcium may be printed as CaCO3.\"") Message message,
        @Property(value = "Difference of the charges without the slip.", unit = "%", example = "-0.2") BigDecimal differencePercent,
        @Property(value = "Misfit without the slip: 0 is perfect, below 4 is good.", min = 0, example = "0.1") BigDecimal misfit) {

    static SlipAnswer of(SlipFinder.Repair repair) {
        return new SlipAnswer(repair.slip(), Message.of(repair.slip()),
                Rounding.answer(ChargeBalance.of(repair.repaired()).percent()), Rounding.answer(repair.score()));
    }
}
