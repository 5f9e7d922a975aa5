// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.savings.SavingsVerdict;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("The savings of a fleet, and the factor that corrects the next promises.")
public record FleetSavingsAnswer(
        @Property(value = "Summary in one sentence or more, to quote.", example = "\"On average, 96 homes save 25 % of the salt "
                + "(24 to 26 %). Multiply the saving you promise next by 0.84.\"") Message summary,
        @Basis(formula = "formula.savings.pooled", source = "HARTUNG-KNAPP")
        @Property(value = "The mean saving.", optional = "for fewer than three homes that can be pooled") FleetPooled pooled,
        @Basis(formula = "formula.savings.factor", source = "HARTUNG-KNAPP")
        @Property(value = "The promises against it.", optional = "for fewer than three homes that can be pooled, or if one of them has no "
                + "promise") FleetFactor promise,
        @Basis(formula = "formula.savings.avoidedSum", source = "IPMVP")
        @Property("Salt that was not used in the periods after the change, at their own use, of all homes with a verdict.")
        MassQuantity avoidedSalt,
        @Property(value = "How many homes have each verdict.", eachOf = SavingsVerdict.class) List<VerdictCount> verdicts,
        @Property(value = "The homes, in the order of the request.", maxItems = FleetSavingsRequest.MAX_HOMES) List<FleetHomeLine> homes,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
