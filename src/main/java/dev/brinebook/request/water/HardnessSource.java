package dev.brinebook.request.water;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.water.Hardness;
import dev.brinebook.wording.Message;

/** A part of a request that tells hardness, either as such or by calcium and magnesium. */
public interface HardnessSource {

    HardnessQuantity hardness();

    ConcentrationQuantity calcium();

    ConcentrationQuantity magnesium();

    /** Reports a hardness told twice or not at all. */
    default void checkHardness(Violations at) {
        boolean ions = calcium() != null || magnesium() != null;
        if (hardness() != null && ions) {
            at.add("hardness", Code.INCONSISTENT, Message.of("must be left out when calcium and magnesium are given"));
        } else if (ions && (calcium() == null || magnesium() == null)) {
            String missing = calcium() == null ? "calcium" : "magnesium";
            if (!at.at(missing).here()) {
                at.add(missing, Code.MISSING, Message.of("{0} is missing: hardness from ions needs both", missing));
            }
        } else if (hardness() == null && !ions && !at.here()) {
            at.add("hardness", Code.MISSING, Message.of("hardness is missing: give it, or calcium and magnesium"));
        }
    }

    /** Hardness in mg/L as CaCO3. */
    default double hardnessMgPerL() {
        return hardness() != null ? hardness().inBase()
                : Hardness.fromIonsMgPerL(calcium().inBase(), magnesium().inBase());
    }
}
