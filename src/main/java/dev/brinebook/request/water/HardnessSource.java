// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.water;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.text.Message;
import dev.brinebook.water.Hardness;

/** A part of a request that gives hardness, either directly or by calcium and magnesium. */
public interface HardnessSource {

    HardnessQuantity hardness();

    ConcentrationQuantity calcium();

    ConcentrationQuantity magnesium();

    /** Reports a hardness given twice or not at all. */
    default void checkHardness(Violations at) {
        boolean ions = calcium() != null || magnesium() != null;
        if (hardness() != null && ions) {
            at.add("hardness", Code.INCONSISTENT, Message.of("problem.water.omitWhenCalciumMagnesium"));
        } else if (ions && (calcium() == null || magnesium() == null)) {
            String missing = calcium() == null ? "calcium" : "magnesium";
            if (!at.at(missing).here()) {
                at.add(missing, Code.MISSING, Message.of("hardnessSource.missingHardnessIonsNeeds", missing));
            }
        } else if (hardness() == null && !ions && !at.here()) {
            at.add("hardness", Code.MISSING, Message.of("hardnessSource.missingHardnessGiveOr"));
        }
    }

    /** Hardness in mg/L as CaCO3. */
    default double hardnessMgPerL() {
        return hardness() != null ? hardness().inBase()
                : Hardness.fromIonsMgPerL(calcium().inBase(), magnesium().inBase());
    }
}
