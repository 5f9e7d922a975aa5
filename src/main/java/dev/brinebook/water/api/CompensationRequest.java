package dev.brinebook.water.api;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.WireNames;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("How iron and manganese count as hardness.")
public record CompensationRequest(
        @Property(value = "The factor set. All are in use in the trade for iron; they differ in how much margin they take."
                + " Choose own to give the two factors yourself.", fallback = "standard", example = "\"standard\"")
        FactorSet set,
        @Property(value = "With the set own: hardness that one mg/L of iron counts for.", min = 0,
                max = CompensationFactors.MAX_GPG_PER_MG, unit = "gpg per mg/L", example = "4") BigDecimal ironFactor,
        @Property(value = "With the set own: hardness that one mg/L of manganese counts for.", min = 0,
                max = CompensationFactors.MAX_GPG_PER_MG, unit = "gpg per mg/L", example = "2") BigDecimal manganeseFactor)
        implements Checked {

    static final CompensationRequest DEFAULT = new CompensationRequest(null, null, null);

    @Override
    public void check(Violations at) {
        if (set == FactorSet.OWN) {
            requireOwn(ironFactor, "ironFactor", at);
            requireOwn(manganeseFactor, "manganeseFactor", at);
        } else if (ironFactor != null || manganeseFactor != null) {
            at.add("set", Code.INCONSISTENT, Message.of("must be own when ironFactor or manganeseFactor is given"));
        }
    }

    private static void requireOwn(BigDecimal factor, String name, Violations at) {
        if (factor == null && !at.at(name).here()) {
            at.add(name, Code.MISSING, Message.of("{0} is missing: the set own needs it", name));
        }
    }

    CompensationFactors toDomain(Explanation explanation) {
        FactorSet used = set == null ? FactorSet.STANDARD : set;
        explanation.assume("water.compensation.set", Message.of("{0}: {1}", WireNames.of(used),
                Message.saying(used)), set == null ? Origin.DEFAULT : Origin.CALLER);
        return used == FactorSet.OWN
                ? CompensationFactors.ofGpg(ironFactor.doubleValue(), manganeseFactor.doubleValue())
                : used.factors();
    }
}
