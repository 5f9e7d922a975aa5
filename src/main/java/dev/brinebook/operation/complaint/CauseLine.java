// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.complaint;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.complaint.Cause;
import dev.brinebook.complaint.Sign;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("A possible cause.")
public record CauseLine(
        @Property("Stable code.") Cause cause,
        @Property(value = "What is wrong, in a sentence.", example = "\"Raw water passes the softener by the bypass.\"") Message message,
        @Basis(formula = "formula.complaint.share", source = "CP-SOFTENER-FAULTS")
        @Property(value = "How sure, in percent. All causes together have 100.", min = 0, max = 100, unit = "%", example = "87")
        BigDecimal sharePercent,
        @Property(value = "Whether somebody can come to harm. Such a cause comes first, unless it is hardly possible.", example = "false")
        Boolean canHurt,
        @Property(value = "Why: what it predicts against what was found, its proof first.", eachOf = Sign.class)
        List<BalanceLine> balances,
        @Property(value = "What to do, and how to see that it helped.", example = "\"Shut the bypass, exercise it, and replace its "
                + "seals. Tap and outlet are then equally soft.\"") Message fix,
        @Property("What it takes while it is left.") WaitingLine ifLeft) {
}
