// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.water;

import dev.brinebook.api.Discriminator;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.text.Message;
import dev.brinebook.water.CompensationFactors;
import java.math.BigDecimal;

@SchemaDescription("Factors that convert iron and manganese to hardness.")
public record CompensationRequest(
        @Property(value = "The factor set. All sets are used in the trade for iron and "
                + "differ in their margin. Choose own to give the two factors yourself.", required = true, example = "\"standard\"")
        @Discriminator(others = "usual") FactorSet set,
        @Property(value = "Hardness per mg/L of iron.", kinds = "own", required = true, min = 0,
                max = CompensationFactors.MAX_GPG_PER_MG, unit = "gpg per mg/L", example = "4") BigDecimal ironFactor,
        @Property(value = "Hardness per mg/L of manganese.", kinds = "own", required = true, min = 0,
                max = CompensationFactors.MAX_GPG_PER_MG, unit = "gpg per mg/L", example = "2") BigDecimal manganeseFactor) {

    static final CompensationRequest DEFAULT = new CompensationRequest(null, null, null);

    CompensationFactors toDomain(Explanation explanation) {
        FactorSet used = set == null ? FactorSet.STANDARD : set;
        HardnessUnit unit = explanation.hardnessUnit();
        Resolved named = Resolved.of("/water/compensation/set", used).noting(Message.later(() -> note(used, unit)));
        explanation.assume(set == null ? named.byDefault("CP-IRON-FACTORS") : named);
        return used == FactorSet.OWN
                ? CompensationFactors.ofGpg(ironFactor.doubleValue(), manganeseFactor.doubleValue())
                : used.factors();
    }

    private static Message note(FactorSet set, HardnessUnit unit) {
        return switch (set) {
            case OWN -> Message.of("factorSet.own");
            case STOICHIOMETRIC -> Message.of("factorSet.stoichiometric");
            default -> Message.of("factorSet.factors", said(set.factors().ironMgPerMg(), unit),
                    said(set.factors().manganeseMgPerMg(), unit));
        };
    }

    private static Message said(double mgPerMg, HardnessUnit unit) {
        return Text.rounded(HardnessQuantity.of(mgPerMg, unit));
    }
}
