// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.water;

import dev.brinebook.api.Discriminator;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
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
        Resolved named = Resolved.of("/water/compensation/set", used).noting(explanation.saying(used));
        explanation.assume(set == null ? named.byDefault("CP-IRON-FACTORS") : named);
        return used == FactorSet.OWN
                ? CompensationFactors.ofGpg(ironFactor.doubleValue(), manganeseFactor.doubleValue())
                : used.factors();
    }
}
