package dev.brinebook.request.water;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.TellsKind;
import dev.brinebook.api.WireNames;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("How iron and manganese count as hardness.")
public record CompensationRequest(
        @Property(value = "The factor set. All are in use in the trade for iron; they differ in how much margin they take."
                + " Choose own to give the two factors yourself.", required = true, example = "\"standard\"")
        @TellsKind(others = "usual") FactorSet set,
        @Property(value = "Hardness that one mg/L of iron counts for.", kinds = "own", required = true, min = 0,
                max = CompensationFactors.MAX_GPG_PER_MG, unit = "gpg per mg/L", example = "4") BigDecimal ironFactor,
        @Property(value = "Hardness that one mg/L of manganese counts for.", kinds = "own", required = true, min = 0,
                max = CompensationFactors.MAX_GPG_PER_MG, unit = "gpg per mg/L", example = "2") BigDecimal manganeseFactor) {

    static final CompensationRequest DEFAULT = new CompensationRequest(null, null, null);

    CompensationFactors toDomain(Explanation explanation) {
        FactorSet used = set == null ? FactorSet.STANDARD : set;
        explanation.assume("water.compensation.set", Message.of("{0}: {1}", WireNames.of(used),
                explanation.saying(used)), set == null ? Origin.DEFAULT : Origin.CALLER);
        return used == FactorSet.OWN
                ? CompensationFactors.ofGpg(ironFactor.doubleValue(), manganeseFactor.doubleValue())
                : used.factors();
    }
}
