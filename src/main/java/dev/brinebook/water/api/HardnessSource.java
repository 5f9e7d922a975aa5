package dev.brinebook.water.api;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.quantity.api.ConcentrationQuantity;
import dev.brinebook.quantity.api.HardnessQuantity;
import dev.brinebook.water.Hardness;

/** A part of a request that tells hardness, either as such or by calcium and magnesium. */
interface HardnessSource {

    HardnessQuantity hardness();

    ConcentrationQuantity calcium();

    ConcentrationQuantity magnesium();

    /** Reports a hardness told twice or not at all. */
    default void checkHardness(Violations at) {
        boolean ions = calcium() != null || magnesium() != null;
        if (hardness() != null && ions) {
            at.add("hardness", Code.INCONSISTENT, "must be left out when calcium and magnesium are given");
        } else if (ions && (calcium() == null || magnesium() == null)) {
            String missing = calcium() == null ? "calcium" : "magnesium";
            if (!at.at(missing).here()) {
                at.add(missing, Code.MISSING, missing + " is missing: hardness from ions needs both");
            }
        } else if (hardness() == null && !ions && !at.here()) {
            at.add("hardness", Code.MISSING, "hardness is missing: give it, or calcium and magnesium");
        }
    }

    /** Hardness in mg/L as CaCO3. */
    default double hardnessMgPerL() {
        return hardness() != null ? hardness().inBase()
                : Hardness.fromIonsMgPerL(calcium().inBase(), magnesium().inBase());
    }
}
